/** Every quantity and every assumption of a rig, as rows: what `show --format json` prints, and what lists are made from. */
import { quantityOf } from '../quantities/index.js';
import type { Given, Result, Workings } from '../quantities/workings.js';
import type { Entry, Part } from '../rig/rig.js';
import { measures } from '../units/dimension.js';
import { fromSi, unitOf, type Unit } from '../units/unit.js';
import type { Amount } from '../values/evaluate.js';
import type { Fact } from '../values/match.js';
import { originOf, placeOf, unitOfResult } from './values.js';

export interface QuantityRow {
    /** `stack.voltage`; a fact of several in one value with its slot, `stack.port.bore`. */
    readonly name: string;
    /** In `unit`; null where unknown. */
    readonly value: number | null;
    readonly unit: string;
    readonly si: number | null;
    readonly status: 'stated' | 'assumed' | 'measured' | 'computed' | 'unknown';
    /** Half width of its bounds in `unit`, the wider one; null if there is none. */
    readonly plusMinus: number | null;
    /** Its bounds in `unit`; null where unknown. */
    readonly low: number | null;
    readonly high: number | null;
    readonly source: string;
    /** Of what is worked out: what its ± comes from, most first, with its share of the variance. */
    readonly openBy?: readonly { readonly name: string; readonly told: string; readonly share: number }[];
}
/** Shown by themselves although no line of the text carries them. */
export const keyNumbers: ReadonlySet<string> = new Set([
    'power', 'plug-energy-per-volume', 'efficiency-hhv', 'efficiency-lhv', 'faraday-efficiency', 'water-use', 'heat', 'time-constant',
    'starts-per-hour', 'usable-gas', 'gas-cost', 'discharge-temperature-hot',
]);
/** What `show` and the report tell of a rig, if it is known. */
export const isKeyNumber = ({ quantity }: Result): boolean => quantity.shownAt !== undefined || keyNumbers.has(quantity.name);
export interface AssumptionRow {
    readonly name: string;
    /** As it would be written into the text: '2.5 mm'. */
    readonly value: string;
    readonly because: string;
    readonly source: string;
}
const NO_SOURCE = 'common practice, no source';
const FIGURES = 6;

const isInRig = (part: Part) => !part.pattern && !part.kind?.statement;
const rounded = (x: number) => Number(x.toPrecision(FIGURES));
const orNull = (x: number) => (Number.isFinite(x) ? rounded(x) : null);

/** Results of all quantities, in the order of the parts in the text. */
export function resultsOf(workings: Workings): Result[] {
    const results: Result[] = [];
    for (const part of workings.rig.parts.values()) {
        if (!isInRig(part)) continue;
        for (const q of quantityOf(part.kindWord).values()) results.push(workings.quantity(part, q.name)!);
    }
    return results;
}
/** A number that is worked out, in the unit in which it is shown; null for what is not known. */
export function rowOf(result: Result): QuantityRow {
    const text = unitOfResult(result);
    const unit = text ? unitOf(text) : undefined;
    const known = result.value === result.value;
    const half = Math.max(result.high - result.value, result.value - result.low);
    return {
        name: `${result.part.name}.${result.quantity.name}`, value: known ? orNull(unit ? fromSi(result.value, unit) : result.value) : null, unit: text,
        si: known ? result.value : null, status: known ? 'computed' : 'unknown', plusMinus: half > 0 ? orNull(half / (unit?.factor ?? 1)) : null,
        low: known ? orNull(unit ? fromSi(result.low, unit) : result.low) : null, high: known ? orNull(unit ? fromSi(result.high, unit) : result.high) : null, source: result.quantity.source,
        openBy: known ? result.spread.shares.map(({ root, part }) => ({ name: root.label, told: root.told, share: rounded(part) })) : [],
    };
}
/** What is worked out, what is stated or assumed, then what was measured. */
export function quantityRows(workings: Workings): QuantityRow[] {
    const rows = resultsOf(workings).map(rowOf);
    const parts = [...workings.rig.parts.values()];
    for (const part of parts.filter(isInRig)) {
        for (const property of Object.values(part.kind?.properties ?? {})) {
            // Given and worked out under one name: the worked-out row says what holds.
            if (quantityOf(part.kindWord).has(property.name)) continue;
            const given = workings.given(part, property.name);
            if (given.status !== 'stated' && given.status !== 'like' && given.status !== 'assumed') continue;
            for (const [slot, fact] of given.facts) {
                const row = givenRow(workings, part, slot ? `${property.name}.${slot}` : property.name, fact, given);
                if (row) rows.push(row);
            }
        }
    }
    for (const part of parts) if (part.kind?.statement === 'seen') rows.push(...measuredRows(workings, part));
    return rows;
}
function givenRow(workings: Workings, part: Part, key: string, { amount }: Fact, given: Given): QuantityRow | undefined {
    if (!amount || !Number.isFinite(amount.si)) return undefined;
    const assumed = given.status === 'assumed';
    return {
        ...amountRow(`${part.name}.${key}`, amount), status: assumed ? 'assumed' : 'stated',
        source: assumed ? given.property?.assume?.source ?? NO_SOURCE : originOf(given, workings.rig),
    };
}
function amountRow(name: string, amount: Amount): Omit<QuantityRow, 'status' | 'source'> {
    // A wire gauge is a number on a scale of its own: its area is meant.
    const unit: Unit | undefined = amount.unit?.text === 'AWG' ? unitOf('mm2') : amount.unit ?? unitOf(measures.number.units[0]);
    const half = (amount.high - amount.low) / 2;
    return {
        name, value: orNull(unit ? fromSi(amount.si, unit) : amount.si), unit: (unit?.text ?? '').replace(/^per /, '/'), si: amount.si, plusMinus: half > 0 ? orNull(half / (unit?.factor ?? 1)) : null,
        low: orNull(unit ? fromSi(amount.low, unit) : amount.low), high: orNull(unit ? fromSi(amount.high, unit) : amount.high),
    };
}
/** The numbers of a reading: one row for each, named like what it was read of. */
function measuredRows(workings: Workings, reading: Part): QuantityRow[] {
    const dated = reading.entries.get('date')?.value?.text.trim();
    const rows: QuantityRow[] = [];
    for (const entry of reading.entries.values()) {
        const amount = entry.key.includes('.') ? workings.amountOf(entry) : undefined;
        if (amount && Number.isFinite(amount.si)) rows.push({ ...amountRow(entry.key, amount), status: 'measured', source: sourceOfReading(workings, reading, entry, dated) });
    }
    return rows;
}
function sourceOfReading(workings: Workings, reading: Part, entry: Entry, dated: string | undefined): string {
    return `${reading.kindWord} ${reading.name}${dated ? `, ${dated}` : ''}, ${placeOf(entry.keySpan, workings.rig)}`;
}
/** What was assumed and is read by at least one quantity. */
export function assumptionRows(workings: Workings): AssumptionRow[] {
    const used = new Map<string, AssumptionRow>();
    for (const result of resultsOf(workings)) {
        for (const input of result.inputs) {
            if (input.status !== 'assumed' || !input.given) continue;
            const key = input.key.split('.')[0];
            const name = `${input.part.name}.${key}`;
            if (used.has(name)) continue;
            used.set(name, { name, value: input.given.assumedText ?? '', because: input.given.because ?? '', source: input.given.property?.assume?.source ?? NO_SOURCE });
        }
    }
    return [...used.values()];
}
