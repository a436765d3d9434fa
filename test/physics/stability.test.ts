/** Steady temperatures where heat grows with warmth: held against the textbook case of Semenov, which has closed answers. */
import { describe, expect, it } from 'vitest';
import { firstSteady, steadyMargin, tippingPoint } from '../../language/physics/heat.js';
import { findRoot } from '../../language/physics/root.js';
import { near, nearly } from './near.js';

// Semenov 1928 (form from memory): heat a exp(b (T - room)), loss k (T - room). With psi = a b / k the steady rise x = b (T - room)
// obeys psi = x exp(-x): two answers below psi = 1/e, one at it (x = 1), none above.
const [b, k, room] = [0.05, 4, 300];
const gain = (psi: number) => (t: number) => psi * k / b * Math.exp(b * (t - room)) - k * (t - room);
const lower = (psi: number) => findRoot(x => x * Math.exp(-x) - psi, 0, 1, 1e-12);

describe('heat that grows with warmth', () => {
    it.each([0.1, 0.2, 0.3, 0.36])('settles at the lower of two temperatures, psi = %d', psi => {
        near(firstSteady(gain(psi), room, 400, 14, 1e-6), room + lower(psi) / b, 1e-4);
    });
    it('looks into a dip that its steps would miss', () => {
        // 0.36: the answers lie at 0.81 and 1.22, 8 K apart; steps of 14 K from 299 K on step over both.
        near(firstSteady(gain(0.36), 287, 400, 14, 1e-6), room + lower(0.36) / b, 1e-3);
    });
    it('has no steady temperature above 1/e, and stays at the room where nothing is made', () => {
        expect(firstSteady(gain(0.37), room, 400, 14, 1e-6)).toBe(Infinity);
        expect(firstSteady(t => -(t - room), room, 400, 14, 1e-6)).toBe(room);
        expect(firstSteady(() => NaN, room, 400, 14, 1e-6)).toBeNaN();
    });
    it('has a margin of 1 - x, which ends at the tangency', () => {
        for (const psi of [0.1, 0.2, 0.3]) {
            const x = lower(psi);
            nearly(steadyMargin(psi * k * Math.exp(x), k), 1 - x, 1e-6);
        }
        near(steadyMargin(k / Math.E * Math.E, k), 0, 1e-12);
        expect(steadyMargin(-3, k)).toBe(1);
    });
    it('tips where the room that a temperature asks for is warmest', () => {
        // Heat a exp(b (T - 300)) whatever the room: the room of T is T - (a/k) exp(b (T - 300)), warmest where a b / k exp(..) = 1.
        const a = 8;
        const tip = tippingPoint(t => t - a / k * Math.exp(b * (t - 300)), 283, 400, 4);
        near(tip.temperature, 300 + Math.log(k / (a * b)) / b, 0.3);
        near(tip.room, 300 + Math.log(k / (a * b)) / b - 1 / b, 0.05);
        expect(tippingPoint(t => t - 20, 283, 400, 4).room).toBeNaN();
    });
});
