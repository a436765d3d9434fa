import { describe, expect, it } from 'vitest';
import { airPressureAt, grossLift } from '../../language/physics/balloon.js';
import { celsius, near } from './near.js';

describe('lift', () => {
    it('less with height, foul gas and damp', () => {
        const full = grossLift(1, celsius(20));
        // About a tenth per 1000 m, and 2 .. 5 % for wet or 95 % pure gas.
        near(grossLift(1, celsius(20), airPressureAt(1000)) / full, 0.89, 0.02);
        near(grossLift(1, celsius(20), 101325, 0.95) / full, 0.95, 1e-3);
        const wet = grossLift(1, celsius(20), 101325, 1, 2339) / full;
        expect(wet).toBeLessThan(0.995);
        expect(wet).toBeGreaterThan(0.97);
        expect(grossLift(1, celsius(20), 101325, 0)).toBe(0);
    });
    it('no height has the standard pressure', () => expect(airPressureAt(0)).toBe(101325));
});
