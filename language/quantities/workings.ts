/**
 * Works a rig out, lazily: a value or a quantity is computed when it is asked for, once, and remembers what it was made
 * from. Cycles are found and told; what is unknown makes unknown what rests on it.
 */
import { measures, type MeasureName } from '../units/dimension.js';
import { unitOf } from '../units/unit.js';
import { evaluate, inMeasure, isTrouble, type Amount, type Resolve, type Worked } from '../values/evaluate.js';
import { match, type Fact, type Facts, type Matched } from '../values/match.js';
import { nearest, offering } from '../values/nearest.js';
import { parseValue, type ParsedValue } from '../values/parse-value.js';
import { matchCached } from '../rig/read-page.js';
import { Controls, type FoundControls } from '../rig/controls.js';
import { Paths } from '../rig/paths.js';
import type { Entry, Expectation, Part, Problem, Rig, Span } from '../rig/rig.js';
import type { Property } from '../vocabulary/define.js';
import { type Doubt, type Model, type Quantity, type Remarked } from './define.js';
import { quantityOf } from './index.js';
import { GivenCell, WorkedCell, type Cell, type Kept, type Memory, type PartRecord, type Trace } from './memory.js';
import { Spreads, toldHalf, type Root, type Spread } from './spread.js';
import { Supposed } from './supposed.js';
import { View } from './view.js';

export type Status = 'stated' | 'like' | 'assumed' | 'none' | 'unknown' | 'silent' | 'broken';
export interface Given {
    readonly status: Status;
    readonly property: Property | undefined;
    readonly facts: Facts;
    readonly rows: readonly Facts[];
    /** The names in its rows, once somebody asked for them. */
    names?: readonly string[];
    /** Where it is written, here or in the part it is like. */
    readonly entry?: Entry;
    /** The part whose text it is, for 'like'. */
    readonly from?: Part;
    /** Why it is assumed. */
    readonly because?: string;
    readonly assumedText?: string;
}
/** One thing that a result was made from. */
export interface Input {
    readonly label: string;
    readonly part: Part;
    readonly key: string;
    readonly value: number;
    readonly text?: string;
    readonly unit: string;
    /** 'doubt': what a law leaves open; its value is the half width. */
    readonly status: Status | 'computed' | 'doubt';
    readonly result?: Result;
    readonly given?: Given;
    readonly doubt?: Doubt;
}
export interface Result {
    readonly quantity: Quantity;
    readonly part: Part;
    readonly value: number;
    /** Bounds between which about 95 % of all cases lie; worked out when they are asked for. */
    readonly low: number;
    readonly high: number;
    readonly spread: Spread;
    readonly status: 'computed' | 'unknown';
    readonly inputs: readonly Input[];
    /** What would have to be said for it to be known. */
    readonly missing: readonly string[];
    readonly remarks: readonly string[];
    /** Labels of the assumed values that it rests on, however far up. */
    readonly rests: readonly string[];
}
/** Labels of the assumed values that some inputs rest on, however far up. */
export function guessesIn(inputs: Iterable<Input>): string[] {
    const found = new Set<string>();
    for (const i of inputs) {
        if (i.status === 'assumed') found.add(i.label);
        if (i.result) for (const label of i.result.rests) found.add(label);
    }
    return [...found];
}
interface Frame {
    /** Undefined where nobody will ask how it came about: in a rig that differs from another by a little. */
    readonly inputs: Map<string, Input> | undefined;
    /** Made when something is missing: seldom. */
    missing: Set<string> | undefined;
}
/** A model that was solved now or, if it would come out the same, in an earlier reading. */
interface Solved {
    readonly value: unknown;
    readonly inputs: () => Iterable<Input>;
    readonly missing: readonly string[];
}
/** Everything that was worked out of one part. */
interface Work {
    readonly view: View;
    readonly record: PartRecord | undefined;
    /** Made when first needed: most parts of a long rig are not asked for much after an edit. */
    givens: Map<string, Given> | undefined;
    results: Map<string, Result> | undefined;
    models: Map<string, Solved> | undefined;
    spreads: Map<string, Spread> | undefined;
}
const none: readonly never[] = [];
const missingIn = (frame: Frame): readonly string[] => (frame.missing ? [...frame.missing] : none);
const noFacts: Facts = new Map();
const nothingGiven: Given = { status: 'silent', property: undefined, facts: noFacts, rows: [] };
const STANDARD_AIR = 101325;

export class Workings {
    readonly paths: Paths;
    readonly controls: Controls;
    /** Troubles met while values were worked out; told with the findings. */
    readonly problems: Problem[] = [];
    /** Expectations as they were weighed. Not in a WeakMap: its entries outlive every young collection. */
    readonly weighed = new Map<Expectation, unknown>();
    private readonly work = new Map<Part, Work>();
    private readonly views = new Map<string, View>();
    private readonly byKind = new Map<string, View[]>();
    private readonly foundControls: FoundControls | undefined;
    private readonly liveByKind = new Map<string, View[]>();
    private readonly running: string[] = [];
    /** The same of quantities, in a rig that differs from another by a little. */
    private readonly workingOut: Result[] = [];
    /** What each running computation was made from; undefined while something kept is looked through. */
    private readonly frames: (Frame | undefined)[] = [];
    /** Circles that were told already, by their members. */
    private readonly circles = new Set<string>();
    private air = NaN;
    /** Where all that is read is noted while something is worked out. */
    private reads: Cell[] | undefined;
    private mark = 0;
    readonly revision: number;
    private readonly spreads: Spreads;

    /**
     * @param memory    what is kept of the same rig as it was read before
     * @param supposed  what the rig is supposed to say instead of its text
     * @param near      the rig without the last supposition, and what that is: numbers that do not rest on it are taken over
     */
    constructor(readonly rig: Rig, private readonly memory?: Memory, readonly supposed?: Supposed, private readonly near?: { readonly workings: Workings; readonly root: Root }) {
        memory?.begin(rig);
        this.revision = memory?.revision ?? 0;
        this.paths = near?.workings.paths ?? new Paths(rig, memory && (medium => memory.foundPaths(medium)), memory && (medium => this.reads && this.noteRead(memory.path(medium))));
        // One that differs from another by a little looks at few parts: it makes its views when they are asked for.
        if (!near) {
            for (const part of rig.parts.values()) {
                const { view } = this.workOf(part)!;
                this.views.set(part.name, view);
                const list = this.byKind.get(part.kindWord);
                if (list) list.push(view);
                else this.byKind.set(part.kindWord, [view]);
            }
        }
        this.controls = new Controls(this, memory?.foundControls ?? near?.workings.foundControls);
        this.foundControls = memory?.foundControls;
        this.spreads = new Spreads(this, (root, at) => new Workings(rig, undefined, at(new Supposed(supposed)), { workings: this, root }));
    }
    private workOf(part: Part): Work | undefined {
        let work = this.work.get(part);
        if (!work && this.rig.parts.get(part.name) === part) {
            this.work.set(part, (work = { view: new View(this, part), record: this.memory?.record(part.name), givens: undefined, results: undefined, models: undefined, spreads: undefined }));
        }
        return work;
    }

    viewOf(name: string): View | undefined {
        if (this.reads) this.noteRead(this.memory!.record(name).presence);
        if (!this.near) return this.views.get(name);
        const part = this.rig.parts.get(name);
        return part && this.workOf(part)!.view;
    }
    partsOf(kind: string): readonly View[] {
        if (this.reads) this.noteRead(this.memory!.kind(kind, this.rig));
        let views = this.byKind.get(kind);
        if (!views && this.near) this.byKind.set(kind, (views = this.near.workings.partsOf(kind).map(v => this.viewOf(v.name)!)));
        return views ?? none;
    }
    /** The same without patterns: parts that stand in the rig. */
    livePartsOf(kind: string): readonly View[] {
        let live = this.liveByKind.get(kind);
        if (!live) this.liveByKind.set(kind, (live = this.partsOf(kind).filter(v => !v.part.pattern)));
        return live;
    }
    allViews(): Iterable<View> {
        if (this.reads) this.noteRead(this.memory!.roster);
        return this.near ? [...this.rig.parts.values()].map(p => this.workOf(p)!.view) : this.views.values();
    }

    // ---- what is kept from one reading to the next --------------------------------------------------------------

    /** What others keep beside this may be kept while this is the same object; undefined if nothing is kept. */
    get generation(): object | undefined {
        return this.remembers ? this.memory!.generation : undefined;
    }
    /** A later reading of the rig has taken the memory over: then all is worked out afresh. */
    private get remembers(): boolean {
        return this.memory?.revision === this.revision;
    }
    /** Runs something and tells every cell that it read; undefined where nothing is kept. */
    noting<T>(run: () => T): { value: T; reads: readonly Cell[] | undefined } {
        if (!this.remembers) return { value: run(), reads: undefined };
        const [before, mark] = [this.reads, this.mark];
        const reads: Cell[] = (this.reads = []);
        this.mark = this.memory!.nextMark();
        try {
            return { value: run(), reads };
        } finally {
            [this.reads, this.mark] = [before, mark];
        }
    }
    /** Each cell once, as far as it costs nothing to tell. */
    private noteRead(cell: Cell): void {
        if (cell.mark === this.mark) return;
        cell.mark = this.mark;
        this.reads!.push(cell);
    }
    /** Runs something whose reads another cell stands for. */
    unnoted<T>(run: () => T): T {
        const before = this.reads;
        this.reads = undefined;
        try {
            return run();
        } finally {
            this.reads = before;
        }
    }
    /** Notes that something was read that a cell stands for. */
    noteCell(which: 'controls' | 'whole'): void {
        if (this.reads) this.noteRead(this.memory![which]);
    }
    /** Notes that it counted that a part is there, and of which kind. */
    notePresence(part: Part): void {
        if (this.reads) this.noteRead(this.memory!.record(part.name).presence);
    }
    /** Notes that the block of a part was looked into. */
    noteText(part: Part): void {
        if (this.reads) this.noteRead(this.memory!.record(part.name).text);
    }
    /** Whether everything that was read up to a revision still says the same. */
    stillHolds(reads: readonly Cell[], revision: number): boolean {
        for (const cell of reads) {
            if (cell.checked < this.revision && !cell.settles(this.revision)) this.refresh(cell);
            if (cell.changed > revision) return false;
        }
        return true;
    }
    /** Whoever is running meanwhile has read nothing by it. */
    private refresh(cell: Cell): void {
        const before = this.reads;
        this.reads = undefined;
        this.frames.push(undefined);
        try {
            cell.refresh(this);
        } finally {
            this.frames.pop();
            this.reads = before;
        }
    }

    /** Air pressure at the site, Pa. */
    get airPressure(): number {
        if (this.reads) this.noteAir();
        if (this.air !== this.air) {
            this.air = STANDARD_AIR;
            const site = this.unnoted(() => this.partsOf('site')[0]);
            if (site) {
                // Above vacuum, whatever its mark: nobody states the air as a gauge pressure.
                const said = this.given(site.part, 'air-pressure').facts.get('')?.amount;
                const stated = said ? (said.si > 30000 ? said.si : said.si + STANDARD_AIR) : NaN;
                const altitude = this.given(site.part, 'altitude').facts.get('')?.number ?? NaN;
                // International standard atmosphere (ISO 2533), troposphere.
                this.air = stated === stated ? stated : altitude === altitude ? STANDARD_AIR * (1 - 2.25577e-5 * altitude) ** 5.25588 : STANDARD_AIR;
            }
        }
        return this.air;
    }
    private noteAir(): void {
        const site = this.partsOf('site')[0];
        const part = site && this.rig.parts.get(site.name);
        if (part) for (const key of ['air-pressure', 'altitude']) this.given(part, key);
    }

    // ---- given values -------------------------------------------------------------------------------------------

    given(part: Part, key: string): Given {
        const work = this.workOf(part);
        let g = work?.givens?.get(key);
        if (!g) {
            // Much is asked of parts that cannot say it: nothing is kept for those.
            if (part.kind && !part.base && part.kind.properties[key] === undefined && !part.entries.has(key)) {
                if (this.reads) this.noteText(part);
                return nothingGiven;
            }
            g = this.givenNearby(part, key) ?? this.unnoted(() => (this.supposed ? this.supposedGiven(part, key) : this.findGiven(part, key)));
            if (work) (work.givens ??= new Map()).set(key, g);
        }
        if (this.reads && work) this.noteRead(this.givenCell(work.record!, key, g));
        return g;
    }
    /** As it is in the rig that this one differs from by a little, unless it is what differs, or names what may. */
    private givenNearby(part: Part, key: string): Given | undefined {
        const given = this.near?.workings.given(part, key);
        return given && !given.entry?.value?.names && !this.supposes(part, key, given) ? given : undefined;
    }
    private givenCell(record: PartRecord, key: string, given: Given): Cell {
        let cell = record.givens.get(key);
        if (!cell) record.givens.set(key, (cell = new GivenCell(record, key)));
        if (cell.checked < this.revision) cell.take(given, this.revision);
        return cell;
    }
    /** What is given, with the supposed numbers in it: of the part itself, or of the one whose text it is. */
    private supposedGiven(part: Part, key: string): Given {
        const given = this.findGiven(part, key);
        const { property } = given;
        const owner = this.supposes(part, key, given);
        if (!property || owner === undefined) return given;
        return { ...given, status: given.status === 'assumed' ? 'assumed' : 'stated', facts: this.supposed!.facts(owner, property, given.facts) };
    }
    /** The part of which another number is supposed: the one that bears it, or the one whose text it is. */
    private supposes(part: Part, key: string, given: Given): string | undefined {
        const { supposed } = this;
        return supposed?.says(part.name, key) ? part.name : given.from && supposed?.says(given.from.name, key) ? given.from.name : undefined;
    }
    private findGiven(part: Part, key: string): Given {
        const property = part.kind?.properties[key];
        const seen = new Set<Part>();
        for (let p: Part | undefined = part; p && !seen.has(p); p = this.baseOf(p)) {
            seen.add(p);
            const entry = p.entries.get(key);
            if (!entry) continue;
            const status = p === part ? 'stated' as const : 'like' as const;
            const from = p === part ? undefined : p;
            if (entry.broken || !entry.value || !property) return { status: 'broken', property, facts: noFacts, rows: [], entry, from };
            const m = this.matched(entry, property, part);
            if (m.says) return { status: m.says, property, facts: m.facts, rows: [], entry, from };
            if (m.problems.length) return { status: 'broken', property, facts: noFacts, rows: [], entry, from };
            return { status, property, facts: m.facts, rows: m.rows, entry, from };
        }
        if (property?.assume) {
            const m = assumed(property);
            return { status: 'assumed', property, facts: m.facts, rows: m.rows, because: property.assume.because, assumedText: property.assume.value };
        }
        return { status: 'silent', property, facts: noFacts, rows: [] };
    }
    private baseOf(part: Part): Part | undefined {
        return part.base && (this.rig.parts.get(part.base.name) ?? this.rig.patterns.get(part.base.name));
    }
    private matched(entry: Entry, property: Property, part: Part): Matched {
        const literal = matchCached(entry.value!, property);
        if (!literal.needsRig) return literal;
        const key = `${part.name}.${entry.key}`;
        if (this.running.includes(key)) {
            this.tellCircle(key, entry.span);
            return { facts: noFacts, rows: [], problems: [{ start: 0, end: 1, code: 'circular-reference', message: '' }], needsRig: false };
        }
        this.running.push(key);
        const m = match(entry.value!, property, this.resolver());
        this.running.pop();
        for (const p of m.problems) {
            if (p.code === 'unknown') continue;
            const span = { file: entry.span.file, start: entry.span.start + p.start, end: entry.span.start + p.end };
            this.tell({ code: p.code, span, message: p.message, fixes: p.fix && [{ title: p.fix.title, edits: [{ span: p.fix.start === undefined ? span : { ...span, start: entry.span.start + p.fix.start, end: entry.span.start + p.fix.end! }, text: p.fix.text }] }] });
        }
        return m;
    }
    private tell(p: Problem): void {
        if (!this.problems.some(q => q.span.start === p.span.start && q.span.file === p.span.file && q.code === p.code)) this.problems.push(p);
    }
    private tellCircle(key: string, span: Span): void {
        const members = this.running.slice(this.running.indexOf(key));
        const circle = [...members].sort().join(' ');
        if (this.circles.has(circle)) return;
        this.circles.add(circle);
        if (this.memory) this.memory.spoilt = true;
        const round = [...members, key];
        this.tell({ code: 'circular-reference', span, message: `This goes in a circle: ${round.join(' from ')}.` });
    }

    /**
     * Looks up a name in a value: a named value, a given value of a part, or a quantity.
     * @param bounds  whether a quantity comes with its bounds, which costs
     */
    resolver(bounds = false): Resolve {
        return node => {
            const [first, second, ...more] = node.names;
            if (second === undefined) {
                if (this.reads) this.noteRead(this.memory!.named(first, this.rig));
                const named = this.rig.lets.get(first);
                if (named) return this.named(first);
                return undefinedName(node, first, [...this.rig.lets.keys()]);
            }
            const view = this.viewOf(first);
            if (!view) return undefinedName(node, first, this.views.keys());
            return this.valueOf(view.part, [second, ...more].join('.'), node, bounds);
        };
    }
    /** A value of a part by name: its quantity if there is one, else its property. */
    valueOf(part: Part, name: string, at: { start: number; end: number }, bounds = false): Worked {
        const result = this.quantity(part, name);
        if (result) {
            if (result.value !== result.value) return { trouble: true, code: 'unknown', message: result.missing.join(', '), start: at.start, end: at.end };
            const measure = measures[result.quantity.measure];
            const unit = unitOf(result.quantity.unit ?? measure.units[0]);
            const { low, high } = bounds ? result : { low: result.value, high: result.value };
            return { si: result.value, low, high, dimension: measure.dimension, unit: unit?.dimension === measure.dimension ? unit : undefined, basis: result.quantity.absolute ? 'absolute' : undefined, point: result.quantity.measure === 'temperature' || undefined };
        }
        const [key] = name.split('.');
        const property = part.kind?.properties[key];
        if (property) {
            const fact = this.fact(part, name);
            if (fact?.amount) return this.asGauge(fact.amount);
            return { trouble: true, code: 'unknown', message: `${part.name}.${name}`, start: at.start, end: at.end };
        }
        const near = nearest(name, [...quantityOf(part.kindWord).keys(), ...Object.keys(part.kind?.properties ?? {})]);
        return { trouble: true, code: 'unknown-name', message: offering(`${part.name} has no ${name}`, near), start: at.start, end: at.end, fix: near ? { title: `Write ${near}`, text: `${part.name}.${near}` } : undefined };
    }
    private named(name: string): Worked {
        const named = this.rig.lets.get(name)!;
        const key = `let ${name}`;
        if (this.running.includes(key)) {
            this.tellCircle(key, named.nameSpan);
            return { trouble: true, code: 'unknown', message: '', start: 0, end: 0 };
        }
        const node = named.value?.list[0]?.[0];
        if (!node || named.value!.list.length > 1 || named.value!.list[0].length > 1) return { trouble: true, code: 'unknown', message: name, start: 0, end: 0 };
        this.running.push(key);
        const w = evaluate(node, this.resolver());
        this.running.pop();
        const supposed = this.supposed?.let(name);
        if (supposed !== undefined && !isTrouble(w)) return { ...w, si: supposed, low: supposed, high: supposed };
        if (isTrouble(w)) {
            if (w.code !== 'unknown') this.tell({ code: w.code, span: { file: named.span.file, start: named.span.start + w.start, end: named.span.start + w.end }, message: w.message });
            return { trouble: true, code: 'unknown', message: name, start: 0, end: 0 };
        }
        return w;
    }
    /** A named value worked out, for hover and hints. */
    namedValue(name: string): Amount | undefined {
        if (!this.rig.lets.has(name)) return undefined;
        const w = this.named(name);
        return isTrouble(w) ? undefined : w;
    }
    private asGauge(a: Amount): Amount {
        if (a.basis !== 'absolute') return a;
        const shift = this.airPressure;
        return { ...a, si: a.si - shift, low: a.low - shift, high: a.high - shift, basis: 'gauge' };
    }

    /** The fact in a slot: 'level', 'port.bore'. */
    fact(part: Part, key: string): Fact | undefined {
        const dot = key.indexOf('.');
        const facts = this.given(part, dot < 0 ? key : key.slice(0, dot)).facts;
        return facts.get(dot < 0 ? '' : key.slice(dot + 1));
    }
    number(part: Part, key: string, needed: boolean): number {
        const dot = key.indexOf('.');
        const given = this.given(part, dot < 0 ? key : key.slice(0, dot));
        const fact = given.facts.get(dot < 0 ? '' : key.slice(dot + 1));
        let n = fact?.number ?? NaN;
        if (fact?.amount?.basis === 'absolute') n -= this.airPressure;
        this.note(part, key, n, given, needed);
        return n;
    }
    bounds(part: Part, key: string): { low: number; high: number } {
        const fact = this.fact(part, key);
        const shift = fact?.amount?.basis === 'absolute' ? this.airPressure : 0;
        return { low: (fact?.low ?? NaN) - shift, high: (fact?.high ?? NaN) - shift };
    }
    word(part: Part, key: string): string | undefined {
        const dot = key.indexOf('.');
        const given = this.given(part, dot < 0 ? key : key.slice(0, dot));
        const fact = given.facts.get(dot < 0 ? '' : key.slice(dot + 1));
        const w = fact?.word ?? fact?.text;
        const frame = this.frames.at(-1);
        if (frame?.inputs && w !== undefined) {
            const label = `${part.name}.${key}`;
            frame.inputs.set(label, { label, part, key, value: NaN, text: w, unit: '', status: given.status, given });
        }
        return w;
    }
    rows(part: Part, key: string): readonly Facts[] {
        return this.given(part, key).rows;
    }
    /** Names in a list of parts or conditions: made once, since many rules look for a part in the lists of all records. */
    names(part: Part, key: string): readonly string[] {
        const given = this.given(part, key);
        return given.rows.length ? (given.names ??= namesIn(given.rows)) : none;
    }
    /** Notes a value that was read by other means than `number`: a size as an area. */
    noteValue(part: Part, key: string, value: number): void {
        this.note(part, key, value, this.given(part, key.split('.')[0]), true);
    }
    private note(part: Part, key: string, value: number, given: Given, needed: boolean): void {
        const frame = this.frames.at(-1);
        if (!frame) return;
        const label = `${part.name}.${key}`;
        if (value === value) {
            if (frame.inputs && !frame.inputs.has(label)) {
                const unit = given.facts.get(key.includes('.') ? key.slice(key.indexOf('.') + 1) : '')?.amount?.unit?.text ?? '';
                frame.inputs.set(label, { label, part, key, value, unit, status: given.status, given });
            }
        } else if (needed) {
            (frame.missing ??= new Set()).add(label);
        }
    }

    // ---- quantities ---------------------------------------------------------------------------------------------

    quantity(part: Part, name: string): Result | undefined {
        if (this.near) return this.quantityNearby(part, name, this.near);
        const work = this.workOf(part);
        const cell = work?.record && this.resultCell(work.record, name);
        const known = work?.results?.get(name);
        if (known) {
            if (cell && this.reads) this.noteRead(cell);
            return known;
        }
        const quantity = quantityOf(part.kindWord).get(name);
        if (!quantity) {
            if (this.reads && work) this.noteRead(work.record!.presence);
            return undefined;
        }
        const key = `${part.name}.${name}`;
        if (this.running.includes(key)) {
            if (this.memory) this.memory.spoilt = true;
            return new WorkedResult(this, quantity, part, { value: NaN, missing: none, remarks: ['It rests on itself.'], rests: none }, () => none);
        }
        this.running.push(key);
        let result: Result;
        try {
            const kept = cell && this.kept(cell, part);
            result = kept ? new WorkedResult(this, quantity, part, kept, () => this.inputsOf(cell)) : this.workOut(quantity, part, cell);
        } finally {
            this.running.pop();
        }
        if (work) (work.results ??= new Map()).set(name, result);
        if (cell && this.reads) this.noteRead(cell);
        return result;
    }
    /** The same in a rig that differs from another by a little: asked for its value only, not how it came about. */
    private quantityNearby(part: Part, name: string, { workings, root }: { readonly workings: Workings; readonly root: Root }): Result | undefined {
        const work = this.workOf(part);
        const known = work?.results?.get(name);
        if (known) return known;
        const before = workings.quantity(part, name);
        if (!before) return undefined;
        let result = before;
        if (workings.spreads.rests(before, root)) {
            const { quantity } = before;
            if (this.workingOut.includes(before)) return new NearbyResult(quantity, part, NaN, none);
            const frame = this.newFrame();
            this.frames.push(frame);
            this.workingOut.push(before);
            let worked: number | Remarked;
            try {
                worked = quantity.work(this.viewToWork(part));
            } finally {
                this.workingOut.pop();
                this.frames.pop();
            }
            const value = typeof worked === 'number' ? worked : worked.value;
            result = new NearbyResult(quantity, part, !frame.missing && Number.isFinite(value) ? value : NaN, missingIn(frame));
        }
        if (work) (work.results ??= new Map()).set(name, result);
        return result;
    }
    private newFrame(): Frame {
        return { inputs: this.near ? undefined : new Map(), missing: undefined };
    }
    private viewToWork(part: Part): View {
        return this.workOf(part)?.view ?? new View(this, part);
    }
    private workOut(quantity: Quantity, part: Part, cell: WorkedCell<Kept> | undefined): Result {
        const frame = this.newFrame();
        this.frames.push(frame);
        let got: { value: number | Remarked; reads: readonly Cell[] | undefined };
        try {
            got = this.noting(() => quantity.work(this.viewToWork(part)));
        } finally {
            this.frames.pop();
        }
        const [worked, remarks] = typeof got.value === 'number' ? [got.value, none] : [got.value.value, got.value.remarks];
        const value = frame.missing ? NaN : Number.isFinite(worked) ? worked : NaN;
        const inputs = [...frame.inputs!.values()];
        const kept: Kept = { value, missing: missingIn(frame), remarks, rests: guessesIn(inputs) };
        const result = new WorkedResult(this, quantity, part, kept, () => inputs);
        if (cell && got.reads) {
            const before = cell.value;
            if (!before || !Object.is(before.value, value) || [before.missing, before.remarks, before.rests].join('|') !== [kept.missing, remarks, kept.rests].join('|')) cell.changed = this.revision;
            this.keep(cell, part, kept, got.reads, frame);
        }
        return result;
    }
    private resultCell(record: PartRecord, name: string): WorkedCell<Kept> {
        let cell = record.results.get(name);
        if (!cell) record.results.set(name, (cell = new WorkedCell<Kept>(record, (workings, part) => workings.quantity(part, name))));
        return cell;
    }
    /** What came out before, if it would come out the same again. */
    private kept<T>(cell: WorkedCell<T>, part: Part): T | undefined {
        if (!this.remembers || cell.value === undefined || cell.kind !== part.kindWord || !this.stillHolds(cell.deps, cell.checked)) return undefined;
        cell.checked = this.revision;
        return cell.value;
    }
    private keep<T>(cell: WorkedCell<T>, part: Part, value: T, reads: readonly Cell[], frame: Frame = { inputs: undefined, missing: undefined }): void {
        cell.value = value;
        cell.kind = part.kindWord;
        cell.deps = reads;
        cell.inputs = [...(frame.inputs?.values() ?? [])].map(i => ({ label: i.label, part: i.part.name, key: i.key, value: i.value, text: i.text, unit: i.unit, status: i.status, doubt: i.doubt }));
        cell.missing = missingIn(frame);
        cell.checked = this.revision;
    }
    /** The inputs of something kept, as they stand in the text now. */
    private inputsOf(cell: { readonly inputs: readonly Trace[] }): Input[] {
        return this.unnoted(() => cell.inputs.map(({ label, part: name, key, value, text, unit, status, doubt }) => {
            const part = this.rig.parts.get(name)!;
            const computed = status === 'computed';
            return { label, part, key, value, text, unit, status, doubt, result: computed ? this.quantity(part, key) : undefined, given: computed || doubt ? undefined : this.givenIn(part, key) };
        }));
    }
    quantityNumber(part: Part, name: string, needed: boolean): number {
        const result = this.quantity(part, name);
        const value = result?.value ?? NaN;
        const frame = this.frames.at(-1);
        if (frame) {
            const label = `${part.name}.${name}`;
            if (value === value) {
                frame.inputs?.set(label, { label, part, key: name, value, unit: result!.quantity.unit ?? measures[result!.quantity.measure].units[0], status: 'computed', result });
            } else if (needed) {
                for (const m of result?.missing.length ? result.missing : [label]) (frame.missing ??= new Set()).add(m);
            }
        }
        return value;
    }
    /** How far off a law is supposed to be, in its own measure; 0 as things are expected. Noted as read. */
    doubt(part: Part, d: Doubt, half: number, told: string | undefined): number {
        const label = `${part.name}: ${d.name}`;
        this.frames.at(-1)?.inputs?.set(label, { label, part, key: d.name, value: half, text: told ?? toldHalf(d, half), unit: d.unit ?? '', status: 'doubt', doubt: d });
        return half * (this.supposed?.doubt(part.name, d.name) ?? 0);
    }
    /** The solution of a model in the rig that this one differs from by a little: a place to start from. */
    nearby<T>(part: Part, m: Model<T>): T | undefined {
        return this.near?.workings.unnoted(() => this.near!.workings.model(part, m));
    }
    /** What leaves a number open: tolerances, assumptions, laws; however far up. */
    rootsOf(result: Result): readonly Root[] {
        return this.spreads.rootsOf(result);
    }
    /** What a number is good for. */
    spreadOf(result: Result): Spread {
        const { part, quantity: { name } } = result;
        const work = this.workOf(part);
        const cell = work?.record && this.spreadCell(work.record, name);
        let spread = work?.spreads?.get(name);
        if (!spread) {
            spread = cell && this.kept(cell, part);
            if (!spread) {
                const { value: found, reads } = this.noting(() => {
                    if (work?.record) this.noteDeep(this.resultCell(work.record, name));
                    return this.spreads.of(result);
                });
                spread = found;
                if (cell && reads) {
                    if (!cell.value || !Object.is(cell.value.low, spread.low) || !Object.is(cell.value.high, spread.high)) cell.changed = this.revision;
                    this.keep(cell, part, spread, reads);
                }
            }
            if (work) (work.spreads ??= new Map()).set(name, spread);
        }
        if (cell && this.reads) this.noteRead(cell);
        return spread;
    }
    private spreadCell(record: PartRecord, name: string): WorkedCell<Spread> {
        let cell = record.spreads.get(name);
        if (!cell) record.spreads.set(name, (cell = new WorkedCell<Spread>(record, (workings, part) => workings.quantity(part, name)?.spread)));
        return cell;
    }
    /** Notes a cell and all that it was made from: bounds can change where values do not. */
    private noteDeep(cell: Cell): void {
        if (!this.reads || cell.mark === this.mark) return;
        this.noteRead(cell);
        if (cell instanceof WorkedCell) for (const dep of cell.deps) this.noteDeep(dep);
    }
    model<T>(part: Part, m: Model<T>): T {
        const work = this.workOf(part)!;
        const cell = work.record && this.modelCell(work.record, m);
        let done = work.models?.get(m.name) ?? this.solvedNearby(part, m);
        if (!done) {
            const kept = cell && this.kept(cell, part);
            if (kept) {
                done = { value: kept.solution, inputs: () => this.inputsOf(cell), missing: cell.missing };
            } else {
                const frame = this.newFrame();
                this.frames.push(frame);
                try {
                    const { value: found, reads } = this.noting(() => m.solve(work.view));
                    // As good as the last one: whatever was made from that stands.
                    const before = cell?.value && (cell.value.solution as T);
                    const value = before !== undefined && m.same?.(before, found) ? before : found;
                    if (cell && reads) {
                        const [inputs, missing] = [cell.inputs, cell.missing];
                        this.keep(cell, part, { solution: value }, reads, frame);
                        if (!Object.is(before, value) || !sameTraces(inputs, cell.inputs) || missing.join() !== cell.missing.join()) cell.changed = this.revision;
                    }
                    done = { value, inputs: () => frame.inputs?.values() ?? none, missing: missingIn(frame) };
                } finally {
                    this.frames.pop();
                }
            }
            (work.models ??= new Map()).set(m.name, done);
        }
        if (cell && this.reads) this.noteRead(cell);
        const frame = this.frames.at(-1);
        if (frame) {
            const { inputs } = frame;
            if (inputs) for (const input of done.inputs()) if (!inputs.has(input.label)) inputs.set(input.label, input);
            for (const label of done.missing) (frame.missing ??= new Set()).add(label);
        }
        return done.value as T;
    }

    /** A model that came out the same nearby, since it does not rest on what differs. */
    private solvedNearby(part: Part, m: Model<unknown>): Solved | undefined {
        if (!this.near) return undefined;
        const { workings, root } = this.near;
        workings.unnoted(() => workings.model(part, m));
        const done = workings.workOf(part)?.models?.get(m.name);
        return done && !workings.spreads.modelRests(done, done.inputs, root) ? done : undefined;
    }
    private modelCell(record: PartRecord, m: Model<unknown>): WorkedCell<{ solution: unknown }> {
        let cell = record.models.get(m.name);
        if (!cell) record.models.set(m.name, (cell = new WorkedCell(record, (workings, part) => workings.model(part, m))));
        return cell;
    }

    /** Runs something and tells what it read: how a rule knows on which guesses its finding rests. */
    watch<T>(run: () => T): { value: T; inputs: Input[]; missing: string[] } {
        const inputs = new Map<string, Input>();
        const frame: Frame = { inputs, missing: undefined };
        this.frames.push(frame);
        try {
            const value = run();
            return { value, inputs: [...inputs.values()], missing: [...missingIn(frame)] };
        } finally {
            this.frames.pop();
        }
    }

    /** The number of an entry whose key is about another part (a claim, a reading), in SI; undefined if it is none. */
    amountOf(entry: Entry): Amount | undefined {
        this.noteCell('whole');
        const node = entry.value?.list[0]?.[0];
        if (!node || entry.broken) return undefined;
        const w = evaluate(node, this.resolver());
        return isTrouble(w) ? undefined : w;
    }
    /** What an input stands on: a property, or a line about another part. */
    private givenIn(part: Part, key: string): Given {
        const entry = part.entries.get(key);
        return entry && !entry.property ? { status: 'stated', property: undefined, facts: noFacts, rows: none, entry } : this.given(part, key.split('.')[0]);
    }
    /** The same by its key, brought to a measure if one is named, noted as read and as an input; NaN if there is none. */
    seen(part: Part, key: string, measure?: MeasureName): number {
        const amount = this.seenAmount(part, key);
        const w = amount && measure ? inMeasure(amount, measures[measure].dimension) : amount;
        if (!w) return NaN;
        const label = `${part.name}: ${key}`;
        this.frames.at(-1)?.inputs?.set(label, { label, part, key, value: w.si, unit: w.unit?.text ?? '', status: 'stated', given: this.givenIn(part, key) });
        return w.si;
    }
    /** The wider half of its ±, SI; 0 where none is written. */
    seenHalf(part: Part, key: string): number {
        const w = this.seenAmount(part, key);
        return w ? Math.max(w.high - w.si, w.si - w.low) : 0;
    }
    /** The same where it is a word ('NaOH'). */
    seenWord(part: Part, key: string): string | undefined {
        this.noteText(part);
        return part.entries.get(key)?.value?.text.trim() || undefined;
    }
    private seenAmount(part: Part, key: string): Amount | undefined {
        this.noteText(part);
        const entry = part.entries.get(key);
        const node = entry && !entry.broken ? entry.value?.list[0]?.[0] : undefined;
        const w = node && evaluate(node, this.resolver());
        return !w || isTrouble(w) ? undefined : w;
    }
    /** Moles (per second) of a gas that was said as an amount or as a volume. */
    asGas(amount: Amount): number {
        for (const name of ['gas-flow', 'gas-volume'] as const) {
            const m = inMeasure(amount, measures[name].dimension);
            if (m) return m.si;
        }
        return NaN;
    }

    /** Works out every value that names others, so that their troubles are told. */
    workOutAll(): void {
        for (const part of this.rig.parts.values()) {
            if (part.kind?.statement) continue;
            const seen = new Set<Part>();
            for (let p: Part | undefined = part; p && !seen.has(p); p = this.baseOf(p)) {
                seen.add(p);
                for (const entry of p.entries.values()) if (!entry.broken && entry.value?.names && entry.property) this.given(part, entry.key);
            }
        }
        for (const name of this.rig.lets.keys()) this.named(name);
    }
}

function namesIn(rows: readonly Facts[]): readonly string[] {
    const names: string[] = [];
    for (const row of rows) {
        for (const f of row.values()) {
            if (f.condition) for (const c of f.condition.of) names.push(c.names.join('.'));
            else if (f.names) names.push(f.names.join('.'));
            else if (f.word) names.push(f.word);
        }
    }
    return names;
}
function undefinedName(node: { names: readonly string[]; start: number; end: number }, name: string, candidates: Iterable<string>): Worked {
    const near = nearest(name, candidates);
    return {
        trouble: true, code: 'unknown-name', message: offering(`${node.names.join('.')} is not a name that this rig knows`, near),
        start: node.start, end: node.end, fix: near ? { title: `Write ${near}`, text: [near, ...node.names.slice(1)].join('.') } : undefined,
    };
}

/** Worked out now, or in an earlier reading from the same values; its inputs and its bounds are looked up when they are asked for. */
class WorkedResult implements Result {
    readonly value: number;
    readonly missing: readonly string[];
    readonly remarks: readonly string[];
    readonly rests: readonly string[];
    private known: readonly Input[] | undefined;
    constructor(private readonly workings: Workings, readonly quantity: Quantity, readonly part: Part, kept: Kept, private readonly find: () => readonly Input[]) {
        ({ value: this.value, missing: this.missing, remarks: this.remarks, rests: this.rests } = kept);
    }
    get status(): Result['status'] {
        return this.value === this.value ? 'computed' : 'unknown';
    }
    get inputs(): readonly Input[] {
        return (this.known ??= this.find());
    }
    get spread(): Spread {
        return this.workings.spreadOf(this);
    }
    get low(): number {
        return this.spread.low;
    }
    get high(): number {
        return this.spread.high;
    }
}

/** Of a rig that differs from another by a little: asked for its value only. */
class NearbyResult implements Result {
    readonly remarks = none;
    readonly rests = none;
    readonly inputs = none;
    constructor(readonly quantity: Quantity, readonly part: Part, readonly value: number, readonly missing: readonly string[]) {}
    get status(): Result['status'] {
        return this.value === this.value ? 'computed' : 'unknown';
    }
    get low(): number {
        return this.value;
    }
    get high(): number {
        return this.value;
    }
    get spread(): Spread {
        return { low: this.value, high: this.value, shares: none };
    }
}

/** Whether two solutions were made from the same: who reads a solution takes its inputs over. */
function sameTraces(a: readonly Trace[], b: readonly Trace[]): boolean {
    return a.length === b.length && a.every((x, k) => {
        const y = b[k];
        return x.label === y.label && Object.is(x.value, y.value) && x.text === y.text && x.unit === y.unit && x.status === y.status && x.part === y.part;
    });
}
const assumptions = new WeakMap<Property, Matched>();
function assumed(property: Property): Matched {
    let m = assumptions.get(property);
    if (!m) assumptions.set(property, (m = match(parseAssumed(property.assume!.value), property)));
    return m;
}
function parseAssumed(text: string): ParsedValue {
    return parseValue(text);
}
