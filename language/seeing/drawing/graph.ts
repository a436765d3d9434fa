/** A rig as its drawing sees it: boxes with ports, lines between them, instruments that sit on boxes. */
import type { Analysis } from '../../index.js';
import { showResult } from '../../reference/values.js';
import type { View } from '../../quantities/view.js';
import { lineKinds, symbolOf, symbols, type Shape } from './symbols.js';

export type Medium = 'hydrogen' | 'oxygen' | 'lye' | 'water' | 'current';
export const media = ['oxygen', 'current', 'hydrogen', 'lye', 'water'] as const satisfies readonly Medium[];
export interface Instrument {
    readonly name: string;
    /** As ISO 14617-6 has them: what is measured, what it does. */
    readonly letters: string;
    /** What hangs on it: 'main, bag-draw'. */
    readonly acts: string;
}
export interface Item {
    readonly name: string;
    /** The part of the text; undefined for an end of a path, as outdoors. */
    readonly part: string | undefined;
    readonly shape: Shape;
    readonly title: string;
    /** Numbers under its name, a line each. */
    readonly values: readonly string[];
    readonly instruments: readonly Instrument[];
    readonly errors: number;
    readonly warnings: number;
}
export interface Line {
    /** 'stack.hydrogen' */
    readonly from: string;
    readonly to: string;
    readonly medium: Medium;
    /** Tubes, leads and joints on it. */
    readonly parts: readonly string[];
}
export interface Graph {
    readonly items: readonly Item[];
    readonly lines: readonly Line[];
}

/** Numbers that are told at a part, by kind. */
const told: Readonly<Record<string, readonly string[]>> = {
    stack: ['voltage', 'current', 'temperature', 'hydrogen-rate'], supply: ['working-voltage'], battery: ['working-voltage'], panels: ['irradiance'], bubbler: ['head'], seal: ['opens-at', 'head'], bag: ['fill-time'], gasometer: ['fill-time'],
    compressor: ['free-delivery'], cylinder: ['cut-off', 'usable-gas'], cooler: ['heat-taken'], dryer: ['hours-to-full'], burner: ['power'],
};
/** What is measured, by the last word of what is sensed. */
const measured: Readonly<Record<string, string>> = { temperature: 'T', 'discharge-temperature': 'T', pressure: 'P', head: 'P', volume: 'L', level: 'L', current: 'I', voltage: 'E', power: 'J', flow: 'F', hydrogen: 'Q', oxygen: 'Q', charge: 'E' };
const instrumentKinds = new Set(['switch', 'trip', 'analyser', 'detector', 'sensor', 'gauge', 'meter']);
/** Parallel parts alike in all that they join are drawn once, with their number. */
const FOLDS_FROM = 4;
const MOST_ACTS = 3;

export function graphOf(analysis: Analysis): Graph {
    const { workings } = analysis;
    return workings.unnoted(() => new Reader(analysis).read());
}
class Reader {
    private readonly shapes = new Map<string, { shape: Shape; part: string | undefined; title: string }>();
    private readonly lines: Line[] = [];
    private readonly seen = new Set<string>();

    constructor(private readonly analysis: Analysis) {}

    read(): Graph {
        const { workings } = this.analysis;
        const views = [...workings.allViews()].filter(v => !v.pattern && !v.declared?.statement);
        const [first] = views;
        if (!first) return { items: [], lines: [] };
        for (const medium of media) this.follow(first, medium);
        this.minus(views);
        // A stack, bag or store that is on no path yet is there all the same.
        for (const v of views) if (['stack', 'bag', 'cylinder', 'compressor', 'supply'].includes(v.kind) && !this.shapes.has(v.name)) this.box(v.name, v);
        const sits = this.instruments(views);
        const items = [...this.shapes].map(([name, { shape, part, title }]): Item => {
            const view = part === undefined ? undefined : workings.viewOf(part);
            const at = part === undefined ? [] : this.analysis.findings.filter(f => this.standsIn(f.span.file, f.span.start, part));
            return { name, part, shape, title, values: view ? this.values(view) : [], instruments: sits.get(name) ?? [], errors: at.filter(f => f.severity === 'error').length, warnings: at.filter(f => f.severity === 'warning').length };
        });
        return folded({ items, lines: this.lines });
    }
    private standsIn(file: string, start: number, part: string): boolean {
        const span = this.analysis.rig.parts.get(part)?.span;
        return !!span && span.file === file && span.start <= start && start <= span.end;
    }
    private box(name: string, view: View | undefined): void {
        if (this.shapes.has(name)) return;
        if (view) {
            const driven = view.kind === 'valve' && (view.names('shut-while').length > 0 || view.names('open-while').length > 0);
            const shape = driven ? 'driven' : view.kind === 'supply' && view.word('sort') === 'converter' ? 'converter' : symbolOf[view.kind] ?? 'plain';
            this.shapes.set(name, { shape, part: view.name, title: view.name });
        } else {
            const [end] = name.split(' ');
            this.shapes.set(name, { shape: end === 'outdoors' ? 'vent' : end === 'mains' ? 'mains' : 'end', part: undefined, title: end });
        }
    }
    /** Each line from one box to the next of a medium, joints and tubes between them taken as part of it. */
    private follow(any: View, medium: Medium): void {
        const isLine = (name: string) => lineKinds.has(any.other(name)?.kind ?? '');
        const starts = new Set<string>();
        for (const link of any.paths.links) if (link.medium === medium) for (const { name } of [link.from, link.to]) if (!isLine(name)) starts.add(name);
        for (const start of starts) {
            const walk = (name: string, on: readonly string[]) => {
                for (const link of any.paths.from(name, medium)) {
                    const next = link.to.name;
                    if (isLine(next)) {
                        if (!on.includes(next)) walk(next, [...on, next]);
                    } else this.line(any, medium, start, next, on);
                }
            };
            walk(start, []);
        }
    }
    private line(any: View, medium: Medium, from: string, to: string, parts: readonly string[]): void {
        const [a, b] = [any.other(from), any.other(to)];
        if (from === to) return;
        // Outdoors behind a vent is what the vent shows already; elsewhere each end stands by itself.
        if (!b && a?.kind === 'vent') return void this.box(from, a);
        const [fromName, toName] = [a ? from : `${from} of ${to}`, b ? to : `${to} of ${from}`];
        this.box(fromName, a);
        this.box(toName, b);
        const link = parts.some(p => any.other(p)?.kind === 'link') || (medium === 'lye' && a?.kind === 'column' && b?.kind === 'column');
        const key = `${medium} ${fromName} ${toName}`;
        if (this.seen.has(key)) return;
        this.seen.add(key);
        this.lines.push({ from: `${fromName}.${this.port(fromName, medium, 'out', toName, link)}`, to: `${toName}.${this.port(toName, medium, 'in', fromName, link)}`, medium, parts });
    }
    /** Which port of a symbol a line of a medium takes. */
    private port(name: string, medium: Medium, way: 'in' | 'out', other: string, link: boolean): string {
        const { shape } = this.shapes.get(name)!;
        const { ports } = symbols[shape];
        if (shape === 'stack') return medium === 'current' ? (way === 'in' ? 'plus' : 'minus') : medium === 'lye' || medium === 'water' ? 'lye' : medium;
        if (shape === 'column') return medium === 'lye' ? (link ? (way === 'out' ? 'lye' : 'link') : way === 'out' ? 'lye' : 'link') : way === 'in' ? 'in' : 'gas';
        if (shape === 'exchanger' && medium === 'water') return way === 'in' ? 'coldIn' : 'coldOut';
        if (shape === 'cylinder' && way === 'out' && this.shapes.get(other)?.shape === 'relief') return 'relief';
        return way in ports ? way : Object.keys(ports)[0];
    }
    /** The way back of the current: from whatever has a second terminal to the stack. */
    private minus(views: readonly View[]): void {
        const stack = views.find(v => v.kind === 'stack')?.name;
        const source = [...this.shapes].find(([, s]) => 'minus' in symbols[s.shape].ports && s.shape !== 'stack' && this.lines.some(l => l.medium === 'current' && l.from.startsWith(`${s.part}.`)));
        if (stack && source && this.lines.some(l => l.to === `${stack}.plus`)) this.lines.push({ from: `${source[0]}.minus`, to: `${stack}.minus`, medium: 'current', parts: [] });
    }
    private values(view: View): string[] {
        const out: string[] = [];
        for (const name of told[view.kind] ?? []) {
            const result = this.analysis.workings.quantity(view.part, name);
            if (!result || result.value !== result.value) continue;
            out.push(name === 'hydrogen-rate' ? `H₂ ${showResult(result)}` : name === 'fill-time' ? `full in ${showResult(result)}` : showResult(result));
        }
        const rating = view.kind === 'fuse' ? view.given('rating').facts.get('')?.amount : undefined;
        if (rating) out.push(view.given('rating').entry?.value?.text ?? '');
        const set = view.kind === 'relief-valve' ? view.given('set').entry?.value?.text : undefined;
        if (set) out.push(set);
        return out.filter(Boolean);
    }
    /** Instruments by the box that they sit on: what they sense, or the next box along the line that they sense. */
    private instruments(views: readonly View[]): Map<string, Instrument[]> {
        const out = new Map<string, Instrument[]>();
        for (const v of views) {
            if (!instrumentKinds.has(v.kind) || this.shapes.has(v.name)) continue;
            const sensed = v.controls.sensed(v) ?? '';
            const [of, what] = [sensed.slice(0, sensed.lastIndexOf('.')), sensed.slice(sensed.lastIndexOf('.') + 1)];
            const box = this.shapes.has(of) ? of : this.lines.find(l => l.parts.includes(of))?.to.split('.')[0] ?? (views.find(x => x.name === of)?.kind === 'lye' ? views.find(x => x.kind === 'stack')?.name : undefined);
            const where = box !== undefined && symbols[this.shapes.get(box)?.shape ?? 'plain'].tap ? box : views.find(x => x.kind === 'stack' && box === x.name)?.name;
            const home = where ?? box;
            if (home === undefined || !this.shapes.has(home)) continue;
            const second = v.kind === 'trip' ? 'Z' : v.kind === 'switch' ? 'S' : v.kind === 'gauge' || v.kind === 'meter' || v.kind === 'sensor' ? 'I' : 'A';
            const acts = v.controls.listeners(v.name);
            out.set(home, [...(out.get(home) ?? []), { name: v.name, letters: `${measured[what] ?? 'X'}${second}`, acts: acts.length > MOST_ACTS ? `${acts.slice(0, MOST_ACTS).join(', ')} …` : acts.join(', ') }]);
        }
        return out;
    }
}
/** Parts of one shape that come from and go to the same boxes, drawn once. */
function folded(graph: Graph): Graph {
    // Each has its own outdoors; that makes no difference.
    const plain = (end: string) => end.replace(/ of .*(?=\.)/, '');
    const ends = (name: string) => graph.lines.filter(l => l.from.startsWith(`${name}.`) || l.to.startsWith(`${name}.`)).map(l => (l.from.startsWith(`${name}.`) ? `>${plain(l.to)}` : `<${plain(l.from)}`)).sort().join('|');
    const groups = new Map<string, Item[]>();
    for (const item of graph.items) {
        const key = `${item.shape} ${ends(item.name)}`;
        groups.set(key, [...(groups.get(key) ?? []), item]);
    }
    const gone = new Map<string, Item>();
    const more = new Map<string, string>();
    for (const list of groups.values()) {
        if (list.length < FOLDS_FROM || !ends(list[0].name)) continue;
        for (const item of list.slice(1)) gone.set(item.name, list[0]);
        more.set(list[0].name, `${list[0].title} and ${list.length - 1} alike`);
    }
    if (!gone.size) return graph;
    const boxOf = (end: string) => end.slice(0, end.lastIndexOf('.'));
    const lines = graph.lines.filter(l => !gone.has(boxOf(l.from)) && !gone.has(boxOf(l.to)));
    const joined = new Set(lines.flatMap(l => [boxOf(l.from), boxOf(l.to)]));
    return { items: graph.items.filter(i => !gone.has(i.name) && (i.part !== undefined || joined.has(i.name))).map(i => (more.has(i.name) ? { ...i, title: more.get(i.name)! } : i)), lines };
}
