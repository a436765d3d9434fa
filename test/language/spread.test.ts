/** The ± of numbers: against drawing at random, against sums that can be done by hand, and what it is said to come from. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText } from '../../language/index.js';
import { Supposed } from '../../language/quantities/supposed.js';
import { Workings, type Result } from '../../language/quantities/workings.js';

const example = (name: string) => readFileSync(new URL(`../../examples/${name}.rig`, import.meta.url), 'utf8');
const analysed = (name: string) => new Analyst(file => (file.endsWith('bench-shelf.rig') ? example('bench-shelf') : example(name))).analyse(`${name}.rig`, { today: '2026-06-15' });
const result = (workings: Workings, name: string): Result => {
    const [part, ...more] = name.split('.');
    return workings.quantity(workings.rig.parts.get(part)!, more.join('.'))!;
};
/** Normal numbers of which 95 % lie within 1, from a fixed seed (Box and Muller). */
function draws(seed: number): () => number {
    let state = seed;
    const uniform = () => ((state = (state * 1103515245 + 12345) & 0x7fffffff) + 0.5) / 0x80000000;
    return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()) / 1.96;
}
const quantile = (sorted: readonly number[], q: number) => sorted[Math.floor(q * sorted.length)];

describe('the bounds of a curve', () => {
    it('are those of a number where the curve is that number, by the same roots', () => {
        const { workings } = analysed('potters-burner');
        for (const name of ['stack.volts-per-cell', 'stack.hydrogen-rate', 'stack.hydrogen-in-oxygen']) {
            const r = result(workings, name);
            const [along, fixed] = workings.boundsAlong(r, there => [result(there, name).value, 7]);
            expect(along.low).toBeCloseTo(r.low, 9);
            expect(along.high).toBeCloseTo(r.high, 9);
            expect(fixed).toEqual({ low: 7, high: 7 });
        }
    });
    it('leave out what is not known at an end', () => {
        const { workings } = analysed('potters-burner');
        const r = result(workings, 'stack.volts-per-cell');
        const [b] = workings.boundsAlong(r, there => [there === workings ? 1 : NaN]);
        expect(b).toEqual({ low: 1, high: 1 });
    });
});

describe('the ± of a number', () => {
    /** Squares are added for roots that bend: by how much of their width the bounds may differ from those drawn. */
    const BENT = 0.25;
    it.each([
        ['jeweller-torch-store', ['stack.volts-per-cell', 'stack.energy-per-volume', 'stack.hydrogen-rate', 'stack.temperature', 'compressor.free-delivery', 'cylinder.fill-time', 'budget.electricity-cost']],
        ['ferry-shelter-battery', ['stack.voltage', 'stack.bypass-share', 'stack.heat']],
        ['workshop-two-groups', ['stack.volts-per-cell', 'stack.hydrogen-rate']],
    ])('covers what drawing all roots at random gives: %s', (name, names) => {
        const { workings, rig } = analysed(name);
        for (const n of names) {
            const r = result(workings, n);
            const roots = workings.rootsOf(r);
            expect(roots.length).toBeGreaterThan(0);
            const draw = draws(7);
            const values = Array.from({ length: 400 }, () => {
                const supposed = roots.reduce((s, root) => root.at(s, draw()), new Supposed());
                return result(new Workings(rig, undefined, supposed), n).value;
            }).sort((a, b) => a - b);
            const [low, high] = [quantile(values, 0.025), quantile(values, 0.975)];
            const width = r.high - r.low;
            expect(width, n).toBeGreaterThan(0);
            expect(Math.abs(r.low - low), `${n} lower bound`).toBeLessThan(BENT * width);
            expect(Math.abs(r.high - high), `${n} upper bound`).toBeLessThan(BENT * width);
            const inside = values.filter(v => v >= r.low && v <= r.high).length / values.length;
            expect(inside, n).toBeGreaterThan(0.88);
            expect(inside, n).toBeLessThan(0.995);
        }
    });
    // A reading with its own ±, and a curve of which one point has one: nothing but the stack is asked, so a few lines do.
    const bench = (more: string, rest = '') => `rig "R", running\nsite { place: outdoors   coldest: 5 °C   hottest: 30 °C }\nsupply { sort: bench   voltage: 60 V   current-limit: 12 A }\nlye { solute: KOH   strength: 28 wt% }\nseparator { material: composite }\nstack { cells: 12   wetted: 100 x 120 mm   gap: 2 mm   port: 1 of 5 mm, 60 mm long   ${more} }\n${rest}\n`;
    it.each([
        ['a reading', bench('', 'reading one { date: 2026-05-04   stack.current: 10 A ± 0.5 A   stack.voltage: 24.6 V ± 0.4 V   stack.temperature: 50 °C ± 3 K }')],
        ['a curve', bench('curve: 22.8 V ± 0.5 V at 4 A and 50 °C, 24.6 V ± 0.3 V at 10 A ± 0.3 A, 25.4 V at 14 A')],
    ])('covers what drawing the ± of instruments gives: %s', (_, text) => {
        const { workings, rig } = analyseText(text, { today: '2026-06-15' });
        const r = result(workings, 'stack.volts-per-cell');
        const roots = workings.rootsOf(r).filter(root => root.label.includes('as read') || root.label.includes('meter'));
        expect(roots.length).toBeGreaterThan(2);
        const draw = draws(11);
        const values = Array.from({ length: 300 }, () => result(new Workings(rig, undefined, roots.reduce((s, root) => root.at(s, draw()), new Supposed())), 'stack.volts-per-cell').value).sort((a, b) => a - b);
        const alone = r.spread.shares.filter(s => roots.some(root => root.key === s.root.key));
        const half = Math.sqrt(alone.reduce((sum, s) => sum + ((s.atHigh - s.atLow) / 2) ** 2, 0));
        expect(half).toBeGreaterThan(0.01);
        expect(Math.abs((quantile(values, 0.975) - quantile(values, 0.025)) / 2 - half)).toBeLessThan(BENT * half);
    });
    it('is the sum of squares where the law is a product', () => {
        // GUM (JCGM 100:2008, 5.1.2 and 5.1.6): relative half widths of a product add as squares.
        const { workings } = analyseText('rig "R", drawn\ncompressor { displacement: 20 cm3 ± 3 %   speed: 1400 rpm ± 4 % }\n');
        const r = result(workings, 'compressor.displacement-flow');
        expect((r.high - r.low) / 2 / r.value).toBeCloseTo(0.05, 3);
        expect(r.spread.shares.map(s => s.root.label)).toEqual(['compressor.speed', 'compressor.displacement']);
        expect(r.spread.shares.map(s => s.part)[0]).toBeCloseTo(16 / 25, 2);
    });
    it('reaches through named values, likes and references', () => {
        const { workings } = analyseText('rig "R", drawn\nlet stroke = 20 cm3 ± 10 %\ncompressor small { displacement: stroke   speed: 1000 rpm }\ncompressor big { displacement: 2 * stroke   speed: small.speed }\ncylinder a { volume: 10 L ± 1 L   rating: 12 bar }\ncylinder b like a\n');
        for (const [name, half] of [['small.displacement-flow', 0.1], ['big.displacement-flow', 0.1], ['b.pressure-volume', 0.1]] as const) {
            const r = result(workings, name);
            expect((r.high - r.low) / 2 / r.value, name).toBeCloseTo(half, 6);
        }
        expect(result(workings, 'b.pressure-volume').spread.shares.map(s => s.root.label)).toEqual(['a.volume']);
    });
    it('counts a root once, however often a number rests on it', () => {
        // Energy for each volume and efficiency both hang on the volts: their product does not.
        const { workings } = analysed('jeweller-torch-store');
        const energy = result(workings, 'stack.energy-per-volume');
        const efficiency = result(workings, 'stack.efficiency-hhv');
        expect(energy.value * efficiency.value).toBeCloseTo(energy.low * efficiency.high, -Math.floor(Math.log10(energy.value * efficiency.value)) + 1);
    });
    it('is none where nothing is open', () => {
        const { workings } = analyseText('rig "R", drawn\ncompressor { displacement: 20 cm3   speed: 1400 rpm }\n');
        const r = result(workings, 'compressor.displacement-flow');
        expect([r.low, r.high, r.spread.shares]).toEqual([r.value, r.value, []]);
    });
    it('shrinks by what is said', () => {
        const said = 'rig "R", drawn\nsupply { voltage: 30 V   current-limit: 12 A }\nlye { solute: KOH   strength: 28 wt% }\nseparator { material: composite   thickness: 0.5 mm }\nstack { cells: 12   wetted: 100 x 120 mm   gap: 2 mm   port: 1 of 5 mm, 60 mm long }\n';
        const guessed = said.replace('   port: 1 of 5 mm, 60 mm long', '');
        const width = (text: string) => {
            const r = result(analyseText(text).workings, 'stack.bypass-share');
            return r.high - r.low;
        };
        expect(width(said)).toBeLessThan(0.7 * width(guessed));
        expect(result(analyseText(guessed).workings, 'stack.bypass-share').spread.shares[0].root.label).toMatch(/^stack\.port/);
    });
});
