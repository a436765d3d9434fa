import { kind, quantity } from '../define.js';

export default kind({
    name: 'tee',
    doc: 'Fitting where a line branches. Order at it counts: what lies before it and what behind.',
    group: 'low side',
    on: ['hydrogen', 'oxygen', 'lye', 'water'],
    ports: 'many',
    properties: {
        bore: quantity('length', 'Narrowest width inside.', { usual: '1 mm..100 mm' }),
    },
    events: ['leaks'],
    template: [],
});
