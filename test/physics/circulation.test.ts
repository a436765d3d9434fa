import { describe, expect, it } from 'vitest';
import {
    circuitDrop, circuitFlow, fineBubbleRise, gasFraction, riserDrive, slugDrift,
} from '../../language/physics/circulation.js';
import { tubeDrop } from '../../language/physics/flow.js';
import { near, nearly } from './near.js';

describe('gas in rising liquid', () => {
    it('no gas, no share', () => expect(gasFraction(0, 0.1, 1.2, 0.2)).toBe(0));
    it('drift of long bubbles: 0.35·√(g·bore)', () => {
        near(slugDrift(0.0254), 0.1747, 1e-4);
    });
});

describe('fine bubbles', () => {
    // Stokes by hand for water of 20 °C: 998.2 · 9.80665 · 1e-8 / (18 · 1.0016e-3).
    it('0.1 mm in water rises 5.4 mm/s, twice as wide four times as fast', () => {
        near(fineBubbleRise(1e-4, 998.2, 1.0016e-3), 5.43e-3, 1e-5);
        nearly(fineBubbleRise(2e-4, 998.2, 1.0016e-3), 4 * fineBubbleRise(1e-4, 998.2, 1.0016e-3), 1e-12);
    });
});

describe('circuits', () => {
    it('passages add up, side by side they share', () => {
        const one = { bore: 0.008, length: 1, parallel: 1, fittings: 1 };
        const four = { ...one, parallel: 4 };
        nearly(circuitDrop(1e-5, [one, four], 1200, 1e-3), tubeDrop(1e-5, 0.008, 1, 1200, 1e-3, 1) + tubeDrop(2.5e-6, 0.008,
            1, 1200, 1e-3, 1), 1e-12);
        const flow = circuitFlow(q => 500 - 1e6 * q, q => circuitDrop(q, [one], 1200, 1e-3), 1e-3);
        nearly(500 - 1e6 * flow, circuitDrop(flow, [one], 1200, 1e-3), 1e-4);
        expect(circuitFlow(() => -1, () => 0, 1)).toBe(0);
        expect(circuitFlow(() => 1, () => 0, 1)).toBe(1);
        expect(circuitFlow(() => NaN, () => 0, 1)).toBeNaN();
    });
});

describe('risers', () => {
    it('drive falls with flow', () => {
        const riser = { bore: 0.02, height: 0.5, submergence: 0.5, density: 1280, viscosity: 1e-3, drift: 0.1, fittings: 1 };
        let before = Infinity;
        for (let q = 0; q < 3e-4; q += 1e-5) {
            const drive = riserDrive(riser, 5e-5, q);
            expect(drive).toBeLessThan(before);
            before = drive;
        }
    });
});
