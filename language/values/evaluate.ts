/**
 * Works out an expression: numbers with units, arithmetic with unit algebra, references to named values and to given or
 * computed values of parts. SI inside. A hole or an unknown name makes the result unknown; it never makes a wrong number.
 *
 * Two scales have a zero of their own: °C/°F and absolute pressure. Such an amount is a point on its scale:
 * point + difference = point, point - point = difference, point + point is refused.
 */
import { gasDifference, measures, one, over, power, saysDimension, times, type Dimension } from '../units/dimension.js';
import type { Unit } from '../units/unit.js';
import type { Node, NodeOf } from './parse-value.js';

export interface Amount {
    readonly si: number;
    readonly dimension: Dimension;
    /** Bounds by tolerance or range; equal to `si` where none is given. */
    readonly low: number;
    readonly high: number;
    readonly unit?: Unit;
    /** Of a pressure: as marked by its writer. Unmarked ones are read as gauge. */
    readonly basis?: 'gauge' | 'absolute';
    /** A temperature written on a scale with a zero of its own. */
    readonly point?: boolean;
    /** Where the number is a gas volume, whether its state (normal, standard) was said. */
    readonly currency?: string;
}
export interface Trouble {
    readonly trouble: true;
    /** 'unknown': something it rests on is not known; nothing more to tell. */
    readonly code: 'unknown' | 'unit-missing' | 'wrong-dimension' | 'unknown-name' | 'value-not-understood';
    readonly message: string;
    readonly start: number;
    readonly end: number;
    readonly fix?: { title: string; text: string; start?: number; end?: number };
}
export type Worked = Amount | Trouble;
export function isTrouble(w: Worked): w is Trouble {
    return 'trouble' in w;
}
/** What a name stands for. Undefined: not a name that this text knows. */
export type Resolve = (node: NodeOf<'name'>) => Worked | undefined;

const pressure = measures.pressure.dimension;
const kelvin = measures.temperature.dimension;

function trouble(node: { start: number; end: number }, code: Trouble['code'], message: string, fix?: Trouble['fix']): Trouble {
    return { trouble: true, code, message, start: node.start, end: node.end, fix };
}
const exact = (si: number, dimension: Dimension, more: Partial<Amount> = {}): Amount => ({ si, low: si, high: si, dimension, ...more });

/**
 * Works out a node.
 * @param carried unit that a bare number takes from its right neighbour, as in `140 x 180 x 1 mm` and `2..16 bar`
 */
export function evaluate(node: Node, resolve?: Resolve, carried?: Unit): Worked {
    switch (node.is) {
        case 'number':
            return carried ? exact(node.value * carried.factor + carried.offset, carried.dimension, marks(carried)) : exact(node.value, one);
        case 'quantity':
            return exact(node.value * node.unit.factor + node.unit.offset, node.unit.dimension, marks(node.unit));
        case 'name':
            return resolve?.(node) ?? trouble(node, 'unknown-name', `${node.names.join('.')} is not a name that this rig knows.`);
        case 'negative': {
            const a = evaluate(node.a, resolve);
            return isTrouble(a) ? a : { ...a, si: -a.si, low: -a.high, high: -a.low, point: undefined };
        }
        case 'call':
            return call(node, resolve);
        case 'operation':
            return operation(node, resolve, carried);
        case 'nothing':
        case 'unknown':
            return trouble(node, 'unknown', '');
        default:
            return trouble(node, 'value-not-understood', 'A number is expected here.');
    }
}
function marks(unit: Unit): Partial<Amount> {
    return { unit, basis: unit.mark, point: unit.offset !== 0 || undefined, currency: unit.currency };
}

/** The unit of the leftmost leaf of a node, which a bare number before it takes. */
export function leadingUnit(node: Node): Unit | undefined {
    return node.is === 'quantity' ? node.unit : node.is === 'operation' ? leadingUnit(node.a) ?? (node.op === 'x' || node.op === '..' ? leadingUnit(node.b) : undefined) : undefined;
}

function operation(node: NodeOf<'operation'>, resolve: Resolve | undefined, carried: Unit | undefined): Worked {
    const { op } = node;
    if (op === '..') {
        const b = evaluate(node.b, resolve, carried);
        const a = evaluate(node.a, resolve, node.a.is === 'number' ? leadingUnit(node.b) ?? carried : undefined);
        if (isTrouble(a)) return a;
        if (isTrouble(b)) return b;
        if (a.dimension !== b.dimension) return differs(node, a, b);
        return { ...b, si: (a.si + b.si) / 2, low: Math.min(a.si, b.si), high: Math.max(a.si, b.si) };
    }
    if (op === '±') {
        const a = evaluate(node.a, resolve, carried);
        if (isTrouble(a)) return a;
        if (node.b.is === 'quantity' && node.b.unit.dimension === one && a.dimension !== one && /%|‰|ppm/.test(node.b.unit.text)) {
            const half = Math.abs(a.si * node.b.value * node.b.unit.factor);
            return { ...a, low: a.si - half, high: a.si + half };
        }
        const b = evaluate(node.b, resolve, node.b.is === 'number' ? a.unit : undefined);
        if (isTrouble(b)) return b;
        if (a.dimension !== b.dimension) return differs(node, a, b);
        // A tolerance is a difference: `20 °C ± 2 °C` means two kelvin.
        const half = Math.abs(b.point || (node.b.is === 'number' && a.point) ? (b.si - (b.unit?.offset ?? a.unit?.offset ?? 0)) : b.si);
        return { ...a, low: a.si - half, high: a.si + half };
    }
    const a = evaluate(node.a, resolve);
    const b = evaluate(node.b, resolve);
    if (isTrouble(a)) return a;
    if (isTrouble(b)) return b;
    switch (op) {
        case '+':
        case '-': {
            if (a.dimension !== b.dimension) {
                const zero = node.b.is === 'number' && node.b.value === 0;
                return zero ? a : differs(node, a, b);
            }
            const points = Number(!!a.point || a.basis === 'absolute') + Number(!!b.point || b.basis === 'absolute');
            if (op === '+' && points === 2) {
                return trouble(node, 'value-not-understood', a.dimension === kelvin
                    ? 'Two temperatures do not add up; write the second as a difference, in K.'
                    : 'Two absolute pressures do not add up; write the second as gauge.');
            }
            const sign = op === '+' ? 1 : -1;
            const spread = (b.high - b.low) / 2;
            const mid = a.si + sign * b.si;
            const keep = points === 1 || op === '+' ? (a.point || a.basis ? a : b) : undefined;
            return {
                si: mid, low: mid - (a.si - a.low) - spread, high: mid + (a.high - a.si) + spread, dimension: a.dimension,
                unit: points === 2 ? undefined : a.unit, basis: keep?.basis, point: points === 1 && a.dimension === kelvin ? true : undefined,
                currency: a.currency ?? b.currency,
            };
        }
        case '*':
        case '/': {
            const dim = op === '*' ? times(a.dimension, b.dimension) : over(a.dimension, b.dimension);
            if (op === '/' && b.si === 0) return trouble(node, 'value-not-understood', 'This divides by zero.');
            const f = (x: number, y: number) => (op === '*' ? x * y : x / y);
            const ends = [f(a.low, b.low), f(a.low, b.high), f(a.high, b.low), f(a.high, b.high)];
            const unit = b.dimension === one ? a.unit : a.dimension === one && op === '*' ? b.unit : undefined;
            return {
                si: f(a.si, b.si), low: Math.min(...ends), high: Math.max(...ends), dimension: dim, unit,
                basis: unit === a.unit ? a.basis : b.basis, currency: a.currency ?? b.currency,
            };
        }
        case '^': {
            if (b.dimension !== one) return trouble(node.b, 'wrong-dimension', 'An exponent is a plain number.');
            const si = a.si ** b.si;
            return si === si ? exact(si, power(a.dimension, b.si)) : trouble(node, 'value-not-understood', 'This has no real value.');
        }
        default:
            return trouble(node, 'value-not-understood', `${op} makes no number here.`);
    }
}
function differs(node: Node, a: Amount, b: Amount): Trouble {
    return trouble(node, 'wrong-dimension', `${capital(saysDimension(a.dimension))} and ${saysDimension(b.dimension)} do not go together here.`);
}

function call(node: NodeOf<'call'>, resolve: Resolve | undefined): Worked {
    const args: Amount[] = [];
    for (const arg of node.args) {
        const w = evaluate(arg, resolve);
        if (isTrouble(w)) return w;
        args.push(w);
    }
    const first = args[0];
    const many = node.name === 'min' || node.name === 'max';
    if (!first || (many && args.some(a => a.dimension !== first.dimension))) {
        return trouble(node, 'wrong-dimension', `${node.name} compares values of one kind.`);
    }
    switch (node.name) {
        case 'min':
            return args.reduce((x, y) => (y.si < x.si ? y : x));
        case 'max':
            return args.reduce((x, y) => (y.si > x.si ? y : x));
        case 'abs':
            return { ...first, ...exact(Math.abs(first.si), first.dimension) };
        case 'sqrt':
            return first.si < 0 ? trouble(node, 'value-not-understood', 'The root of a negative value is not a number.') : exact(Math.sqrt(first.si), power(first.dimension, 0.5));
        case 'round':
            return exact(Math.round(first.si), first.dimension);
        default:
            return trouble({ start: node.start, end: node.start + node.name.length }, 'value-not-understood',
                `${node.name}( ) is not known; there are min, max, abs, sqrt and round.`);
    }
}

/** Moles per cubic metre of ideal gas at 0 °C, 101.325 kPa; and at 20 °C, the state taken where a plain litre is said. */
const NORMAL_DENSITY = 44.615033;
const ROOM_DENSITY = 41.571256;

/**
 * An amount where a measure is expected: the same dimension, or a gas volume where an amount of gas is meant (a plain
 * litre is taken at 20 °C, 101.325 kPa and dry; a price or an energy per m³ at 0 °C).
 */
export function inMeasure(a: Amount, expected: Dimension): Amount | undefined {
    if (a.dimension === expected) return a;
    const moles = gasDifference(a.dimension, expected);
    if (moles === undefined) return undefined;
    const each = a.dimension.powers[5] < 0 || expected.powers[5] < 0;
    const f = (each ? NORMAL_DENSITY : ROOM_DENSITY) ** moles;
    return { ...a, si: a.si * f, low: a.low * f, high: a.high * f, dimension: expected };
}
/** True if `inMeasure` had to take a state of the gas that was not said. */
export function tookState(a: Amount, expected: Dimension): boolean {
    return a.dimension !== expected;
}

export function capital(s: string): string {
    return s ? s[0].toUpperCase() + s.slice(1) : s;
}
/** True for a pressure said above vacuum. */
export function isAbsolutePressure(a: Amount): boolean {
    return a.dimension === pressure && a.basis === 'absolute';
}
