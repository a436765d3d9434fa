import { describe, expect, it } from 'vitest';
import { airPressureAt, ballVolume, grossLift } from '../../language/physics/balloon.js';
import { airDensity } from '../../language/physics/gases.js';
import { celsius, near, nearly } from './near.js';

describe('lift', () => {
    it('per cubic metre of dry hydrogen at 1 atm (ideal air of 28.9647 g/mol; Leachman et al. 2009)', () => {
        for (const [t, air, lift] of [[0, 1.2923, 1.2024], [15, 1.2250, 1.1398], [20, 1.2041, 1.1203],
            [25, 1.1839, 1.1016]] as const) {
            nearly(airDensity(celsius(t)), air, 1e-3);
            nearly(grossLift(1, celsius(t)), lift, 1e-3);
        }
    });
    it('balls: 30 cm lifts 15.84 g at 20 °C, 1 m 587 g', () => {
        nearly(ballVolume(0.3) * 1e3, 14.137, 1e-4);
        nearly(grossLift(ballVolume(0.3), celsius(20)) * 1e3, 15.84, 1e-3);
        nearly(ballVolume(1) * 1e3, 523.6, 1e-4);
        nearly(grossLift(ballVolume(1), celsius(20)) * 1e3, 587, 2e-3);
    });
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
    it('standard atmosphere (US 1976: 89 875 Pa at 1000 m, 54 020 Pa at 5000 m)', () => {
        nearly(airPressureAt(1000), 89875, 1e-3);
        nearly(airPressureAt(5000), 54020, 1e-3);
        expect(airPressureAt(0)).toBe(101325);
    });
});
