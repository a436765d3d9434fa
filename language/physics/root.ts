/**
 * Roots between two ends: a safe secant (false position with halved weights, the "Illinois" form) backed by halving.
 */

/**
 * Where a continuous function crosses zero between two ends of opposite sign.
 *
 * @param f          the function
 * @param low        one end
 * @param high       the other end
 * @param tolerance  how close the bracket must come, in the unit of the argument
 * @returns the crossing; an end that is itself a zero; NaN when the ends have the same sign or a value is NaN
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): number {
    let a = low;
    let b = high;
    let fa = f(a);
    if (fa === 0) return a;
    let fb = f(b);
    if (fb === 0) return b;
    if (!(fa * fb < 0)) return NaN;
    let side = 0;
    for (let step = 0; step < 200; step++) {
        const width = b - a;
        if (Math.abs(width) <= tolerance) break;
        // Halving now and then keeps a badly bent function from crawling.
        let x = step % 8 === 7 ? a + width / 2 : b - fb * width / (fb - fa);
        const edge = 0.25 * tolerance * Math.sign(width);
        if ((x - a) / edge < 1) x = a + edge;
        else if ((b - x) / edge < 1) x = b - edge;
        const fx = f(x);
        if (fx === 0) return x;
        if (fx !== fx) return NaN;
        if (fx * fb < 0) {
            a = b;
            fa = fb;
            side = 0;
        } else {
            if (side === 1) fa /= 2;
            side = 1;
        }
        b = x;
        fb = fx;
    }
    return (a + b) / 2;
}

/**
 * Where a function with a single crest within two ends is largest (golden section).
 *
 * @param f          the function
 * @param low        lower end
 * @param high       upper end
 * @param tolerance  how close, in the unit of the argument
 * @returns the argument; an end where the function climbs or falls throughout; NaN when a value is NaN
 */
export function findCrest(f: (x: number) => number, low: number, high: number, tolerance: number): number {
    const share = (Math.sqrt(5) - 1) / 2;
    let a = low;
    let b = high;
    let left = b - share * (b - a);
    let right = a + share * (b - a);
    let fLeft = f(left);
    let fRight = f(right);
    while (b - a > tolerance) {
        if (fLeft > fRight) {
            b = right;
            right = left;
            fRight = fLeft;
            left = b - share * (b - a);
            fLeft = f(left);
        } else {
            a = left;
            left = right;
            fLeft = fRight;
            right = a + share * (b - a);
            fRight = f(right);
        }
        if (fLeft !== fLeft || fRight !== fRight) return NaN;
    }
    return (a + b) / 2;
}
