import { describe, expect, it } from 'vitest';
import {
    cellHeat, energyEfficiency, faradayEfficiencySanchez, hydrogenRate, oxygenRate, pressureVoltage,
    thermoneutralVoltageWithVapour,
} from '../../language/physics/water-splitting.js';
import { celsius, near } from './near.js';

describe('voltages', () => {
    it('is unknown where the lye boils', () => {
        expect(thermoneutralVoltageWithVapour(celsius(110), 1.4e5, 101325)).toBeNaN();
    });
    it('pressure term: nothing at 1 bar, more over lye, unknown without gas', () => {
        expect(pressureVoltage(353.15, 1e5, 1e5, 1)).toBe(0);
        expect(pressureVoltage(353.15, 1e5, 1e5, 0.6)).toBeGreaterThan(0);
        expect(pressureVoltage(353.15, 0, 1e5, 1)).toBeNaN();
    });
});

describe('gas and water by Faraday', () => {
    // Exact constants of the SI since 2019: 1e-4 covers the print.
    it('oxygen is half of the hydrogen', () => {
        expect(oxygenRate(20, 12, 1)).toBe(hydrogenRate(20, 12, 1) / 2);
    });
    it('energy efficiency at 2.1 V, by either heating value', () => {
        near(energyEfficiency(2.1, 1, 'higher'), 0.705, 1e-3);
        near(energyEfficiency(2.1, 1, 'lower'), 0.597, 1e-3);
    });
    it('heat: taken up below the enthalpy voltage; what makes no gas becomes heat', () => {
        expect(cellHeat(1, 1, 1.3, 1.48)).toBeLessThan(0);
        expect(cellHeat(1, 1, 2, 1.48, 0)).toBe(2);
    });
    it('Faraday efficiency of a measured stack falls with warmth (Sánchez et al. 2018)', () => {
        expect(faradayEfficiencySanchez(2000, celsius(75))).toBeLessThan(faradayEfficiencySanchez(2000, celsius(55)));
    });
});
