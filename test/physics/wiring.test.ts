import { describe, expect, it } from 'vitest';
import {
    COPPER, copperResistance, copperResistivity, endPlateDrop, gaugeArea, parallelShare, RESISTIVITY, roughAmpacity,
        sheetResistance,
    standardAreas, standardResistance, studDrop, withstand,
} from '../../language/physics/wiring.js';
import { celsius, near, nearly } from './near.js';

describe('conductors', () => {
    it('largest resistance of plain copper at 20 °C (IEC 60228, class 2 and class 5)', () => {
        const sizes = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50];
        const stranded = [12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387];
        const flexible = [13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386];
        sizes.forEach((size, i) => {
            nearly(standardResistance(size * 1e-6, 'stranded') * 1e3, stranded[i]!, 1e-9);
            nearly(standardResistance(size * 1e-6, 'flexible') * 1e3, flexible[i]!, 1e-9);
        });
        expect(standardResistance(3e-6, 'stranded')).toBeNaN();
        // The table is the most a conductor may have: ideal copper of that size has less, except the finest sizes by rounding.
        for (const area of standardAreas) {
            expect(standardResistance(area, 'stranded')).toBeGreaterThan(0.97 * copperResistance(area, 1, 293.15));
        }
    });
    it('annealed copper (IEC 60028)', () => {
        nearly(COPPER.resistivity, 0.0172414e-6, 1e-5);
        nearly(copperResistivity(celsius(70)) / copperResistivity(celsius(20)), 1.1965, 1e-4);
        nearly(copperResistance(25e-6, 1000, celsius(20)), 0.6897, 1e-4);
    });
    it('American gauges (ASTM B258 diameters: 10 AWG 5.261 mm², 4 AWG 21.15 mm², 4/0 107.2 mm²)', () => {
        for (const [gauge, size] of [[10, 5.261], [12, 3.309], [4, 21.15], [0, 53.48], [-3, 107.2]] as const) {
            nearly(gaugeArea(gauge) * 1e6, size, 1e-3);
        }
    });
    it('2 × 3 m of 2.5 mm² at 20 A and 50 °C drop about 0.93 V', () => {
        nearly(copperResistance(2.5e-6, 6, celsius(50)) * 20, 0.93, 0.01);
    });
    it('rough ampacity: 4 .. 6 A/mm² for small sizes, 2 .. 3 at 25 .. 50 mm² (IEC 60364-5-52, from memory)', () => {
        for (const size of [1.5, 2.5, 4]) {
            expect(roughAmpacity(size * 1e-6) / size).toBeGreaterThanOrEqual(4);
            expect(roughAmpacity(size * 1e-6) / size).toBeLessThanOrEqual(6);
        }
        for (const size of [25, 35, 50]) {
            expect(roughAmpacity(size * 1e-6) / size).toBeGreaterThanOrEqual(2);
            expect(roughAmpacity(size * 1e-6) / size).toBeLessThanOrEqual(3);
        }
        for (let size = 0.5; size < 50; size += 0.5) {
            expect(roughAmpacity((size + 0.5) * 1e-6)).toBeGreaterThan(roughAmpacity(size * 1e-6));
        }
    });
    it('adiabatic withstand (IEC 60364-4-43)', () => {
        for (const [k, size, energy] of [[115, 2.5, 82656], [143, 2.5, 127806], [115, 25,
            8.266e6]] as const) nearly(withstand(size * 1e-6, k), energy, 1e-4);
    });
});

describe('plates', () => {
    it('stainless sheet (data sheets, ± 3 %)', () => {
        nearly(RESISTIVITY['stainless-304'], 0.72e-6, 0.03);
        nearly(RESISTIVITY['stainless-316'], 0.74e-6, 0.03);
        nearly(sheetResistance(RESISTIVITY['stainless-316'], 1e-3), 0.74e-3, 0.03);
    });
    it('100 A into one stud of a 1 mm end plate 100 × 150 mm: about 55 mV along it and 25 mV round the stud', () => {
        near(endPlateDrop(100, RESISTIVITY['stainless-316'], 0.15, 0.1, 1e-3) * 1e3, 55.5, 1);
        near(studDrop(100, RESISTIVITY['stainless-316'], 1e-3, 0.012, 0.1) * 1e3, 25, 3);
        expect(studDrop(100, 1e-6, 1e-3, 0.1, 0.05)).toBe(0);
    });
    it('two parallel stacks share by their resistances', () => {
        expect(parallelShare(1, 1)).toBe(0.5);
        nearly(parallelShare(1, 3), 0.75, 1e-12);
    });
});
