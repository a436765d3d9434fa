/**
 * `unknown` is the honest word, and it must not buy silence: a danger that cannot be checked while a property is left out
 * cannot be checked either while the property is said to be unknown. Tried on every rig of the pages of rules, as built.
 */
import { expect, it } from 'vitest';
import { analyseText, applyFix } from '../../language/index.js';
import { additionTo } from '../../language/rules/fixes.js';
import { allRules, rulePage } from '../../language/rules/index.js';

const options = { today: '2026-06-15' };
const rigs = allRules.flatMap(r => [...(rulePage(r.name) ?? '').matchAll(/^```rig\n([\s\S]*?)^```$/gm)].map(m => m[1]))
    .map(text => text.replace(/^(rig "[^"]*"), (?:idea|drawn)$/m, '$1, built'));

it('what is unknown is told like what is not given', () => {
    const tried = new Map<string, number>();
    const silenced: string[] = [];
    for (const text of rigs) {
        const { rig, findings } = analyseText(text, options);
        for (const f of findings.filter(f => f.rule === 'cannot-check-a-hazard')) {
            for (const [, name, key] of f.message.matchAll(/([\w-]+)\.([\w-]+)(?=,| (?:is|are) not given)/g)) {
                const part = rig.parts.get(name);
                if (!part?.kind?.properties[key] || part.entries.has(key)) continue;
                // Twice for each property is enough.
                const what = `${part.kindWord}.${key}`;
                const times = tried.get(what) ?? 0;
                if (times >= 2) continue;
                const edit = additionTo(rig, part, key, 'unknown');
                if (!edit) continue;
                const after = applyFix(text, rig.root, { title: '', edits: [edit] });
                const told = analyseText(after, options).findings.filter(g => g.severity !== 'hint' && (g.rule === 'cannot-check-a-hazard' ? g.message.includes(`${name}.${key}`) : g.message.includes(name) && !findings.some(h => h.message === g.message)));
                tried.set(what, times + 1);
                if (!told.length) silenced.push(`${what} in ${rig.title}`);
            }
        }
    }
    expect(silenced).toEqual([]);
    expect(tried.size).toBeGreaterThan(15);
});
