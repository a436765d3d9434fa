import { facts, kind, slot, text } from '../define.js';

export default kind({
    name: 'log',
    doc: 'A log kept as a table: each key names our quantity, its value the heading of the column and its unit.',
    group: 'statements',
    statement: 'columns',
    properties: {
        file: text('The table, as a file beside the rig.', { example: '"${1:log.csv}"' }),
        covers: facts([[slot('from', 'date'), 'to', slot('to', 'date')]], 'From when to when.', { example: '${1:2026-01-31 10:00} to ${2:2026-01-31 16:00}', fact: true }),
        time: text('Heading of the column with the time.', {}),
        by: text('Heading of the column with who wrote it.', {}),
        remark: text('Heading of the column with remarks.', {}),
    },
    template: ['file: "${1:log.csv}"', 'time: "${2:time}"', 'stack.current: "${3:I (A)}" in A'],
});
