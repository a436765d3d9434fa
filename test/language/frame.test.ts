/** The frame: total, and by pieces the same as whole. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FrameReader, parseWhole, type Item } from '../../language/grammar/frame.js';
import { scan } from '../../language/grammar/scanner.js';
import { factsOf, pageOf, sample, touched } from './facts.js';

/** Texts that look like rigs gone wrong: pieces of the language in any order. */
export const rigLike = fc.array(fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom('stack', 'column', 'h2-column', 'lye', 'like', 'rig', 'path', 'let', 'expect', 'use', 'allow', 'weigh', 'library', 'cells', 'bore', 'expe', 'between', 'above') },
    { weight: 3, arbitrary: fc.constantFrom('{', '}', ':', '->', ',', '(', ')', '"', '#', '##', '=', '.', '..', '±', '+', '-', 'x', 'at', ';', '\\', '\r\n', '\t') },
    { weight: 3, arbitrary: fc.constantFrom('12', '3 mm', '1,5 V', '2026-02-30', '15:35', '25 wt%', '80 x 90 mm', '6x1 mm', 'µm', '°C', 'é', '水', '\u2212', '\ufeff') },
    { weight: 4, arbitrary: fc.constantFrom('\n', ' ', '\n  ', ': ', ' { ', ' }\n') },
    { weight: 1, arbitrary: fc.string({ maxLength: 6 }) },
)).map(parts => parts.join(''));

const flat = (items: readonly Item[], at: number): unknown[] => items.map(i => ({ ...i, start: i.start + at, end: i.end + at, nameAt: undefined, valueAt: undefined, textAt: undefined, baseAt: undefined, openAt: undefined, closeAt: undefined, items: i.is === 'block' && i.items ? flat(i.items, at) : undefined }));

describe('frame', () => {
    it('has no parser error for any text, and by pieces is the same as whole', () => {
        fc.assert(fc.property(fc.oneof(rigLike, fc.string({ unit: 'binary' })), text => {
            const whole = parseWhole(text);
            expect(whole.errors).toBe(0);
            const pieces = new FrameReader().read('a', text).pieces;
            expect(pieces.flatMap(p => flat(p.items, p.at))).toEqual(flat(whole.items, 0));
        }), { numRuns: 400, seed: 7 });
    });
    it('covers every character that is not blank or comment exactly once', () => {
        fc.assert(fc.property(rigLike, text => {
            const tokens = scan(text).tokens;
            let end = 0;
            for (const t of tokens) {
                expect(t.start).toBeGreaterThanOrEqual(end);
                expect(text.slice(end, t.start).replace(/#[^\n]*/g, '').replace(/[\s\u00a0\ufeff]/g, '')).toBe('');
                end = t.end;
            }
        }), { numRuns: 300, seed: 8 });
    });
    it('rereads an edited text as if it were new', () => {
        fc.assert(fc.property(fc.array(fc.tuple(fc.nat(), fc.nat(3), rigLike), { maxLength: 6 }), edits => {
            const reader = new FrameReader();
            let text = sample;
            for (const [at, cut, put] of edits) {
                const i = at % (text.length + 1);
                text = text.slice(0, i) + put.slice(0, 4) + text.slice(i + cut);
                expect(reader.read('a', text)).toEqual(new FrameReader().read('a', text));
            }
        }), { numRuns: 60, seed: 9 });
    });
});

describe('half-typed lines', () => {
    const lines = sample.split('\n');
    const starts = lines.map((_, i) => lines.slice(0, i).join('\n').length + (i ? 1 : 0));
    const whole = factsOf(sample);
    it('cost only themselves: every line cut short at every place', () => {
        const lost: string[] = [];
        lines.forEach((line, i) => {
            // The lines of one value stand together: cutting one touches the value.
            const mine = touched(sample, starts[i], starts[i] + line.length);
            for (let n = 0; n < line.length; n++) {
                const text = [...lines.slice(0, i), line.slice(0, n), ...lines.slice(i + 1)].join('\n');
                const facts = factsOf(text);
                for (const [name, value] of whole) {
                    if (mine.has(name) || facts.get(name) === value) continue;
                    // A brace that is missing lets a header lose its block's name, not its neighbours.
                    lost.push(`${JSON.stringify(line.slice(0, n))}: lost ${name}`);
                }
            }
        });
        expect(lost).toEqual([]);
    });
    it('are told on their own line', () => {
        const quiet: string[] = [];
        for (const [from, to] of [['cells:            12', 'cells:'], ['cells:            12', 'cel'], ['26.0 V ± 0.2 V', '26.0 V ±'], ['2.5 mm each side', '2.5'], ['stack -> o2-column -> outdoors', 'stack -> '],
            ['between 20 V and 28 V', 'between 20 V and'], ['let least = 3.2 A', 'let least ='], ['90 x 110 mm', '90 x'], ['tee h2-tee', 'tee'], ['+ 8 L)', '+ 8 L'], ['above 48 L', 'above'], ['"Sample of everything"', '"Sample']] as const) {
            const text = sample.replace(from, to);
            const line = text.slice(0, sample.indexOf(from)).split('\n').length;
            const told = pageOf(text).problems.map(p => text.slice(0, p.span.start).split('\n').length);
            if (!told.some(l => Math.abs(l - line) <= (from.includes('+ 8') ? 1 : 0))) quiet.push(`${to} on line ${line}: told ${told.join(',')}`);
        }
        expect(quiet).toEqual([]);
    });
});
