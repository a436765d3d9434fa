import { date, kind, text } from '../define.js';

export default kind({
    name: 'change',
    doc: 'What was changed, and why. The part itself says what holds today.',
    group: 'statements',
    statement: 'changed',
    properties: {
        date: date('Day on which it was done or read.'),
        by: text('Name of who did or read it.'),
        why: text('Reason for the change.', {}),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'why: "${3}"'],
});
