import { kind, quantity, words } from '../define.js';
import { recordProperties as record } from '../record-properties.js';
import { waters } from '../waters.js';

export default kind({
    name: 'top-up',
    doc: 'Water or lye that was added. The cells use water only: topping up with lye makes it stronger each time.',
    group: 'records',
    properties: {
        date: record.date,
        by: record.by,
        covers: record.covers,
        water: quantity('volume', 'Water added.', { fact: true, usual: '0.01 L..50 L', example: '${1:0.8 L}' }),
        lye: quantity('volume', 'Lye added.', { fact: true, usual: '0.01 L..50 L', example: '${1:0.5 L}' }),
        strength: quantity('mass-fraction', 'Strength of the lye added.', { fact: true, usual: '1 wt%..50 wt%', positive: true, example: '${1:28 wt%}' }),
        sort: words([...waters.keys()], 'Which water. Tap water brings chloride and scale that stay in the lye for good.', {
            fact: true,
        }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'water: ${3:0.8 L}'],
});
