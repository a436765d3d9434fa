/** A curve that a stack states counts before a reading, and a reading before the laws alone. Held against a published stack. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

// Sánchez et al., Int. J. Hydrogen Energy 43 (2018) 20332-45: 12 cells of 1000 cm², mA/cm² and V of a cell, digitised, ± 8 mV.
const at55 = [[151, 1.855], [251, 1.975], [350, 2.069], [447, 2.149]] as const;
const at75 = [[150, 1.777], [199, 1.825], [252, 1.869], [301, 1.914], [351, 1.962], [399, 2.002], [450, 2.050], [501, 2.086]] as const;
const stated = at55.map(([j, u]) => `${(12 * u).toFixed(2)} V at ${j} A and 55 °C`).join(', ');
// Its gap is not told, and it ran at 7 bar: no gap here, since the bubbles of a rig at 1 bar would be seven times as large.
// Ports so long and narrow that next to nothing passes by: those of the published stack are not told. 1000 cm², so A are mA/cm².
const stack = (amperes: number, celsius: number, more = '', rest = '') => `rig "Published", running
supply { sort: bench   voltage: 60 V   current-limit: ${amperes} A }
lye { solute: KOH   strength: 35 wt% }
separator { material: composite }
stack { cells: 12   wetted: 250 x 400 mm   gap: 0 mm   plate: nickel, 300 x 450 x 2 mm   port: 1 of 4 mm, 500 mm long   temperature: ${celsius} °C   ${more} }
${rest}`;
const read = (text: string) => {
    const { workings } = analyseText(text, { today: '2026-06-15' });
    const of = (name: string) => workings.quantity(workings.rig.parts.get('stack')!, name)!;
    return { cell: of('volts-per-cell').value, current: of('current') };
};
const curve = `curve: ${stated}`;

describe('a stack with its own curve', () => {
    it.each(at55)('gives back what was measured: %d mA/cm², %d V', (j, u) => {
        expect(Math.abs(read(stack(j, 55, curve)).cell - u)).toBeLessThan(0.004);
    });
    it.each(at75)('keeps the dependence of the laws on temperature: at 75 °C, %d mA/cm², %d V', (j, u) => {
        // One-point band of this stack, ± 45 mV.
        expect(Math.abs(read(stack(j, 75, curve)).cell - u)).toBeLessThan(0.045);
    });
    it('rises throughout, also between and beyond its points', () => {
        let before = 0;
        for (const j of [20, 60, 120, 151, 170, 251, 300, 350, 400, 447, 520, 700]) {
            const { cell } = read(stack(j, 55, curve));
            expect(cell, `${j}`).toBeGreaterThan(before);
            before = cell;
        }
    });
    it('tells beside the current where it is left', () => {
        expect(read(stack(520, 55, curve)).current.remarks.join()).toContain('above the curve');
        expect(read(stack(100, 55, curve)).current.remarks.join()).toContain('below the curve');
        expect(read(stack(300, 55, curve)).current.remarks).toEqual([]);
    });
    it('does not heed a reading; without a curve the reading counts; without both the laws', () => {
        const reading = 'reading one { date: 2026-05-04   stack.current: 300 A   stack.voltage: 24.6 V   stack.temperature: 55 °C }';
        const both = read(stack(300, 55, curve, reading)).cell;
        expect(both).toBe(read(stack(300, 55, curve)).cell);
        expect(Math.abs(read(stack(300, 55, '', reading)).cell - 24.6 / 12)).toBeLessThan(0.002);
        expect(Math.abs(read(stack(300, 55)).cell - 24.6 / 12)).toBeGreaterThan(0.005);
    });
    it('is one shift where it has one point, and is left where its volts fall', () => {
        expect(Math.abs(read(stack(251, 55, 'curve: 23.70 V at 251 A and 55 °C')).cell - 1.975)).toBeLessThan(0.002);
        expect(read(stack(251, 55, 'curve: 23.70 V at 251 A and 55 °C, 22 V at 300 A')).cell).toBe(read(stack(251, 55)).cell);
    });
    it('carries the ± of its points, each for itself, and that of one instrument where they have none', () => {
        const shares = (text: string, amperes: number) => {
            const { workings } = analyseText(stack(amperes, 55, text), { today: '2026-06-15' });
            return new Map(workings.quantity(workings.rig.parts.get('stack')!, 'volts-per-cell')!.spread.shares.map(s => [s.root.label, Math.abs(s.atHigh)] as const));
        };
        const some = shares(`curve: ${stated.replace('23.70 V', '23.70 V ± 0.6 V')}`, 251);
        expect(some.get('volts as read, point 2')!).toBeCloseTo(0.05, 3);
        // Far from that point it does nothing.
        expect(shares(`curve: ${stated.replace('23.70 V', '23.70 V ± 0.6 V')}`, 447).get('volts as read, point 2') ?? 0).toBeLessThan(0.001);
        // 0.5 % of 1.975 V.
        expect(shares(curve, 251).get('voltmeter')!).toBeCloseTo(0.00988, 3);
    });
});
