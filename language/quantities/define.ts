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
    /** SI value; NaN if unknown. With bounds where the law or its inputs leave a spread. */
    readonly work: (q: View) => number | Spread;
}
/** A value with the bounds between which it lies with about 95 % confidence. */
export interface Spread {
    readonly value: number;
    readonly low?: number;
    readonly high?: number;
    /** Things to tell beside the number: a correlation used outside its range, a simplification that matters here. */
    readonly remarks?: readonly string[];
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
}

export function defineQuantity(q: Quantity): Quantity {
    return q;
}
export function defineModel<T>(m: Model<T>): Model<T> {
    return m;
}
