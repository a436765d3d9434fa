import { kind, part, quantity, words } from '../define.js';

export default kind({
    name: 'purge-point',
    doc: 'Small valve where nitrogen is let in, or the air let out, before hydrogen comes. Each stretch of the hydrogen path needs one at both ends.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    ports: 'one',
    properties: {
        on: part([], 'The part that it opens into.', { example: '${1:h2-column}', none: false }),
        sort: words(['inlet', 'outlet', 'both'], 'Whether gas is let in or out there.', { assume: ['both', 'a plain valve serves for either'] }),
        bore: quantity('length', 'Bore of its valve.', { usual: '1 mm..25 mm', example: '${1:6 mm}' }),
    },
    states: ['open', 'shut'],
    events: ['opened', 'shut', 'leaks', 'left open'],
    template: ['on: ${1:h2-column}'],
});
