/**
 * How a quantity is declared: name, meaning, unit, formula in words, source, range, and one function. One file per
 * phenomenon in `of/`, each exporting a list. Hover, hints, report, `expect` lines, comparison and rules read the same table.
 */
import type { MeasureName } from '../units/dimension.js';
import type { View } from './view.js';

export interface Quantity {
    /** As written after the point: `stack.volts-per-cell`. */
    readonly name: string;
    /** Kinds of part that it is a quantity of. */
    readonly of: string | readonly string[];
    readonly measure: MeasureName;
    /** Unit to show it in; the first of its measure if left out. */
    readonly unit?: string;
    /** One or two sentences: what the number is, with its reference state where it is a gas. */
    readonly meaning: string;
    /** The formula in words and symbols, so that a specialist can follow it. */
    readonly formula: string;
    /** Where law and constants come from; 'common practice, no source' or 'from memory' where that is so. */
    readonly source: string;
    /** Where it holds. */
    readonly range?: string;
    /** The property at whose line end the editor shows it; 'header' for the block's first line. */
    readonly shownAt?: string;
    /** A pressure that is counted from vacuum by its meaning; every other one is gauge. */
    readonly absolute?: boolean;
    /** A few words before the number in the hint; the name if left out. */
    readonly shownAs?: string;
    /** SI value; NaN if unknown. Its ± is not worked out here: it follows from tolerances, assumptions and {@link Doubt}s that it reads. */
    readonly work: (q: View) => number | Remarked;
}
/** A value with things to tell beside it: a correlation used outside its range, a simplification that matters here. */
export interface Remarked {
    readonly value: number;
    readonly remarks: readonly string[];
}
/**
 * What a law itself leaves open, as one number of which about 95 % of all cases lie within the half width. A law reads it by
 * `q.doubt(d)`, which is 0 when things are worked out as they are expected, and carries it into its result: as volts, as a factor
 * `1 + q.doubt(d)`, as a ratio `Math.exp(q.doubt(d))`.
 */
export interface Doubt {
    /** In a few words, as it stands in a list of what matters: 'surface of the electrodes'. */
    readonly name: string;
    /** Half width where it is always the same: V, K, or a share; natural logarithm of the factor for a ratio. */
    readonly half?: number;
    /** How the half width is told: '30 %', 'a factor of 3'; its own number with `unit` if left out. */
    readonly told?: string;
    /** Its law goes further one way than the other. */
    readonly uneven?: boolean;
    readonly unit?: string;
    /** It stands in the text: the tolerance of something that was read. */
    readonly stated?: boolean;
    readonly source: string;
}
/**
 * Something solved as a whole, of which quantities show the pieces: the operating point. Not shown by itself; its inputs
 * stand in the working of every quantity that reads it.
 */
export interface Model<T> {
    readonly name: string;
    readonly of: string;
    readonly meaning: string;
    readonly solve: (q: View) => T;
    /** Whether two solutions are equal in everything that can be read of them; the same object if left out. */
    same?(a: T, b: T): boolean;
}

export function defineQuantity(q: Quantity): Quantity {
    return q;
}
export function defineDoubt(d: Doubt): Doubt {
    return d;
}
export function defineModel<T>(m: Model<T>): Model<T> {
    return m;
}
