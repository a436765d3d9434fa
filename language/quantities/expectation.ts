/**
 * An `expect` line that compares two values at rest, weighed: both sides worked out, brought to one scale, compared.
 * Gauge and absolute pressures, plain and normal litres are put on one footing first.
 */
import { measures, saysDimension } from '../units/dimension.js';
import { digits, withUnit } from '../units/format.js';
import { fromSi } from '../units/unit.js';
import { capital, evaluate, inMeasure, isTrouble, tookState, type Amount, type Resolve, type Trouble } from '../values/evaluate.js';
import { parseValue, type Node, type NodeOf } from '../values/parse-value.js';
import type { Expectation } from '../rig/rig.js';
import { workingsIn, namesOf } from './varied.js';
import type { Workings } from './workings.js';

export interface Weighed {
    /** The comparison, if the line holds one. */
    readonly node?: NodeOf<'operation'>;
    /** Undefined if something is not known, or if the two sides cannot be compared. */
    readonly holds?: boolean;
    /** SI, on one scale: the left side, and what it is compared with. */
    readonly left?: number;
    readonly limits?: readonly number[];
    /** Writes an SI value of the left side in the unit of the limit. */
    readonly say?: (si: number) => string;
    /** The left side in the unit of the limit: '2.31 V'. */
    readonly now?: string;
    /** What it is worth, worked out when it is asked for: it costs far more than the number. */
    readonly bounds?: () => Bounds;
    /** A plain litre was taken as at 20 °C, dry, to compare it with an amount of gas. */
    readonly stateTaken?: boolean;
    /** What would have to be said: 'lye.fill'. */
    readonly missing: readonly string[];
    /** What cannot be compared at all: a name that stands for nothing, a wrong dimension. */
    readonly troubles: readonly Trouble[];
}

export interface Bounds {
    /** It holds, or fails, for every value within the bounds of the left side. */
    readonly sure: boolean;
    /** The wider half of its bounds in the unit of the limit: '0.15 V'. */
    readonly plusMinus?: string;
}

/** A comparison that stands in no text: `stack.voltage < 24 V`. Undefined if it is none. */
export function expectationOf(text: string): Expectation | undefined {
    const value = parseValue(text);
    const span = { file: '', start: 0, end: text.length };
    return value.list[0]?.[0]?.is === 'operation' && comparisons.has(value.list[0][0].op) && !value.problems.length ? { span, text, value, valueSpan: span, overTime: false, broken: false } : undefined;
}
const comparisons: ReadonlySet<string> = new Set(['<', '<=', '>', '>=', '=', 'between']);
/** Weighs one expectation at rest, in the variants that it names. Expectations over time and after events are not weighed. */
export function weigh(workings: Workings, e: Expectation): Weighed {
    // What it read the first time is not noted again.
    workings.noteCell('whole');
    let w = workings.weighed.get(e) as Weighed | undefined;
    if (!w) workings.weighed.set(e, (w = weighNow(workings, e)));
    return w;
}
function weighNow(workings: Workings, e: Expectation): Weighed {
    const node = e.value?.list[0]?.[0];
    if (e.broken || e.overTime || (e.when && e.when.word !== 'with') || node?.is !== 'operation') return { missing: [], troubles: [] };
    const of = e.when ? workingsIn(workings, namesOf(e.when.text)) : workings;
    return weighNode(of, node, of.resolver(), of.resolver(true));
}
/**
 * Weighs a comparison, its names looked up by whoever asks: at rest, or at a moment of a run.
 * @param wide  the same with the bounds of each value
 */
export function weighNode(workings: Workings, node: NodeOf<'operation'>, resolve: Resolve, wide: Resolve): Weighed {
    const missing: string[] = [];
    const troubles: Trouble[] = [];
    const work = (n: Node | undefined): Amount | undefined => {
        if (!n) return undefined;
        const w = evaluate(n, resolve);
        if (!isTrouble(w)) return w;
        if (w.code !== 'unknown') troubles.push(w);
        else if (w.message) missing.push(...w.message.split(', ').filter(m => !missing.includes(m)));
        return undefined;
    };
    const left = work(node.a);
    const limits = (node.op === 'between' ? [node.b, node.c] : [node.b]).map(n => ({ n: n!, amount: work(n) }));
    if (!left || limits.some(l => !l.amount)) return { node, missing, troubles };
    let stateTaken = false;
    const brought: number[] = [];
    const absolute = left.dimension === measures.pressure.dimension && left.basis === 'absolute';
    for (const { n, amount } of limits) {
        const same = inMeasure(amount!, left.dimension);
        if (!same) {
            const bare = !amount!.unit && n.is === 'number';
            troubles.push({
                trouble: true, code: bare ? 'unit-missing' : 'wrong-dimension', start: n.start, end: n.end,
                message: bare ? `A unit is missing: ${saysDimension(left.dimension)} is expected here.` : `${capital(saysDimension(left.dimension))} and ${saysDimension(amount!.dimension)} cannot be compared.`,
            });
            continue;
        }
        stateTaken ||= tookState(amount!, left.dimension);
        brought.push(onScale(workings, same, n, absolute));
    }
    if (troubles.length) return { node, missing, troubles };
    const shown = limits[0].amount!.unit?.dimension === left.dimension ? limits[0].amount!.unit : left.unit;
    const met = (x: number) => compare(node.op, x, brought, exactness(node));
    const holds = left.si === left.si ? met(left.si) : undefined;
    const say = (si: number) => (shown ? withUnit(fromSi(si, shown), shown, 3) : digits(si, 3));
    let bounds: Bounds | undefined;
    const boundsOf = (): Bounds => {
        const bounded = evaluate(node.a, wide);
        const { low, high } = isTrouble(bounded) ? left : bounded;
        const half = Math.max(high - left.si, left.si - low);
        return { sure: met(low) === holds && met(high) === holds, plusMinus: half > 0 ? (shown ? withUnit(half / shown.factor, shown, 2) : digits(half, 2)) : undefined };
    };
    return { node, holds, missing, troubles, stateTaken, left: left.si, limits: brought, say, now: say(left.si), bounds: () => (bounds ??= boundsOf()) };
}
/** A pressure on the scale of the left side. A bare literal takes that scale: nobody states the air as a gauge pressure. */
function onScale(workings: Workings, a: Amount, n: Node, absolute: boolean): number {
    if (a.dimension !== measures.pressure.dimension) return a.si;
    const isAbsolute = a.basis === 'absolute' || (a.basis === undefined && n.is !== 'name' && absolute);
    return a.si + (absolute === isAbsolute ? 0 : absolute ? workings.airPressure : -workings.airPressure);
}
/** Half of the last digit that the maker wrote after `=`, as a share of nothing: in SI. */
function exactness(node: NodeOf<'operation'>): number {
    if (node.op !== '=') return 0;
    if (node.b.is === 'quantity') return 0.5 * 10 ** -node.b.decimals * Math.abs(node.b.unit.factor);
    return node.b.is === 'number' ? 0.5 * 10 ** -node.b.decimals : 0;
}
function compare(op: string, x: number, limits: readonly number[], half: number): boolean | undefined {
    const [first, second] = limits;
    switch (op) {
        case '<': return x < first;
        case '<=': return x <= first;
        case '>': return x > first;
        case '>=': return x >= first;
        case '=': return Math.abs(x - first) <= half + 1e-9 * Math.abs(first);
        case 'between': return x >= Math.min(first, second) && x <= Math.max(first, second);
        default: return undefined;
    }
}
