import { describe, expect, it } from 'vitest';
import { capacitorRipple, ironPhosphateRestVolts, leadAcidTime, smoothedWave } from '../../language/physics/supply.js';
import { near, nearly } from './near.js';

describe('a capacitor behind a rectifier', () => {
    it('swings less than the straight-line rule tells', () => {
        const wave = smoothedWave(20, 50, 0.01, 5, 2.1, 0.02);
        expect(wave.most - wave.least).toBeLessThan(capacitorRipple(5, 50, 0.01));
    });
    it('keeps the crest where nothing is drawn, and its charge adds up where something is', () => {
        nearly(smoothedWave(20, 50, 0.01, 0, 1.8, 0.05).least, 20 * Math.SQRT2 - 1.8, 1e-3);
        // All direct current comes through the winding: its RMS is above its mean.
        expect(smoothedWave(20, 50, 0.01, 5, 1.8, 0.05).winding).toBeGreaterThan(5);
        expect(smoothedWave(20, 50, 0.01, 5, 1.8, 0.05, 1).least).toBeLessThan(smoothedWave(20, 50, 0.01, 5, 1.8, 0.05, 2).least - 2);
    });
});

describe('batteries', () => {
    it('lead-acid: rated over twenty hours, less at more current (Peukert)', () => {
        near(leadAcidTime(100 * 3600, 1, 5) / 3600, 20, 1e-9);
        // 100 Ah at 20 A: 5 h less a quarter, (5/20)^0.2 = 0.758.
        nearly(leadAcidTime(100 * 3600, 1, 20) / 3600, 5 * 0.7579, 1e-3);
        expect(leadAcidTime(100 * 3600, 1, 1) / 3600).toBe(100);
    });
    it('iron phosphate hardly tells its charge by its volts', () => {
        expect(ironPhosphateRestVolts(0.8, 16) - ironPhosphateRestVolts(0.2, 16)).toBeLessThan(1.5);
        expect(ironPhosphateRestVolts(0, 16)).toBeLessThan(ironPhosphateRestVolts(0.1, 16) - 5);
    });
});
