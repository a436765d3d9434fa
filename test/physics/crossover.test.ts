import { describe, expect, it } from 'vitest';
import {
    diffusionAcross, diffusivity, hydrogenInOxygen, impurity, leastCurrentDensity, mixingAcross, pressedAcross,
    SHEET_OBSTRUCTION, solubility,
} from '../../language/physics/crossover.js';
import { oxygenRate } from '../../language/physics/water-splitting.js';
import { near, nearly } from './near.js';

describe('dissolved gas', () => {
    it('less in stronger lye; diffusion quicker when warm, slower in thick lye', () => {
        for (let w = 0.05; w <= 0.4; w += 0.05) {
            expect(solubility('oxygen', 'NaOH', w, 320)).toBeLessThan(solubility('oxygen', 'NaOH', w - 0.05, 320));
            expect(diffusivity('hydrogen', 'NaOH', w, 320)).toBeLessThan(diffusivity('hydrogen', 'NaOH', w - 0.05, 320));
        }
        expect(diffusivity('hydrogen', 'KOH', 0.3, 350)).toBeGreaterThan(diffusivity('hydrogen', 'KOH', 0.3, 300));
        // In water at 25 °C: 4.5 .. 5.1e-9 m²/s in the tables (from memory).
        nearly(diffusivity('hydrogen', 'KOH', 0, 298.15), 4.8e-9, 0.06);
    });
    it('diffusion through a sheet, by its obstruction', () => {
        nearly(diffusionAcross(6e-9, 1e-6, 1e5, 0.5e-3, 1, 1), 6e-9 / SHEET_OBSTRUCTION * 0.1 / 0.5e-3, 1e-12);
    });
});

describe('impurity', () => {
    it('least current for a share, and the ends', () => {
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
    it('pressed lye carries only downhill', () => {
        expect(pressedAcross(1e-6, 1e-6, 1e5)).toBeGreaterThan(0);
        expect(pressedAcross(-1e-6, 1e-6, 1e5)).toBe(0);
    });
});
