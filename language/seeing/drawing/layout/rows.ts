/** In which row a part stands. Parts joined by lines from right to left port make a run, which is dead straight and keeps its row to itself. */
import type { Graph, Line, Node } from '../graph.js';
import type { Columns } from './columns.js';

export interface Rows {
    readonly row: readonly number[];
    readonly count: number;
    /** Lines within a run. */
    readonly straight: ReadonlySet<Line>;
}
const first = ['hydrogen', 'oxygen', 'current', 'lye', 'water'];
interface Run {
    readonly members: number[];
    readonly from: number;
    readonly to: number;
    readonly band: number;
    readonly rank: number;
}

/** A row for each part, from 0. */
export function rowsOf(graph: Graph, { column, band, forward }: Columns): Rows {
    const { nodes, lines } = graph;
    const straight = new Set<Line>();
    const next = new Map<number, number>();
    const before = new Map<number, number>();
    const useful = leadingTo(graph, forward, n => uses.has(n.kind));
    const out = leadingTo(graph, forward, n => n.end);
    // The straight way is for what is used or kept; among equals for what the text says first.
    for (const l of [...lines].sort((a, b) => first.indexOf(a.medium) - first.indexOf(b.medium) || Number(useful.has(b.to)) - Number(useful.has(a.to)))) {
        const [a, b] = [nodes[l.from], nodes[l.to]];
        if (next.has(l.from) || before.has(l.to) || a.flipped || b.flipped || band[l.from] !== band[l.to] || column[l.to] <= column[l.from]) continue;
        if (a.ports.get(l.out)?.side !== 'E' || b.ports.get(l.in)?.side !== 'W') continue;
        if (!forward.has(l) && ['hydrogen', 'oxygen', 'current'].includes(l.medium)) continue;
        next.set(l.from, l.to);
        before.set(l.to, l.from);
        straight.add(l);
    }
    const runs: Run[] = [];
    for (const i of nodes.keys()) {
        if (before.has(i)) continue;
        const members = [i];
        for (let j = next.get(i); j !== undefined; j = next.get(j)) members.push(j);
        runs.push({ members, from: column[i], to: column[members.at(-1)!], band: band[i], rank: rankOf(graph, members, band[i] === 1 && members.some(m => out.has(m) && !useful.has(m))) });
    }
    const row = nodes.map(() => 0);
    let top = 0;
    for (const b of [0, 1, 2]) {
        const own = runs.filter(r => r.band === b);
        if (!own.length) continue;
        const main = own.filter(r => r.rank === 0).sort((a, c) => c.members.length - a.members.length || a.members[0] - c.members[0])[0];
        // Row by row away from the main run: first what belongs close to it; among equals what begins further right, so that what
        // begins left goes around it.
        const sorted = own.filter(r => r !== main).sort((a, c) => Math.abs(a.rank) - Math.abs(c.rank) || c.from - a.from || a.members[0] - c.members[0]);
        const taken = new Map<number, Run[]>();
        const put = (r: Run, level: number, step: number) => {
            let at = level;
            while (taken.get(at)?.some(o => o.from <= r.to && o.to >= r.from)) at += step;
            taken.set(at, [...(taken.get(at) ?? []), r]);
            for (const m of r.members) row[m] = at;
        };
        if (main) put(main, 0, 1);
        // Branches of the oxygen leave it upwards, out of the way of what goes from side to side below it.
        const oxygen = () => Math.min(0, ...sorted.filter(r => r.rank === OXYGEN).map(r => row[r.members[0]]));
        for (const r of sorted) put(r, r.rank === OXYGEN - 1 ? oxygen() - 1 : r.rank < 0 ? -1 : 1, r.rank < 0 ? -1 : 1);
        const used = [...taken.keys()].sort((x, y) => x - y);
        for (const r of own) for (const m of r.members) row[m] = top + used.indexOf(row[m]);
        top += used.length;
    }
    return { row, count: top, straight };
}
/**
 * How far above (less than 0) or below the main run. Oxygen stands above it, its lye between the two, its branches highest; below it the lye
 * of the hydrogen, branches of hydrogen, current, water. Behind the buffer there is no oxygen above: what lets gas out goes there.
 */
function rankOf({ nodes, lines }: Graph, members: readonly number[], letsOut: boolean): number {
    if (members.some(m => nodes[m].kind === 'stack')) return 0;
    const own = lines.filter(l => members.includes(l.from) || members.includes(l.to));
    const medium = first.find(m => members.some(i => [...nodes[i].ports.keys()].some(k => k.startsWith(`${m} `))));
    switch (medium) {
        case 'hydrogen':
            if (members.some(m => keeps.has(nodes[m].kind))) return 0;
            return letsOut ? OXYGEN : 2;
        case 'oxygen':
            return own.some(l => nodes[l.from].kind === 'stack') || members.some(m => nodes[m].kind === 'column' || keeps.has(nodes[m].kind)) ? OXYGEN : OXYGEN - 1;
        case 'lye':
            return members.some(m => coolsOxygen({ nodes, lines }, m)) ? -1 : 1;
        case 'current':
            return 3;
        case 'water': {
            const others = own.flatMap(l => [l.from, l.to]).filter(i => !members.includes(i));
            return others.length && others.every(i => coolsOxygen({ nodes, lines }, i)) ? -1 : 4;
        }
        default:
            return 5;
    }
}
/** Stands in the lye that comes from the oxygen. */
function coolsOxygen({ nodes, lines }: Pick<Graph, 'nodes' | 'lines'>, i: number): boolean {
    const keys = lines.filter(l => l.to === i && l.medium === 'lye').flatMap(l => [...nodes[l.from].ports.keys()]);
    return keys.some(k => k.startsWith('oxygen')) && !keys.some(k => k.startsWith('hydrogen'));
}
const OXYGEN = -2;
const keeps = new Set(['compressor', 'cylinder', 'bag', 'gasometer']);
const uses = new Set([...keeps, 'burner', 'fuel-cell', 'engine', 'balloon', 'user', 'stack']);
/** Parts from which the way leads on to what is looked for. */
function leadingTo({ nodes, lines }: Graph, forward: ReadonlySet<Line>, to: (n: Node) => boolean): Set<number> {
    const into = nodes.map((): number[] => []);
    for (const l of lines) if (forward.has(l)) into[l.to].push(l.from);
    const found = new Set(nodes.flatMap((n, i) => (to(n) ? [i] : [])));
    for (const i of found) for (const from of into[i]) found.add(from);
    return found;
}
