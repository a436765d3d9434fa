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
