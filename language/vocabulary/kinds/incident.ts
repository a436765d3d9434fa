import { date, kind, parts, text } from '../define.js';

export default kind({
    name: 'incident',
    doc: 'Something that went wrong, however small.',
    group: 'records',
    properties: {
        date: date('Day on which it was done or read.'),
        by: text('Name of who did or read it.'),
        covers: parts([], 'Which parts.', {}),
        what: text('What was done or seen.', {}),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'what: "${3}"'],
});
