/** Laws that hold for any text, tried on random ones with a fixed seed. `RIGWRIGHT_RUNS` sets how many. */
import { readFileSync, readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseText, applyFix } from '../../language/index.js';
import { ruleNamed } from '../../language/rules/index.js';
import { formatText } from '../../language/rig/format.js';

const folder = new URL('../../examples/', import.meta.url);
const texts = readdirSync(folder).filter(f => f.endsWith('.rig')).map(f => readFileSync(new URL(f, folder), 'utf8'));
const pieces = texts.flatMap(t => t.split(/(?<=\n)/)).filter(l => l.trim());
const odd = ['{', '}', ':', ',', '"', '->', '..', '±', '−', '×', '\t', '\r\n', '\uFEFF', '2,5 V', 'unknown', 'none', 'like', 'let x = x', '0 V', '1e999 m', '((((', 'expect', '# ', '## ', '💧', '\u0000', '(a+b)*'];
/** Lines of real rigs, torn and mixed with odd bits. */
const text = fc.array(fc.oneof(
    fc.constantFrom(...pieces), fc.constantFrom(...odd), fc.string({ maxLength: 12 }),
    fc.tuple(fc.constantFrom(...pieces), fc.nat(60)).map(([p, n]) => p.slice(0, n)),
), { maxLength: 40 }).map(a => a.join(''));
const settings = { numRuns: Number(process.env.RIGWRIGHT_RUNS ?? 150), seed: 20260615 };
const meaning = (t: string) => {
    const { findings, workings } = analyseText(t, { today: '2026-06-15' });
    return { findings: findings.map(f => `${f.rule} ${f.message}`).sort(), parts: [...workings.rig.parts.keys()].sort() };
};

describe('any text', () => {
    it('is read, and every finding stands inside of it', { timeout: 120_000 }, () => {
        fc.assert(fc.property(text, t => {
            const { findings } = analyseText(t, { today: '2026-06-15' });
            for (const f of findings) {
                expect(f.span.start).toBeGreaterThanOrEqual(0);
                expect(f.span.end).toBeGreaterThan(f.span.start);
                expect(f.span.end).toBeLessThanOrEqual(t.length + 1);
                expect(f.message.length).toBeGreaterThan(5);
            }
        }), settings);
    });
    it('is formatted once for all, and keeps its meaning', { timeout: 120_000 }, () => {
        fc.assert(fc.property(text, t => {
            const once = formatText(t);
            expect(formatText(once)).toBe(once);
            expect(meaning(once)).toEqual(meaning(t));
        }), settings);
    });
});
// What a mended line then says may be an error in its own right: a port ten times too short was there all along.
const reading = (rule: string) => ruleNamed(rule)?.family === 'reading the text';
describe('a fix', () => {
    it('never makes another line unreadable', { timeout: 120_000 }, () => {
        const broken = fc.tuple(fc.constantFrom(...texts), fc.nat(), fc.constantFrom(...odd.filter(o => o !== '\u0000'))).map(([t, at, bit]) => {
            const i = at % t.length;
            return t.slice(0, i) + bit + t.slice(i);
        });
        let tried = 0;
        fc.assert(fc.property(broken, t => {
            const before = analyseText(t, { today: '2026-06-15' });
            for (const fix of before.findings.filter(f => f.fixes.length).slice(0, 3).flatMap(f => f.fixes.filter(x => x.keepsMeaning))) {
                tried++;
                const line = (text: string, offset: number) => text.slice(0, offset).split('\n').length;
                const mended = line(t, fix.edits[0].span.start);
                const elsewhere = (text: string, list: typeof before.findings) => list.filter(f => reading(f.rule) && line(text, f.span.start) !== mended).map(f => `${f.rule} ${f.message}`);
                const text = applyFix(t, 'rig.rig', fix);
                const had = elsewhere(t, before.findings);
                expect(elsewhere(text, analyseText(text, { today: '2026-06-15' }).findings).filter(e => !had.includes(e)), fix.title).toEqual([]);
            }
        }), { ...settings, numRuns: Math.ceil(settings.numRuns / 4) });
        expect(tried, 'fixes that were tried').toBeGreaterThan(0);
    });
});
