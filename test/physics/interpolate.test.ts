import { describe, expect, it } from 'vitest';
import { interpolate, interpolateSmooth, smoothSlopes } from '../../language/physics/interpolate.js';
import { findCrest, findRoot } from '../../language/physics/root.js';
import { near } from './near.js';

const xs = [0, 1, 3, 4, 7];
const ys = [0, 2, 3, 3, 10];

describe('reading a table', () => {
    it('hits the points, runs straight between them, never runs beyond', () => {
        xs.forEach((x, i) => expect(interpolate(xs, ys, x)).toBe(ys[i]));
        expect(interpolate(xs, ys, 2)).toBe(2.5);
        expect(interpolate(xs, ys, -5)).toBe(0);
        expect(interpolate(xs, ys, 50)).toBe(10);
        expect(interpolate(xs, ys, NaN)).toBeNaN();
    });
    it('smoothly: hits the points and never swings', () => {
        const slopes = smoothSlopes(xs, ys);
        xs.forEach((x, i) => near(interpolateSmooth(xs, ys, slopes, x), ys[i]!, 1e-12));
        let before = -1;
        for (let x = 0; x <= 7; x += 0.01) {
            const y = interpolateSmooth(xs, ys, slopes, x);
            expect(y).toBeGreaterThanOrEqual(before - 1e-12);
            before = y;
        }
        for (let x = 3; x <= 4; x += 0.1) near(interpolateSmooth(xs, ys, slopes, x), 3, 1e-12);
        expect(interpolateSmooth(xs, ys, slopes, NaN)).toBeNaN();
    });
});

describe('roots and crests', () => {
    it('finds crossings of mild and of nasty functions', () => {
        near(findRoot(x => x * x - 2, 0, 2, 1e-12), Math.SQRT2, 1e-11);
        near(findRoot(x => 2 - x * x, 2, 0, 1e-12), Math.SQRT2, 1e-11);
        near(findRoot(x => Math.tanh(1e4 * (x - 0.3)), 0, 1, 1e-10), 0.3, 1e-9);
        near(findRoot(x => x ** 9 - 1e-9, 0, 10, 1e-10), 0.1, 1e-8);
        near(findRoot(x => Math.exp(x) - 1e6, -50, 50, 1e-10), Math.log(1e6), 1e-9);
        expect(findRoot(x => x, 0, 5, 1e-9)).toBe(0);
    });
    it('says when there is none', () => {
        expect(findRoot(x => x * x + 1, -1, 1, 1e-9)).toBeNaN();
        expect(findRoot(() => NaN, -1, 1, 1e-9)).toBeNaN();
    });
    it('finds the top', () => {
        near(findCrest(x => -((x - 0.37) ** 2), 0, 1, 1e-8), 0.37, 1e-7);
    });
});
