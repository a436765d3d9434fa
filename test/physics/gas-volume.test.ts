import { describe, expect, it } from 'vitest';
import { contraction, gasMoles, gasVolume, wetGasVolume } from '../../language/physics/gas-volume.js';
import { lyeVapourPressure } from '../../language/physics/lye.js';
import { saturationPressure } from '../../language/physics/water.js';
import { hydrogenRate } from '../../language/physics/water-splitting.js';
import { celsius, near, nearly } from './near.js';

describe('gas volumes', () => {
    it('moles and volumes are each other\'s inverse', () => {
        nearly(gasMoles(gasVolume(3, 310, 2e5), 310, 2e5), 3, 1e-14);
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
