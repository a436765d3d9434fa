/**
 * Enormous rigs stay readable: rows of like parts between the same two places are drawn once, with a count; so are whole pieces of a rig
 * that hang together like others do.
 */
import type { Graph, Line, Node } from './graph.js';

/** Fewer like ones than this are drawn each by itself. */
const LEAST = 3;

/** The same graph with like parts drawn as one, as far as three or more are alike. */
export function fold(graph: Graph): Graph {
    let folded = graph;
    for (let round = 0; round < 8; round++) {
        const next = foldOnce(folded, rows(folded)) ?? foldOnce(folded, pieces(folded));
        if (!next) break;
        folded = next;
    }
    return folded;
}
/** Lists of nodes in the same order; lists with an equal key are alike. */
type Found = readonly { readonly key: string; readonly members: readonly number[] }[];

const lookOf = (n: Node) => `${n.end ? 'end ' : ''}${n.kind}\u0000${n.end ? n.name : ''}\u0000${n.mounts.map(m => m.shape + m.letters).join(',')}`;

/** Rows of parts that join two places, each with one line in and one line out; and single ends of such rows. */
function rows({ nodes, lines }: Graph): Found {
    const ins = nodes.map((): Line[] => []);
    const outs = nodes.map((): Line[] => []);
    for (const l of lines) { outs[l.from].push(l); ins[l.to].push(l); }
    const slim = (i: number) => ins[i].length <= 1 && outs[i].length <= 1 && ins[i].length + outs[i].length > 0;
    const found: { key: string; members: number[] }[] = [];
    for (const [i] of nodes.entries()) {
        if (!slim(i) || (ins[i].length && slim(ins[i][0].from))) continue;
        const members = [i];
        let last = i;
        while (outs[last].length && slim(outs[last][0].to) && !members.includes(outs[last][0].to)) members.push((last = outs[last][0].to));
        const before = ins[i][0];
        const after = outs[last][0];
        if (!before && !after) continue;
        found.push({ key: [before ? `${before.from} ${before.out}` : '', ...members.map(m => `${lookOf(nodes[m])} ${ins[m].map(l => l.in)} ${outs[m].map(l => l.out)}`), after ? `${after.to} ${after.in}` : ''].join('\u0001'), members });
    }
    return found;
}
/** Pieces that hang together by lines and by nothing else, told apart by their looks: of each node, what it is joined to. */
function pieces({ nodes, lines }: Graph): Found {
    const piece = nodes.map((_, i) => i);
    const root = (i: number): number => (piece[i] === i ? i : (piece[i] = root(piece[i])));
    for (const l of lines) piece[root(l.from)] = root(l.to);
    let looks = nodes.map(lookOf);
    for (let round = 0; round < 6; round++) {
        const around = nodes.map((): string[] => []);
        for (const l of lines) {
            around[l.from].push(`> ${l.out} ${l.in} ${looks[l.to]}`);
            around[l.to].push(`< ${l.out} ${l.in} ${looks[l.from]}`);
        }
        const short = new Map<string, string>();
        looks = looks.map((look, i) => {
            const all = `${look}|${around[i].sort().join('|')}`;
            if (!short.has(all)) short.set(all, `#${short.size}`);
            return short.get(all)!;
        });
    }
    const members = new Map<number, number[]>();
    for (const i of nodes.keys()) members.set(root(i), [...(members.get(root(i)) ?? []), i]);
    return [...members.values()].map(list => {
        const sorted = [...list].sort((a, b) => (looks[a] < looks[b] ? -1 : looks[a] > looks[b] ? 1 : a - b));
        return { key: sorted.map(i => looks[i]).join(), members: sorted };
    });
}
function foldOnce(graph: Graph, found: Found): Graph | undefined {
    const { nodes, lines } = graph;
    const groups = new Map<string, (readonly number[])[]>();
    for (const f of found) groups.set(f.key, [...(groups.get(f.key) ?? []), f.members]);
    const gone = new Set<number>();
    const like = new Map<number, string[]>();
    for (const all of groups.values()) {
        if (all.length < LEAST) continue;
        const [first, ...others] = all;
        for (const [k, i] of first.entries()) like.set(i, [...namesOf(nodes[i]), ...others.flatMap(o => namesOf(nodes[o[k]]))]);
        for (const o of others) for (const i of o) gone.add(i);
    }
    if (!gone.size) return undefined;
    const at = new Map<number, number>();
    const left = nodes.flatMap((n, i) => {
        if (gone.has(i)) return [];
        at.set(i, at.size);
        return [like.has(i) ? { ...n, like: like.get(i)! } : n];
    });
    return { ...graph, nodes: left, lines: lines.filter(l => at.has(l.from) && at.has(l.to)).map(l => ({ ...l, from: at.get(l.from)!, to: at.get(l.to)! })) };
}
const namesOf = (n: Node): readonly string[] => (n.like.length ? n.like : [n.name]);
