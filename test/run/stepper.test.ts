/** The stepper against closed forms, and against an integrator from a general library. */
import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { follow, type Slope, type Watched } from '../../language/run/stepper.js';

const accuracy = (n: number) => ({ relative: 1e-7, absolute: new Float64Array(n).fill(1e-9), longest: 1e9 });
const none = () => {};

describe('the stepper', () => {
    it('follows a decay to its closed form', () => {
        const slope: Slope = (_, x, out) => void (out[0] = -x[0] / 3600);
        const end = follow(slope, 0, 7200, Float64Array.of(50), [], accuracy(1), 10, none);
        expect(end.x[0]).toBeCloseTo(50 * Math.exp(-2), 6);
        expect(end.t).toBe(7200);
    });
    it('finds the first of several events, each at its moment', () => {
        const slope: Slope = (t, x, out) => {
            out[0] = x[1];
            out[1] = -x[0];
        };
        // A swing of height 1: 0.5 is reached at π/6, 0.9 later.
        const watched: Watched[] = [(_, x) => x[0] - 0.9, (_, x) => x[0] - 0.5];
        const end = follow(slope, 0, 10, Float64Array.of(0, 1), watched, accuracy(2), 0.01, none);
        expect(end.hit).toEqual([1]);
        expect(Math.abs(end.t - Math.PI / 6)).toBeLessThan(1.1e-3);
        const next = follow(slope, end.t, 10, end.x, watched, accuracy(2), 0.01, none);
        expect(next.hit).toEqual([0]);
        expect(Math.abs(next.t - Math.asin(0.9))).toBeLessThan(3e-3);
    });
    it('gives up on what has no end within the time, instead of hanging', () => {
        const end = follow((_, x, out) => void (out[0] = x[0] * x[0]), 0, 10, Float64Array.of(1), [], accuracy(1), 0.01, none);
        expect(end.stuck).toBe(true);
        expect(end.t).toBeLessThan(1.001);
    });
    it('agrees with an extrapolation method (odex) on warming with loss by the fourth power', () => {
        const heat = (T: number) => (120 - 0.9 * (T - 293) - 3e-9 * (T ** 4 - 293 ** 4)) / 30e3;
        const ours = follow((_, x, out) => void (out[0] = heat(x[0])), 0, 8 * 3600, Float64Array.of(293), [], accuracy(1), 10, none).x[0];
        const solver = new Solver(1);
        solver.absoluteTolerance = solver.relativeTolerance = 1e-10;
        expect(ours).toBeCloseTo(solver.solve((_t, y) => [heat(y[0])], 0, [293], 8 * 3600).y[0], 4);
    });
});
