/** Values as a reader sees them: with unit, with what was taken for granted, with where they came from. */
import { measures } from '../units/dimension.js';
import { digits, show, withUnit } from '../units/format.js';
import { fromSi, unitOf } from '../units/unit.js';
import type { Given, Input, Result } from '../quantities/workings.js';
import type { Fact } from '../values/match.js';

/** Unit that a quantity is shown in. */
export function unitOfQuantity(result: Pick<Result, 'quantity'>): string {
    return result.quantity.unit ?? measures[result.quantity.measure].units[0];
}
/** Unit of a price follows the currency of the text: the tariff's. */
function priced(result: Result, unit: string): string {
    if (!measures[result.quantity.measure].units[0].includes('EUR')) return unit;
    for (const i of allInputs(result)) {
        const currency = i.given?.facts.get('')?.amount?.currency;
        if (currency) return unit.replace('EUR', currency);
    }
    return unit;
}
function* allInputs(result: Result): Generator<Input> {
    for (const i of result.inputs) {
        yield i;
        if (i.result) yield* allInputs(i.result);
    }
}
/** `2.05 V`, or `unknown`. */
export function showResult(result: Result, figures = 3): string {
    return show(result.value, priced(result, unitOfQuantity(result)), figures);
}
/** Half width of the bounds, in the unit shown: `± 0.16 V`; empty if there is none to speak of. */
export function showSpread(result: Result): string {
    const unit = unitOf(priced(result, unitOfQuantity(result)));
    if (result.value !== result.value) return '';
    const up = result.high - result.value;
    const down = result.value - result.low;
    if (!(Math.max(up, down) > 1e-9 * Math.abs(result.value))) return '';
    const f = unit?.factor ?? 1;
    if (Math.abs(up - down) <= 0.1 * Math.max(up, down)) return `± ${digits(up / f, 2)}`;
    const at = (si: number) => digits(unit ? fromSi(si, unit) : si, 2);
    return `(${at(result.low)} to ${at(result.high)})`;
}
/** A fact in the unit that its writer used. */
export function showFact(fact: Fact): string {
    if (fact.sizes) return fact.sizes.map(s => digits(s * 1000, 4)).join(' x ') + ' mm';
    if (fact.condition) return fact.condition.of.map(c => c.names.join('.')).join(` ${fact.condition.join} `);
    if (fact.amount) {
        const unit = fact.amount.unit;
        return unit ? withUnit(fromSi(fact.number, unit.text === 'AWG' ? { ...unit, factor: 1e-6, text: 'mm2' } : unit), unit.text === 'AWG' ? { ...unit, text: 'mm2' } : unit, 4) : digits(fact.number, 4);
    }
    return fact.text ?? fact.word ?? fact.names?.join('.') ?? '';
}
/** Where a given value comes from, in a few words. */
export function originOf(given: Given): string {
    switch (given.status) {
        case 'stated':
            return 'stated';
        case 'like':
            return `as ${given.from?.name}`;
        case 'assumed':
            return `assumed: ${given.because}`;
        case 'none':
            return 'there is none';
        case 'unknown':
            return 'said to be unknown';
        case 'broken':
            return 'not understood';
        default:
            return 'not said';
    }
}
/** An input of a working: `stack.gap = 2 mm (assumed: usual for gaskets of 3 mm)`. */
export function showInput(input: Input): string {
    if (input.result) return `${input.label} = ${showResult(input.result)}`;
    const fact = input.given?.facts.get(input.key.includes('.') ? input.key.slice(input.key.indexOf('.') + 1) : '');
    const value = input.text ?? (fact && fact.amount ? showFact(fact) : fact?.sizes ? showFact(fact) : show(input.value, input.unit, 4));
    return `${input.label} = ${value}${input.given ? ` (${originOf(input.given)})` : ''}`;
}
