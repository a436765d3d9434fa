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
import type { Fact } from '../values/match.js';
import { parseValue, type Node, type ParsedValue } from '../values/parse-value.js';
import type { Property } from '../vocabulary/define.js';
import type { Doubt } from './define.js';
import type { Supposed } from './supposed.js';
import type { Given, Input, Result, Workings } from './workings.js';

/** Something that a number rests on and that is known only within bounds. */
export interface Root {
    readonly key: string;
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
const noRoots: ReadonlyMap<string, Root> = new Map();
const known = (x: number) => x === x;

/** Works out what the numbers of one rig are good for. */
export class Spreads {
    private readonly roots = new Map<Result, ReadonlyMap<string, Root>>();
    private readonly modelRoots = new Map<object, ReadonlyMap<string, Root>>();
    private readonly lowEnds = new Map<string, Workings>();
    private readonly highEnds = new Map<string, Workings>();

    /**
     * @param workings  the rig as it is expected
     * @param other     the same rig, supposing something on top; what does not rest on the root may be taken over
     */
    constructor(private readonly workings: Workings, private readonly other: (root: Root, at: (s: Supposed) => Supposed) => Workings) {}

    of(result: Result): Spread {
        const { value, part, quantity } = result;
        if (!known(value)) return { low: NaN, high: NaN, shares: [] };
        // A temperature is no measure of how much a temperature changes.
        const small = quantity.measure === 'temperature' ? SMALL_WARMING : SMALL * Math.abs(value);
        let down = 0;
        let up = 0;
        const found: { root: Root; atLow: number; atHigh: number; weight: number }[] = [];
        for (const root of this.rootsOf(result).values()) {
            const at = (end: 'low' | 'high') => (this.endOf(root, end).quantity(part, quantity.name)?.value ?? NaN) - value;
            const atHigh = at('high');
            const atLow = root.even && Math.abs(atHigh) < small ? -atHigh : at('low');
            const below = Math.min(known(atLow) ? atLow : 0, known(atHigh) ? atHigh : 0, 0);
            const above = Math.max(known(atLow) ? atLow : 0, known(atHigh) ? atHigh : 0, 0);
            down += below * below;
            up += above * above;
            const weight = below * below + above * above;
            if (weight > 0 || !known(atLow) || !known(atHigh)) found.push({ root, atLow, atHigh, weight });
        }
        const whole = down + up;
        const shares = found.map(({ root: { key, label, told, sort, source }, atLow, atHigh, weight }) => ({ root: { key, label, told, sort, source }, atLow, atHigh, part: whole > 0 ? weight / whole : 0 }))
            .filter(s => s.part >= LEAST_PART || !known(s.atLow) || !known(s.atHigh)).sort((a, b) => b.part - a.part);
        return { low: value - Math.sqrt(down), high: value + Math.sqrt(up), shares };
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
        for (const root of this.rootsOf(result).values()) {
            const high = read(this.endOf(root, 'high')).map((v, i) => v - here[i]);
            const straight = (i: number) => root.even && Math.abs(high[i]) < SMALL * Math.abs(here[i]);
            const low = here.every((_, i) => straight(i)) ? undefined : read(this.endOf(root, 'low'));
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
        return this.rootsOf(result).has(root.key);
    }
    /** The same of something solved as a whole, by what it read. */
    modelRests(solved: object, inputs: () => Iterable<Input>, root: Root): boolean {
        let roots = this.modelRoots.get(solved);
        if (!roots) this.modelRoots.set(solved, (roots = this.rootsIn(inputs())));
        return roots.has(root.key);
    }
    private endOf(root: Root, end: 'low' | 'high'): Workings {
        const ends = end === 'low' ? this.lowEnds : this.highEnds;
        let workings = ends.get(root.key);
        if (!workings) ends.set(root.key, (workings = this.other(root, s => root.at(s, end === 'low' ? -1 : 1))));
        return workings;
    }
    /** Everything left open that a number rests on, however far up. */
    rootsOf(result: Result): ReadonlyMap<string, Root> {
        let roots = this.roots.get(result);
        if (!roots) {
            this.roots.set(result, noRoots);
            this.roots.set(result, (roots = this.rootsIn(result.inputs)));
        }
        return roots;
    }
    private rootsIn(inputs: Iterable<Input>): ReadonlyMap<string, Root> {
        const roots = new Map<string, Root>();
        for (const input of inputs) this.collect(input, roots);
        return roots.size ? roots : noRoots;
    }
    private collect(input: Input, into: Map<string, Root>): void {
        if (input.result) {
            for (const [key, root] of this.rootsOf(input.result)) into.set(key, root);
        } else if (input.doubt) {
            const { doubt, part } = input;
            const key = `${part.name} ${doubt.name}`;
            if (input.value > 0 && !into.has(key)) {
                into.set(key, {
                    key, label: doubt.name, told: input.text ?? '', sort: doubt.stated ? 'stated' : 'law', source: doubt.source,
                    at: (s, z) => s.off(part.name, doubt.name, z), even: !doubt.uneven,
                });
            }
        } else if (input.given) {
            const dot = input.key.indexOf('.');
            this.collectGiven(input.part.name, input.key, input.given, input.given.facts.get(dot < 0 ? '' : input.key.slice(dot + 1)), into);
        }
    }
    private collectGiven(part: string, key: string, given: Given, fact: Fact | undefined, into: Map<string, Root>): void {
        if (!fact || !known(fact.number)) return;
        const value = given.entry?.value;
        if (value?.names) {
            this.collectNamed(value, into);
            return;
        }
        const owner = given.from?.name ?? part;
        const label = `${owner}.${key}`;
        if (into.has(label)) return;
        const assumed = given.status === 'assumed';
        const [low, high] = assumed ? spreadOf(given.property!, fact) : [fact.low, fact.high];
        if (!(low < high)) return;
        into.set(label, {
            key: label, label, told: assumed ? given.property!.assume!.spread! : '', sort: assumed ? 'assumed' : 'stated',
            source: assumed ? given.property!.assume!.source ?? 'common practice, no source' : 'as stated',
            at: (s, z) => s.value(owner, key, within(fact.number, low, high, z)), even: isEven(fact.number, low, high),
        });
    }
    /** A value that names others is as open as they are. */
    private collectNamed(value: ParsedValue, into: Map<string, Root>): void {
        const { workings } = this;
        for (const node of namesIn(value)) {
            const [first, ...more] = node.names;
            if (!more.length) {
                const entry = workings.rig.lets.get(first)?.value;
                if (entry?.names) this.collectNamed(entry, into);
                const w = entry && !entry.names ? workings.namedValue(first) : undefined;
                if (w && w.low < w.high) into.set(`let ${first}`, { key: `let ${first}`, label: first, told: '', sort: 'stated', source: 'as stated', at: (s, z) => s.named(first, within(w.si, w.low, w.high, z)), even: isEven(w.si, w.low, w.high) });
                continue;
            }
            const part = workings.rig.parts.get(first);
            if (!part) continue;
            const key = more.join('.');
            const result = workings.quantity(part, key);
            if (result) for (const [k, root] of this.rootsOf(result)) into.set(k, root);
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
