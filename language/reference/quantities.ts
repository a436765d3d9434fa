/** Every quantity and every assumption of a rig, as rows. */
import { quantityOf } from '../quantities/index.js';
import type { Workings, Result } from '../quantities/workings.js';
import { fromSi, unitOf } from '../units/unit.js';
import { measures } from '../units/dimension.js';
import { unitOfQuantity } from './values.js';
import type { Part } from '../rig/rig.js';

export interface QuantityRow {
    readonly name: string;
    readonly value: number | null;
    readonly unit: string;
    readonly si: number | null;
    readonly status: 'stated' | 'assumed' | 'measured' | 'computed' | 'unknown';
    /** Half width of its bounds in `unit`, or null. */
    readonly plusMinus: number | null;
    readonly source: string;
}
export interface AssumptionRow {
    readonly name: string;
    readonly value: string;
    readonly because: string;
    readonly source: string;
}

const worked = (part: Part) => !part.pattern && !part.kind?.statement;

/** Results of all quantities, in the order of the parts in the text. */
export function resultsOf(workings: Workings): Result[] {
    const results: Result[] = [];
    for (const part of workings.rig.parts.values()) {
        if (!worked(part)) continue;
        for (const q of quantityOf(part.kindWord).values()) results.push(workings.quantity(part, q.name)!);
    }
    return results;
}
export function rowOf(result: Result): QuantityRow {
    const text = unitOfQuantity(result);
    const unit = text ? unitOf(text) : undefined;
    const known = result.value === result.value;
    const half = (result.high - result.low) / 2;
    const digits = (x: number) => Number(x.toPrecision(6));
    return {
        name: `${result.part.name}.${result.quantity.name}`, value: known ? digits(unit ? fromSi(result.value, unit) : result.value) : null, unit: text,
        si: known ? result.value : null, status: known ? 'computed' : 'unknown', plusMinus: known && half > 0 ? digits(half / (unit?.factor ?? 1)) : null, source: result.quantity.source,
    };
}
/** Quantities and the given numbers of the parts, as `show --format json` prints them. */
export function quantityRows(workings: Workings): QuantityRow[] {
    const rows = resultsOf(workings).map(rowOf);
    for (const part of workings.rig.parts.values()) {
        if (!worked(part)) continue;
        for (const property of Object.values(part.kind?.properties ?? {})) {
            if (quantityOf(part.kindWord).has(property.name)) continue;
            const given = workings.given(part, property.name);
            const amount = given.facts.get('')?.amount;
            if (!amount || (given.status !== 'stated' && given.status !== 'like' && given.status !== 'assumed')) continue;
            const unit = amount.unit ?? unitOf(measures.number.units[0]);
            const half = (amount.high - amount.low) / 2;
            rows.push({
                name: `${part.name}.${property.name}`, value: Number((unit ? fromSi(amount.si, unit) : amount.si).toPrecision(6)), unit: unit?.text ?? '', si: amount.si,
                status: given.status === 'assumed' ? 'assumed' : 'stated', plusMinus: half > 0 ? Number((half / (unit?.factor ?? 1)).toPrecision(6)) : null,
                source: given.status === 'assumed' ? property.assume?.source ?? 'common practice, no source' : given.status === 'like' ? `as ${given.from?.name}` : 'the text',
            });
        }
    }
    return rows;
}
/** What was assumed and is read by at least one quantity. */
export function assumptionRows(workings: Workings): AssumptionRow[] {
    const used = new Map<string, AssumptionRow>();
    for (const result of resultsOf(workings)) {
        for (const input of result.inputs) {
            if (input.status !== 'assumed' || !input.given) continue;
            const key = input.key.split('.')[0];
            const name = `${input.part.name}.${key}`;
            if (!used.has(name)) used.set(name, { name, value: input.given.assumedText ?? '', because: input.given.because ?? '', source: input.given.property?.assume?.source ?? 'common practice, no source' });
        }
    }
    return [...used.values()];
}
