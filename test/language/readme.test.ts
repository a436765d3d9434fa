/** What the README shows is what the tool says. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { allRules } from '../../language/rules/index.js';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

it('the ten lines of the README are told what it shows', () => {
    const rig = /^rig "[\s\S]*?(?=^```)/m.exec(readme)![0];
    const { findings } = analyseText(rig, { today: '2026-06-15' });
    const shown = [...readme.matchAll(/^(\d+):(\d+)\s+(hint|warning|error)\s+([a-z-]+)\s+(.+)$/gm)];
    expect(shown.length).toBeGreaterThan(3);
    for (const [, line, column, severity, rule, message] of shown) {
        const found = findings.find(f => f.rule === rule)!;
        const before = rig.slice(0, found.span.start).split('\n');
        expect({ rule, severity: found.severity, message: found.message, line: before.length, column: before.at(-1)!.length + 1 })
            .toEqual({ rule, severity, message, line: Number(line), column: Number(column) });
    }
});
it('there are over two hundred rules', () => expect(allRules.length).toBeGreaterThan(200));
