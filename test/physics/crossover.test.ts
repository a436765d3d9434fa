import { describe, expect, it } from 'vitest';
import {
    diffusionAcross, diffusivity, hydrogenInOxygen, hydrogenInOxygenSanchez, impurity, leastCurrentDensity, mixingAcross,
        pressedAcross,
    SHEET_OBSTRUCTION, solubility,
} from '../../language/physics/crossover.js';
import { oxygenRate } from '../../language/physics/water-splitting.js';
import { celsius, near, nearly } from './near.js';

describe('dissolved gas', () => {
    it('is copied rightly: 0.78 mol/m³ of hydrogen and 1.3 of oxygen per bar in water at 25 °C (Sander, from memory)', () => {
        nearly(solubility('hydrogen', 'KOH', 0, 298.15) * 1e5, 0.78, 1e-9);
        nearly(solubility('oxygen', 'KOH', 0, 298.15) * 1e5, 1.3, 1e-9);
    });
    it('water against the mole fractions of the CRC handbook at 1 atm: 1.411e-5 of hydrogen, 2.293e-5 of oxygen (from memory)', () => {
        // 55.34 mol of water in a litre. 5 %: two compilations of measurements.
        nearly(solubility('hydrogen', 'KOH', 0, 298.15) * 101325, 1.411e-5 * 55340, 0.05);
        nearly(solubility('oxygen', 'KOH', 0, 298.15) * 101325, 2.293e-5 * 55340, 0.05);
        // Oxygen halves from 0 to 30 °C, and hydrogen loses a fifth: 3.949e-5 and 1.755e-5 at 0 °C. 10 %: one slope for all temperatures.
        nearly(solubility('oxygen', 'KOH', 0, 273.15) * 101325, 3.949e-5 * 55500, 0.1);
        nearly(solubility('hydrogen', 'KOH', 0, 273.15) * 101325, 1.755e-5 * 55500, 0.1);
    });
    it('30 wt% KOH takes about 0.06 mol/m³ of hydrogen per bar (order only, from memory: factor 2)', () => {
        const s = solubility('hydrogen', 'KOH', 0.3, celsius(60)) * 1e5;
        expect(s).toBeGreaterThan(0.03);
        expect(s).toBeLessThan(0.12);
    });
    it('less in stronger lye; diffusion quicker when warm, slower in thick lye', () => {
        for (let w = 0.05; w <= 0.4; w += 0.05) {
            expect(solubility('oxygen', 'NaOH', w, 320)).toBeLessThan(solubility('oxygen', 'NaOH', w - 0.05, 320));
            expect(diffusivity('hydrogen', 'NaOH', w, 320)).toBeLessThan(diffusivity('hydrogen', 'NaOH', w - 0.05, 320));
        }
        expect(diffusivity('hydrogen', 'KOH', 0.3, 350)).toBeGreaterThan(diffusivity('hydrogen', 'KOH', 0.3, 300));
        // In water at 25 °C: 4.5 .. 5.1e-9 m²/s in the tables (from memory).
        nearly(diffusivity('hydrogen', 'KOH', 0, 298.15), 4.8e-9, 0.06);
    });
    it('a sheet holds back gas six times (Schalenbach et al. 2016)', () => {
        expect(SHEET_OBSTRUCTION).toBe(6);
        nearly(diffusionAcross(6e-9, 1e-6, 1e5, 0.5e-3, 1, 1), 1e-9 * 0.1 / 0.5e-3, 1e-12);
    });
});

describe('impurity', () => {
    it('from a flux: 2.6e-9 mol/cm²/s (Faraday)', () => {
        for (const [j, percent] of [[2000, 0.50], [500, 1.97], [200, 4.78]] as const) {
            near(hydrogenInOxygen(2.6e-5, j) * 100, percent, 0.005);
        }
        nearly(hydrogenInOxygen(2.6e-5, leastCurrentDensity(2.6e-5, 0.02)), 0.02, 1e-12);
        expect(hydrogenInOxygen(0, 1000)).toBe(0);
        expect(hydrogenInOxygen(1e-6, 0)).toBe(1);
        expect(impurity(0, 0)).toBe(0);
    });
    it('20 L/min of shared lye with half saturation takes 0.033 mol/h: 1.5 % of the oxygen of twelve cells at 20 A', () => {
        const carried = mixingAcross(20e-3 / 60, 0.06 / 1e5, 0.93e5);
        nearly(carried * 3600, 0.033, 0.03);
        near(carried / oxygenRate(20, 12, 1), 0.0149, 0.0005);
    });
    it('a straight line in the flow of lye with a positive start; half the flow lowers it by 10 .. 45 % (Zhou et al. 2024)',
        () => {
        const s = solubility('hydrogen', 'KOH', 0.3, celsius(60));
        const d = diffusivity('hydrogen', 'KOH', 0.3, celsius(60));
        const oxygen = 0.02 * 3000 / (4 * 96485);
        const share = (flow: number): number => impurity(diffusionAcross(d, s, 0.88e5, 0.5e-3, 0.02) + mixingAcross(flow, s,
            0.88e5), oxygen);
        const full = share(1e-6);
        const half = share(0.5e-6);
        expect(share(0)).toBeGreaterThan(0);
        near(full - half, half - share(0), 1e-3 * full);
        expect(1 - half / full).toBeGreaterThan(0.10);
        expect(1 - half / full).toBeLessThan(0.45);
    });
    it('joined circuits: nearly all crossover is mixing (Trinke et al. 2018: nine tenths at 0.7 A/cm²)', () => {
        const s = solubility('hydrogen', 'KOH', 0.3, celsius(60));
        const d = diffusivity('hydrogen', 'KOH', 0.3, celsius(60));
        // 0.35 L/min through a cell of 150 cm².
        const mixed = mixingAcross(0.35e-3 / 60, s, 0.88e5);
        const all = mixed + diffusionAcross(d, s, 0.88e5, 0.5e-3, 0.015);
        expect(mixed / all).toBeGreaterThan(0.8);
    });
    it('pressed lye carries only downhill', () => {
        expect(pressedAcross(1e-6, 1e-6, 1e5)).toBeGreaterThan(0);
        expect(pressedAcross(-1e-6, 1e-6, 1e5)).toBe(0);
    });
    it('the purity of one measured stack (Sánchez et al. 2018); the expression is a fraction, its figure in per cent', () => {
        for (const [t, bar, row] of [
            [55, 7, [1.34, 0.95, 0.79, 0.70, 0.65]], [75, 7, [1.50, 1.15, 0.94, 0.82, 0.73]],
        ] as const) row.forEach((percent, i) => near(hydrogenInOxygenSanchez(1000 * (i + 1), celsius(t), bar * 1e5) * 100,
            percent, 0.006));
        for (const [bar, row] of [[5, [1.40, 0.98, NaN, 0.66]], [9, [1.50, 1.09, NaN, 0.78]]] as const) {
            row.forEach((percent, i) => {
                if (percent === percent) near(hydrogenInOxygenSanchez(1000 * (i + 1), celsius(65), bar * 1e5) * 100, percent,
                    0.006);
            });
        }
    });
});
