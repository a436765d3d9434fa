/**
 * Follows a set of ordinary differential equations until something happens: the pair of Dormand and Prince with its dense
 * output, and the first of several watched numbers that rises through zero, to a fraction of a second.
 */

/** dx/dt at a time, written into `out`. */
export type Slope = (t: number, x: Float64Array, out: Float64Array) => void;
/** A number that is below zero until something happens. */
export type Watched = (t: number, x: Float64Array) => number;

export interface Accuracy {
    /** Of each state, as a share of itself. */
    readonly relative: number;
    /** Of each state, in its own unit: what is smaller than that does not count. */
    readonly absolute: Float64Array;
    /** s, longest step: something that comes and goes within it is not seen. */
    readonly longest: number;
}
export interface Stretch {
    readonly t: number;
    readonly x: Float64Array;
    /** Indices of what has risen through zero at that moment; none at the end of the time. */
    readonly hit: readonly number[];
    /** Whether the steps became too small or too many to go on. */
    readonly stuck: boolean;
    readonly steps: number;
    /** s, the step to go on with where it paused before its end; undefined where it did not. */
    readonly paused: number | undefined;
}

/** [dormand-prince-1980]; dense output after Hairer, Nørsett & Wanner, Solving ODEs I, 2nd edition, II.6. */
const C = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1] as const;
const A: readonly (readonly number[])[] = [
    [], [1 / 5], [3 / 40, 9 / 40], [44 / 45, -56 / 15, 32 / 9], [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
    [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656], [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
/** Fifth less fourth order. */
const E = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40] as const;
const D = [-12715105075 / 11282082432, 0, 87487479700 / 32700410799, -10690763975 / 1880347072, 701980252875 / 199316789632, -1453857185 / 822651844, 69997945 / 29380423] as const;

/** s: an event is placed to that. */
const EVENT_CLOSE = 1e-3;
/** s: smaller steps tell that something is wrong. */
const LEAST_STEP = 1e-7;
export const MOST_STEPS = 200_000;
/** How a step may shrink and grow from one to the next, and how far it stays below what the error would allow. */
const SHRINK = 0.2;
const GROW = 5;
const CAREFUL = 0.9;

/** The first so many slopes, each with its weight, one after the other: inner loops over one array each are what an engine does fast. */
function weighted(weights: readonly number[], k: readonly Float64Array[], count: number, sum: Float64Array): void {
    sum.fill(0);
    for (let j = 0; j < count; j++) {
        const weight = weights[j];
        const slopes = k[j];
        for (let i = 0; i < sum.length; i++) sum[i] += weight * slopes[i];
    }
}
/**
 * Goes from one time to another, or to the first event.
 *
 * @param first   s, first step to try
 * @param each    told each accepted step: its end, and where the states are then
 * @param most    steps after which it pauses: going on with the step that it names is the same as not having paused
 */
export function follow(slope: Slope, from: number, to: number, start: Float64Array, watched: readonly Watched[], accuracy: Accuracy, first: number, each: (t: number, x: Float64Array) => void, most = Infinity): Stretch {
    const n = start.length;
    let t = from;
    let x = start.slice();
    const k = Array.from({ length: 7 }, () => new Float64Array(n));
    const trial = new Float64Array(n);
    const sum = new Float64Array(n);
    const dense = Array.from({ length: 5 }, () => new Float64Array(n));
    const between = new Float64Array(n);
    let h = Math.min(first, accuracy.longest, to - from);
    let before = watched.map(w => w(t, x));
    slope(t, x, k[0]);
    let steps = 0;
    while (t < to) {
        if (++steps > MOST_STEPS || !(h > LEAST_STEP || to - t <= LEAST_STEP)) return { t, x, hit: [], stuck: true, steps, paused: undefined };
        if (t + h > to) h = to - t;
        for (let s = 1; s < 7; s++) {
            weighted(A[s], k, s, sum);
            for (let i = 0; i < n; i++) trial[i] = x[i] + h * sum[i];
            slope(t + C[s] * h, trial, k[s]);
        }
        // The seventh stage stands at the new point.
        let error = 0;
        weighted(E, k, 7, sum);
        for (let i = 0; i < n; i++) {
            const scale = accuracy.absolute[i] + accuracy.relative * Math.max(Math.abs(x[i]), Math.abs(trial[i]));
            error = Math.max(error, Math.abs(h * sum[i]) / scale);
        }
        if (!(error <= 1)) {
            h *= error === error ? Math.max(SHRINK, CAREFUL * error ** -0.2) : SHRINK;
            continue;
        }
        const end = t + h;
        const now = watched.map(w => w(end, trial));
        const risen = now.some((v, i) => before[i] < 0 && v >= 0);
        if (risen) {
            weighted(D, k, 7, sum);
            for (let i = 0; i < n; i++) {
                const bend = h * k[0][i] - (trial[i] - x[i]);
                dense[0][i] = x[i];
                dense[1][i] = trial[i] - x[i];
                dense[2][i] = bend;
                dense[3][i] = trial[i] - x[i] - h * k[6][i] - bend;
                dense[4][i] = h * sum[i];
            }
            const at = (share: number) => {
                for (let i = 0; i < n; i++) between[i] = dense[0][i] + share * (dense[1][i] + (1 - share) * (dense[2][i] + share * (dense[3][i] + (1 - share) * dense[4][i])));
                return between;
            };
            // The first of them: what has not risen by the middle rises behind it.
            let low = 0;
            let high = 1;
            while ((high - low) * h > EVENT_CLOSE) {
                const middle = (low + high) / 2;
                at(middle);
                if (watched.some((w, i) => before[i] < 0 && w(t + middle * h, between) >= 0)) high = middle;
                else low = middle;
            }
            x = at(high).slice();
            t += high * h;
            each(t, x);
            return { t, x, hit: watched.flatMap((w, i) => (before[i] < 0 && w(t, x) >= 0 ? [i] : [])), stuck: false, steps, paused: undefined };
        }
        t = end;
        x = trial.slice();
        before = now;
        k[0].set(k[6]);
        each(t, x);
        h = Math.min(accuracy.longest, h * Math.min(GROW, Math.max(SHRINK, CAREFUL * Math.max(error, 1e-10) ** -0.2)));
        if (steps >= most && t < to) return { t, x, hit: [], stuck: false, steps, paused: h };
    }
    return { t, x, hit: [], stuck: false, steps, paused: undefined };
}
