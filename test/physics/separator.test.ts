import { describe, expect, it } from 'vitest';
import {
    bubblePoint, bubblePointByStandardTest, clampedEdge, largestPore, permeability, seepage,
} from '../../language/physics/separator.js';
import { waterSurfaceTension } from '../../language/physics/water.js';
import { celsius, near, nearly } from './near.js';

describe('bubble point', () => {
    const skin = waterSurfaceTension(celsius(25));
    it('pore and pressure are each other\'s inverse', () => {
        for (const d of [1e-6, 1e-5, 1e-4]) nearly(largestPore(skin, 0, bubblePoint(skin, 0, d)), d, 1e-12);
    });
    it('the standard test finds a smaller pore by a fixed factor', () => {
        near(bubblePointByStandardTest(skin, 10e-6) / bubblePoint(skin, 0, 10e-6), 0.715, 1e-12);
    });
    it('a sheet that does not wet holds nothing', () => {
        expect(bubblePoint(0.07, Math.PI / 2 + 0.1, 1e-6)).toBe(0);
        near(bubblePoint(0.07, Math.PI / 3, 1e-6), 0.5 * bubblePoint(0.07, 0, 1e-6), 1e-6);
    });
});

describe('edges and seepage', () => {
    it('a sheet smaller than its window leaves a slot', () => {
        nearly(clampedEdge(0.155, 0.160), -0.0025, 1e-9);
        nearly(clampedEdge(0.170, 0.160), 0.005, 1e-9);
    });
    it('straight pores are Hagen-Poiseuille', () => {
        // One pore of 1 mm through 1 mm in a face of its own size.
        const k = permeability(1, 1e-3, 1);
        const area = Math.PI * 0.25e-6;
        nearly(seepage(k, area, 1e-3, 10, 1e-3), Math.PI * 1e-12 * 10 / (128 * 1e-3 * 1e-3), 1e-9);
        expect(seepage(k, area, 1e-3, -10, 1e-3)).toBeLessThan(0);
    });
});
