import { describe, expect, it } from 'vitest';
import {
    counterflowEffectiveness, counterflowHeat, meanDifference, nusseltTurbulentTube, parallelEffectiveness, radiation,
    steadyTemperature, surfaceLoss, tubeConductance,
} from '../../language/physics/heat.js';
import { celsius, near, nearly } from './near.js';

describe('still air', () => {
    it('no radiation between equals', () => expect(radiation(300, 300, 0.9)).toBe(0));
    it('loss is nothing at room temperature, odd around it, and grows', () => {
        near(surfaceLoss(293.15, 293.15, 1, 0.3, 0.9), 0, 1e-9);
        expect(surfaceLoss(283.15, 293.15, 1, 0.3, 0.9)).toBeLessThan(0);
        for (let t = 20; t < 90; t += 5) {
            expect(surfaceLoss(celsius(t + 5), 293.15, 1, 0.3, 0.9)).toBeGreaterThan(surfaceLoss(celsius(t), 293.15, 1, 0.3,
                0.9));
        }
    });
});

describe('coolers', () => {
    it('mean difference: equal ends, crossed ends', () => {
        expect(meanDifference(10, 10)).toBe(10);
        nearly(meanDifference(10, 10.0005), 10.00025, 1e-9);
        expect(meanDifference(10, -1)).toBeNaN();
        expect(meanDifference(10, 0)).toBe(0);
    });
    it('effectiveness at its ends', () => {
        near(parallelEffectiveness(50, 1), 0.5, 1e-6);
        expect(counterflowEffectiveness(0, 0.5)).toBe(0);
        near(counterflowEffectiveness(2, 0.9999989), counterflowEffectiveness(2, 1), 1e-5);
        expect(counterflowHeat(10, 10, 10, 290, 300)).toBe(0);
    });
    it('turbulent tube: cooling less than heating, unknown where laminar', () => {
        expect(nusseltTurbulentTube(1e4, 5, false)).toBeLessThan(nusseltTurbulentTube(1e4, 5, true));
        expect(nusseltTurbulentTube(2000, 5, true)).toBeNaN();
    });
    it('a thin wall is a flat one: conductivity x area / thickness, 1 mm on a mean diameter of 501 mm', () => {
        nearly(tubeConductance(1e12, 1e12, 0.5, 0.502, 20, 1), 20 * Math.PI * 0.501 / 1e-3, 1e-5);
    });
});

describe('steady heat', () => {
    it('steady temperature balances heat and loss', () => {
        const heat = (t: number): number => 150 - 0.5 * (t - 293.15);
        const loss = (t: number): number => surfaceLoss(t, 293.15, 0.6, 0.3, 0.9);
        const t = steadyTemperature(heat, loss, 293.15, 400);
        near(heat(t), loss(t), 1e-3);
        expect(steadyTemperature(() => 0, loss, 293.15, 400)).toBe(293.15);
        expect(steadyTemperature(() => 1e6, loss, 293.15, 400)).toBe(400);
        expect(steadyTemperature(() => NaN, loss, 293.15, 400)).toBeNaN();
    });
});
