/**
 * The way of each line over a coarse grid: between two columns runs a channel up and down, between two rows one from left to right, and
 * lines keep to channels or pass an empty cell; so none can go through a part. A channel takes any number of lines: which track each
 * gets is settled afterwards. Crossings and bends are priced. Lines of one port are one net and may share their way.
 *
 * Places: x = 2 c + 1 is the middle of column c, even x the channels beside it; y = 2 r + 1 is the main line of row r, even y the
 * channels above and below.
 */
import TinyQueue from 'tinyqueue';
import type { Graph, Line } from '../graph.js';
import type { Port } from '../symbols/define.js';

export interface Place {
    readonly x: number;
    readonly y: number;
}
export interface Way {
    readonly line: Line;
    readonly net: number;
    readonly out: Port;
    readonly in: Port;
    readonly places: readonly Place[];
}
/** A place with the direction in which it was come to (0 level, 1 upright), and what that cost. */
interface Reached {
    readonly state: number;
    readonly cost: number;
}
// Prices of a step, own choice: tried on drawn rigs until crossings were fewer than bends are worth.
const BEND = 1.6;
const CROSSING = 5;
/** Along the way of its own net a line costs next to nothing. */
const SHARED = 0.15;

/** @param straight  lines within a row, which go first and never give way */
export function waysOf(graph: Graph, column: readonly number[], row: readonly number[], straight: ReadonlySet<Line>, ends: (l: Line) => readonly [Port, Port]): Way[] {
    const { nodes, lines } = graph;
    const width = 2 * (Math.max(0, ...column) + 1) + 1;
    const height = 2 * (Math.max(0, ...row) + 1) + 1;
    const size = width * height;
    const filled = new Uint8Array(size);
    for (const i of nodes.keys()) filled[(2 * row[i] + 1) * width + 2 * column[i] + 1] = 1;
    const nets = netsOf(lines, ends);
    /** Nets on the step right of, and below, each place. */
    const right: (number[] | undefined)[] = new Array(size);
    const below: (number[] | undefined)[] = new Array(size);
    const at = (p: Place) => p.y * width + p.x;
    const put = (way: Way, add: boolean) => {
        for (let k = 1; k < way.places.length; k++) {
            const [a, b] = [at(way.places[k - 1]), at(way.places[k])];
            const list = Math.abs(a - b) === 1 ? right : below;
            const i = Math.min(a, b);
            if (add) (list[i] ??= []).push(way.net);
            else list[i]!.splice(list[i]!.indexOf(way.net), 1);
        }
    };
    const has = (list: number[] | undefined, net: number) => list !== undefined && list.includes(net);
    const others = (one: number[] | undefined, two: number[] | undefined, net: number): number => {
        if (!one?.length || !two?.length) return 0;
        let count = 0;
        for (let k = 0; k < one.length; k++) if (one[k] !== net && one.indexOf(one[k]) === k && two.includes(one[k])) count++;
        return count;
    };
    const cost = new Float64Array(2 * size);
    const from = new Int32Array(2 * size);
    const find = (line: Line, net: number): Place[] => {
        const [p, q] = ends(line);
        const [a, b] = [(2 * row[line.from] + 1) * width + 2 * column[line.from] + 1, (2 * row[line.to] + 1) * width + 2 * column[line.to] + 1];
        const off = (port: Port) => (port.side === 'E' ? 1 : port.side === 'W' ? -1 : port.side === 'S' ? width : -width);
        const [start, goal] = [a + off(p), b + off(q)];
        const [leaves, arrives] = [p.side === 'E' || p.side === 'W' ? 0 : 1, q.side === 'E' || q.side === 'W' ? 0 : 1];
        cost.fill(Infinity);
        const open = new TinyQueue<Reached>([], (a, b) => a.cost - b.cost);
        const s = 2 * start + leaves;
        cost[s] = 0;
        from[s] = -1;
        open.push({ state: s, cost: 0 });
        let end = -1;
        for (let next = open.pop(); next; next = open.pop()) {
            const { state } = next;
            const [i, way, base] = [state >> 1, state & 1, cost[state]];
            if (next.cost > base) continue;
            if (i === goal && way === arrives) {
                end = state;
                break;
            }
            // Turning on the spot.
            const turned = state ^ 1;
            if (i % width % 2 === 0 || ((i / width) | 0) % 2 === 0) {
                if (base + BEND < cost[turned]) {
                    cost[turned] = base + BEND;
                    from[turned] = state;
                    open.push({ state: turned, cost: cost[turned] });
                }
            }
            const [x, y] = [i % width, (i / width) | 0];
            for (const step of way === 0 ? [1, -1] : [width, -width]) {
                if (way === 0 ? (step === 1 ? x === width - 1 : x === 0) : step > 0 ? y === height - 1 : y === 0) continue;
                const j = i + step;
                const [jx, jy] = [x + (way === 0 ? step : 0), y + (way === 1 ? Math.sign(step) : 0)];
                // The middle of a cell is passed level only, and only where nothing stands.
                if (jx % 2 === 1 && jy % 2 === 1 && (way === 1 || filled[j])) continue;
                if (x % 2 === 1 && y % 2 === 1 && way === 1) continue;
                // Upwards and downwards only in a channel.
                if (way === 1 && x % 2 === 1) continue;
                const list = way === 0 ? right : below;
                const edge = Math.min(i, j);
                const own = has(list[edge], net);
                // On the main line of a row there is room for one net.
                if (way === 0 && y % 2 === 1 && list[edge]?.some(o => o !== net)) continue;
                let price = own ? SHARED : 1;
                if (!own) {
                    price += CROSSING * (way === 0 ? others(below[j - width], below[j], net) : others(right[j - 1], right[j], net));
                    // A turn of another line here may mean a crossing, as the tracks fall.
                    const beside = way === 0 ? (below[j]?.length ?? 0) + (below[j - width]?.length ?? 0) : (right[j]?.length ?? 0) + (right[j - 1]?.length ?? 0);
                    price += 0.25 * beside;
                }
                const on = 2 * j + way;
                if (base + price < cost[on]) {
                    cost[on] = base + price;
                    from[on] = state;
                    open.push({ state: on, cost: cost[on] });
                }
            }
        }
        const places: Place[] = [placeOf(b, width)];
        for (let state = end; state >= 0; state = from[state]) {
            const place = placeOf(state >> 1, width);
            const last = places.at(-1)!;
            if (place.x !== last.x || place.y !== last.y) places.push(place);
        }
        places.push(placeOf(a, width));
        return places.reverse();
    };
    const ways = new Map<Line, Way>();
    const lay = (line: Line) => {
        const [out, into] = ends(line);
        const way: Way = { line, net: nets.get(line)!, out, in: into, places: find(line, nets.get(line)!) };
        ways.set(line, way);
        put(way, true);
    };
    const length = (l: Line) => Math.abs(column[l.from] - column[l.to]) + 2 * Math.abs(row[l.from] - row[l.to]);
    const order = lines.map((l, i) => [l, i] as const).sort(([a, i], [b, k]) => Number(straight.has(b)) - Number(straight.has(a)) || length(a) - length(b) || i - k).map(([l]) => l);
    for (const l of order) lay(l);
    // Each once more, now that it is known where all others run.
    for (let round = 0; round < (lines.length > 150 ? 1 : 2); round++) {
        for (const l of order) {
            if (straight.has(l)) continue;
            put(ways.get(l)!, false);
            lay(l);
        }
    }
    return lines.map(l => ways.get(l)!);
}
const placeOf = (i: number, width: number): Place => ({ x: i % width, y: (i / width) | 0 });
/** Lines that share a port, directly or by way of others, are one net. */
function netsOf(lines: readonly Line[], ends: (l: Line) => readonly [Port, Port]): Map<Line, number> {
    const root = new Map<string, string>();
    const find = (k: string): string => {
        let r = k;
        while (root.has(r)) r = root.get(r)!;
        return r;
    };
    const keys = lines.map(l => {
        const [p, q] = ends(l);
        return [`${l.from} ${p.side}${p.x ?? 0}`, `${l.to} ${q.side}${q.x ?? 0}`].map(k => `${k} ${l.medium}`);
    });
    for (const [a, b] of keys) {
        const [x, y] = [find(a), find(b)];
        if (x !== y) root.set(x, y);
    }
    const numbers = new Map<string, number>();
    return new Map(lines.map((l, i) => {
        const r = find(keys[i][0]);
        if (!numbers.has(r)) numbers.set(r, numbers.size);
        return [l, numbers.get(r)!];
    }));
}
