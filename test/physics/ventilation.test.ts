import { describe, expect, it } from 'vitest';
import {
    oxygenClock, passiveFlow, releasedFraction, roomClock, selfVentedFraction, seriesOpening, steadyFraction,
    steadyOxygen, thinningTime,
} from '../../language/physics/ventilation.js';
import { near, nearly } from './near.js';

describe('dilution', () => {
    it('no leak, no share; no air, all', () => {
        expect(steadyFraction(0, 5)).toBe(0);
        expect(steadyFraction(1, 0)).toBe(1);
    });
    it('what is thin enough needs no time', () => expect(thinningTime(0.01, 0.04, 1)).toBe(0));
    it('a tight room of 20 m³ and 108 L/h: 1 % in 1.86 h', () => {
        // 1 h 51 min: volume times 0.01 over the leak, and a little more as mixture is pushed out.
        near(roomClock(20, 0.108 / 3600, 0.01) / 3600, 1.86, 0.01);
        expect(roomClock(20, 0.108 / 3600, 0.01)).toBeGreaterThan(20 * 0.01 / 0.108 * 3600);
    });
    it('with air it comes later, or never', () => {
        expect(roomClock(20, 0.1, 0.01, 5)).toBeGreaterThan(roomClock(20, 0.1, 0.01));
        expect(roomClock(20, 0.1, 0.01, 9.9)).toBe(Infinity);
        expect(roomClock(20, 0, 0.01)).toBe(Infinity);
        // Halfway to the end after ln 2 of the exchange time.
        nearly(roomClock(20, 0.1, 0.005, 9.9), 20 / 10 * Math.LN2, 1e-9);
    });
    it('oxygen', () => {
        nearly(steadyOxygen(0, 1), 0.2095, 1e-12);
        nearly(steadyOxygen(1, 0), 1, 1e-12);
        expect(oxygenClock(20, 0.05, 0.235, 1000)).toBe(Infinity);
        expect(oxygenClock(20, 0.05, 0.2, 0)).toBe(0);
        // Tight room: nitrogen thins as exp(-q t/V).
        const time = oxygenClock(20, 0.05, 0.235, 0);
        nearly(1 - 0.7905 * Math.exp(-0.05 * time / 20), 0.235, 1e-9);
    });
    it('a release at once', () => {
        nearly(releasedFraction(0.3, 29.7), 0.01, 1e-12);
    });
});

describe('openings', () => {
    it('two in a row are as one of 1/√2 of their size', () => {
        nearly(seriesOpening(0.06, 0.06), 0.06 / Math.SQRT2, 1e-12);
        expect(seriesOpening(0, 1)).toBe(0);
    });
    it('warmth drives air as the textbook stack formula says', () => {
        // Small difference: Cd·A·√(2 g h ΔT/T).
        nearly(passiveFlow(0.06, 0.06, 2, 298.15, 293.15), 0.6 * 0.06 / Math.SQRT2 * Math.sqrt(2 * 9.80665 * 2 * 5 / 298.15),
            1e-3);
        expect(passiveFlow(0.06, 0.06, 2, 293.15, 298.15)).toBe(0);
        expect(passiveFlow(0.06, 0.06, 2, 293.15, 293.15, 0.01)).toBeGreaterThan(0);
    });
    it('an escape that vents itself settles where its own lift carries it off', () => {
        const leak = 0.108 / 3600;
        const share = selfVentedFraction(leak, 0.03, 0.03, 2);
        nearly(passiveFlow(0.03, 0.03, 2, 293.15, 293.15, share) * share, leak, 0.01);
        expect(selfVentedFraction(leak, 0.06, 0.06, 2)).toBeLessThan(share);
        expect(selfVentedFraction(leak, 0, 0.06, 2)).toBe(1);
        expect(selfVentedFraction(0, 0.06, 0.06, 2)).toBe(0);
    });
});
