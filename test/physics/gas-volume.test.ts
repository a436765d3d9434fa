import { describe, expect, it } from 'vitest';
import { contraction, gasMoles, gasStates, gasVolume, molarVolume, wetGasVolume } from '../../language/physics/gas-volume.js';
import { lyeVapourPressure } from '../../language/physics/lye.js';
import { saturationPressure } from '../../language/physics/water.js';
import { hydrogenRate } from '../../language/physics/water-splitting.js';
import { celsius, near, nearly } from './near.js';

describe('gas volumes', () => {
    it('molar volumes (CODATA 2018 gas constant)', () => {
        for (const [state, litres] of [
            [gasStates.normal, 22.4140], [gasStates.chemistry, 22.7110], [gasStates.standard, 23.6448],
                [gasStates.room20, 24.0551],
            [gasStates.room25, 24.4654],
        ] as const) nearly(molarVolume(state.temperature, state.pressure) * 1e3, litres, 1e-5);
        // A standard cubic foot: 1.1953 mol (NIST SP 811 states 379.48 ft³ per pound-mole).
        nearly(gasMoles(0.028316846592, gasStates.standardCubicFoot.temperature, gasStates.standardCubicFoot.pressure),
            453.59237 / 379.48, 1e-4);
    });
    it('moles and volumes are each other\'s inverse', () => {
        nearly(gasMoles(gasVolume(3, 310, 2e5), 310, 2e5), 3, 1e-14);
    });
    it('wet flow of six cells at 10 A, 60 °C (Dalton; vapour by IAPWS-95 and Balej 1985)', () => {
        const rate = hydrogenRate(10, 6, 1);
        // 0.2 %: vapour pressures of the two formulations.
        nearly(gasVolume(rate, celsius(60), 101325) * 6e4, 0.5100, 2e-3);
        nearly(wetGasVolume(rate, celsius(60), 101325, saturationPressure(celsius(60))) * 6e4, 0.6350, 2e-3);
        nearly(wetGasVolume(rate, celsius(60), 101325, lyeVapourPressure('KOH', 0.3, celsius(60))) * 6e4, 0.5791, 2e-3);
    });
    it('wet flow of twelve cells at 20 A, 50 °C', () => {
        const rate = hydrogenRate(20, 12, 1);
        nearly(gasVolume(rate, celsius(50), 101325) * 3.6e6, 118.7, 1e-3);
        nearly(wetGasVolume(rate, celsius(50), 101325, lyeVapourPressure('KOH', 0.3, celsius(50))) * 3.6e6, 128.1, 5e-3);
        nearly(wetGasVolume(rate, celsius(50), 101325, saturationPressure(celsius(50))) * 3.6e6, 135.2, 5e-3);
    });
    it('contraction from 60 to 15 °C at 1 atm (Dalton)', () => {
        const cold = saturationPressure(celsius(15));
        near(contraction(celsius(60), lyeVapourPressure('KOH', 0.3, celsius(60)), celsius(15), cold, 101325), 0.775,
            0.775 * 5e-3);
        near(contraction(celsius(60), saturationPressure(celsius(60)), celsius(15), cold, 101325), 0.707, 0.707 * 5e-3);
        // Dry gas only shrinks with its temperature.
        nearly(contraction(celsius(60), 0, celsius(15), cold, 101325), 288.15 / 333.15, 1e-12);
    });
    it('has no volume where the vapour fills all', () => {
        expect(wetGasVolume(1, 380, 1e5, 1.2e5)).toBeNaN();
        expect(contraction(380, 1.2e5, 288, 1700, 1e5)).toBeNaN();
    });
    it('a yield above Faraday turns plausible once the gas is wet and hot (measured 740 mL/min, Kandah 2022)', () => {
        // 3 cells in series (an inference), 17 A, hydrogen and oxygen together.
        const both = 1.5 * hydrogenRate(17, 3, 1);
        const dry = gasVolume(both, celsius(25), 101325) * 6e7;
        nearly(dry, 581.9, 1e-3);
        expect(740 / dry).toBeGreaterThan(1.2);
        near(740 / (wetGasVolume(both, celsius(60), 101325, saturationPressure(celsius(60))) * 6e7), 0.915, 2e-3);
        const other = 1.5 * hydrogenRate(20, 3, 1);
        near(634 / (gasVolume(other, celsius(25), 101325) * 6e7), 0.926, 1e-3);
        near(634 / (wetGasVolume(other, celsius(25), 101325, saturationPressure(celsius(25))) * 6e7), 0.897, 1e-3);
    });
});
