import { kind, parts } from '../define.js';

export default kind({
    name: 'variant',
    doc: 'The same rig with some values replaced: site.coldest: -10 °C. A part\'s name with none takes the part away, and its neighbours on the path join.',
    group: 'statements',
    statement: 'supposed',
    properties: {
        with: parts(['variant'], 'Other variants that it adds to, later ones winning.', { example: '${1:winter}' }),
    },
    template: ['${1:site.coldest}: ${2:-10 °C}'],
});
