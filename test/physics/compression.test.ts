import { describe, expect, it } from 'vitest';
import {
    afterSweep, burstEnergy, clearanceEfficiency, fillTemperature, freeDelivery, isothermalWork, polytropicWork,
    pressuresInSeries, stagedWork, stageSuctions, stallRatio,
} from '../../language/physics/compression.js';
import { near, nearly } from './near.js';

describe('work of compression, ideal gas (textbook formulas)', () => {
    it('the exponent 1 is the isothermal case, met from both sides', () => {
        nearly(polytropicWork(300, 10, 1 + 1e-7), isothermalWork(300, 10), 1e-6);
        expect(polytropicWork(300, 10, 1)).toBe(isothermalWork(300, 10));
        expect(isothermalWork(300, 1)).toBe(0);
    });
});

describe('stages', () => {
    it('one stage is the plain case, many cooled ones come to the isothermal work from above', () => {
        expect(stagedWork(300, 300, 9, 1, 1.4)).toBe(polytropicWork(300, 9, 1.4));
        const works = [1, 2, 3, 10, 100].map(n => stagedWork(300, 300, 9, n, 1.4));
        for (let i = 1; i < works.length; i++) expect(works[i]!).toBeLessThan(works[i - 1]!);
        nearly(works.at(-1)!, isothermalWork(300, 9), 4e-3);
    });
    it('without a cooler stages are one long stage', () => nearly(stagedWork(300, Infinity, 9, 3, 1.4), polytropicWork(300, 9, 1.4), 1e-12));
    it('equal ratios need the least work with perfect cooling', () => {
        const split = (first: number) => polytropicWork(300, first, 1.3) + polytropicWork(300, 9 / first, 1.3);
        for (const first of [2, 2.9, 3.1, 4.5]) expect(split(first)).toBeGreaterThan(stagedWork(300, 300, 9, 2, 1.3));
    });
    it('a cooler warms nothing', () => expect(stageSuctions(280, 400, 1.2, 2, 1.3)[1]!).toBeCloseTo(280 * 1.2 ** (0.3 / 1.3), 9));
});

describe('machines in series', () => {
    const machine = (swept: number, clearance: number) => (from: number, to: number) => swept * from * clearanceEfficiency(clearance, to / from, 1.3);
    it('without clearance the pressure between is that of the swept volumes', () => {
        const [, between] = pressuresInSeries([machine(3, 0), machine(1, 0)], 1e5, 10e5);
        nearly(between!, 3e5, 1e-6);
    });
    it('each takes what the one before delivers, three of them too', () => {
        const machines = [machine(9, 0.06), machine(3, 0.05), machine(1, 0.04)];
        const before = pressuresInSeries(machines, 1e5, 27e5);
        const flows = machines.map((m, i) => m(before[i]!, before[i + 1] ?? 27e5));
        nearly(flows[1]!, flows[0]!, 1e-4);
        nearly(flows[2]!, flows[0]!, 1e-4);
    });
    it('one that is too large draws through the first, one that is too small is blown through', () => {
        expect(pressuresInSeries([machine(1, 0.05), machine(5, 0.05)], 1e5, 3e5)).toEqual([1e5, 1e5]);
        expect(pressuresInSeries([machine(20, 0.01), machine(1, 0.01)], 1e5, 3e5)).toEqual([1e5, 3e5]);
    });
});

describe('pistons', () => {
    it('clearance: none without ratio, nothing left at a great one', () => {
        expect(clearanceEfficiency(0.05, 1, 1.3)).toBe(1);
        expect(clearanceEfficiency(0.05, 1e4, 1.3)).toBe(0);
    });
    it('stalls where the clearance gas fills the stroke', () => {
        const stall = stallRatio(0.08, 1.25);
        near(clearanceEfficiency(0.08, stall, 1.25), 0, 1e-12);
        expect(clearanceEfficiency(0.08, 0.99 * stall, 1.25)).toBeGreaterThan(0);
    });
    it('8 cm³ at 2900 rpm and 60 %: 835 L/h', () => {
        nearly(freeDelivery(8e-6, 2900 / 60, 0.6) * 3.6e6, 835, 1e-3);
    });
});

describe('vessels', () => {
    it('a vessel that is not filled keeps its temperature', () => nearly(fillTemperature(293.15, 293.15, 1e5, 1e5, 1.4), 293.15, 1e-12));
    it('no burst energy below the air outside', () => expect(burstEnergy(0.027, 1e5, 1.013e5, 1.4)).toBe(0));
    it('sweeping: three volumes bring air under 1.05 % oxygen', () => {
        near(afterSweep(0.2095, 3) * 100, 1.043, 1e-3);
        expect(afterSweep(0.2, 0)).toBe(0.2);
    });
});
