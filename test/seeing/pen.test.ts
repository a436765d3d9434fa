/** How labels make room for each other, how wide text is taken to be, and where ticks stand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lanes, spread } from '../../language/seeing/plots/pen.js';
import { scaleOf } from '../../language/seeing/plots/scale.js';
import { fitted, widthOf, wrapped } from '../../language/seeing/plots/text-width.js';

describe('labels', () => {
    const wants = fc.array(fc.record({ at: fc.double({ min: 0, max: 300, noNaN: true }), height: fc.constantFrom(14, 28) }), { minLength: 1, maxLength: 9 });
    it('never lie one over the other, keep their order, and stay within if there is room', () => {
        fc.assert(fc.property(wants, all => {
            const places = spread(all, 0, 300);
            const order = all.map((_, i) => i).sort((a, b) => places[a] - places[b]);
            for (let k = 1; k < order.length; k++) {
                const [a, b] = [order[k - 1], order[k]];
                expect(places[b] - places[a]).toBeGreaterThanOrEqual((all[a].height + all[b].height) / 2 - 1e-6);
                expect(all[a].at).toBeLessThanOrEqual(all[b].at);
            }
            for (const [i, w] of all.entries()) {
                expect(places[i] - w.height / 2).toBeGreaterThanOrEqual(-1e-6);
                expect(places[i] + w.height / 2).toBeLessThanOrEqual(300 + 1e-6);
            }
        }));
    });
    it('stay where they want to be if nothing is near', () => {
        expect(spread([{ at: 200, height: 14 }, { at: 50, height: 14 }], 0, 300)).toEqual([200, 50]);
    });
    it('above a picture go to another lane where they would meet', () => {
        expect(lanes([{ left: 0, right: 10 }, { left: 5, right: 15 }, { left: 12, right: 20 }])).toEqual([0, 1, 0]);
    });
});
describe('text', () => {
    it('is cut or broken to its room', () => {
        fc.assert(fc.property(fc.string({ maxLength: 120 }), fc.integer({ min: 30, max: 300 }), (text, room) => {
            expect(widthOf(fitted(text, 11, room), 11)).toBeLessThanOrEqual(room + 1e-9);
            for (const line of wrapped(text, 11, room)) expect(widthOf(line, 11)).toBeLessThanOrEqual(room + 1e-9);
        }));
    });
    it('keeps a number with its unit', () => {
        expect(wrapped('bag-high trips above 101 L', 11, widthOf('bag-high trips above 101', 11))).toEqual(['bag-high trips above', '101 L']);
    });
});
describe('scales', () => {
    it('hold all values, with ticks at round numbers within', () => {
        fc.assert(fc.property(fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 20 }), values => {
            const s = scaleOf({ name: '', unit: '' }, values, 0, 500, 6);
            for (const v of values) {
                expect(s.at(v)).toBeGreaterThanOrEqual(-1e-6);
                expect(s.at(v)).toBeLessThanOrEqual(500 + 1e-6);
            }
            expect(s.ticks.length).toBeGreaterThan(1);
            for (const t of s.ticks) expect(t.label.length).toBeLessThan(10);
        }));
    });
    it('by factors, by the clock and by counting', () => {
        const log = scaleOf({ name: '', unit: '', scale: 'log' }, [0.01, 4], 100, 0, 5);
        expect(log.ticks.map(t => t.label)).toEqual(['0.01', '0.03', '0.1', '0.3', '1', '3']);
        expect(log.at(0.2) - log.at(0.4)).toBeCloseTo(log.at(1) - log.at(2), 9);
        const clock = scaleOf({ name: '', unit: '', scale: 'clock' }, [8, 32], 0, 100, 7);
        expect(clock.ticks.map(t => t.label)).toEqual(['08:00', '12:00', '16:00', '20:00', '00:00', '04:00', '08:00']);
        expect(scaleOf({ name: '', unit: '', scale: 'counted' }, [1, 2, 3], 0, 100, 7).ticks.map(t => t.at)).toEqual([1, 2, 3]);
        expect(scaleOf({ name: '', unit: '', scale: 'counted' }, [1, 401], 0, 100, 7).ticks.map(t => t.at)).toEqual([1, 50, 100, 150, 200, 250, 300, 350, 401]);
    });
});
