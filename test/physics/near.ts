import { expect } from 'vitest';

/** The value lies within an absolute distance of what is expected. NaN never does. */
export function near(actual: number, expected: number, tolerance: number, what = ''): void {
    expect(Math.abs(actual - expected), `${what} ${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** The value lies within a relative distance of what is expected. NaN never does. */
export function nearly(actual: number, expected: number, relative: number, what = ''): void {
    near(actual, expected, Math.abs(expected) * relative, what);
}

/** Degrees Celsius as kelvin. */
export function celsius(t: number): number {
    return t + 273.15;
}
