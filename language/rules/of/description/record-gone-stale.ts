import { defineRule } from '../../define.js';

export default defineRule({
    name: 'record-gone-stale',
    family: 'the description',
    severity: 'hint',
    summary: 'A part was changed after the test or reading that speaks for it.',
    why: 'A record speaks for the part as it was that day. After a change it gives comfort that nothing bears out.',
    source: 'order of the dates in the text',
    on: 'change',
    check(v, tell) {
        const day = v.word('date') ?? '';
        const changed = new Map([...v.part.entries.values()].filter(e => e.key.includes('.')).map(e => [e.key.split('.')[0], e] as const));
        for (const [name, entry] of changed) {
            const before = v.all('test').filter(t => t.word('result') === 'passed' && t.names('covers').includes(name) && (t.word('date') ?? '') !== '' && t.word('date')! < day);
            const since = v.all('test').some(t => t.names('covers').includes(name) && (t.word('date') ?? '') >= day);
            if (!before.length || since) continue;
            const record = before.at(-1)!;
            tell({ at: entry.keySpan, message: `${name} was changed after ${record.name} of ${record.word('date')}: that test no longer speaks for it.`, related: [{ span: record.at('covers'), message: 'the record' }] });
        }
    },
});
