import { kind, part, quantity, words } from '../define.js';

export default kind({
    name: 'bleed',
    doc: 'Small valve that lets trapped pressure go before a joint is opened.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    ports: 'one',
    properties: {
        on: part([], 'The part whose pressure it lets go.', { example: '${1:discharge-tee}', none: false }),
        outlet: words(['outdoors', 'room'], 'Where its gas goes.', { neverAssumed: true }),
        bore: quantity('length', 'Bore of its valve.', { usual: '0.3 mm..25 mm', example: '${1:2 mm}' }),
    },
    states: ['open', 'shut'],
    events: ['opened', 'shut', 'leaks', 'left open'],
    template: ['on: ${1:discharge-tee}', 'outlet: ${2|outdoors,room|}'],
});
