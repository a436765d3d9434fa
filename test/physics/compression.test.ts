import { describe, expect, it } from 'vitest';
import {
    afterSweep, burstEnergy, clearanceEfficiency, fillTemperature, freeDelivery, isothermalWork, polytropicWork,
    stallRatio,
} from '../../language/physics/compression.js';
import { near, nearly } from './near.js';

describe('work of compression, ideal gas (textbook formulas)', () => {
    it('the exponent 1 is the isothermal case, met from both sides', () => {
        nearly(polytropicWork(300, 10, 1 + 1e-7), isothermalWork(300, 10), 1e-6);
        expect(polytropicWork(300, 10, 1)).toBe(isothermalWork(300, 10));
        expect(isothermalWork(300, 1)).toBe(0);
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
