import { describe, expect, it } from 'vitest';
import { fromBarrer, permeationFlow, permeationWarmth } from '../../language/physics/permeation.js';
import { celsius, nearly } from './near.js';

describe('permeation', () => {
    it('grows 2.29 times from 30 to 80 °C in polyethylene (a simulation, Polymers 16 (2024) 953)', () => {
        nearly(permeationWarmth(celsius(80), celsius(30)), 2.29, 5e-3);
        nearly(permeationWarmth(celsius(30), celsius(30)), 1, 1e-12);
    });
    it('one barrer is 3.35e-16 mol/(m·s·Pa): 1e-10 cm³(STP)·cm/(cm²·s·cmHg)', () => {
        // From its own parts: 1e-10 cm³ of ideal gas at 0 °C and 1 atm, per cmHg of 1333.22 Pa, per centimetre.
        nearly(fromBarrer(1), 1e-10 * 1e-6 / 22.413969e-3 * 1e-2 / 1e-4 / 1333.224, 1e-3);
    });
    it('1 m² of natural rubber, 50 µm, lets 2.7 L of hydrogen through in an hour at 1 atm (49 barrer, polymer handbooks, from memory)', () => {
        // In the older unit by hand: 49e-10 x 1e4 cm² x 76 cmHg / 5e-3 cm = 0.745 cm³(STP)/s, 2.68 L an hour through a film of 50 µm.
        const litres = permeationFlow(fromBarrer(49), 1, 50e-6, 101325) * 22.413969 * 3600;
        nearly(litres, 2.68, 2e-3);
    });
    it('consistency, no outside number: twice the area, half the film and half the pressure give twice the flow; none uphill of nothing', () => {
        nearly(permeationFlow(1e-15, 2, 50e-6, 5e4), 2 * permeationFlow(1e-15, 1, 100e-6, 1e5), 1e-12);
        expect(permeationFlow(1e-15, 1, 1e-4, 0)).toBe(0);
        expect(permeationFlow(1e-15, 1, 1e-4, -1e5)).toBeLessThan(0);
    });
});
