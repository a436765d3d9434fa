import { date, facts, kind, slot, text } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

const column = (doc: string, example: string) => facts([[slot('', 'text'), 'in?', slot('unit', 'any', true)]], doc, { example, fact: true });

export default kind({
    name: 'log',
    doc: 'A table kept while running, and which of its columns is which quantity: stack.current: "I (A)" in A.',
    group: 'statements',
    statement: 'columns',
    properties: {
        file: text('Name of the table, beside this text: "run.csv".', { example: '"${1:run.csv}"', fact: true }),
        covers: facts([[slot('from', 'date'), 'to', slot('to', 'date')]], 'From when to when: 2026-02-01 13:00 to 2026-02-01 17:00.', {
            example: '${1:2026-02-01 13:00} to ${2:2026-02-01 17:00}', fact: true,
        }),
        starts: date('When its time column has its zero, if that column counts from a start.', { example: '${1:2026-02-01 13:00}' }),
        time: column('Heading of the column with the time: "time", or "t" in s.', '"${1:time}"'),
        by: column('Heading of the column with who wrote the line, or a name.', '"${1:who}"'),
        remark: column('Heading of the column with remarks.', '"${1:remark}"'),
        conditions: record.conditions,
    },
    template: ['file: "${1:run.csv}"', 'time: "${2:time}"', 'stack.current: "${3:I (A)}" in ${4:A}', 'stack.voltage: "${5:U (V)}" in ${6:V}'],
});
