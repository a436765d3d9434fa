/**
 * Where a law holds, and how to tell that a number lies beyond. Laws never throw: the caller asks here and tells the user.
 */

/** Lowest and highest value between which a source vouches for its law. */
export type Bounds = readonly [low: number, high: number];

/** For each input of a law (by the name of its parameter) the bounds, in SI units. */
export type Range = Readonly<Record<string, Bounds>>;

/** One input that lies beyond the bounds of a law. */
export interface Beyond {
    /** Name of the input, as in the law's range. */
    readonly what: string;
    readonly value: number;
    readonly low: number;
    readonly high: number;
}

const NOTHING: readonly Beyond[] = Object.freeze([]);

/**
 * The inputs of a law that lie beyond its bounds.
 *
 * @param range  bounds of the law
 * @param given  the inputs by name, SI units; names that the range does not list are ignored, and so is NaN (unknown)
 * @returns each input beyond its bounds; the same empty list every time when all is well (bounds themselves are inside)
 */
export function outside(range: Range, given: Readonly<Record<string, number | undefined>>): readonly Beyond[] {
    let found: Beyond[] | undefined;
    for (const what in range) {
        const value = given[what];
        if (value === undefined) continue;
        const [low, high] = range[what]!;
        if (value < low || value > high) (found ??= []).push({ what, value, low, high });
    }
    return found ?? NOTHING;
}

/**
 * Whether one value lies within its bounds (bounds included). NaN is not within.
 *
 * @param bounds  lowest and highest value
 * @param value   the value, same unit
 */
export function within(bounds: Bounds, value: number): boolean {
    return value >= bounds[0] && value <= bounds[1];
}

/**
 * The value itself, or the nearest bound. NaN stays NaN.
 *
 * @param bounds  lowest and highest value
 * @param value   the value, same unit
 */
export function clamp(bounds: Bounds, value: number): number {
    return value < bounds[0] ? bounds[0] : value > bounds[1] ? bounds[1] : value;
}
