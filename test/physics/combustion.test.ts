import { describe, expect, it } from 'vitest';
import {
    bleedTime, chargeEnergy, closedVesselRatio, detonableRange, flammableRange, heatOfCombustion, LEAST_SPARK, recombinerRise,
        tntMass,
} from '../../language/physics/combustion.js';
import { near, nearly } from './near.js';

const perNormal = 1 / 22.413969e-3;

describe('limits', () => {
    it('4 .. 75 % in air, 4 .. 94 % in oxygen (several pages; oxygen from memory)', () => {
        near(flammableRange.air[0], 0.04, 1e-12);
        near(flammableRange.air[1], 0.75, 0.005);
        near(flammableRange.oxygen[1], 0.945, 0.01);
        // What is left of air at the rich limit: 5.24 % of oxygen, the least that lets anything burn.
        near((1 - flammableRange.air[1]) * 0.2095, 0.0524, 1e-4);
        expect(detonableRange.air[0]).toBeGreaterThan(flammableRange.air[0]);
        expect(detonableRange.air[1]).toBeLessThan(flammableRange.air[1]);
    });
    it('least spark 0.017 .. 0.02 mJ; 20 pF at 1.5 kV is above it', () => {
        near(LEAST_SPARK * 1e3, 0.0185, 0.002);
        expect(chargeEnergy(20e-12, 1500)).toBeGreaterThan(LEAST_SPARK);
    });
});

describe('energy', () => {
    it('of a normal cubic metre (CODATA heats): 10.79 and 12.75 MJ, of 2:1 mixture 7.19 MJ, 2.58 kg of TNT', () => {
        nearly(heatOfCombustion(perNormal, 'lower') / 1e6, 10.79, 1e-3);
        nearly(heatOfCombustion(perNormal, 'higher') / 1e6, 12.75, 1e-3);
        nearly(heatOfCombustion(perNormal * 2 / 3, 'lower') / 1e6, 7.19, 1e-3);
        nearly(tntMass(heatOfCombustion(perNormal, 'lower')), 2.58, 1e-3);
    });
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
