import { kind } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'incident',
    doc: 'Something that went wrong or nearly did. Written down, it can warn the next time.',
    group: 'records',
    properties: {
        date: record.date,
        by: record.by,
        covers: record.covers,
        what: record.what,
        why: record.why,
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'covers: ${3:part}', 'what: "${4}"'],
});
