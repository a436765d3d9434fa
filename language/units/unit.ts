/**
 * Units: the text of a unit -> factor to SI, dimension, scale offset, mark. The only file that knows the unit library.
 * Each unit text is worked out once and remembered.
 */
import { createUnitClass } from 'mathjs';
import { dimension, one, over, power, times, type Dimension } from './dimension.js';
import { prefixFactors, unitTable, type UnitRow } from './table.js';

export interface Unit {
    /** As written, or as the table spells it. */
    readonly text: string;
    /** SI value of 1 of it (of a difference of 1, where the scale has an offset). */
    readonly factor: number;
    /** SI value of 0 of it. */
    readonly offset: number;
    readonly dimension: Dimension;
    readonly mark?: 'gauge' | 'absolute';
    readonly currency?: string;
    readonly name: string;
}

// The class alone, given plain number functions: a tenth of the size of the whole library, and quick to load.
interface LibraryUnit { dimensions: number[]; _normalize(value: number): number; value: number | null }
let Library: { parse(text: string): LibraryUnit } | undefined;
function library() {
    return (Library ??= (createUnitClass as never as (given: object) => typeof Library)({
        config: { predictable: false, number: 'number' },
        addScalar: (a: number, b: number) => a + b, subtractScalar: (a: number, b: number) => a - b,
        multiplyScalar: (a: number, b: number) => a * b, divideScalar: (a: number, b: number) => a / b,
        pow: (a: number, b: number) => a ** b, abs: Math.abs, fix: Math.trunc, round: Math.round,
        equal: (a: number, b: number) => a === b, isNumeric: (x: unknown) => typeof x === 'number',
        format: String, number: Number, Complex: class {}, BigNumber: class {}, Fraction: class {},
    })!);
}

function fromLibrary(text: string): { factor: number; dimension: Dimension } {
    if (/^[\d.e-]+$/.test(text)) return { factor: Number(text), dimension: one };
    const parsed = library().parse(text);
    // The library orders its base quantities mass, length, time, current, temperature, light, amount, angle, bit.
    const [kg, m, s, A, K, , mol] = parsed.dimensions;
    return { factor: parsed.value ?? parsed._normalize(1), dimension: dimension([m, kg, s, A, K, mol, 0]) };
}

const rows = new Map<string, UnitRow>();
for (const row of unitTable) for (const spelling of row.spellings.split(' ')) rows.set(spelling, row);

function single(text: string): Unit | undefined {
    const row = rows.get(text);
    if (row) return make(text, row, 1);
    const prefix = prefixFactors[text[0]];
    const prefixed = prefix !== undefined ? rows.get(text.slice(1)) : undefined;
    if (prefixed?.prefixes?.split(' ').includes(text[0] === 'μ' ? 'µ' : text[0])) return make(text, prefixed, prefix);
    return undefined;
}
function make(text: string, row: UnitRow, prefix: number): Unit {
    const is = fromLibrary(row.is);
    return {
        text, factor: is.factor * prefix, offset: row.offset ?? 0, name: row.name, mark: row.mark, currency: row.currency,
        dimension: row.currency ? dimension([0, 0, 0, 0, 0, 0, 1]) : is.dimension,
    };
}

const factorPattern = /^(.+?)(?:\^(-?\d+))?$/;
function factorOf(text: string): Unit | undefined {
    const m = factorPattern.exec(text);
    if (!m) return undefined;
    const base = units.get(m[1]) ?? single(m[1]);
    if (!base || m[2] === undefined) return base;
    const row = rows.get(m[1]);
    if (row?.remark === 'power' || row?.offset !== undefined || row?.mark) return undefined;
    const n = Number(m[2]);
    return { ...base, text, factor: base.factor ** n, dimension: power(base.dimension, n) };
}

function compound(text: string): Unit | undefined {
    if (/\((?:g|a)\)|[\/·*][\/·*]|[\/·*]$/.test(text)) return undefined;
    let factor = 1;
    let dim = one;
    let currency: string | undefined;
    let sign = 1;
    const tokens = text.match(/[^/·*()\s]+|[/·*()]|\s+/g) ?? [];
    let inside = false;
    let afterSlash = false;
    for (const token of tokens) {
        if (token === '/') {
            sign = -1;
            afterSlash = true;
        } else if (token === '(') {
            inside = true;
        } else if (token === ')') {
            inside = false;
            sign = 1;
        } else if (token !== '·' && token !== '*' && token.trim()) {
            const one_ = factorOf(token);
            if (!one_ || one_.mark) return undefined;
            // A product of temperatures is about differences: the offset of the scale plays no part.
            factor *= one_.factor ** sign;
            dim = sign > 0 ? times(dim, one_.dimension) : over(dim, one_.dimension);
            currency ??= one_.currency;
            if (!inside && afterSlash) {
                sign = 1;
                afterSlash = false;
            }
        }
    }
    return { text, factor, offset: 0, dimension: dim, currency, name: text };
}

const units = new Map<string, Unit | undefined>();

/** The unit that a text stands for, or undefined. `bar abs` and `bar gauge` with the mark as a second word are known too. */
export function unitOf(text: string): Unit | undefined {
    if (units.has(text)) return units.get(text);
    let unit: Unit | undefined;
    const marked = /^(\S+)\s+(abs|absolute|gauge)$/.exec(text);
    if (marked) {
        const base = unitOf(marked[1]);
        if (base && !base.mark && base.dimension === pressure()) unit = { ...base, text, mark: marked[2] === 'gauge' ? 'gauge' : 'absolute' };
    } else {
        unit = factorOf(text) ?? (/[/·*(]/.test(text) ? compound(text) : undefined);
        if (unit && unit.text !== text) unit = { ...unit, text };
    }
    if (units.size > 5000) units.clear();
    units.set(text, unit);
    return unit;
}
function pressure(): Dimension {
    return dimension([-1, 1, -2, 0, 0, 0, 0]);
}

/** Units that are said before their number. */
export function unitBefore(word: string): ((n: number) => Unit) | undefined {
    return word === 'AWG' ? gauge : undefined;
}
/** American wire gauge (ASTM B258): area of gauge n. */
function gauge(n: number): Unit {
    const area = (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - n) / 39)) ** 2;
    return { text: 'AWG', factor: area / n, offset: 0, dimension: dimension([2, 0, 0, 0, 0, 0, 0]), name: 'American wire gauge' };
}

/** Every spelling in the table, for 'did you mean' and the reference. */
export function unitSpellings(): string[] {
    return [...rows.keys()];
}
/** Spellings with the prefixes that people put before them. */
export function commonUnits(): string[] {
    return [...rows].flatMap(([spelling, row]) => [spelling, ...(row.prefixes?.split(' ') ?? []).map(p => p + spelling)]);
}
/** SI value of `value` of a unit. */
export function toSi(value: number, unit: Unit): number {
    return value * unit.factor + unit.offset;
}
/** The reverse of `toSi`. */
export function fromSi(si: number, unit: Unit): number {
    return (si - unit.offset) / unit.factor;
}
