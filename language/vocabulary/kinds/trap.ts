import { kind, quantity, words } from '../define.js';

export default kind({
    name: 'trap',
    doc: 'Empty vessel in the gas line: it catches liquid that is sucked back, or water that drops out.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        sort: words(['reverse', 'drain'], 'What it catches: liquid on its way back to the stack, or condensate.', {}),
        volume: quantity('volume', 'What it holds. A reverse trap must take all the liquid that can be sucked back.', { usual: '1 mL..20 L', example: '${1:0.5 L}' }),
    },
    events: ['full'],
    template: ['sort: ${1|reverse,drain|}', 'volume: ${2:0.5 L}'],
});
