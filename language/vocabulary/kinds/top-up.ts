import { date, kind, quantity, text } from '../define.js';

export default kind({
    name: 'top-up',
    doc: 'Water or lye added.',
    group: 'records',
    properties: {
        date: date('Day on which it was done or read.'),
        by: text('Name of who did or read it.'),
        water: quantity('volume', 'Water added.', { fact: true }),
        lye: quantity('volume', 'Lye added. Only water is used up; lye makes the rest stronger.', { fact: true }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'water: ${3:0.5 L}'],
});
