import { describe, expect, it } from 'vitest';
import {
    compressibility, hydrogenHeatCapacity, hydrogenMoles, hydrogenPressure, idealHeatCapacity,
} from '../../language/physics/hydrogen.js';
import { nearly } from './near.js';

describe('density equation', () => {
    it('pressure is the inverse, and no pressure is ideal', () => {
        for (const p of [1e5, 20e5, 350e5]) nearly(hydrogenPressure(0.027, 300, hydrogenMoles(0.027, 300, p)), p, 1e-8);
        expect(compressibility(300, 0)).toBe(1);
        expect(compressibility(300, 1e7)).toBeGreaterThan(compressibility(300, 1e6));
    });
});

describe('heat', () => {
    it('thin gas has the ideal heat capacity', () => {
        nearly(hydrogenHeatCapacity(300, 1), idealHeatCapacity(300), 1e-6);
        expect(hydrogenHeatCapacity(300, 100e5)).toBeGreaterThan(idealHeatCapacity(300));
    });
});
