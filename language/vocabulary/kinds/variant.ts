import { kind, parts } from '../define.js';

export default kind({
    name: 'variant',
    doc: 'The same rig, but: changed values as site.coldest: -12 °C; a part alone with none takes it away.',
    group: 'statements',
    statement: 'supposed',
    properties: {
        with: parts(['variant'], 'Other variants that it includes.', {}),
    },
    template: ['note: "${1}"', 'site.coldest: ${2:-10 °C}'],
});
