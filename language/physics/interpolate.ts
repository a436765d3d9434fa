/**
 * Reading between the lines of a printed table.
 */

/** Index of the last abscissa, but for the very last, that does not lie beyond x; x lies within the table. */
function before(xs: ArrayLike<number>, x: number): number {
    let low = 0;
    let high = xs.length - 1;
    while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (xs[middle]! <= x) low = middle;
        else high = middle;
    }
    return low;
}

/**
 * Straight-line interpolation in a table with rising abscissae.
 *
 * @param xs  abscissae, rising, at least one
 * @param ys  ordinates, as many
 * @param x   where to read
 * @returns the ordinate; beyond either end the end value (never an extrapolation); NaN in gives NaN out
 */
export function interpolate(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
    if (x !== x) return NaN;
    const last = xs.length - 1;
    if (x <= xs[0]!) return ys[0]!;
    if (x >= xs[last]!) return ys[last]!;
    const low = before(xs, x);
    const share = (x - xs[low]!) / (xs[low + 1]! - xs[low]!);
    return ys[low]! + share * (ys[low + 1]! - ys[low]!);
}

/**
 * Slopes for a smooth curve through a table that never swings above or below neighbouring points
 * (monotone cubic, weighted harmonic mean of the neighbouring slopes) [fritsch-butland-1984].
 *
 * @param xs  abscissae, rising, at least two
 * @param ys  ordinates, as many
 * @returns the slope at each point, for {@link interpolateSmooth}
 */
export function smoothSlopes(xs: ArrayLike<number>, ys: ArrayLike<number>): Float64Array {
    const n = xs.length;
    const slopes = new Float64Array(n);
    const chord = (i: number): number => (ys[i + 1]! - ys[i]!) / (xs[i + 1]! - xs[i]!);
    slopes[0] = chord(0);
    slopes[n - 1] = chord(n - 2);
    for (let i = 1; i < n - 1; i++) {
        const before = chord(i - 1);
        const after = chord(i);
        if (before * after <= 0) continue;
        const left = xs[i]! - xs[i - 1]!;
        const right = xs[i + 1]! - xs[i]!;
        const weight = (left + 2 * right) / (3 * (left + right));
        slopes[i] = before * after / (weight * after + (1 - weight) * before);
    }
    return slopes;
}

/**
 * Smooth interpolation in a table with rising abscissae; slopes from {@link smoothSlopes}.
 *
 * @param xs      abscissae, rising, at least two
 * @param ys      ordinates, as many
 * @param slopes  one for each point
 * @param x       where to read
 * @returns the ordinate; beyond either end the end value; NaN in gives NaN out
 */
export function interpolateSmooth(xs: ArrayLike<number>, ys: ArrayLike<number>, slopes: ArrayLike<number>, x: number): number {
    if (x !== x) return NaN;
    const last = xs.length - 1;
    if (x <= xs[0]!) return ys[0]!;
    if (x >= xs[last]!) return ys[last]!;
    const low = before(xs, x);
    const high = low + 1;
    const width = xs[high]! - xs[low]!;
    const s = (x - xs[low]!) / width;
    const r = 1 - s;
    return r * r * (1 + 2 * s) * ys[low]! + s * s * (3 - 2 * s) * ys[high]!
        + width * s * r * (r * slopes[low]! - s * slopes[high]!);
}
