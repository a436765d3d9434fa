/**
 * The ± of a number. Three things leave a number open: tolerances in the text, assumptions (each declared with its usual
 * spread), and what laws and instruments leave open ({@link Doubt}). Each is a root. A number is worked out again with one
 * root after the other at its lower and its upper end, everything coupled solved again, and the differences are added as
 * squares: roots are taken as independent, and each as wide as 95 % of all cases. So is the result.
 *
 * Worked out only for numbers of which somebody asks it: what does not rest on a root is taken over as it is.
 */
import { measures } from '../units/dimension.js';
import { digits } from '../units/format.js';
import { evaluate, isTrouble, type Amount } from '../values/evaluate.js';
import type { Part } from '../rig/rig.js';
import type { Fact } from '../values/match.js';
import { parseValue, type Node, type ParsedValue } from '../values/parse-value.js';
import type { Property } from '../vocabulary/define.js';
import type { Doubt } from './define.js';
import type { Supposed } from './supposed.js';
import type { Given, Input, Result, Workings } from './workings.js';

/** Something that a number rests on and that is known only within bounds. */
export interface Root {
    readonly key: string;
    /** Its place among the roots of its rig, in the order of finding. */
    readonly index: number;
    /** As a reader finds it: 'stack.gap', 'surface of the electrodes'. */
    readonly label: string;
    /** Its bounds in words: '± 0.5 mm', '± 30 %'; empty where they stand in the text. */
    readonly told: string;
    /** 'stated' with a tolerance, 'assumed', or left open by a law. */
    readonly sort: 'stated' | 'assumed' | 'law';
    readonly source: string;
    /** The rig with the root off by so many half widths: -1 is its lower end, 1 its upper one. */
    readonly at: (s: Supposed, halfWidths: number) => Supposed;
    /** Both ends are equally far from what is expected, so that a small effect is as large either way. */
    readonly even: boolean;
}
/** What one root does to a number. */
export interface Share {
    readonly root: Pick<Root, 'key' | 'label' | 'told' | 'sort' | 'source'>;
    /** Change of the number, SI, with the root at its lower and upper end. NaN: it does not exist there. */
    readonly atLow: number;
    readonly atHigh: number;
    /** Part of the whole variance, 0 .. 1. */
    readonly part: number;
}
export interface Spread {
    /** SI, about 95 % of all cases lie between. Equal to the value where nothing is left open. */
    readonly low: number;
    readonly high: number;
    /** What matters, most first. */
    readonly shares: readonly Share[];
}

/** A change of less than this share of a number is taken as straight: what bends in it is less than a fifth of the change, and bounds
 *  are told by two figures. */
const SMALL = 0.1;
/** K, the same of a temperature. */
const SMALL_WARMING = 0.2;
/** Less of the variance than this is not worth a line. */
const LEAST_PART = 0.005;
const known = (x: number) => x === x;

/** Which roots something rests on, a bit for each: most numbers of a rig rest on most of its roots. */
class RootSet {
    private readonly words: number[] = [];
    add(index: number): void {
        const word = index >> 5;
        while (this.words.length <= word) this.words.push(0);
        this.words[word] |= 1 << (index & 31);
    }
    addAll(other: RootSet): void {
        const { words } = other;
        while (this.words.length < words.length) this.words.push(0);
        for (let k = 0; k < words.length; k++) this.words[k] |= words[k];
    }
    has(index: number): boolean {
        return (this.words[index >> 5] & (1 << (index & 31))) !== 0;
    }
    of(all: readonly Root[]): Root[] {
        return all.filter(root => this.has(root.index));
    }
}
const noRoots = new RootSet();

/** Works out what the numbers of one rig are good for. */
export class Spreads {
    /** All that were found so far. */
    private readonly all: Root[] = [];
    private readonly byKey = new Map<string, Root | undefined>();
    /** What inputs leave open that are no numbers worked out: by part, then by property or doubt. */
    private readonly leaves = new Map<Part, Map<string | Doubt, RootSet>>();
    private readonly results = new Map<Result, RootSet>();
    private readonly models = new Map<object, RootSet>();
    /** The rig with each root at its ends. */
    private readonly lowEnds: (Workings | undefined)[] = [];
    private readonly highEnds: (Workings | undefined)[] = [];

    /**
     * @param workings  the rig as it is expected
     * @param other     the same rig, supposing something on top; what does not rest on the root may be taken over
     */
    constructor(private readonly workings: Workings, private readonly other: (root: Root, at: (s: Supposed) => Supposed) => Workings) {}

    of(result: Result): Spread {
        const { value, quantity } = result;
        if (!known(value)) return { low: NaN, high: NaN, shares: [] };
        // A temperature is no measure of how much a temperature changes.
        const small = quantity.measure === 'temperature' ? SMALL_WARMING : SMALL * Math.abs(value);
        const found: { root: Root; atLow: number; atHigh: number; below: number; above: number; weight: number }[] = [];
        for (const root of this.rootsOf(result)) {
            const atHigh = this.changeAt(this.highEnds, root, 1, result);
            const atLow = root.even && Math.abs(atHigh) < small ? -atHigh : this.changeAt(this.lowEnds, root, -1, result);
            const below = Math.min(known(atLow) ? atLow : 0, known(atHigh) ? atHigh : 0, 0) ** 2;
            const above = Math.max(known(atLow) ? atLow : 0, known(atHigh) ? atHigh : 0, 0) ** 2;
            const weight = below + above;
            if (weight > 0 || !known(atLow) || !known(atHigh)) found.push({ root, atLow, atHigh, below, above, weight });
        }
        // By weight, not in the order in which roots were come upon, which hangs on what was asked before: a sum must not.
        found.sort((a, b) => b.weight - a.weight);
        let down = 0;
        let up = 0;
        for (const f of found) {
            down += f.below;
            up += f.above;
        }
        const whole = down + up;
        const shares: Share[] = [];
        for (const { root: { key, label, told, sort, source }, atLow, atHigh, weight } of found) {
            const part = whole > 0 ? weight / whole : 0;
            if (part >= LEAST_PART || !known(atLow) || !known(atHigh)) shares.push({ root: { key, label, told, sort, source }, atLow, atHigh, part });
        }
        return { low: value - Math.sqrt(down), high: value + Math.sqrt(up), shares };
    }
    /** What a root at one end does to a number. */
    private changeAt(ends: (Workings | undefined)[], root: Root, halfWidths: number, { part, quantity, value }: Result): number {
        return (this.endOf(ends, root, halfWidths).quantity(part, quantity.name)?.value ?? NaN) - value;
    }
    private endOf(ends: (Workings | undefined)[], root: Root, halfWidths: number): Workings {
        return (ends[root.index] ??= this.other(root, s => root.at(s, halfWidths)));
    }
    /**
     * The bounds of a curve: of each of its numbers, by the same roots as those of a result and in the same way.
     *
     * @param read  SI, always as many; no temperatures, of which nobody knows how much is little
     */
    along(result: Result, read: (workings: Workings) => readonly number[]): readonly Pick<Spread, 'low' | 'high'>[] {
        const here = read(this.workings);
        const down = here.map(() => 0);
        const up = here.map(() => 0);
        for (const root of this.rootsOf(result)) {
            const high = read(this.endOf(this.highEnds, root, 1)).map((v, i) => v - here[i]);
            const straight = (i: number) => root.even && Math.abs(high[i]) < SMALL * Math.abs(here[i]);
            const low = here.every((_, i) => straight(i)) ? undefined : read(this.endOf(this.lowEnds, root, -1));
            here.forEach((value, i) => {
                const off = [high[i], straight(i) || !low ? -high[i] : low[i] - value].filter(known);
                down[i] += Math.min(0, ...off) ** 2;
                up[i] += Math.max(0, ...off) ** 2;
            });
        }
        return here.map((value, i) => ({ low: value - Math.sqrt(down[i]), high: value + Math.sqrt(up[i]) }));
    }
    /** Whether a number can be another one when a root is. */
    rests(result: Result, root: Root): boolean {
        return this.setOf(result).has(root.index);
    }
    /** The same of something solved as a whole, by what it read. */
    modelRests(solved: object, inputs: () => Iterable<Input>, root: Root): boolean {
        let set = this.models.get(solved);
        if (!set) this.models.set(solved, (set = this.setIn(inputs())));
        return set.has(root.index);
    }
    /** Everything left open that a number rests on, however far up. */
    rootsOf(result: Result): readonly Root[] {
        return this.setOf(result).of(this.all);
    }
    private setOf(result: Result): RootSet {
        let set = this.results.get(result);
        if (!set) {
            this.results.set(result, noRoots);
            this.results.set(result, (set = this.setIn(result.inputs)));
        }
        return set;
    }
    private setIn(inputs: Iterable<Input>): RootSet {
        const set = new RootSet();
        for (const input of inputs) this.collect(input, set);
        return set;
    }
    /** Notes a root by its key; `find` says what it is, if it is one, the first time. */
    private note(key: string, into: RootSet, find: () => Omit<Root, 'key' | 'index'> | undefined): void {
        let root = this.byKey.get(key);
        if (!root && !this.byKey.has(key)) {
            const found = find();
            if (found) this.all.push((root = { ...found, key, index: this.all.length }));
            this.byKey.set(key, root);
        }
        if (root) into.add(root.index);
    }
    private collect(input: Input, into: RootSet): void {
        into.addAll(input.result ? this.setOf(input.result) : this.leafOf(input));
    }
    /** What is left open by an input that is no number worked out. */
    private leafOf(input: Input): RootSet {
        const { part, key, doubt, given } = input;
        if (doubt && !(input.value > 0)) return noRoots;
        let leaves = this.leaves.get(part);
        if (!leaves) this.leaves.set(part, (leaves = new Map()));
        const by = doubt ?? key;
        let set = leaves.get(by);
        if (set) return set;
        leaves.set(by, (set = new RootSet()));
        if (doubt) {
            this.note(`${part.name} ${doubt.name}`, set, () => ({
                label: doubt.name, told: input.text ?? '', sort: doubt.stated ? 'stated' : 'law', source: doubt.source,
                at: (s, z) => s.off(part.name, doubt.name, z), even: !doubt.uneven,
            }));
        } else if (given) {
            const dot = key.indexOf('.');
            this.collectGiven(part.name, key, given, given.facts.get(dot < 0 ? '' : key.slice(dot + 1)), set);
        }
        return set;
    }
    private collectGiven(part: string, key: string, given: Given, fact: Fact | undefined, into: RootSet): void {
        if (!fact || !known(fact.number)) return;
        const value = given.entry?.value;
        if (value?.names) {
            this.collectNamed(value, into);
            return;
        }
        const owner = given.from?.name ?? part;
        const label = `${owner}.${key}`;
        this.note(label, into, () => {
            const assumed = given.status === 'assumed';
            const [low, high] = assumed ? spreadOf(given.property!, fact) : [fact.low, fact.high];
            return low < high ? {
                label, told: assumed ? given.property!.assume!.spread! : '', sort: assumed ? 'assumed' : 'stated',
                source: assumed ? given.property!.assume!.source ?? 'common practice, no source' : 'as stated',
                at: (s, z) => s.value(owner, key, within(fact.number, low, high, z)), even: isEven(fact.number, low, high),
            } : undefined;
        });
    }
    /** A value that names others is as open as they are. */
    private collectNamed(value: ParsedValue, into: RootSet): void {
        const { workings } = this;
        for (const node of namesIn(value)) {
            const [first, ...more] = node.names;
            if (!more.length) {
                const entry = workings.rig.lets.get(first)?.value;
                if (entry?.names) this.collectNamed(entry, into);
                const w = entry && !entry.names ? workings.namedValue(first) : undefined;
                if (w && w.low < w.high) this.note(`let ${first}`, into, () => ({ label: first, told: '', sort: 'stated', source: 'as stated', at: (s, z) => s.named(first, within(w.si, w.low, w.high, z)), even: isEven(w.si, w.low, w.high) }));
                continue;
            }
            const part = workings.rig.parts.get(first);
            if (!part) continue;
            const key = more.join('.');
            const result = workings.quantity(part, key);
            if (result) into.addAll(this.setOf(result));
            else this.collectGiven(first, key, workings.given(part, more[0]), workings.fact(part, key), into);
        }
    }
}
const within = (value: number, low: number, high: number, z: number) => (z < 0 ? value + z * (value - low) : value + z * (high - value));
const isEven = (value: number, low: number, high: number) => Math.abs(high + low - 2 * value) < 1e-6 * (high - low);
function* namesIn(value: ParsedValue): Generator<Extract<Node, { is: 'name' }>> {
    const inside = function* (x: unknown): Generator<Extract<Node, { is: 'name' }>> {
        if (typeof x !== 'object' || x === null) return;
        if ((x as Node).is === 'name') yield x as Extract<Node, { is: 'name' }>;
        else for (const y of Object.values(x)) yield* inside(y);
    };
    for (const sequence of value.list) for (const node of sequence) yield* inside(node);
}
/** A half width as it is told: '± 0.15 V', '± 30 %'. */
export function toldHalf(doubt: Doubt, half: number): string {
    return doubt.unit ? `± ${digits(half, 2)} ${doubt.unit}` : `± ${digits(100 * half, 2)} %`;
}

interface ParsedSpread { readonly amount: Amount | undefined; readonly percent: boolean }
const parsed = new Map<string, ParsedSpread>();
/** '± 30 %', '± 5 K'. */
function parseSpread(text: string): ParsedSpread {
    let p = parsed.get(text);
    if (!p) {
        const node = parseValue(text.replace(/^±\s*/, '')).list[0]?.[0];
        const w = node && evaluate(node);
        const amount = w && !isTrouble(w) ? w : undefined;
        parsed.set(text, (p = { amount, percent: amount?.unit?.text === '%' }));
    }
    return p;
}
/** Bounds of an assumed number by the spread that its assumption declares: in its own unit, else as a share of it. */
export function spreadOf(property: Property, fact: Fact): readonly [number, number] {
    const { number } = fact;
    const spread = property.assume?.spread;
    const { amount, percent } = spread ? parseSpread(spread) : { amount: undefined, percent: false };
    if (!amount || !fact.amount) return [number, number];
    // Of a bare number (a count, a factor) a few per cent mean nothing.
    const share = fact.amount.dimension === measures.fraction.dimension;
    if (percent && !(share && fact.amount.unit?.text === '%')) return share ? [number, number] : [number * (1 - amount.si), number * (1 + amount.si)];
    return amount.dimension === fact.amount.dimension ? [number - amount.si, number + amount.si] : [number, number];
}
