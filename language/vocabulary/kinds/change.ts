import { kind } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'change',
    doc: 'What was altered on the built rig, from what to what: bag-full.makes: above 50 L to above 46 L. The part itself says what is true today.',
    group: 'statements',
    statement: 'changed',
    properties: {
        date: record.date,
        by: record.by,
        why: record.why,
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'why: "${3}"', '${4:part.property}: ${5:old} to ${6:new}'],
});
