import { describe, it } from 'vitest';
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
    it('flow through a film', () => {
        nearly(permeationFlow(fromBarrer(10), 2, 1e-4, 101325), 3.3464e-15 * 2 * 101325 / 1e-4, 1e-9);
    });
});
