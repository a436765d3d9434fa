/**
 * Current that passes by the plates of a stack through the lye in its ports and channels: the exact circuit, solved.
 *
 * Cells 1 .. N hang in a row; between cell j and j+1 lies a plate that asks V(i) volts for a current i. Each channel has a
 * node per cell, reached through a port, and a piece of channel between neighbouring nodes; its ends are closed. The total
 * current enters at cell 1 and leaves at cell N. What leaves a cell through its ports makes no gas on the plates it skips.
 *
 * Current is the unknown that each step of the Newton iteration linearises (so steep laws near zero current do no harm);
 * every step is one solve of a narrow band, linear in the count of cells. Both halves of a stack mirror each other: one is solved.
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
    /** V per A: how those volts climb with the current, every plate following its law. */
    readonly slope: number;
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
 * @param by        what those are multiplied with, where the neighbouring case has another current
 * @returns the currents; with cells = 1 there is no plate and nothing passes by
 *
 * Accuracy: Kirchhoff's laws to 1e-11 of the current. Check: [haverkort-shunt] closed form for equal linear cells.
 */
export function solveLadder(
    cells: number, current: number, law: PlateLaw, channels: readonly Channel[], start?: ArrayLike<number>, by = 1,
): Ladder {
    // A count that is no count leaves everything unknown.
    if (!(cells >= 1 && cells <= MOST_CELLS)) {
        cells = 1;
        current = NaN;
    }
    const n = Math.floor(cells);

    // Equal channels carry equal currents: they are solved as one, with their conductances added.
    const group: number[] = [];
    const alike: Channel[] = [];
    const members: number[] = [];
    for (const channel of channels) {
        let at = -1;
        if (channel.port < Infinity && channel.segment < Infinity) {
            at = 0;
            while (at < alike.length && (alike[at].port !== channel.port || alike[at].segment !== channel.segment)) at++;
            if (at === alike.length) {
                alike.push(channel);
                members.push(0);
            }
            members[at]++;
        }
        group.push(at);
    }

    const half = n >> 1;
    const plates = new Float64Array(half);
    if (!(current === current)) plates.fill(NaN);
    else for (let j = 0; j < half; j++) plates[j] = start && start.length === n - 1 ? start[j] * by : current;
    let steps = 0;
    let settled = half === 0 || alike.length === 0;
    let nodes: Float64Array | undefined;
    let volts: Float64Array | undefined;
    let slope = NaN;
    if (!settled && current === current) {
        const work = workspaceFor(half, alike.length);
        work.begin(n % 2 === 0 ? 0.5 : 1, alike, members);
        work.laws(plates, law);
        while (steps < MOST_STEPS) {
            steps++;
            const left = work.step(plates, current, law);
            if (!(left === left)) break;
            if (left <= CLOSE * Math.max(Math.abs(current), LEAST_SCALE)) {
                settled = true;
                break;
            }
        }
        nodes = work.solution.slice();
        volts = work.volts;
        slope = work.terminalSlope;
    } else if (current === current) {
        slope = 0;
        for (let j = 0; j < n - 1; j++) slope += law.slope(current);
    }
    return new SolvedLadder(n, current, law, channels, group, members.length, plates, volts, nodes, slope, settled, steps);
}
/** Part of the slope at the beginning of a shortened step that may be left at its end. */
const FLOOR = 0.3;
/** Part of the current that the next step would still move at most, once it is over. */
const CLOSE = 1e-11;
/** A, a current below this is as good as none. */
const LEAST_SCALE = 1e-6;

/**
 * What was found, from cell 1 to the middle. All channels are alike from end to end, so the other half mirrors it: equal plate
 * currents, opposite potentials. What few ask for is worked out when it is asked for.
 */
class SolvedLadder implements Ladder {
    readonly plates: Float64Array;
    readonly efficiency: number;
    readonly volts: number;
    readonly least: number;
    readonly bypass: number;
    readonly reversed: number;

    constructor(
        private readonly n: number, current: number, private readonly law: PlateLaw, private readonly channels: readonly Channel[],
        private readonly group: readonly number[], private readonly groups: number, half: Float64Array, plateVolts: Float64Array | undefined, private readonly nodes: Float64Array | undefined,
        readonly slope: number, readonly settled: boolean, readonly steps: number,
    ) {
        const plates = this.plates = new Float64Array(n - 1);
        const sign = Math.sign(current);
        let total = current;
        let least = current;
        let reversed = 0;
        let volts = 0;
        for (let j = 0; j < half.length; j++) {
            const i = plates[j] = plates[n - 2 - j] = half[j];
            const twins = 2 * j === n - 2 ? 1 : 2;
            total += twins * i;
            if (i * sign < least * sign) least = i;
            if (i * current < 0) reversed += twins;
            volts += twins * (plateVolts ? plateVolts[j] : law.volts(i));
        }
        this.efficiency = current === 0 ? NaN : total / (n * current);
        this.volts = volts;
        this.least = least;
        this.reversed = reversed;
        this.bypass = current === 0 ? 0 : (1 - this.efficiency) * current;
    }
    get potentials(): Float64Array {
        const potentials = new Float64Array(this.n);
        for (let j = this.n - 2; j >= 0; j--) potentials[j] = potentials[j + 1] + this.law.volts(this.plates[j]);
        return potentials;
    }
    /** V, of a node against the middle of the stack: of channel group k at cell j, or of the cell itself (k = -1). */
    private node(j: number, k: number): number {
        const { n } = this;
        const size = this.groups + 1;
        const half = n >> 1;
        if (j < half) return this.nodes![(half - 1 - j) * size + (k < 0 ? size - 1 : k)];
        return j === n - 1 - j ? 0 : -this.node(n - 1 - j, k);
    }
    private along(length: number, of: (j: number, k: number, channel: Channel) => number): Float64Array {
        const { channels, group, nodes } = this;
        const found = new Float64Array(channels.length * length);
        for (let c = 0; c < channels.length && nodes; c++) {
            if (group[c] >= 0) for (let j = 0; j < length; j++) found[c * length + j] = of(j, group[c], channels[c]);
        }
        return found;
    }
    private foundPorts: Float64Array | undefined;
    get ports(): Float64Array {
        return this.foundPorts ??= this.along(this.n, (j, k, channel) => (this.node(j, -1) - this.node(j, k)) / Math.max(channel.port, LEAST_OHMS));
    }
    private foundSegments: Float64Array | undefined;
    get segments(): Float64Array {
        return this.foundSegments ??= this.along(this.n - 1, (j, k, channel) => (this.node(j, k) - this.node(j + 1, k)) / Math.max(channel.segment, LEAST_OHMS));
    }
    get channelHeat(): number {
        let heat = 0;
        const { n, ports, segments } = this;
        this.channels.forEach((channel, c) => {
            if (this.group[c] < 0) return;
            for (let j = 0; j < n; j++) heat += ports[c * n + j] ** 2 * channel.port;
            for (let j = 0; j < n - 1; j++) heat += segments[c * (n - 1) + j] ** 2 * channel.segment;
        });
        return heat;
    }
}

let workspace: Workspace | undefined;
/** The memory of the last size is used again: one rig after the other has the same stack. */
function workspaceFor(half: number, channels: number): Workspace {
    return workspace?.half === half && workspace.channels === channels ? workspace : (workspace = new Workspace(half, channels));
}

/**
 * Flat memory for the steps. One block of unknowns per cell, from the middle out to cell 1: its channel nodes, then its own
 * node. The matrix of conductances is symmetric and positive, its links reach one block far: it is taken apart as L D Lᵀ
 * within that band. The current enters at the very last unknown, whose pivot therefore is the conductance of the whole.
 */
class Workspace {
    readonly solution: Float64Array;
    /** V per A between cell 1 and cell N, as of the last step. */
    terminalSlope = NaN;
    private readonly size: number;
    /** Column p of the lower triangle: its diagonal and the `size` places below it. */
    private readonly band: Float64Array;
    private readonly right: Float64Array;
    /** V, what the plates ask after the last step. */
    readonly volts: Float64Array;
    private readonly slopes: Float64Array;
    private readonly triedVolts: Float64Array;
    private readonly triedSlopes: Float64Array;
    private readonly change: Float64Array;
    /** Siemens of all channels that are alike, together. */
    private readonly ports: Float64Array;
    private readonly segments: Float64Array;
    /** Share of the plate in the middle, and of the channels beside it, that lies on this side of the mirror. */
    private middle = 1;

    constructor(readonly half: number, readonly channels: number) {
        const size = this.size = channels + 1;
        this.solution = new Float64Array(half * size);
        // What would reach beyond the last unknown lands in the spare places and is never read.
        this.band = new Float64Array((half * size + size) * (size + 1));
        this.right = new Float64Array(half * size + size);
        this.volts = new Float64Array(half);
        this.slopes = new Float64Array(half);
        this.triedVolts = new Float64Array(half);
        this.triedSlopes = new Float64Array(half);
        this.change = new Float64Array(half);
        this.ports = new Float64Array(channels);
        this.segments = new Float64Array(channels);
    }
    begin(middle: number, channels: readonly Channel[], members: readonly number[]): void {
        this.middle = middle;
        for (let k = 0; k < this.channels; k++) {
            this.ports[k] = members[k] / Math.max(channels[k].port, LEAST_OHMS);
            this.segments[k] = members[k] / Math.max(channels[k].segment, LEAST_OHMS);
        }
    }
    /** Takes the laws at the currents to start from. */
    laws(plates: Float64Array, law: PlateLaw): void {
        for (let j = 0; j < this.half; j++) {
            this.volts[j] = law.volts(plates[j]);
            this.slopes[j] = Math.max(law.slope(plates[j]), LEAST_OHMS);
        }
    }

    /** One damped Newton step on the plate currents, in place. Returns what the next one would change at most, as far as can be told, in A. */
    step(plates: Float64Array, current: number, law: PlateLaw): number {
        const { half, size, band, right, volts, slopes, change, solution, middle, ports, segments } = this;
        const count = this.channels;
        const width = size + 1;
        for (let j = half - 1, b = 0; j >= 0; j--, b++) {
            // Beyond the plate in the middle all potentials are mirrored: half of it leads to nothing, an odd stack's whole one to cell and nodes at nothing.
            const share = b === 0 ? middle : 1;
            const plate = 1 / (share * slopes[j]);
            const outer = j > 0 ? 1 / slopes[j - 1] : 0;
            let own = plate + outer;
            for (let k = 0; k < count; k++) {
                const at = (b * size + k) * width;
                const port = ports[k];
                own += port;
                band[at] = port + segments[k] / share + (j > 0 ? segments[k] : 0);
                for (let d = 1; d < size; d++) band[at + d] = 0;
                band[at + count - k] = -port;
                band[at + size] = j > 0 ? -segments[k] : 0;
                right[b * size + k] = 0;
            }
            const at = (b * size + count) * width;
            band[at] = own;
            for (let d = 1; d < size; d++) band[at + d] = 0;
            band[at + size] = -outer;
            // i = (potential across - v + s i) / s: the part that does not depend on the potentials is a source.
            right[b * size + count] = (j > 0 ? plates[j - 1] - volts[j - 1] / slopes[j - 1] : current) - plates[j] + volts[j] / slopes[j];
        }
        this.solve();

        let largest = 0;
        let stiff = 0;
        for (let j = 0; j < half; j++) {
            const at = (half - 1 - j) * size + count;
            const share = j === half - 1 ? middle : 1;
            const drop = (solution[at] - (j === half - 1 ? 0 : solution[at - size])) / share;
            const d = change[j] = (drop - volts[j]) / slopes[j];
            const moved = Math.abs(d);
            if (!(moved <= largest)) largest = moved;
            stiff += share * slopes[j] * d * d;
        }
        if (!(largest === largest)) return NaN;
        // The true circuit minimises a bowl-shaped content; a full step that overshoots its floor is shortened.
        let share = 1;
        const over = this.overshoot(plates, law, 1);
        if (over > 0.5 * stiff) {
            let low = 0;
            let high = 1;
            for (let turn = 0; turn < 12; turn++) {
                share = (low + high) / 2;
                const uphill = this.overshoot(plates, law, share) - (1 - share) * stiff;
                // Near enough to the floor: the next step finds it better than a closer look along this one.
                if (Math.abs(uphill) <= FLOOR * stiff) break;
                if (uphill > 0) high = share;
                else low = share;
            }
        }
        for (let j = 0; j < half; j++) {
            plates[j] += share * change[j];
            volts[j] = this.triedVolts[j];
            slopes[j] = Math.max(this.triedSlopes[j], LEAST_OHMS);
        }
        // What the laws bend away from their tangents is all that is left to be mended, and as large a part of the next step.
        return share < 1 ? Infinity : stiff > 0 ? largest * Math.abs(over) / stiff : 0;
    }

    /** How far the laws bend away from their tangents along the step, as a slope of the content. Keeps what the laws say there. */
    private overshoot(plates: Float64Array, law: PlateLaw, share: number): number {
        const { half, change, volts, slopes, triedVolts, triedSlopes } = this;
        let sum = 0;
        for (let j = 0; j < half; j++) {
            const d = change[j];
            const i = plates[j] + share * d;
            const v = triedVolts[j] = law.volts(i);
            triedSlopes[j] = law.slope(i);
            sum += (j === half - 1 ? this.middle : 1) * (v - volts[j] - share * slopes[j] * d) * d;
        }
        return sum;
    }

    /** Elimination down the band, substitution back up. */
    private solve(): void {
        const { half, size, band, right, solution } = this;
        const width = size + 1;
        const count = half * size;
        right.fill(0, count);
        for (let p = 0; p < count; p++) {
            const at = p * width;
            const pivot = 1 / band[at];
            const here = right[p];
            for (let a = 1; a <= size; a++) {
                const value = band[at + a];
                if (value === 0) continue;
                const factor = value * pivot;
                const next = at + a * width - a;
                for (let c = a; c <= size; c++) band[next + c] -= factor * band[at + c];
                right[p + a] -= factor * here;
            }
        }
        for (let p = count - 1; p >= 0; p--) {
            const at = p * width;
            let value = right[p];
            for (let a = 1; a <= size && p + a < count; a++) value -= band[at + a] * solution[p + a];
            solution[p] = value / band[at];
        }
        // Of the whole stack: the mirror half asks as much again.
        this.terminalSlope = 2 / band[(count - 1) * width];
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
