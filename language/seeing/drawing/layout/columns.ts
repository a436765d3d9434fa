/**
 * In which column a part stands: as far right as the longest way of current or gas to it. What carries only lye or water stands by what
 * it serves. What comes after the buffer is compressed gas and begins a second band below.
 */
import type { Graph, Line } from '../graph.js';

export interface Columns {
    readonly column: readonly number[];
    /** 0: up to the buffer; 1: behind it; 2: on no path. */
    readonly band: readonly number[];
    /** Lines that lead forwards. */
    readonly forward: ReadonlySet<Line>;
}
const leading = ['current', 'hydrogen', 'oxygen'];
const buffers = new Set(['bag', 'gasometer']);

/** A column for each part, from 0. Always ends: lines that close a circle lead back. */
export function columnsOf(graph: Graph): Columns {
    const { nodes, lines } = graph;
    const n = nodes.length;
    const led = lines.filter(l => leading.includes(l.medium)).sort((a, b) => leading.indexOf(a.medium) - leading.indexOf(b.medium));
    const out = nodes.map((): Line[] => []);
    const into = nodes.map((): Line[] => []);
    const reaches = (from: number, to: number): boolean => {
        const seen = new Set([from]);
        for (const i of seen) {
            if (i === to) return true;
            for (const l of out[i]) seen.add(l.to);
        }
        return false;
    };
    const forward = new Set<Line>();
    for (const l of led) {
        if (reaches(l.to, l.from)) continue;
        out[l.from].push(l);
        into[l.to].push(l);
        forward.add(l);
    }
    const order: number[] = [];
    const waits = into.map(list => list.length);
    for (const i of nodes.keys()) if (!waits[i]) order.push(i);
    for (let k = 0; k < order.length; k++) for (const l of out[order[k]]) if (!--waits[l.to]) order.push(l.to);

    const band = bandsOf(graph, forward, out, into, order);
    const column = nodes.map(() => 0);
    const within = (l: Line) => band[l.from] === band[l.to];
    for (const i of order) for (const l of out[i]) if (within(l)) column[l.to] = Math.max(column[l.to], column[i] + 1);
    // What leads to the cells, or from nowhere, stands close to what it feeds.
    const fromStack = new Set(nodes.flatMap((node, i) => (node.kind === 'stack' ? [i] : [])));
    for (const i of fromStack) for (const l of out[i]) fromStack.add(l.to);
    for (const i of [...order].reverse()) {
        const next = out[i].filter(within).map(l => column[l.to] - 1);
        if (next.length && !fromStack.has(i)) column[i] = Math.max(column[i], Math.min(...next));
    }
    placeByOthers(graph, column, band, nodes.map((_, i) => out[i].length + into[i].length > 0));
    for (let i = 0; i < n; i++) if (!lines.some(l => l.from === i || l.to === i)) band[i] = 2;
    const least = Math.min(0, ...column);
    return { column: column.map(c => c - least), band, forward };
}
/** Whatever gets its gas only by way of a compressor behind the buffer, or behind the cells where there is no buffer. */
function bandsOf({ nodes }: Graph, forward: ReadonlySet<Line>, out: readonly (readonly Line[])[], into: readonly (readonly Line[])[], order: readonly number[]): number[] {
    const cuts = new Set<Line>();
    for (const [i, node] of nodes.entries()) {
        if (node.kind !== 'compressor' || !into[i].length) continue;
        let cut = into[i][0];
        const seen = new Set([i]);
        for (let l: Line | undefined = into[i][0]; l && !seen.has(l.from); l = into[l.from][0]) {
            seen.add(l.from);
            if (buffers.has(nodes[l.from].kind)) {
                cut = l;
                break;
            }
        }
        cuts.add(cut);
    }
    const band = nodes.map(() => 0);
    if (!cuts.size) return band;
    const low = new Set(order.filter(i => !into[i].length));
    for (const i of low) for (const l of out[i]) if (!cuts.has(l)) low.add(l.to);
    const touched = new Set([...forward].flatMap(l => [l.from, l.to]));
    for (const i of nodes.keys()) if (touched.has(i) && !low.has(i)) band[i] = 1;
    for (const i of [...order].reverse()) if (band[i] && out[i].length && out[i].every(l => !band[l.to])) band[i] = 0;
    return band;
}
/** Parts of the lye and the water: under what feeds them; what leads back to the left is drawn the other way round. */
function placeByOthers({ nodes, lines }: Graph, column: number[], band: number[], placed: boolean[]): void {
    for (let round = 0; round < nodes.length; round++) {
        let moved = false;
        for (const l of lines) {
            if (placed[l.from] === placed[l.to]) continue;
            moved = true;
            if (placed[l.from]) {
                const back = l.medium === 'lye' && lines.some(m => m.from === l.to && m.medium === 'lye' && placed[m.to] && column[m.to] < column[l.from]);
                nodes[l.to].flipped = back;
                column[l.to] = back ? column[l.from] : column[l.from] + 1;
                band[l.to] = band[l.from];
                placed[l.to] = true;
            } else {
                column[l.from] = column[l.to] - 1;
                band[l.from] = band[l.to];
                placed[l.from] = true;
            }
        }
        if (moved) continue;
        // A circuit of its own begins at its first part in the text.
        const first = lines.find(l => !placed[l.from] && !placed[l.to]);
        if (!first) return;
        placed[first.from] = true;
    }
}
