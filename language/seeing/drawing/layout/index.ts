/** Places for all parts and lines of a rig: columns, rows, ways, tracks, then real lengths. */
import type { Graph, Line, Node } from '../graph.js';
import type { Port } from '../symbols/define.js';
import { boxOf, type Box } from './boxes.js';
import { columnsOf } from './columns.js';
import { waysOf } from './route.js';
import { rowsOf } from './rows.js';
import { tracksOf } from './tracks.js';

export interface Placed {
    readonly node: Node;
    readonly box: Box;
    /** Middle of its symbol, height of its main line. */
    readonly x: number;
    readonly y: number;
}
export interface Drawn {
    readonly line: Line;
    readonly net: number;
    readonly points: readonly (readonly [x: number, y: number])[];
}
export interface Layout {
    readonly width: number;
    readonly height: number;
    readonly placed: readonly Placed[];
    readonly drawn: readonly Drawn[];
    /** Where lines of one net part. */
    readonly dots: readonly { readonly x: number; readonly y: number; readonly net: number }[];
}
const TRACK = 9;
/** Beside the outermost track of a channel. */
const [BESIDE, ABOVE] = [13, 8];
/** Least room between columns, between rows. */
const [APART, BELOW] = [26, 16];

/** Places in px, from the upper left corner of the flow. It hangs on names, kinds and joints alone. */
export function layOut(graph: Graph): Layout {
    const columns = columnsOf(graph);
    const { row, count, straight } = rowsOf(graph, columns);
    const { column } = columns;
    const { nodes } = graph;
    const ports = new Map<Line, readonly [Port, Port]>();
    const used = nodes.map(() => new Map<string, Port>());
    for (const l of graph.lines) {
        const pair = [portAt(nodes[l.from], l.from, l.out, l, true), portAt(nodes[l.to], l.to, l.in, l, false)] as const;
        ports.set(l, pair);
        for (const [i, p] of [[l.from, pair[0]], [l.to, pair[1]]] as const) used[i].set(`${p.side}${p.x ?? 0}`, p);
    }
    /** A flipped part is fed from the right; at a tee, what is not straight leaves upwards or downwards. */
    function portAt(node: Node, i: number, key: string, l: Line, leaves: boolean): Port {
        const port = node.ports.get(key)!;
        if (node.kind === 'tee' && (port.side === 'E' || port.side === 'W') && !straight.has(l)) {
            const other = leaves ? l.to : l.from;
            const taken = graph.lines.some(m => straight.has(m) && (leaves ? m.from === i : m.to === i));
            if (taken && row[other] !== row[i]) return { side: row[other] > row[i] || node.mounts.length ? 'S' : 'N', x: 0 };
        }
        if (!node.flipped || (port.side !== 'E' && port.side !== 'W')) return port;
        return { ...port, side: port.side === 'E' ? 'W' : 'E' };
    }
    const ways = waysOf(graph, column, row, straight, l => ports.get(l)!);
    const { stretches, level, upright } = tracksOf(ways);
    const boxes = nodes.map((n, i) => boxOf(n, used[i].values()));

    const across = Math.max(-1, ...column) + 1;
    const middle: number[] = [];
    const between: number[] = [];
    let x = 0;
    for (let c = 0; c <= across; c++) {
        const tracks = upright.get(2 * c) ?? 0;
        between[c] = x + BESIDE;
        x += tracks ? Math.max(c && c < across ? APART : 0, 2 * BESIDE + (tracks - 1) * TRACK) : c && c < across ? APART : 0;
        if (tracks === 1 && c) between[c] = x - Math.max(APART, 2 * BESIDE) / 2;
        if (c === across) break;
        const own = boxes.filter((_, i) => column[i] === c);
        const left = Math.max(0, ...own.map(b => b.left));
        middle[c] = x + left;
        x += left + Math.max(0, ...own.map(b => b.right));
    }
    const main: number[] = [];
    const over: number[] = [];
    let y = 0;
    for (let r = 0; r <= count; r++) {
        const tracks = level.get(2 * r) ?? 0;
        over[r] = y + ABOVE;
        y += tracks ? 2 * ABOVE + (tracks - 1) * TRACK : r && r < count ? BELOW : 0;
        if (r === count) break;
        const own = boxes.filter((_, i) => row[i] === r);
        const up = Math.max(0, ...own.map(b => b.up));
        main[r] = y + up;
        y += up + Math.max(0, ...own.map(b => b.down));
    }
    const edge = (i: number, p: Port): readonly [number, number] => {
        const { half, up, down } = nodes[i].symbol;
        const [cx, cy] = [middle[column[i]], main[row[i]]];
        return p.side === 'E' ? [cx + half, cy] : p.side === 'W' ? [cx - half, cy] : p.side === 'S' ? [cx + (p.x ?? 0), cy + down] : [cx + (p.x ?? 0), cy - up];
    };
    const drawn = ways.map((w): Drawn => {
        const list = stretches.get(w)!;
        const [start, end] = [edge(w.line.from, w.out), edge(w.line.to, w.in)];
        const at = list.map((s, k) => {
            if (s.piece) return s.level ? over[s.at / 2] + s.piece.track * TRACK : between[s.at / 2] + s.piece.track * TRACK;
            if (s.level) return main[(s.at - 1) / 2];
            return k === 0 ? start[0] : end[0];
        });
        const points: [number, number][] = [[...start]];
        for (let k = 1; k < list.length; k++) points.push(list[k].level ? [at[k - 1], at[k]] : [at[k], at[k - 1]]);
        points.push([...end]);
        return { line: w.line, net: w.net, points };
    });
    return {
        width: x, height: y, drawn, dots: dotsOf(drawn),
        placed: nodes.map((node, i) => ({ node, box: boxes[i], x: middle[column[i]], y: main[row[i]] })),
    };
}
function dotsOf(drawn: readonly Drawn[]): Layout['dots'] {
    const byNet = new Map<number, Drawn[]>();
    for (const d of drawn) byNet.set(d.net, [...(byNet.get(d.net) ?? []), d]);
    const dots: { x: number; y: number; net: number }[] = [];
    for (const lines of byNet.values()) {
        if (lines.length < 2) continue;
        const corners = new Map(lines.flatMap(d => d.points.slice(1, -1).map(p => [p.join(), p] as const)));
        for (const [x, y] of corners.values()) {
            const ways = new Set<string>();
            for (const { points } of lines) {
                for (let k = 1; k < points.length; k++) {
                    const [a, b] = [points[k - 1], points[k]];
                    const on = a[0] === b[0] ? a[0] === x && y >= Math.min(a[1], b[1]) && y <= Math.max(a[1], b[1]) : a[1] === y && x >= Math.min(a[0], b[0]) && x <= Math.max(a[0], b[0]);
                    if (on) for (const p of [a, b]) if (p[0] !== x || p[1] !== y) ways.add(`${Math.sign(p[0] - x)} ${Math.sign(p[1] - y)}`);
                }
            }
            if (ways.size > 2) dots.push({ x, y, net: lines[0].net });
        }
    }
    return dots;
}
