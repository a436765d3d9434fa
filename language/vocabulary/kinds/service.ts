import { kind, quantity } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'service',
    doc: 'Upkeep that was done: bolts tightened again, lye or desiccant changed, a cell renewed.',
    group: 'records',
    properties: {
        date: record.date,
        by: record.by,
        covers: record.covers,
        with: record.with,
        what: record.what,
        'next-after': quantity('time', 'How long it holds until it is due again.', { usual: '1 h..10 years', unit: 'months', example: '${1:6 months}' }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'covers: ${3:part}', 'what: "${4}"'],
});
