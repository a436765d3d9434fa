/**
 * Which track of its channel each line gets. A stretch of a net in a channel is a piece; which of two pieces lies left of (or above) the
 * other decides how often they cross, and nothing else does: so the order in each channel is looked for by what each pair costs.
 */
import type { Place, Way } from './route.js';

/** A stretch of a way: level at `at` = y, or upright at `at` = x, on the grid. */
export interface Stretch {
    readonly level: boolean;
    readonly at: number;
    readonly from: number;
    readonly to: number;
    /** Undefined on the main line of a row and above or below the middle of a column. */
    piece: Piece | undefined;
}
export interface Piece {
    readonly net: number;
    readonly level: boolean;
    readonly at: number;
    low: number;
    high: number;
    /** Where lines of the net leave it: to the left or above (-1), to the right or below (1). */
    readonly joints: Joint[];
    rank: number;
    /** Of all in the channel. */
    count: number;
    track: number;
}
interface Joint {
    readonly side: -1 | 1;
    /** Along the piece. */
    readonly grid: number;
    /** In the channel at its end, whose track is its place; otherwise its place is off the grid by this. */
    readonly piece: Piece | undefined;
    readonly off: number;
}
/** Two lines closer than this at the same place of the grid are on top of each other. */
const NEAR = 0.03;
/** What lies on top of each other is never chosen, where there is a choice. */
const OVERLAP = 1000;
/** Tracks of each channel: [level][at]. */
export interface Tracks {
    readonly stretches: ReadonlyMap<Way, readonly Stretch[]>;
    readonly level: ReadonlyMap<number, number>;
    readonly upright: ReadonlyMap<number, number>;
}

/** @returns the stretches of each way with their tracks, and how many tracks each channel needs */
export function tracksOf(ways: readonly Way[]): Tracks {
    const stretches = new Map(ways.map(w => [w, stretchesOf(w)]));
    const pieces = piecesOf(ways, stretches);
    for (const w of ways) join(w, stretches.get(w)!);
    const channels = new Map<string, Piece[]>();
    for (const p of pieces) {
        const key = `${p.level ? 'level' : 'upright'} ${p.at}`;
        channels.set(key, [...(channels.get(key) ?? []), p]);
    }
    for (const list of channels.values()) {
        // To begin with, what leaves to the left lies left.
        list.sort((a, b) => pull(a) - pull(b) || a.low - b.low || a.net - b.net);
        rank(list);
    }
    for (let round = 0; round < 3; round++) {
        for (const level of [true, false]) for (const list of channels.values()) if (list[0].level === level) settle(list);
    }
    const [level, upright] = [new Map<number, number>(), new Map<number, number>()];
    for (const list of channels.values()) {
        let most = 0;
        for (const [k, p] of list.entries()) {
            p.track = 0;
            for (const q of list.slice(0, k)) if (q.low <= p.high && p.low <= q.high) p.track = Math.max(p.track, q.track + 1);
            most = Math.max(most, p.track + 1);
        }
        (list[0].level ? level : upright).set(list[0].at, most);
    }
    return { stretches, level, upright };
}
const pull = (p: Piece) => p.joints.reduce((sum, j) => sum + j.side, 0) / Math.max(1, p.joints.length);
const rank = (list: Piece[]) => list.forEach((p, k) => { p.rank = k; p.count = list.length; });

function stretchesOf(w: Way): Stretch[] {
    const found: Stretch[] = [];
    let start = 0;
    const { places } = w;
    const isLevel = (a: Place, b: Place) => a.y === b.y;
    for (let k = 1; k < places.length; k++) {
        if (k + 1 < places.length && isLevel(places[k - 1], places[k]) === isLevel(places[k], places[k + 1])) continue;
        const level = isLevel(places[start], places[k]);
        found.push({ level, at: level ? places[k].y : places[k].x, from: level ? places[start].x : places[start].y, to: level ? places[k].x : places[k].y, piece: undefined });
        start = k;
    }
    // Straight down from one part to the next below, and their ports are not in line: a step in the channel between.
    if (found.length === 1 && !found[0].level && (w.out.x ?? 0) !== (w.in.x ?? 0)) {
        const [s] = found;
        const middle = (s.from + s.to) / 2;
        return [{ ...s, to: middle }, { level: true, at: middle, from: s.at, to: s.at, piece: undefined }, { ...s, from: middle }];
    }
    return found;
}
function piecesOf(ways: readonly Way[], stretches: ReadonlyMap<Way, Stretch[]>): Piece[] {
    const byKey = new Map<string, Stretch[]>();
    const netOf = new Map<string, number>();
    for (const w of ways) {
        for (const s of stretches.get(w)!) {
            if (s.at % 2) continue;
            const key = `${w.net} ${s.level} ${s.at}`;
            byKey.set(key, [...(byKey.get(key) ?? []), s]);
            netOf.set(key, w.net);
        }
    }
    const pieces: Piece[] = [];
    for (const [key, list] of byKey) {
        list.sort((a, b) => Math.min(a.from, a.to) - Math.min(b.from, b.to));
        let piece: Piece | undefined;
        for (const s of list) {
            const [low, high] = [Math.min(s.from, s.to), Math.max(s.from, s.to)];
            if (!piece || low > piece.high) pieces.push((piece = { net: netOf.get(key)!, level: s.level, at: s.at, low, high, joints: [], rank: 0, count: 1, track: 0 }));
            piece.high = Math.max(piece.high, high);
            s.piece = piece;
        }
    }
    return pieces;
}
/** Notes at each piece of a way where the stretches before and after it lead. */
function join(w: Way, list: readonly Stretch[]): void {
    for (const [k, s] of list.entries()) {
        if (!s.piece) continue;
        for (const [other, here, away] of [[list[k - 1], s.from, list[k - 1]?.from], [list[k + 1], s.to, list[k + 1]?.to]] as const) {
            if (!other || away === undefined) continue;
            const side = away < s.at ? -1 : away > s.at ? 1 : other.from < s.at || other.to < s.at ? -1 : 1;
            const port = k - 1 === 0 && other === list[0] ? w.out : k + 1 === list.length - 1 && other === list.at(-1) ? w.in : undefined;
            s.piece.joints.push({ side, grid: here, piece: other.piece, off: !other.piece && !other.level ? (port?.x ?? 0) / 200 : 0 });
        }
    }
}
const placeOf = (j: Joint) => j.grid + (j.piece ? ((j.piece.rank + 1) / (j.piece.count + 1) - 0.5) * 0.8 : j.off);

/** Orders a channel. */
function settle(list: Piece[]): void {
    const n = list.length;
    const spots = list.map(p => p.joints.map(j => ({ side: j.side, at: placeOf(j) })));
    const spans = spots.map((s, i) => [Math.min(...s.map(j => j.at), list[i].joints.length ? Infinity : list[i].low), Math.max(...s.map(j => j.at), list[i].joints.length ? -Infinity : list[i].high)]);
    /** What it costs that a lies before b. */
    const pairs = list.map((a, i) => list.map((b, k) => {
        if (i === k || a.low > b.high || b.low > a.high) return 0;
        let cost = 0;
        const seen = new Set<number>();
        const count = (from: typeof spots[0], side: number, [low, high]: number[], theirs: typeof spots[0]) => {
            seen.clear();
            for (const j of from) {
                if (j.side !== side || seen.has(j.at)) continue;
                seen.add(j.at);
                if (theirs.some(t => t.side === -side && Math.abs(t.at - j.at) < NEAR)) cost += a.net === b.net ? 0 : OVERLAP;
                else if (j.at > low && j.at < high) cost++;
            }
        };
        count(spots[i], 1, spans[k], spots[k]);
        count(spots[k], -1, spans[i], spots[i]);
        return cost;
    }));
    const order = list.map((_, i) => i);
    // Each piece to its best place among the others, until nothing gets better.
    for (let round = 0, better = true; better && round < 6; round++) {
        better = false;
        for (let i = 0; i < n; i++) {
            const here = order.indexOf(i);
            let [best, gain, sum] = [here, 0, 0];
            for (let k = here - 1; k >= 0; k--) {
                sum += pairs[i][order[k]] - pairs[order[k]][i];
                if (sum < gain) [best, gain] = [k, sum];
            }
            sum = 0;
            for (let k = here + 1; k < n; k++) {
                sum += pairs[order[k]][i] - pairs[i][order[k]];
                if (sum < gain) [best, gain] = [k, sum];
            }
            if (best === here) continue;
            order.splice(here, 1);
            order.splice(best, 0, i);
            better = true;
        }
    }
    const before = [...list];
    order.forEach((i, k) => { list[k] = before[i]; });
    rank(list);
}
