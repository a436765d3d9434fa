/**
 * Current that passes by the plates of a stack through the lye in its ports and channels: the exact circuit, solved.
 *
 * Cells 1 .. N hang in a row; between cell j and j+1 lies a plate that asks V(i) volts for a current i. Each channel has a
 * node per cell, reached through a port, and a piece of channel between neighbouring nodes; its ends are closed. The total
 * current enters at cell 1 and leaves at cell N. What leaves a cell through its ports makes no gas on the plates it skips.
 *
 * Current is the unknown that each step of the Newton iteration linearises (so steep laws near zero current do no harm);
 * every step is one block-tridiagonal solve, linear in the count of cells.
 */

/** One channel of lye shared by all cells. Infinite resistance stands for "not there". */
export interface Channel {
    /** Ω, from a cell to the channel. */
    readonly port: number;
    /** Ω, along the channel from one cell to the next. */
    readonly segment: number;
}

/** What a plate asks, and how steeply; in amperes, not current density. The volts must never fall with current. */
export interface PlateLaw {
    /** V across a plate that carries this many amperes. */
    volts(current: number): number;
    /** V per A, never negative. */
    slope(current: number): number;
}

/** More cells than anybody stacks; a larger count is taken for a slip and gives unknown. */
const MOST_CELLS = 10000;

/** Newton steps after which it is given up. */
const MOST_STEPS = 60;
/** Ω, a resistance of nothing: keeps the matrix solvable for passages and plates that do not resist. */
const LEAST_OHMS = 1e-9;

/** The solved ladder. */
export interface Ladder {
    /** A, through each of the N-1 plates, from cell 1 on. */
    readonly plates: Float64Array;
    /** A, out of cell j into channel k, at [k * N + j]. */
    readonly ports: Float64Array;
    /** A, along channel k from cell j to j+1, at [k * (N - 1) + j]. */
    readonly segments: Float64Array;
    /** V, of each cell against the last. */
    readonly potentials: Float64Array;
    /** Part of the current that makes gas: (I + sum of plate currents) / (N * I); no meaning once plates reverse. */
    readonly efficiency: number;
    /** V from cell 1 to cell N; add one more cell's electrodes for the voltage at the terminals. */
    readonly volts: number;
    /** A, in the plate that carries least. */
    readonly least: number;
    /** A, the mean that passes by a cell: (1 - efficiency) * I. */
    readonly bypass: number;
    /** W, made in the channels. */
    readonly channelHeat: number;
    /** Count of plates with current in reverse: above 0 the plates work as batteries and the efficiency says nothing. */
    readonly reversed: number;
    /** False when the iteration did not settle (then the numbers are its last try). */
    readonly settled: boolean;
    readonly steps: number;
}

/**
 * Solves the ladder.
 *
 * @param cells     N, 1 .. 10 000
 * @param current   A, total, any sign
 * @param law       volts of one plate
 * @param channels  each shared channel: usually two for lye in, two for lye and gas out
 * @param start     A, plate currents to start from (those of a neighbouring case); may be left out
 * @returns the currents; with cells = 1 there is no plate and nothing passes by
 *
 * Accuracy: Kirchhoff's laws to 1e-10 of the current. Check: [haverkort-shunt] closed form for equal linear cells.
 */
export function solveLadder(
    cells: number, current: number, law: PlateLaw, channels: readonly Channel[], start?: ArrayLike<number>,
): Ladder {
    // A count that is no count leaves everything unknown.
    if (!(cells >= 1 && cells <= MOST_CELLS)) {
        cells = 1;
        current = NaN;
    }
    const n = Math.floor(cells);
    const plates = new Float64Array(n - 1);
    const ports = new Float64Array(channels.length * n);
    const segments = new Float64Array(channels.length * (n - 1));
    const potentials = new Float64Array(n);

    // Equal channels carry equal currents: they are solved as one, with their conductances added.
    const group = new Int32Array(channels.length).fill(-1);
    const members: number[] = [];
    let count = 0;
    for (let c = 0; c < channels.length; c++) {
        const channel = channels[c]!;
        if (!(channel.port < Infinity && channel.segment < Infinity)) continue;
        let twin = 0;
        while (twin < c && !(group[twin]! >= 0 && channels[twin]!.port === channel.port
            && channels[twin]!.segment === channel.segment)) twin++;
        if (twin < c) members[group[c] = group[twin]!]!++;
        else {
            group[c] = count++;
            members.push(1);
        }
    }
    if (!(current === current)) plates.fill(NaN);
    else for (let j = 0; j < n - 1; j++) plates[j] = start && start.length === n - 1 ? start[j]! : current;

    let steps = 0;
    let settled = n === 1 || count === 0;
    if (!settled && current === current) {
        const work = new Workspace(n, count);
        for (let c = 0; c < channels.length; c++) {
            const k = group[c]!;
            if (k < 0) continue;
            work.portConductance[k] = members[k]! / Math.max(channels[c]!.port, LEAST_OHMS);
            work.segmentConductance[k] = members[k]! / Math.max(channels[c]!.segment, LEAST_OHMS);
        }
        const scale = Math.max(Math.abs(current), 1e-6);
        while (steps < MOST_STEPS) {
            steps++;
            const change = work.step(plates, current, law);
            if (!(change === change)) break;
            // Each step squares the error that is left: after one this small nothing is left to find.
            if (change <= 1e-7 * scale) {
                settled = true;
                break;
            }
        }
        for (let c = 0; c < channels.length; c++) {
            const k = group[c]!;
            if (k < 0) continue;
            const port = work.portConductance[k]! / members[k]!;
            const segment = work.segmentConductance[k]! / members[k]!;
            for (let j = 0; j < n; j++) {
                const node = work.solution[j * work.size + 1 + k]!;
                ports[c * n + j] = (work.solution[j * work.size]! - node) * port;
                if (j < n - 1) segments[c * (n - 1) + j] = (node - work.solution[(j + 1) * work.size + 1 + k]!) * segment;
            }
        }
    }

    let total = current;
    let least = current;
    let reversed = 0;
    let volts = 0;
    for (let j = n - 2; j >= 0; j--) {
        const i = plates[j]!;
        total += i;
        if (i * Math.sign(current) < least * Math.sign(current)) least = i;
        if (i * current < 0) reversed++;
        volts += law.volts(i);
        potentials[j] = volts;
    }
    let channelHeat = 0;
    for (let c = 0; c < channels.length; c++) {
        const channel = channels[c]!;
        if (group[c]! < 0) continue;
        for (let j = 0; j < n; j++) channelHeat += ports[c * n + j]! ** 2 * channel.port;
        for (let j = 0; j < n - 1; j++) channelHeat += segments[c * (n - 1) + j]! ** 2 * channel.segment;
    }
    const efficiency = current === 0 ? NaN : total / (n * current);
    return {
        plates, ports, segments, potentials, efficiency, volts, least,
        bypass: current === 0 ? 0 : (1 - efficiency) * current, channelHeat, reversed, settled, steps,
    };
}

/** Flat memory for the block-tridiagonal solve: one block per cell (the cell's node, then its channel nodes). */
class Workspace {
    readonly size: number;
    readonly portConductance: Float64Array;
    readonly segmentConductance: Float64Array;
    readonly solution: Float64Array;
    private readonly blocks: Float64Array;
    private readonly right: Float64Array;
    private readonly link: Float64Array;
    private readonly slopes: Float64Array;
    private readonly volts: Float64Array;
    private readonly change: Float64Array;
    private readonly inverse: Float64Array;
    private readonly scratch: Float64Array;

    constructor(private readonly cells: number, private readonly channels: number) {
        const size = this.size = 1 + channels;
        this.portConductance = new Float64Array(channels);
        this.segmentConductance = new Float64Array(channels);
        this.solution = new Float64Array(cells * size);
        this.blocks = new Float64Array(cells * size * size);
        this.right = new Float64Array(cells * size);
        this.link = new Float64Array((cells - 1) * size);
        this.slopes = new Float64Array(cells - 1);
        this.volts = new Float64Array(cells - 1);
        this.change = new Float64Array(cells - 1);
        this.inverse = new Float64Array(cells * size * size);
        this.scratch = new Float64Array(size);
    }

    /** One damped Newton step on the plate currents, in place. Returns the largest change in A. */
    step(plates: Float64Array, current: number, law: PlateLaw): number {
        const { cells: n, channels: count, size, blocks, right, link, slopes, volts, change, solution } = this;
        blocks.fill(0);
        right.fill(0);
        right[0] = current;
        for (let j = 0; j < n - 1; j++) {
            const i = plates[j]!;
            const v = volts[j] = law.volts(i);
            const s = slopes[j] = Math.max(law.slope(i), LEAST_OHMS);
            const g = 1 / s;
            link[j * size] = g;
            // i = (x[j] - x[j+1] - v + s i) / s: the part that does not depend on the potentials is a source.
            const source = i - v * g;
            right[j * size]! -= source;
            right[(j + 1) * size]! += source;
            for (let k = 0; k < count; k++) link[j * size + 1 + k] = this.segmentConductance[k]!;
        }
        for (let j = 0; j < n; j++) {
            const at = j * size * size;
            let own = 0;
            if (j > 0) own += link[(j - 1) * size]!;
            if (j < n - 1) own += link[j * size]!;
            for (let k = 0; k < count; k++) {
                const g = this.portConductance[k]!;
                own += g;
                let channel = g;
                if (j > 0) channel += this.segmentConductance[k]!;
                if (j < n - 1) channel += this.segmentConductance[k]!;
                blocks[at + (1 + k) * size + 1 + k] = channel;
                blocks[at + 1 + k] = -g;
                blocks[at + (1 + k) * size] = -g;
            }
            blocks[at] = own;
        }
        // Everything floats: the last cell's node is the reference. Its row becomes x = 0.
        const last = (n - 1) * size * size;
        for (let k = 0; k < size; k++) blocks[last + k] = 0;
        blocks[last] = 1;
        right[(n - 1) * size] = 0;
        this.solve();

        let largest = 0;
        let stiff = 0;
        for (let j = 0; j < n - 1; j++) {
            const drop = solution[j * size]! - (j < n - 2 ? solution[(j + 1) * size]! : 0);
            const d = change[j] = (drop - volts[j]!) / slopes[j]!;
            const size_ = Math.abs(d);
            if (!(size_ <= largest)) largest = size_;
            stiff += slopes[j]! * d * d;
        }
        if (!(largest === largest)) return NaN;
        // The true circuit minimises a bowl-shaped content; a full step that overshoots its floor is shortened.
        let share = 1;
        if (this.overshoot(plates, law, 1) > 0.5 * stiff) {
            let low = 0;
            let high = 1;
            for (let turn = 0; turn < 12; turn++) {
                share = (low + high) / 2;
                if (this.overshoot(plates, law, share) - (1 - share) * stiff > 0) high = share;
                else low = share;
            }
            share = low > 0 ? low : high;
        }
        for (let j = 0; j < n - 1; j++) plates[j]! += share * change[j]!;
        return largest;
    }

    /** How far the laws bend away from their tangents along the step, as a slope of the content. */
    private overshoot(plates: Float64Array, law: PlateLaw, share: number): number {
        let sum = 0;
        for (let j = 0; j < this.cells - 1; j++) {
            const d = this.change[j]!;
            sum += (law.volts(plates[j]! + share * d) - this.volts[j]! - share * this.slopes[j]! * d) * d;
        }
        return sum;
    }

    /** Block elimination forwards, substitution backwards. Links between neighbours are diagonal. */
    private solve(): void {
        const { cells: n, size, blocks, right, link, solution } = this;
        const square = size * size;
        const inverse = this.inverse;
        for (let j = 0; j < n - 1; j++) {
            this.invert(j * square);
            // Block j+1 loses L * inverse * L; the reference row at the end takes nothing from above.
            const next = (j + 1) * square;
            for (let r = 0; r < size; r++) {
                const reference = j === n - 2 && r === 0;
                if (reference) continue;
                const left = link[j * size + r]!;
                let sum = 0;
                for (let c = 0; c < size; c++) {
                    const value = inverse[j * square + r * size + c]!;
                    sum += value * right[j * size + c]!;
                    blocks[next + r * size + c]! -= left * value * link[j * size + c]!;
                }
                right[(j + 1) * size + r]! += left * sum;
            }
        }
        this.invert((n - 1) * square);
        for (let j = n - 1; j >= 0; j--) {
            for (let c = 0; c < size; c++) {
                let value = right[j * size + c]!;
                if (j < n - 1) value += link[j * size + c]! * solution[(j + 1) * size + c]!;
                this.scratch[c] = value;
            }
            for (let r = 0; r < size; r++) {
                let sum = 0;
                for (let c = 0; c < size; c++) sum += inverse[j * square + r * size + c]! * this.scratch[c]!;
                solution[j * size + r] = sum;
            }
        }
    }

    /** Gauss-Jordan inverse of one block into `inverse`; diagonally dominant, so no exchange of rows is needed. */
    private invert(at: number): void {
        const { size, blocks, inverse } = this;
        for (let r = 0; r < size; r++) {
            for (let c = 0; c < size; c++) inverse[at + r * size + c] = r === c ? 1 : 0;
        }
        for (let p = 0; p < size; p++) {
            const row = at + p * size;
            const pivot = 1 / blocks[row + p]!;
            for (let c = 0; c < size; c++) {
                blocks[row + c]! *= pivot;
                inverse[row + c]! *= pivot;
            }
            for (let r = 0; r < size; r++) {
                if (r === p) continue;
                const other = at + r * size;
                const factor = blocks[other + p]!;
                if (factor === 0) continue;
                for (let c = 0; c < size; c++) {
                    blocks[other + c]! -= factor * blocks[row + c]!;
                    inverse[other + c]! -= factor * inverse[row + c]!;
                }
            }
        }
    }
}

/**
 * Resistance of a passage filled with lye.
 *
 * @param length        m
 * @param area          m², across
 * @param conductivity  S/m, clear lye
 * @param gasFraction   1, gas in the passage
 * @returns Ω (gas counted after Bruggeman)
 */
export function passageResistance(length: number, area: number, conductivity: number, gasFraction = 0): number {
    return length / (conductivity * (1 - gasFraction) ** 1.5 * area);
}

/**
 * Resistance of a round hole through a plate that stands in lye: the bore and the lye in front of both ends.
 *
 * @param bore          m
 * @param thickness     m, of the plate
 * @param conductivity  S/m
 * @returns Ω. Source: bore as a wire, ends after [maxwell-1873]
 */
export function holeResistance(bore: number, thickness: number, conductivity: number): number {
    return 4 * thickness / (conductivity * Math.PI * bore * bore) + 1 / (conductivity * bore);
}

/**
 * Current that leaks past one plate through resistances beside it, no channels.
 *
 * @param current     A, total
 * @param law         volts of the plate
 * @param resistance  Ω, of the leak
 * @returns A through the leak (the plate carries the rest)
 */
export function leakPastPlate(current: number, law: PlateLaw, resistance: number): number {
    if (resistance === Infinity) return 0;
    let plate = current;
    for (let step = 0; step < MOST_STEPS; step++) {
        const miss = law.volts(plate) - resistance * (current - plate);
        const d = miss / (Math.max(law.slope(plate), 0) + resistance);
        plate -= d;
        if (!(Math.abs(d) > 1e-12 * Math.abs(current))) break;
    }
    return current - plate;
}
