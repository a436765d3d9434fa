import { describe, expect, it } from 'vitest';
import {
    copperResistance, endPlateDrop, parallelShare, RESISTIVITY, roughAmpacity, standardAreas, standardResistance,
    studDrop,
} from '../../language/physics/wiring.js';
import { celsius, near, nearly } from './near.js';

describe('conductors', () => {
    it('the table is the most a conductor may have (IEC 60228): ideal copper of that size has less, except the finest by rounding', () => {
        expect(standardResistance(3e-6, 'stranded')).toBeNaN();
        for (const area of standardAreas) expect(standardResistance(area, 'stranded')).toBeGreaterThan(0.97 * copperResistance(area, 1, 293.15));
    });
    it('2 × 3 m of 2.5 mm² at 20 A and 50 °C drop about 0.93 V', () => {
        nearly(copperResistance(2.5e-6, 6, celsius(50)) * 20, 0.93, 0.01);
    });
    it('rough ampacity grows with the section', () => {
        for (let size = 0.5; size < 50; size += 0.5) expect(roughAmpacity((size + 0.5) * 1e-6)).toBeGreaterThan(roughAmpacity(size * 1e-6));
    });
});

describe('plates', () => {
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
