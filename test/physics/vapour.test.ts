import { describe, expect, it } from 'vitest';
import { molarVolume } from '../../language/physics/gas-volume.js';
import { lyeVapourPressure } from '../../language/physics/lye.js';
import {
    condensate, dewPoint, molecularSieveLoading, silicaGelLoading, vapourDensity, vapourFlow, vapourPerDryGas,
        vapourPressureAfter,
} from '../../language/physics/vapour.js';
import { saturationPressure } from '../../language/physics/water.js';
import { hydrogenRate } from '../../language/physics/water-splitting.js';
import { celsius, near, nearly } from './near.js';

const normal = molarVolume(273.15, 101325);

describe('water in gas', () => {
    it('saturated hydrogen at 1 atm (IAPWS-95)', () => {
        for (const [t, percent, grams] of [[25, 3.13, 25.96], [40, 7.29, 63.19], [60, 19.69, 197.0]] as const) {
            const p = saturationPressure(celsius(t));
            nearly(p / 101325 * 100, percent, 2e-3);
            nearly(vapourFlow(1 / normal, p, 101325) * 1e3, grams, 2e-3);
        }
    });
    it('dropped on cooling from saturated 60 °C to 25 °C', () => {
        nearly(condensate(1 / normal, saturationPressure(celsius(60)), 101325, celsius(25)) * 1e3, 171.0, 5e-3);
    });
    it('dropped between dew points 40 and 20 °C by 100.36 normal litres per hour', () => {
        const rate = hydrogenRate(20, 12, 1);
        const kept = vapourPerDryGas(saturationPressure(celsius(20)), 101325) * 18.01528 / normal;
        nearly(kept, 18.99, 5e-3);
        nearly(condensate(rate, saturationPressure(celsius(40)), 101325, celsius(20)) * 3.6e6, 4.43, 5e-3);
    });
    it('water leaving twelve cells at 20 A, 50 °C, with both gases', () => {
        const both = 1.5 * hydrogenRate(20, 12, 1);
        nearly(vapourFlow(both, lyeVapourPressure('KOH', 0.3, celsius(50)), 101325) * 3.6e6, 9.56, 5e-3);
        nearly(vapourFlow(both, saturationPressure(celsius(50)), 101325) * 3.6e6, 16.80, 5e-3);
    });
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
    it('molecular sieve 13X (Wang & LeVan 2009, fit as printed in an open library)', () => {
        const pressures = [15, 100, 300, 1000, 1600];
        for (const [t, row] of [
            [25, [0.150, 0.200, 0.222, 0.239, 0.244]], [40, [0.115, 0.173, 0.201, 0.224, 0.231]],
                [60, [0.074, 0.134, 0.168, 0.199, 0.209]],
            [100, [0.025, 0.066, 0.099, 0.138, 0.153]],
        ] as const) row.forEach((load, i) => near(molecularSieveLoading(pressures[i]!, celsius(t)), load, 1e-3));
    });
    it('silica gel (Sapienza et al. 2017)', () => {
        for (const [t, row] of [[30, [0.159, 0.180, 0.219, 0.253]], [40, [0.154, 0.175, 0.214, 0.249]]] as const) {
            row.forEach((load, i) => near(silicaGelLoading([0.25, 0.3, 0.4, 0.5][i]!, celsius(t)), load, 1.5e-3));
        }
        // Follows humidity: at one vapour pressure, warming from 30 to 40 °C takes a third of its water.
        near(silicaGelLoading(2123 / saturationPressure(celsius(30)), celsius(30)), 0.253, 2e-3);
        near(silicaGelLoading(2123 / saturationPressure(celsius(40)), celsius(40)), 0.170, 2e-3);
    });
    it('never loads more than the pores hold (a loading above 0.6 kg/kg would be a typing error)', () => {
        for (let p = 0; p < 3000; p += 100) expect(molecularSieveLoading(p, 298)).toBeLessThan(0.3);
        expect(silicaGelLoading(1, 300)).toBeLessThan(0.4);
        expect(silicaGelLoading(0, 300)).toBe(0);
    });
});
