import { describe, expect, it } from 'vitest';
import { clamp, outside, within } from '../../language/physics/range.js';

const range = { temperature: [273, 373], strength: [0, 0.5] } as const;

describe('range', () => {
    it('names what lies beyond, with the bounds', () => {
        expect(outside(range, { temperature: 400, strength: 0.2 })).toEqual([{ what: 'temperature', value: 400, low: 273,
            high: 373 }]);
        expect(outside(range, { temperature: 200, strength: 0.6 }).map(b => b.what)).toEqual(['temperature', 'strength']);
    });
    it('counts the bounds themselves as inside, and ignores what is unknown or not listed', () => {
        expect(outside(range, { temperature: 273, strength: 0.5 })).toEqual([]);
        expect(outside(range, { temperature: NaN, pressure: 1e9 })).toEqual([]);
        expect(outside(range, { temperature: undefined })).toEqual([]);
    });
    it('within and clamp agree with it', () => {
        expect(within(range.strength, 0.5)).toBe(true);
        expect(within(range.strength, 0.51)).toBe(false);
        expect(within(range.strength, NaN)).toBe(false);
        expect(clamp(range.strength, 0.7)).toBe(0.5);
        expect(clamp(range.strength, -1)).toBe(0);
        expect(clamp(range.strength, NaN)).toBeNaN();
    });
});
