import { describe, expect, it } from 'vitest';
import {
    capacitorCurrent, capacitorRipple, continuousCurrent, currentSourceMeetsStack, curveCurrent, droop, formFactors,
    leadAcidRestVolts, loadedVolts, operatingCurrent, pulsedCurrent, rectifiedVolts, solarCurrent,
} from '../../language/physics/supply.js';
import { near, nearly } from './near.js';

describe('lines and limits', () => {
    it('droop from two readings', () => {
        nearly(droop(30, 0, 27, 20), 0.15, 1e-12);
        nearly(loadedVolts(30, 0.15, 20), 27, 1e-12);
    });
    it('where two straight lines cross', () => {
        // 30 - 0.1 I = 18 + 0.3 I at 30 A.
        nearly(operatingCurrent(i => 30 - 0.1 * i, i => 18 + 0.3 * i, 100), 30, 1e-9);
        nearly(operatingCurrent(i => 30 - 0.1 * i, i => 18 + 0.3 * i, Infinity), 30, 1e-7);
    });
    it('a limit bites, and a source that is too low gives nothing', () => {
        expect(operatingCurrent(() => 30, i => 18 + 0.3 * i, 20)).toBe(20);
        expect(operatingCurrent(i => 15 - 0.1 * i, i => 18 + 0.3 * i, 20)).toBe(0);
        expect(operatingCurrent(() => NaN, i => 18 + 0.3 * i, 20)).toBeNaN();
        expect(operatingCurrent(() => 20, i => 18 + i, NaN)).toBeNaN();
    });
    it('a stack curve that starts steeply', () => {
        const stack = (i: number): number => 12 * (1.2 + 0.05 * Math.asinh(i / 1e-3) + 0.01 * i);
        const i = operatingCurrent(a => 24 - 0.1 * a, stack, 50);
        nearly(24 - 0.1 * i, stack(i), 1e-7);
    });
});

describe('transformer and rectifier (textbook averages)', () => {
    it('a winding below its diodes gives nothing', () => expect(rectifiedVolts('bridge', 1, 0.7)).toBe(0));
    it('ripple by the straight-line rule is more than a simulation with real diodes gives (ngspice, 20 V, 10 mF, 5 A)', () => {
        expect(capacitorRipple(5, 50, 10e-3)).toBeGreaterThan(26.34 - 22.43);
    });
    it('no current in a capacitor behind a smooth one', () => expect(capacitorCurrent(10, 20)).toBe(0));
    it('pulses into a clamp: against a sum over the wave', () => {
        for (const [crest, clamp, ohms] of [[34, 25, 0.3], [20, 0, 1], [30, 29, 0.1]] as const) {
            const n = 200000;
            let mean = 0;
            let square = 0;
            let on = 0;
            for (let k = 0; k < n; k++) {
                const i = Math.max(0, crest * Math.sin(Math.PI * (k + 0.5) / n) - clamp) / ohms;
                mean += i / n;
                square += i * i / n;
                if (i > 0) on += 1 / n;
            }
            const pulsed = pulsedCurrent(crest, clamp, ohms);
            nearly(pulsed.mean, mean, 1e-6);
            nearly(pulsed.rms, Math.sqrt(square), 1e-6);
            near(pulsed.conducting, on, 1e-4);
        }
        // No clamp: the plain wave.
        nearly(pulsedCurrent(10, 0, 1).mean, 20 / Math.PI, 1e-12);
        nearly(pulsedCurrent(10, 0, 1).rms / pulsedCurrent(10, 0, 1).mean, formFactors.bridge, 1e-12);
        expect(pulsedCurrent(10, 12, 1)).toEqual({ mean: 0, rms: 0, conducting: 0 });
        expect(pulsedCurrent(NaN, 12, 1).mean).toBeNaN();
    });
    it('short duty as steady current', () => {
        near(continuousCurrent(80, 0.2), 35.8, 0.05);
    });
});

describe('battery', () => {
    it('rest volts: for twelve cells twice, and no more than full', () => {
        near(leadAcidRestVolts(0.5, 12), 2 * leadAcidRestVolts(0.5), 1e-12);
        expect(leadAcidRestVolts(1.5)).toBe(leadAcidRestVolts(1));
    });
});

describe('solar module', () => {
    it('a module gives less in less light and when warm', () => {
        const sheet = { shortCircuit: 1.0317, openCircuit: 16.778, bestCurrent: 0.9255, bestVolts: 12.4929, currentGrowth: 0.0005, voltsGrowth: -0.0031 };
        near(solarCurrent(sheet, 16.778, 1000, 298.15), 0, 0.01);
        near(solarCurrent(sheet, 0, 1000, 298.15), 1.0317, 1e-3);
        expect(solarCurrent(sheet, 12, 500, 298.15)).toBeLessThan(0.55);
        expect(solarCurrent(sheet, 12, 0, 298.15)).toBe(0);
        expect(solarCurrent(sheet, 12, 1000, 330)).toBeLessThan(solarCurrent(sheet, 12, 1000, 298.15));
    });
    it('a stack of too many cells draws nothing', () => {
        expect(currentSourceMeetsStack(u => curveCurrent([0, 10, 16], [1, 1, 0], u), a => 30 + a, 1.03)).toBe(0);
    });
});
