import { describe, expect, it } from 'vitest';
import { permeationFlow, permeationWarmth } from '../../language/physics/permeation.js';
import { celsius, nearly } from './near.js';

describe('permeation', () => {
    it('is as at its own temperature there', () => nearly(permeationWarmth(celsius(30), celsius(30)), 1, 1e-12));
    it('consistency, no outside number: twice the area, half the film and half the pressure give twice the flow; none uphill of nothing', () => {
        nearly(permeationFlow(1e-15, 2, 50e-6, 5e4), 2 * permeationFlow(1e-15, 1, 100e-6, 1e5), 1e-12);
        expect(permeationFlow(1e-15, 1, 1e-4, 0)).toBe(0);
        expect(permeationFlow(1e-15, 1, 1e-4, -1e5)).toBeLessThan(0);
    });
});
