/** One reading at the bench shifts the curve of the stack. Held against the one open nickel cell that is published with all that a rig says. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

// Gillespie, dissertation, Witwatersrand (2015), abstract: nickel, gap 2.5 mm, no separator, 70 °C; 51.9 mA/cm² at 1.80 V and
// 242.9 mA/cm² at 2.00 V. Lye of 30 % KOH at one atmosphere: from memory. The face of 100 cm² is ours: only its share counts.
const cell = (amperes: number, reading = '') => `rig "Open cell", running
site { place: outdoors   coldest: 10 °C   hottest: 30 °C }
supply { sort: bench   voltage: 6 V   current-limit: ${amperes} A }
lye { solute: KOH   strength: 30 wt% }
stack { cells: 1   wetted: 100 x 100 mm   gap: 1.25 mm   plate: nickel, 120 x 140 x 1 mm   separator: none   temperature: 70 °C }
${reading}`;
const first = 'reading one { date: 2026-05-04   stack.current: 5.19 A   stack.voltage: 1.80 V   stack.temperature: 70 °C }';
const volts = (text: string) => {
    const { workings, findings, rig } = analyseText(text, { today: '2026-06-15' });
    const r = workings.quantity(rig.parts.get('stack')!, 'volts-per-cell')!;
    return { value: r.value, half: (r.high - r.low) / 2, told: findings.filter(f => f.rule === 'cell-voltage-off-curve').map(f => f.message), inputs: r.inputs.map(i => i.label) };
};

/** Half width of what rests on the reading, and the labels of its roots with what they do to it, V. */
const roots = (reading: string) => {
    const { workings, rig } = analyseText(cell(5.19, reading), { today: '2026-06-15' });
    const r = workings.quantity(rig.parts.get('stack')!, 'volts-per-cell')!;
    return new Map(r.spread.shares.map(s => [s.root.label, { half: (Math.abs(s.atHigh) + Math.abs(s.atLow)) / 2, told: s.root.told, sort: s.root.sort }] as const));
};

describe('one reading at the bench', () => {
    it('brings the rest of the curve of a published cell into the narrow band', () => {
        const blind = volts(cell(24.29));
        expect(Math.abs(blind.value - 2.00)).toBeLessThan(0.15);
        expect(blind.half).toBeGreaterThan(0.14);
        const read = volts(cell(24.29, first));
        expect(Math.abs(read.value - 2.00)).toBeLessThan(0.05);
        expect(Math.abs(read.value - 2.00)).toBeLessThan(Math.abs(blind.value - 2.00));
        // What one reading leaves open, and a little that lye and bubbles add away from it.
        expect(read.half).toBeGreaterThan(0.05);
        expect(read.half).toBeLessThan(0.055);
        expect(read.inputs).toContain('one: stack.voltage');
    });
    it('gives back what was read, where it was read', () => {
        expect(volts(cell(5.19, first)).value).toBeCloseTo(1.80, 3);
    });
    it('is the newest of several, and must say all three', () => {
        const later = first.replace('one', 'two').replace('2026-05-04', '2026-05-09').replace('1.80', '1.84');
        expect(volts(cell(5.19, `${later}\n${first}`)).value).toBeCloseTo(1.84, 3);
        expect(volts(cell(5.19, first.replace('   stack.temperature: 70 °C', ''))).half).toBeGreaterThan(0.14);
    });
    it('is told and not taken where no surface explains it', () => {
        const far = volts(cell(24.29, first.replace('1.80', '2.30')));
        expect(far.told).toEqual([expect.stringMatching(/^2\.3 V a cell was read; about 1\.\d+ V is expected at 5\.19 A, so the numbers do not follow it\./)]);
        expect(far.half).toBeGreaterThan(0.14);
        expect(volts(cell(24.29, first)).told).toEqual([]);
    });
});

describe('what the instruments leave open', () => {
    it('is the ± of the text, one to one for the volts of one cell', () => {
        const volts = roots(first.replace('1.80 V', '1.80 V ± 0.03 V')).get('volts as read')!;
        expect(volts.half).toBeCloseTo(0.03, 3);
        expect(volts).toMatchObject({ told: '± 0.03 V', sort: 'stated' });
    });
    it('is that of a usual instrument where the text tells none', () => {
        const found = roots(first);
        // 0.5 % of 1.80 V.
        expect(found.get('voltmeter')!.half).toBeCloseTo(0.009, 3);
        expect(found.get('voltmeter')!.sort).toBe('law');
        // Nickel at 70 °C: the oxygen side alone falls by some millivolt a kelvin.
        expect(found.get('thermometer')!.half).toBeGreaterThan(0.004);
        expect(found.get('thermometer')!.half).toBeLessThan(0.02);
    });
    it('adds as squares to what a reading leaves open', () => {
        const parts = [...roots(first.replace('1.80 V', '1.80 V ± 0.04 V')).values()].map(r => r.half);
        expect(volts(cell(5.19, first.replace('1.80 V', '1.80 V ± 0.04 V'))).half).toBeCloseTo(Math.hypot(...parts), 3);
    });
});
describe('a reading with other lye or another gap', () => {
    it.each([
        ['lye as a line', 'lye.strength: 20 wt%'], ['another solute', 'lye.solute: NaOH'], ['the gap', 'stack.gap: 2 mm'], ['lye as a condition', 'conditions: lye.strength 20 wt%'],
    ])('leaves ± 0.07 V: %s', (_, line) => {
        expect(roots(first.replace(' }', `   ${line} }`)).get('curve beside the one reading')!.half).toBeCloseTo(0.07, 3);
    });
    it('leaves ± 0.05 V where they were the same within what can be told apart', () => {
        for (const line of ['lye.strength: 30.5 wt%', 'lye.solute: KOH', 'stack.gap: 1.25 mm']) expect(roots(first.replace(' }', `   ${line} }`)).get('curve beside the one reading')!.half).toBeCloseTo(0.05, 3);
    });
    it('is held against the stack as it was then', () => {
        // Read on the published cell as it stood, a narrower one now: 2 x 0.25 mm of lye at 0.052 A/cm² and some 1.2 S/cm are 2 mV.
        const now = cell(5.19, first.replace(' }', '   stack.gap: 1.25 mm }')).replace('gap: 1.25 mm   plate', 'gap: 1 mm   plate');
        const fall = 1.80 - volts(now).value;
        expect(fall).toBeGreaterThan(0.0015);
        expect(fall).toBeLessThan(0.006);
    });
});
