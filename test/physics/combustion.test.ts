import { describe, expect, it } from 'vitest';
import {
    bleedTime, chargeEnergy, closedVesselRatio, detonableRange, flammableRange, LEAST_SPARK, recombinerRise,
} from '../../language/physics/combustion.js';
import { near, nearly } from './near.js';

describe('limits', () => {
    it('what can detonate can burn', () => {
        expect(detonableRange.air[0]).toBeGreaterThan(flammableRange.air[0]);
        expect(detonableRange.air[1]).toBeLessThan(flammableRange.air[1]);
    });
    it('a person of 20 pF at 1.5 kV can light it', () => expect(chargeEnergy(20e-12, 1500)).toBeGreaterThan(LEAST_SPARK));
});

describe('energy', () => {
    it('a recombiner warms hydrogen by 160 .. 167 K for each per cent of oxygen', () => {
        expect(recombinerRise(0.01)).toBeGreaterThan(160);
        expect(recombinerRise(0.01)).toBeLessThan(167);
    });
    it('closed vessels: about 8 in air, 9.6 in oxygen at best (from memory); 1 where nothing burns', () => {
        nearly(closedVesselRatio(0.296, 'air'), 8.0, 0.1);
        nearly(closedVesselRatio(2 / 3, 'oxygen'), 9.6, 0.1);
        expect(closedVesselRatio(0.03, 'air')).toBe(1);
        expect(closedVesselRatio(0.8, 'air')).toBe(1);
        expect(closedVesselRatio(0.8, 'oxygen')).toBeGreaterThan(5);
    });
    it('a capacitor: 0.10 F at 34 V holds 58 J; 470 Ω bring it under 1 J in 95 s', () => {
        near(chargeEnergy(0.1, 34), 57.8, 0.1);
        near(bleedTime(0.1, 470, 34, Math.sqrt(20)), 95, 1);
        expect(bleedTime(0.1, 470, 4, 5)).toBe(0);
    });
});
