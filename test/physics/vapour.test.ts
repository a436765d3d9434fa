import { describe, expect, it } from 'vitest';
import {
    condensate, dewPoint, molecularSieveLoading, silicaGelLoading, vapourDensity, vapourFlow, vapourPerDryGas,
        vapourPressureAfter,
} from '../../language/physics/vapour.js';
import { saturationPressure } from '../../language/physics/water.js';
import { celsius, near } from './near.js';

describe('water in gas', () => {
    it('squeezing saturated gas from 1 to 11 bar drops nine tenths of its water', () => {
        // 23.0 g per m³ at 25 °C, of which 2.1 stay (steam tables).
        const p = saturationPressure(celsius(25));
        near(vapourDensity(p, celsius(25)) * 1e3, 23.0, 0.1);
        const dropped = condensate(1, p, 101325, celsius(25), 11.01e5);
        const carried = vapourFlow(1, p, 101325);
        near(1 - dropped / carried, 0.092 * (101325 - p) / 101325, 0.003);
    });
    it('nothing drops where it is warmer, and all is vapour above boiling', () => {
        expect(condensate(1, 2000, 101325, celsius(60))).toBe(0);
        expect(condensate(1, 2000, 101325, celsius(120))).toBe(0);
        expect(vapourPerDryGas(2e5, 1e5)).toBeNaN();
    });
    it('dew point after compression', () => {
        // Steam tables: 8.73 mbar at 5 °C; 86.5 mbar at 43 °C and 91.1 mbar at 44 °C.
        near(dewPoint(vapourPressureAfter(saturationPressure(celsius(5)), 1e5, 10e5)), celsius(43.2), 0.1);
    });
});

describe('desiccants', () => {
    it('never loads more than the pores hold (a loading above 0.6 kg/kg would be a typing error)', () => {
        for (let p = 0; p < 3000; p += 100) expect(molecularSieveLoading(p, 298)).toBeLessThan(0.3);
        expect(silicaGelLoading(1, 300)).toBeLessThan(0.4);
        expect(silicaGelLoading(0, 300)).toBe(0);
    });
});
