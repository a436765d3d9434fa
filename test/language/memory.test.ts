/**
 * What is kept from one reading to the next must never show: after any run of edits a rig reads as if it were read for
 * the first time. Random edits with a fixed seed; `RIGWRIGHT_RUNS` sets how many runs.
 */
import { readFileSync, readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Analyst, type Analysis } from '../../language/index.js';
import { resultsOf } from '../../language/reference/quantities.js';

const folder = new URL('../../examples/', import.meta.url);
const read = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const names = [...readdirSync(folder), ...readdirSync(new URL('mistakes/', folder)).map(f => `mistakes/${f}`)].filter(f => f.endsWith('.rig'));
/** Values that hang on other values, likes of likes, and names that can go in a circle with one edit. */
const tangled = `rig "Tangled", built
let pairs = 6
let wide = 2 * pairs * 10 mm
supply { sort: bench   voltage: pairs * 2.3 V   current-limit: 8 A }
lye { solute: KOH   strength: 25 wt%   fill: 3 L }
stack { cells: 2 * pairs   wetted: wide x 90 mm   gap: 2 mm   port: 1 of 6 mm, 10 mm long }
column h2-column { bore: 60 mm   height: 300 mm   level: 0.6 * h2-column.height }
column o2-column like h2-column
column spare like o2-column { level: h2-column.level }
bag { volume: 40 L   own-pressure: 0.1 kPa }
switch bag-full { senses: bag.volume   breaks: above 0.8 * bag.volume   makes: below 20 L }
contactor main { stopped-by: bag-full, hot   latched-by: go }
trip hot { senses: stack.temperature   trips: above 60 °C   resets: by hand }
button go
cylinder { volume: 10 L   rating: 12 bar }
relief-valve { set: 0.9 * cylinder.rating }
path current: supply -> stack
path hydrogen: stack -> h2-column -> bag
path oxygen: stack -> o2-column -> outdoors
path hydrogen: cylinder -> relief-valve -> outdoors
reading look { date: 2026-05-04   stack.current: 7 A   stack.voltage: pairs * 4 V   stack.temperature: 41 °C }
expect stack.volts-per-cell < 2.4 V
expect bag.fill-time > 10 min
allow site-not-stated until 2027-01-01 by Ada because "a test"
`;
const texts = [tangled, tangled, ...names.map(read)];
const words = [...new Set(texts.flatMap(t => t.match(/[\p{L}_][\p{L}\p{N}_-]*/gu) ?? []))];
const bits = ['k', '\u2028', 'µ', ' x', '\r\n', '{', '}', ':', '"', '\n', ' ', ' -> ', '# ', '## a note\n', ', ', '2', '9', ' bar absolute', ' unknown', ' none', ' like h2-column', 'let pairs = 4\n', 'bag.volume', 'stack.current', ', built', ', idea', '\ntank t { volume: 5 L }\n'];

/** One step of a maker: at a place by share of the text, something is put in, taken out, moved or said otherwise. */
const step = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }), to: fc.double({ min: 0, max: 1, noNaN: true }),
    how: fc.constantFrom('put', 'put', 'word', 'number', 'number', 'cut', 'line away', 'line moved', 'undo', 'undo'),
    bit: fc.constantFrom(...bits), word: fc.constantFrom(...words), digit: fc.integer({ min: 0, max: 99 }), length: fc.integer({ min: 1, max: 30 }),
});
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;
function edited(text: string, s: Step): string {
    const at = Math.floor(s.at * text.length);
    const found = (pattern: RegExp) => {
        pattern.lastIndex = at;
        return pattern.exec(text);
    };
    const replaced = (m: RegExpExecArray | null, by: string) => (m ? text.slice(0, m.index) + by + text.slice(m.index + m[0].length) : text);
    const lines = text.split('\n');
    const line = Math.floor(s.at * lines.length);
    switch (s.how) {
        case 'put': return text.slice(0, at) + s.bit + text.slice(at);
        case 'word': return replaced(found(/[\p{L}_][\p{L}\p{N}_-]*/gu), s.word);
        case 'number': return replaced(found(/\d+(?:\.\d+)?/g), String(s.digit));
        case 'cut': return text.slice(0, at) + text.slice(at + s.length);
        case 'line away': return lines.filter((_, i) => i !== line).join('\n');
        default: {
            const [taken] = lines.splice(line, 1);
            lines.splice(Math.floor(s.to * lines.length), 0, taken);
            return lines.join('\n');
        }
    }
}
const numbers = (a: Analysis, bounds: boolean) => resultsOf(a.workings).map(r => `${r.part.name}.${r.quantity.name} ${r.value} ${bounds ? `${r.low} ${r.high}` : ''} | ${[...r.missing].sort().join(' ')} | ${r.remarks.join(' ')}`);
const workings = (a: Analysis) => resultsOf(a.workings).map(r => `${r.part.name}.${r.quantity.name}: ${r.inputs.map(i => `${i.label} ${i.value} ${i.text ?? ''} ${i.unit} ${i.status} ${i.given?.entry?.span.start ?? ''}`).sort().join('; ')}`);

describe('what is kept from one reading to the next', () => {
    it('heeds what is written around a block that did not change itself', () => {
        const first = 'rig "R", drawn\n\nroutine {\n  hours: 5 h/day\n}\nsite {\n  altitude: 40 m\n}\n';
        let text = first;
        const keeping = new Analyst(() => text);
        keeping.analyse('a.rig', { today: '2026-06-15' });
        text = first.replace('}\nsite {', '} \u2028 altitude: 3 m');
        expect(keeping.analyse('a.rig', { today: '2026-06-15' }).findings).toEqual(new Analyst(() => text).analyse('a.rig', { today: '2026-06-15' }).findings);
    });
    it('never shows', { timeout: 300_000 }, () => {
        fc.assert(fc.property(fc.constantFrom(...texts), fc.array(step, { minLength: 3, maxLength: 25 }), (first, steps) => {
            const undo = [first];
            let text = first;
            const options = { today: '2026-06-15' };
            const shelf = read('bench-shelf.rig');
            const textOf = (file: string) => (file === 'a.rig' ? text : file.endsWith('bench-shelf.rig') ? shelf : undefined);
            const keeping = new Analyst(textOf);
            keeping.analyse('a.rig', options);
            for (const [i, s] of steps.entries()) {
                text = s.how === 'undo' ? undo.length > 1 ? undo.pop()! : undo[0] : edited(text, s);
                if (s.how !== 'undo') undo.push(text);
                const kept = keeping.analyse('a.rig', options);
                const fresh = new Analyst(textOf).analyse('a.rig', options);
                expect(kept.findings).toEqual(fresh.findings);
                expect(kept.near).toEqual(fresh.near);
                // Bounds cost far more than the numbers themselves: now and then they are compared too.
                const bounds = i % 7 === 3;
                expect(numbers(kept, bounds)).toEqual(numbers(fresh, bounds));
                if (i % 5 === 4) expect(workings(kept)).toEqual(workings(fresh));
            }
        }), { numRuns: Number(process.env.RIGWRIGHT_RUNS ?? 25), seed: 20261125 });
    });
});
