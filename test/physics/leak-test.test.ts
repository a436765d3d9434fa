import { describe, expect, it } from 'vitest';
import { gasLost } from '../../language/physics/leak-test.js';

describe('leak by pressure drop', () => {
    it('is the volume that left, at the pressure of the air', () => {
        // 1 bar less in 10 L, at an air pressure of 1 bar, is 10 L of gas; in one hour.
        expect(gasLost(0.01, 5e5, 1e5, 0, 293.15, 3600, 1e5) * 3600).toBeCloseTo(0.01, 10);
    });
    it('one kelvin hides a 293rd part of the pressure', () => {
        expect(gasLost(1, 0, 0, 1, 293.15, 1, 1e5)).toBeCloseTo(1 / 293.15, 10);
    });
    it('a longer test shows less', () => {
        expect(gasLost(0.01, 2000, 20, 1, 293.15, 7200, 1e5)).toBeCloseTo(gasLost(0.01, 2000, 20, 1, 293.15, 3600, 1e5) / 2, 12);
    });
    it('unknown in is unknown out', () => {
        expect(gasLost(NaN, 2000, 20, 1, 293.15, 3600, 1e5)).toBeNaN();
    });
});
