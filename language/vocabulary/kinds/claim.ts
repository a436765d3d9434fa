import { date, kind, text } from '../define.js';

export default kind({
    name: 'claim',
    doc: 'What somebody says of a rig: checked against what is possible, never used as an input.',
    group: 'statements',
    statement: 'claimed',
    properties: {
        by: text('Who says it, and where.'),
        date: date('Day on which it was done or read.'),
    },
    template: ['by: "${1:seller}"', 'stack.hydrogen-rate: ${2:60 L/h}'],
});
