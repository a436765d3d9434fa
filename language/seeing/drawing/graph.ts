/** A rig as the drawing sees it: boxes with their ports, lines between them, what sits on a box. No places yet. */
import type { View } from '../../quantities/view.js';
import type { Workings } from '../../quantities/workings.js';
import { pathEnds } from '../../rig/assemble.js';
import { media, type Medium } from '../../vocabulary/define.js';
import { drivenBy } from './controls.js';
import { fold } from './fold.js';
import type { Port, Symbol } from './symbols/define.js';
import { symbolOf, symbolOfEnd, unknown } from './symbols/index.js';
import { valueLines, valueWidth } from './values.js';

/** What sits on a box: an instrument that senses it, a small valve, a device that drives it. */
export interface Mount {
    readonly name: string;
    /** Its part of the text; undefined for several. */
    readonly part: string | undefined;
    readonly shape: 'bubble' | 'valve' | 'contact';
    readonly letters: string;
    /** In words: 'switch bag-high, acts on main'. */
    readonly says: string;
}
export interface Node {
    /** Unlike any other: the part's name, or for a path's end the name and what leads there. */
    readonly id: string;
    /** What is written at it. */
    readonly name: string;
    readonly kind: string;
    readonly end: boolean;
    readonly symbol: Symbol;
    readonly valueLines: number;
    /** Of its numbers, characters. */
    readonly valueWidth: number;
    readonly mounts: readonly Mount[];
    /** All parts that it stands for, if like ones are drawn as one. */
    readonly like: readonly string[];
    /** The lines flow through it from right to left. */
    flipped: boolean;
    /** By what a line says of itself: 'hydrogen out'. */
    readonly ports: Map<string, Port>;
}
export interface Line {
    readonly medium: string;
    readonly from: number;
    readonly to: number;
    readonly out: string;
    readonly in: string;
}
export interface Graph {
    readonly nodes: readonly Node[];
    readonly lines: readonly Line[];
    /** What senses the room or anything else that is not drawn. */
    readonly elsewhere: readonly (Mount & { readonly senses: string })[];
}
/** Names at a part beyond this many are counted. */
const MOST_MOUNTS = 8;
/** From this many boxes on, like ones are drawn as one. */
const FOLDS_FROM = 48;

/** Parts that are not shown, and with them the instruments that sense them. */
export function leftOut(workings: Workings, without: ReadonlySet<string>): ReadonlySet<string> {
    if (!without.size) return without;
    return new Set([...without, ...[...workings.allViews()].filter(v => without.has(sensedBy(v)[0])).map(v => v.name)]);
}
const sensedBy = (view: View): readonly string[] => view.given('senses').facts.get('')?.names ?? view.names('on').slice(0, 1);

/** @param without  as `leftOut` has them */
export function graphOf(workings: Workings, without: ReadonlySet<string> = new Set()): Graph {
    const { rig } = workings;
    const ids = new Map<string, number>();
    const drafts: { id: string; name: string; kind: string; end: boolean; symbol: Symbol }[] = [];
    const box = (id: string, name: string, end: boolean): number => {
        const there = ids.get(id);
        if (there !== undefined) return there;
        const view = end ? undefined : workings.viewOf(name);
        const kind = end ? name : view?.kind ?? '';
        drafts.push({ id, name, kind, end, symbol: end ? symbolOfEnd(name) : view ? symbolOf(kind, view.word('sort')) : unknown });
        ids.set(id, drafts.length - 1);
        return drafts.length - 1;
    };
    const isEnd = (name: string) => pathEnds.has(name) && !rig.parts.has(name);
    const lines: Line[] = [];
    const seen = new Set<string>();
    for (const l of workings.paths.links) {
        const [a, b] = [l.from.name, l.to.name];
        if (a === b || without.has(a) || without.has(b)) continue;
        const from = box(isEnd(a) ? `${a} to ${b}` : a, a, isEnd(a));
        const to = box(isEnd(b) ? `${b} from ${a}` : b, b, isEnd(b));
        const out = `${l.medium} out${l.from.port ? ` ${l.from.port}` : ''}`;
        const into = `${l.medium} in${l.to.port ? ` ${l.to.port}` : ''}`;
        const key = `${from} ${out} ${to} ${into}`;
        if (seen.has(key)) continue;
        seen.add(key);
        lines.push({ medium: l.medium, from, to, out, in: into });
    }
    const mounts = new Map<string, Mount[]>();
    const elsewhere: (Mount & { senses: string })[] = [];
    const instruments: [View, string, Mount][] = [];
    for (const view of workings.allViews()) {
        const { part } = view;
        if (part.pattern || !part.kind || part.kind.statement || ids.has(part.name) || without.has(part.name)) continue;
        const on = sensedBy(view);
        if ('senses' in part.kind.properties || 'on' in part.kind.properties) {
            const shape = view.kind === 'bleed' || view.kind === 'purge-point' ? 'valve' : 'bubble';
            if (on.length) {
                const acts = view.controls.listeners(part.name).filter(n => !without.has(n));
                instruments.push([view, on.join('.'), {
                    name: part.name, part: part.name, shape, letters: shape === 'valve' ? '' : letters(view, on[1] ?? view.word('reads') ?? ''), says: `${view.kind} ${part.name}${acts.length ? `, acts on ${acts.join(', ')}` : ''}`,
                }]);
                continue;
            }
        }
        // Written, and not on a path yet.
        if (part.kind.on.length && !part.implied) box(part.name, part.name, false);
    }
    for (const [view, on, mount] of instruments) {
        const at = on.split('.')[0];
        if (ids.has(at) && at !== view.name) mounts.set(at, [...(mounts.get(at) ?? []), mount]);
        else elsewhere.push({ ...mount, senses: on });
    }
    for (const d of drafts) {
        const view = d.end ? undefined : workings.viewOf(d.name);
        for (const name of view ? drivenBy(view) : []) if (!without.has(name.split('.')[0])) mounts.set(d.name, [...(mounts.get(d.name) ?? []), { name, part: name.split('.')[0], shape: 'contact', letters: '', says: `${name} drives ${d.name}` }]);
    }
    const nodes = drafts.map((d): Node => {
        const all = d.end ? [] : mounts.get(d.name) ?? [];
        const some = all.length > MOST_MOUNTS ? [...all.slice(0, MOST_MOUNTS - 1), { name: `${all.length - MOST_MOUNTS + 1} more`, part: undefined, shape: 'contact', letters: '…', says: all.slice(MOST_MOUNTS - 1).map(m => m.says).join('; ') } as const] : all;
        return { ...d, valueLines: valueLines(d.kind), valueWidth: valueWidth(d.kind), mounts: some, like: [], flipped: false, ports: new Map() };
    });
    const graph = nodes.length >= FOLDS_FROM ? fold({ nodes, lines, elsewhere }) : { nodes, lines, elsewhere };
    for (const [i, node] of graph.nodes.entries()) givePorts(node, graph.lines, i);
    return graph;
}
/** Letters of an instrument after ISO 14617-6: what is measured, then what is done with it (from memory). */
function letters(view: View, senses: string): string {
    const what = /pressure|head/.test(senses) ? 'P' : /temperature/.test(senses) ? 'T' : /level|volume|depth/.test(senses) ? 'L' : /flow|rate/.test(senses) ? 'F'
        : /current/.test(senses) ? 'I' : /power/.test(senses) ? 'J' : /irradiance/.test(senses) ? 'R' : /volt|charge/.test(senses) ? 'E' : /oxygen|hydrogen|purity|gas/.test(senses) ? 'Q' : view.kind === 'gauge' ? 'P' : 'X';
    const does = { gauge: 'I', meter: 'I', sensor: 'T', switch: 'S', trip: 'Z', analyser: 'IZ', detector: 'IZ' }[view.kind] ?? '';
    return what + does;
}
const mainFirst: readonly Medium[] = ['hydrogen', 'oxygen', 'lye', 'water', 'current'];
/** The main medium passes from left to right; others come and go below, oxygen above. */
function givePorts(node: Node, lines: readonly Line[], i: number): void {
    const used = new Set<string>();
    for (const l of lines) {
        if (l.from === i) used.add(l.out);
        if (l.to === i) used.add(l.in);
    }
    const main = mainFirst.find(m => [...used].some(u => u.startsWith(`${m} `))) ?? [...used][0]?.split(' ')[0];
    const taken = new Set<string>();
    const rest: string[] = [];
    for (const key of [...used].sort((a, b) => media.indexOf(a.split(' ')[0] as Medium) - media.indexOf(b.split(' ')[0] as Medium))) {
        const [medium, way] = key.split(' ');
        const own = node.symbol.ports?.[key] ?? node.symbol.ports?.[`${medium} ${way}`];
        const port: Port | undefined = own ?? (medium === main ? { side: way === 'in' ? 'W' : 'E' } : undefined);
        if (!port) { rest.push(key); continue; }
        node.ports.set(key, port);
        taken.add(`${port.side}${port.x ?? 0}`);
    }
    // A port of its own for each medium that is left; two of one medium may share it.
    for (const key of rest) {
        const free = rest.length === 1 ? [0, -12, 12, -24, 24] : [-12, 12, -24, 24, 0];
        const x = free.find(x => !taken.has(`S${x}`)) ?? 0;
        node.ports.set(key, { side: 'S', x });
        taken.add(`S${x}`);
    }
}
