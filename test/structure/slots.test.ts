/** Quantities and rules name properties and slots by text: each such name must be declared by some kind of part. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { allQuantities } from '../../language/quantities/index.js';
import { kinds } from '../../language/vocabulary/index.js';
import { measures } from '../../language/units/dimension.js';
import { unitOf } from '../../language/units/unit.js';
import { parseValue } from '../../language/values/parse-value.js';
import { match } from '../../language/values/match.js';

const root = path.resolve(import.meta.dirname, '../../language');
const files = ['quantities', 'rules'].flatMap(dir => readdirSync(path.join(root, dir), { recursive: true, withFileTypes: true }).filter(d => d.isFile() && d.name.endsWith('.ts') && !d.name.includes('generated')).map(d => path.join(d.parentPath ?? d.path, d.name)));
const declared = new Set<string>();
for (const kind of kinds.values()) {
    for (const p of Object.values(kind.properties)) {
        declared.add(p.name);
        for (const item of p.items) for (const atom of item) if (typeof atom !== 'string') declared.add(atom.slot ? `${p.name}.${atom.slot}` : p.name);
    }
}
const quantityNames = new Set(allQuantities.map(q => q.name));

describe('names in code', () => {
    it('of properties and slots are declared', () => {
        const wrong: string[] = [];
        for (const file of files) {
            for (const m of readFileSync(file, 'utf8').matchAll(/\.(?:num|maybe|word|yes|text|sizes|rows|names|says|said|given|bounds|cannotCheck)\((?:[a-z]\w*, )?'([a-z][\w.-]*)'/g)) {
                if (!declared.has(m[1]) && m[1] !== 'source') wrong.push(`${path.relative(root, file)}: ${m[1]}`);
            }
        }
        expect([...new Set(wrong)]).toEqual([]);
    });
    it('of quantities are declared', () => {
        const wrong: string[] = [];
        for (const file of files) {
            for (const m of readFileSync(file, 'utf8').matchAll(/\.(?:q|maybeQ|result)\('([\w-]+)'/g)) if (!quantityNames.has(m[1])) wrong.push(`${path.relative(root, file)}: ${m[1]}`);
        }
        expect([...new Set(wrong)]).toEqual([]);
    });
});

describe('declarations', () => {
    it.each([...kinds.values()].map(k => [k.name, k] as const))('%s: what is assumed and what is usual can be read by its own property', (_, kind) => {
        for (const p of Object.values(kind.properties)) {
            for (const text of [p.assume?.value, p.usual].filter((t): t is string => !!t)) {
                const v = parseValue(text);
                expect(v.problems, `${kind.name}.${p.name}: ${text}`).toEqual([]);
                if (text === p.assume?.value) expect(match(v, p, () => undefined).problems, `${kind.name}.${p.name}: ${text}`).toEqual([]);
            }
            expect(p.doc.length, `${kind.name}.${p.name}`).toBeGreaterThan(8);
            if (p.neverAssumed) expect(p.assume, `${kind.name}.${p.name}`).toBeUndefined();
        }
    });
    it('show quantities in a unit of their own dimension, at a property that exists', () => {
        for (const q of allQuantities) {
            const unit = q.unit ?? measures[q.measure].units[0];
            if (unit) expect(unitOf(unit)?.dimension, `${q.of}.${q.name} in ${unit}`).toBe(measures[q.measure].dimension);
            for (const kind of typeof q.of === 'string' ? [q.of] : q.of) {
                expect(kinds.has(kind), `${kind}.${q.name}`).toBe(true);
                if (q.shownAt && q.shownAt !== 'header' && typeof q.of === 'string') expect(Object.keys(kinds.get(kind)!.properties), `${kind}.${q.name}`).toContain(q.shownAt);
            }
            for (const word of [q.meaning, q.formula, q.source]) expect(word.length, q.name).toBeGreaterThan(2);
        }
    });
    it('have at least seventy quantities', () => {
        expect(allQuantities.length).toBeGreaterThanOrEqual(70);
    });
});
