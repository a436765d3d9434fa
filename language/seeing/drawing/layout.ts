/**
 * Where everything stands: columns by the longest way, straight runs ordered from top to bottom, then a track for each other line. All of it
 * hangs on names and joints only, so a number that changes moves nothing.
 */
import type { Graph, Item, Medium } from './graph.js';
import { symbols, type Edge, type Port, type Symbol } from './symbols.js';

/** px. Between boxes one above the other, between tracks, and what a crossing and a bend are worth in length. */
const GAP = 24;
const TRACK = 10;
const CROSSING = 60;
const BEND = 60;
/** px between lines of words, and from an instrument's circle to its symbol. */
export const LINE_HEIGHT = 14;
export const INSTRUMENT_RADIUS = 13;
const REACH = 46;
const BETWEEN_INSTRUMENTS = 34;
/** From top to bottom, where nothing else decides; and how eager a medium is to run straight. */
const fromTop: readonly Medium[] = ['oxygen', 'current', 'hydrogen', 'lye', 'water'];
const straightness: Readonly<Record<Medium, number>> = { hydrogen: 20, oxygen: 10, current: 5, lye: 4, water: 3 };
/** Lines that find no clean way are laid first in another try, so many times. */
const MOST_TRIES = 5;
/** Tracks of one channel that are tried in every order. */
const MOST_ORDERED = 6;

/** px of words at 11 px, without anything to measure them: a mean advance, generous; wide signs count twice. */
export function wordsWidth(text: string): number {
    let width = 0;
    for (const c of text) width += c.codePointAt(0)! > 0x2e7f ? 11.5 : 6.4;
    return width;
}
export interface Placed {
    readonly item: Item;
    readonly symbol: Symbol;
    /** px, of the symbol's corner. */
    readonly x: number;
    readonly y: number;
    /** Of everything that belongs to it, from that corner. */
    readonly x0: number;
    readonly y0: number;
    readonly x1: number;
    readonly y1: number;
    /** Middle of the first line of its name, from that corner. */
    readonly label: readonly [number, number];
    readonly labels: readonly string[];
    readonly bubbles: readonly { readonly x: number; readonly y: number; readonly index: number }[];
}
export interface Route {
    readonly from: string;
    readonly to: string;
    readonly medium: Medium;
    readonly parts: readonly string[];
    readonly path: readonly (readonly [number, number])[];
    /** Where lines of one net part. */
    readonly joints: readonly (readonly [number, number])[];
    /** Lines that share a port are one net. */
    readonly net: string;
}
export interface Layout {
    readonly width: number;
    readonly height: number;
    readonly boxes: readonly Placed[];
    readonly routes: readonly Route[];
}

interface Box {
    readonly item: Item;
    readonly s: Symbol;
    x0: number;
    y0: number;
    x1: number;
    y1: number;
    label: [number, number];
    readonly labels: readonly string[];
    readonly bubbles: { x: number; y: number; index: number }[];
}
interface End extends Port {
    readonly box: number;
}
interface Join {
    readonly i: number;
    readonly f: string;
    readonly t: string;
    readonly medium: Medium;
    readonly parts: readonly string[];
    readonly a: End;
    readonly b: End;
    readonly weight: number;
    back: boolean;
    n: string;
}

function boxOf(item: Item): Box {
    const s = symbols[item.shape];
    const labels = [item.title, ...item.values];
    const marks = item.errors + item.warnings ? 1 : 0;
    const wide = Math.max(...labels.map(wordsWidth)) + marks * 26;
    const high = labels.length * LINE_HEIGHT;
    const box: Box = { item, s, x0: 0, y0: 0, x1: s.width, y1: s.height, label: [0, 0], labels, bubbles: [] };
    for (const [index, { name, acts }] of item.instruments.entries()) {
        const tap = s.tap ?? { x: s.width / 2, y: 0, side: 'N' as const };
        const x = tap.side === 'E' ? tap.x + REACH : tap.x;
        const y = tap.side === 'E' ? tap.y + index * BETWEEN_INSTRUMENTS : tap.y - BETWEEN_INSTRUMENTS - index * BETWEEN_INSTRUMENTS;
        box.bubbles.push({ x, y, index });
        box.x1 = Math.max(box.x1, x + INSTRUMENT_RADIUS + 6 + Math.max(wordsWidth(name), acts ? wordsWidth(`acts on ${acts}`) : 0) * 0.92);
        box.y0 = Math.min(box.y0, y - INSTRUMENT_RADIUS - 2);
        box.y1 = Math.max(box.y1, y + INSTRUMENT_RADIUS + 3);
    }
    const side: Edge = s.label ?? 'S';
    // Its name is part of the box, on a side that has no line.
    const [mx, top] = side === 'N' ? [s.width / 2, box.y0 - 5 - high + 11] : side === 'S' ? [s.width / 2, Math.max(s.height, s.tap?.side === 'E' ? 0 : box.y1) + 15] : side === 'E' ? [s.width + 7 + wide / 2, s.height / 2 + 4 - (high - LINE_HEIGHT) / 2] : [-7 - wide / 2, 8];
    box.label = [mx, top];
    box.x0 = Math.min(box.x0, mx - wide / 2 - 2);
    box.x1 = Math.max(box.x1, mx + wide / 2 + 2);
    box.y0 = Math.min(box.y0, top - 11);
    box.y1 = Math.max(box.y1, top + high - LINE_HEIGHT + 4);
    return box;
}

/** Where boxes and lines of a rig go. The same names and joints give the same places, in whatever order they stand. */
export function layoutOf(graph: Graph): Layout {
    if (!graph.items.length) return { width: 0, height: 0, boxes: [], routes: [] };
    const items = [...graph.items].sort((p, q) => (p.name < q.name ? -1 : 1));
    const lines = [...graph.lines].sort((p, q) => (`${p.medium} ${p.from} ${p.to}` < `${q.medium} ${q.from} ${q.to}` ? -1 : 1));
    const all = items.map(boxOf);
    const ends = new Map<string, End>();
    for (const [box, b] of all.entries()) for (const [p, port] of Object.entries(b.s.ports)) ends.set(`${b.item.name}.${p}`, { ...port, box });
    const claimed = new Set<string>();
    const joins: Join[] = [];
    // Of the lines that leave one port the straight way belongs to the one that leads to most.
    const reach = reachOf(lines);
    for (const l of [...lines].sort((p, q) => (reach.get(q.to) ?? 0) - (reach.get(p.to) ?? 0) || (`${p.from} ${p.to}` < `${q.from} ${q.to}` ? -1 : 1))) {
        const [a, b] = [ends.get(l.from), ends.get(l.to)];
        if (!a || !b) continue;
        joins.push({ i: joins.length, f: l.from, t: l.to, medium: l.medium, parts: l.parts, a, b, weight: claimed.has(l.from) ? 0 : straightness[l.medium], back: false, n: '' });
        claimed.add(l.from);
    }
    const { layer, order } = columnsOf(all, joins);
    const chains = chainsOf(all, joins);
    const y = heightsOf(all, joins, layer, order, chains);
    return placed(all, joins, layer, y, routed(all, joins, layer, y, chains.straight));
}
const partOf = (end: string) => end.slice(0, end.lastIndexOf('.'));
/** How many boxes come after each end, of its own medium. */
function reachOf(lines: Graph['lines']): Map<string, number> {
    const after = (name: string, medium: Medium, seen: Set<string>) => {
        for (const l of lines) if (l.medium === medium && partOf(l.from) === name && !seen.has(partOf(l.to))) after(partOf(l.to), medium, seen.add(partOf(l.to)));
        return seen;
    };
    return new Map(lines.map(l => [l.to, after(partOf(l.to), l.medium, new Set()).size]));
}

/** Columns by the longest way. A line that closes a loop, found depth first or by its port, does not count. */
function columnsOf(all: readonly Box[], joins: readonly Join[]): { layer: number[]; order: number[] } {
    const out = all.map((): Join[] => []);
    const fed = new Set<number>();
    for (const e of joins) {
        e.back = !!e.b.returns || !!e.a.returns;
        if (e.back) continue;
        out[e.a.box].push(e);
        fed.add(e.b.box);
    }
    const state: number[] = [];
    const layer = all.map(() => 0);
    const visit = (i: number) => {
        state[i] = 1;
        for (const e of out[i]) {
            if (!state[e.b.box]) visit(e.b.box);
            else if (state[e.b.box] === 1) e.back = true;
        }
        state[i] = 2;
    };
    const ids = all.map((_, i) => i);
    for (const i of [...ids.filter(i => !fed.has(i)), ...ids]) if (!state[i]) visit(i);
    for (let k = 0; k < all.length; k++) {
        let moved = false;
        for (const e of joins) {
            if (e.back || layer[e.b.box] > layer[e.a.box]) continue;
            layer[e.b.box] = layer[e.a.box] + 1;
            moved = true;
        }
        if (!moved) break;
    }
    // What only feeds something stands just before it, not at the far left.
    for (const i of ids) {
        const leaves = joins.filter(e => e.a.box === i && !e.back);
        if (leaves.length && !joins.some(e => e.b.box === i && !e.back)) layer[i] = Math.max(0, Math.min(...leaves.map(e => layer[e.b.box])) - 1);
    }
    const row = ids.map(i => Math.min(...joins.filter(e => e.a.box === i || e.b.box === i).map(e => fromTop.indexOf(e.medium)), fromTop.length));
    return { layer, order: ids.sort((p, q) => row[p] - row[q] || layer[p] - layer[q] || (all[p].item.name < all[q].item.name ? -1 : 1)) };
}

interface Chains {
    readonly straight: ReadonlySet<Join>;
    readonly run: readonly number[];
    readonly off: readonly number[];
    readonly runs: ReadonlyMap<number, readonly number[]>;
}
/** A run is a chain of boxes joined by straight lines: of each box its heaviest line from a right port to a left one. */
function chainsOf(all: readonly Box[], joins: readonly Join[]): Chains {
    const heaviest = (end: 'a' | 'b') => {
        const m = new Map<number, Join>();
        for (const e of joins) if (!e.back && e.a.side === 'E' && e.b.side === 'W' && !((m.get(e[end].box)?.weight ?? -1) >= e.weight)) m.set(e[end].box, e);
        return m;
    };
    const into = heaviest('b');
    const straight = new Set([...heaviest('a').values()].filter(e => e.weight > 0 && into.get(e.b.box) === e));
    const run = all.map((_, i) => i);
    const off = all.map(() => 0);
    const runs = new Map(run.map(i => [i, [i]]));
    for (const e of straight) {
        const [A, B] = [run[e.a.box], run[e.b.box]];
        const d = off[e.a.box] + e.a.y - e.b.y - off[e.b.box];
        for (const m of runs.get(B)!) {
            off[m] += d;
            run[m] = A;
            runs.get(A)!.push(m);
        }
        runs.delete(B);
    }
    return { straight, run, off, runs };
}

/** Which run lies above which follows from the ports; distances are lower bounds, solved from the top, then closed up towards the longest run. */
function heightsOf(all: readonly Box[], joins: readonly Join[], layer: readonly number[], order: readonly number[], { straight, run, off, runs }: Chains): number[] {
    const top = (i: number) => off[i] + all[i].y0;
    const bottom = (i: number) => off[i] + all[i].y1;
    const at = (s: End) => off[s.box] + s.y;
    const used = (i: number, side: Edge) => 12 * new Set(joins.flatMap(e => [e.a, e.b]).filter(s => s.box === i && s.side === side).map(s => s.x)).size;
    const span = new Map([...runs].map(([r, members]) => [r, new Map(members.map(m => [layer[m], [top(m) - used(m, 'N'), bottom(m) + used(m, 'S')]] as const))]));
    for (const e of straight) for (let l = layer[e.a.box] + 1; l < layer[e.b.box]; l++) span.get(run[e.a.box])!.set(l, [at(e.a) - 4, at(e.a) + 4]);
    const above = new Map([...runs.keys()].map(r => [r, new Set<number>()]));
    const rank = new Map(order.map((p, i) => [p, i]));
    const first = (r: number) => Math.min(...runs.get(r)!.map(m => rank.get(m)!));
    const main = (key: 'a' | 'b', box: number) => [...straight].find(e => e[key].box === box);
    for (const e of joins) {
        const [A, B, m, n] = [run[e.a.box], run[e.b.box], main('a', e.a.box), main('b', e.b.box)];
        if (A === B) continue;
        // What only levels two columns puts neither above the other.
        if (e.a.side === 'S' && e.b.side === 'S' && e.back) continue;
        const d = e.a.side === 'N' || (e.a.side !== 'S' && e.b.side === 'S') ? -1 : e.a.side === 'S' || e.b.side === 'N' ? 1 : e.back ? 0 : m ? (e.a.y < m.a.y ? -1 : 1) : n && e.b.y >= n.b.y ? -1 : 1;
        if (d < 0) above.get(A)!.add(B);
        else if (d > 0) above.get(B)!.add(A);
    }
    const seq: number[] = [];
    const left = new Set(runs.keys());
    while (left.size) {
        const ready = [...left].filter(r => [...above.get(r)!].every(p => !left.has(p)));
        const next = (ready.length ? ready : [...left]).sort((p, q) => first(p) - first(q))[0];
        seq.push(next);
        left.delete(next);
    }
    const place = new Map(seq.map((r, i) => [r, i]));
    const apart: [upper: number, lower: number, by: number][] = [];
    const need = (p: number, q: number, d: number) => {
        if (place.get(p)! < place.get(q)!) apart.push([p, q, d]);
    };
    for (const p of seq) for (const q of seq) for (const [l, [, low]] of span.get(p)!) if (span.get(q)!.has(l)) need(p, q, low - span.get(q)!.get(l)![0] + GAP);
    for (const e of joins) {
        for (const [s, t] of [[e.a, e.b], [e.b, e.a]]) {
            if (s.side === 'E' || s.side === 'W') continue;
            const [S, T] = [run[s.box], run[t.box]];
            if (t.side === 'N' || t.side === 'S') {
                const [u, v] = s.side === 'N' ? [t.box, s.box] : [s.box, t.box];
                if (s.side !== t.side) need(run[u], run[v], bottom(u) - top(v) + 30);
            } else if (s.side === 'S') need(S, T, bottom(s.box) - at(t) + 14);
            else {
                need(T, S, at(t) - top(s.box) + 14);
                for (const r of seq) {
                    const o = r !== T && r !== S && span.get(r)!.get(layer[s.box]);
                    if (o && place.get(r)! < place.get(S)!) need(r, T, o[1] - at(t) + 26);
                }
            }
        }
    }
    const Y = new Map(seq.map(r => [r, 0]));
    const longest = Math.max(...[...runs.values()].map(m => m.length));
    const anchor = seq.findIndex(r => runs.get(r)!.length === longest);
    for (const q of seq) for (const [p, r, d] of apart) if (r === q) Y.set(q, Math.max(Y.get(q)!, Y.get(p)! + d));
    for (const p of seq.slice(0, anchor).reverse()) {
        const room = Math.min(...apart.filter(a => a[0] === p).map(([, q, d]) => Y.get(q)! - d));
        if (room < Infinity) Y.set(p, Math.max(Y.get(p)!, room));
    }
    return all.map((_, i) => Y.get(run[i])! + off[i]);
}

/** A way out of a port: at the side, straight up or down, or up and then aside. */
interface Exit {
    readonly kind: 'side' | 'direct' | 'stub';
    /** Channel or column: 2l left of column l, 2l + 1 in it, 2l + 2 on its right. */
    readonly c: number;
    readonly p: number;
    readonly own?: number;
    readonly xo?: number;
    readonly dir?: number;
    readonly mid?: number;
    readonly far?: number;
    readonly box: number;
}
interface Upright {
    readonly n: string;
    readonly c: number;
    readonly xo: number | undefined;
    readonly y1: number;
    readonly y2: number;
    readonly ends: readonly (readonly [number, number])[];
    group?: { n: string; track: number; all: Upright[] };
}
interface Found {
    readonly s: Exit;
    readonly t: Exit;
    readonly y: number;
    sv?: Upright;
    tv?: Upright;
}
interface Routing {
    readonly found: ReadonlyMap<Join, Found>;
    readonly uprights: readonly Upright[];
}

/** Every other line leaves its port, goes up or down in a channel, runs level where it is free, and comes in likewise. */
function routed(all: readonly Box[], joins: readonly Join[], layer: readonly number[], y: readonly number[], straight: ReadonlySet<Join>, urgent: readonly Join[] = []): Routing {
    const H: { n: string; y: number; x1: number; x2: number }[] = [];
    const V: Upright[] = [];
    const root = new Map<string, string>();
    const find = (k: string): string => {
        let at = k;
        while (root.has(at) && root.get(at) !== at) at = root.get(at)!;
        return at;
    };
    const low = Math.min(...all.map((b, i) => y[i] + b.y0));
    const high = Math.max(...all.map((b, i) => y[i] + b.y1));
    for (const e of joins) {
        root.set(find(`a${e.f}`), find(`n${e.i}`));
        root.set(find(`b${e.t}`), find(`n${e.i}`));
    }
    const inColumn = new Map<number, [top: number, bottom: number, box: number][]>();
    for (const [i, b] of all.entries()) inColumn.set(layer[i], [...(inColumn.get(layer[i]) ?? []), [y[i] + b.y0, y[i] + b.y1, i]]);
    const open = (l: number, p: number, q: number, but?: number) => !(inColumn.get(l) ?? []).some(([t, u, i]) => i !== but && Math.min(p, q) < u + 9 && Math.max(p, q) > t - 9);
    let tight = false;
    const clash = (at: number, x1: number, x2: number, n: string) => !tight && H.some(h => h.n !== n && Math.abs(h.y - at) < (h.x1 < x2 && h.x2 > x1 ? TRACK : (h.x1 === x2 && x2 % 2 === 0) || (h.x2 === x1 && x1 % 2 === 0) ? 5 : 0));
    const level = (at: number, x1: number, x2: number, n: string) => {
        for (let x = x1 + 1; x < x2; x++) if (x % 2 && !open((x - 1) / 2, at, at)) return false;
        return !clash(at, x1, x2, n);
    };
    const exits = (s: End): Exit[] => {
        const c = 2 * layer[s.box];
        const b = all[s.box];
        const at = y[s.box] + s.y;
        if (s.side === 'E' || s.side === 'W') return [{ kind: 'side', c: s.side === 'E' ? c + 2 : c, p: at, own: s.side === 'E' ? -1 : 1, box: s.box }];
        const dir = s.side === 'N' ? -1 : 1;
        const edge = y[s.box] + (dir < 0 ? b.y0 : b.y1);
        return [{ kind: 'direct', c: c + 1, xo: s.x - b.s.width / 2, p: edge, dir, box: s.box }, ...[14, 24].flatMap(d => [c + 2, c].map((x): Exit => ({ kind: 'stub', c: x, mid: c + 1, p: edge + dir * d, far: d, own: x > c ? -1 : 1, box: s.box })))];
    };
    for (const e of joins) {
        e.n = find(`n${e.i}`);
        if (straight.has(e)) continue;
        for (const s of [e.a, e.b]) {
            if (s.side !== 'E' && s.side !== 'W') continue;
            const m = 2 * layer[s.box] + 1;
            H.push({ n: e.n, y: y[s.box] + s.y, x1: s.side === 'E' ? m : m - 1, x2: s.side === 'E' ? m + 1 : m });
        }
    }
    for (const e of straight) H.push({ n: e.n, y: y[e.a.box] + e.a.y, x1: 2 * layer[e.a.box] + 1, x2: 2 * layer[e.b.box] + 1 });
    const grid = Array.from({ length: Math.ceil((high - low + 150) / 12) }, (_, k) => Math.round(low - 60 + 12 * k));
    const found = new Map<Join, Found>();
    /** Of getting from a port to the level at a height; Infinity where it cannot be. */
    const costOf = (u: Exit, at: number, n: string): number => {
        const d = Math.abs(u.p - at);
        const within = (p: number, q: number) => Math.min(u.p, at) < q && Math.max(u.p, at) > p;
        let cost = d;
        if (u.kind === 'direct') {
            if ((at - u.p) * u.dir! < 8 || !open((u.c - 1) / 2, u.p + u.dir! * 2, at, u.box) || V.some(v => v.n !== n && v.c === u.c && Math.abs(v.xo! - u.xo!) < 8 && within(v.y1, v.y2))) return Infinity;
            cost += 4;
        } else {
            if (d > 0.1) cost += d < TRACK ? Infinity : BEND;
            if (u.kind === 'stub') {
                if (clash(u.p, Math.min(u.c, u.mid! - 0.5), Math.max(u.c, u.mid! + 0.5), n) || (inColumn.get((u.mid! - 1) / 2) ?? []).some(([t, b, i]) => i !== u.box && u.p > t - 4 && u.p < b + 4)) return Infinity;
                cost += 26 + u.far!;
            }
        }
        return cost + CROSSING * H.filter(h => h.n !== n && h.x1 < u.c && h.x2 > u.c && h.y > Math.min(u.p, at) && h.y < Math.max(u.p, at)).length;
    };
    for (const e of joins.filter(j => !straight.has(j)).sort((p, q) => Number(urgent.includes(q)) - Number(urgent.includes(p)) || q.weight - p.weight || p.i - q.i)) {
        let best: (Found & { cost: number }) | undefined;
        const { n } = e;
        const [ours, theirs] = [exits(e.a), exits(e.b)];
        const heights = new Set([...[...ours, ...theirs].map(u => u.p), ...grid]);
        // Rather share a track with another net than cross a box.
        for (const share of [false, true]) {
            if (best) break;
            tight = share;
            for (const at of heights) {
                for (const s of ours) {
                    const start = costOf(s, at, n);
                    if (start === Infinity) continue;
                    for (const t of theirs) {
                        const [x1, x2] = [Math.min(s.c, t.c), Math.max(s.c, t.c)];
                        let cost = start + costOf(t, at, n) + (x2 - x1) * 8;
                        if (cost === Infinity || (best && cost - 30 >= best.cost) || !level(at, x1, x2, n) || (x1 !== x2 && [s, t].some(u => u.kind === 'direct' && !open((u.c - 1) / 2, at, at)))) continue;
                        cost += CROSSING * V.filter(v => v.n !== n && v.c > x1 && v.c < x2 && v.y1 < at && v.y2 > at).length - (H.some(h => h.n === n && h.y === at && h.x1 < x2 && h.x2 > x1) ? 30 : 0);
                        if (!best || cost < best.cost) best = { cost, s, t, y: at };
                    }
                }
            }
        }
        if (tight && !urgent.includes(e) && urgent.length < MOST_TRIES) return routed(all, joins, layer, y, straight, [...urgent, e]);
        const { s, t, y: at } = best ?? { s: ours[0], t: theirs[0], y: ours[0].p };
        const way: Found = { s, t, y: at };
        found.set(e, way);
        H.push({ n, y: at, x1: Math.min(...[s, t].map(u => u.c - (u.c % 2) / 2)), x2: Math.max(...[s, t].map(u => u.c + (u.c % 2) / 2)) });
        for (const [u, o, key] of [[s, t, 'sv'], [t, s, 'tv']] as const) {
            if (u.kind === 'stub') H.push({ n, y: u.p, x1: Math.min(u.mid! - 0.5, u.c), x2: Math.max(u.mid! + 0.5, u.c) });
            if (Math.abs(u.p - at) > 0.1) {
                const upright: Upright = { n, c: u.c, xo: u.xo, y1: Math.min(u.p, at), y2: Math.max(u.p, at), ends: [[u.p, u.own ?? 0], [at, Math.sign(o.c - u.c) || -(u.own ?? 0)]] };
                way[key] = upright;
                V.push(upright);
            }
        }
    }
    return { found, uprights: V };
}

function orders(k: number): number[][] {
    return k < 2 ? [Array.from({ length: k }, (_, i) => i)] : orders(k - 1).flatMap(p => Array.from({ length: k }, (_, i) => [...p.slice(0, i), k - 1, ...p.slice(i)]));
}
/** Tracks of a channel in the order with the fewest crossings, then places in px, then the dots where lines of one net part. */
function placed(all: readonly Box[], joins: readonly Join[], layer: readonly number[], y: readonly number[], { found, uprights }: Routing): Layout {
    const channels = new Map<number, { n: string; track: number; all: Upright[] }[]>();
    for (const v of uprights) {
        if (v.c % 2) continue;
        const list = channels.get(v.c) ?? [];
        channels.set(v.c, list);
        let group = list.find(g => g.n === v.n);
        if (!group) list.push((group = { n: v.n, track: 0, all: [] }));
        group.all.push(v);
        v.group = group;
    }
    for (const list of channels.values()) {
        const price = (o: readonly number[]) => o.reduce((sum, gi, at) => sum + list[gi].all.reduce((s, v) => s + v.ends.reduce((r, [h, dir]) => r + o.reduce((q, gj, bt) => q + (gj !== gi && (bt - at) * dir > 0 ? list[gj].all.reduce((k, u) => k + (u.y1 < h && u.y2 > h ? 1 : u.y1 === h || u.y2 === h ? 3 : 0), 0) : 0), 0), 0), 0), 0);
        const tried = list.length > MOST_ORDERED ? [list.map((_, i) => i)] : orders(list.length);
        const prices = tried.map(price);
        for (const [k, g] of tried[prices.indexOf(Math.min(...prices))].entries()) list[g].track = k;
    }
    const columns = Math.max(...layer) + 1;
    const centre: number[] = [];
    const channel: number[] = [];
    let x = 0;
    for (let l = 0; l <= columns; l++) {
        const n = channels.get(2 * l)?.length ?? 0;
        const members = all.filter((_, i) => layer[i] === l);
        channel[2 * l] = x + 13;
        x += n ? 26 + (n - 1) * TRACK : l ? 26 : 0;
        if (l === columns) continue;
        centre[l] = x + Math.max(0, ...members.map(b => b.s.width / 2 - b.x0));
        x = centre[l] + Math.max(0, ...members.map(b => b.x1 - b.s.width / 2));
    }
    const up = Math.min(...all.map((b, i) => y[i] + b.y0), ...[...found.values()].map(r => r.y));
    const left = all.map((b, i) => centre[layer[i]] - b.s.width / 2);
    const port = (s: End): [number, number] => [left[s.box] + s.x, y[s.box] + s.y - up];
    const routes = joins.map(e => {
        const [p, q] = [port(e.a), port(e.b)];
        const way = found.get(e);
        const leg = (u: Exit, v: Upright | undefined, [px]: readonly [number, number]): [number, number][] => {
            const at = way!.y - up;
            const out: [number, number][] = u.kind === 'side' ? [] : u.kind === 'stub' ? [[px, u.p - up]] : [[px, at]];
            const t = v?.group && channel[u.c] + v.group.track * TRACK;
            return t === undefined ? out : [...out, [t, u.p - up], [t, at]];
        };
        const path: [number, number][] = way ? [p, ...leg(way.s, way.sv, p), ...leg(way.t, way.tv, q).reverse(), q] : [p, q];
        return { medium: e.medium, parts: e.parts, from: e.f, to: e.t, net: e.n, joints: [] as [number, number][], path: straightened(path) };
    });
    for (const r of routes) {
        for (const [vx, vy] of r.path.slice(1, -1)) {
            const ways = new Set<string>();
            for (const o of routes) {
                if (o.net !== r.net) continue;
                for (let i = 1; i < o.path.length; i++) {
                    const [a, b] = [o.path[i - 1], o.path[i]];
                    const on = (a[0] === b[0] ? vx === a[0] : vy === a[1]) && vx >= Math.min(a[0], b[0]) && vx <= Math.max(a[0], b[0]) && vy >= Math.min(a[1], b[1]) && vy <= Math.max(a[1], b[1]);
                    if (on) for (const w of [a, b]) if (w[0] !== vx || w[1] !== vy) ways.add(`${Math.sign(w[0] - vx)},${Math.sign(w[1] - vy)}`);
                }
            }
            if (ways.size > 2) r.joints.push([vx, vy]);
        }
    }
    return {
        width: x, height: Math.max(...all.map((b, i) => y[i] + b.y1 - up), ...routes.flatMap(r => r.path.map(p => p[1]))), routes,
        boxes: all.map((b, i) => ({ item: b.item, symbol: b.s, x: left[i], y: y[i] - up, x0: b.x0, y0: b.y0, x1: b.x1, y1: b.y1, label: b.label, labels: b.labels, bubbles: b.bubbles })),
    };
}
/** Without points in the middle of a straight stretch. */
function straightened(path: readonly [number, number][]): [number, number][] {
    return path.filter((q, i) => i === 0 || i === path.length - 1 || !((path[i - 1][0] === q[0] && q[0] === path[i + 1][0]) || (path[i - 1][1] === q[1] && q[1] === path[i + 1][1])));
}
