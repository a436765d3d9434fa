/** Values as a reader sees them: with unit, with what was taken for granted, with where they came from. */
import { measures } from '../units/dimension.js';
import { digits, show, withUnit } from '../units/format.js';
import { fromSi, unitOf } from '../units/unit.js';
import type { Share } from '../quantities/spread.js';
import type { Given, Input, Result } from '../quantities/workings.js';
import { linesOf } from '../rig/lines.js';
import type { Rig, Span } from '../rig/rig.js';
import type { Fact } from '../values/match.js';

/** Bounds that differ by less than this share of the wider one are told as one ±, the wider. */
const NEARLY_EVEN = 0.2;
/** In which prices are declared. */
const CURRENCY = 'EUR';

/** Unit that a quantity is shown in. */
export function unitOfQuantity(result: Pick<Result, 'quantity'>): string {
    return result.quantity.unit ?? measures[result.quantity.measure].units[0];
}
/** The same for one result: a price is in the currency of what it was made from, or else of what its part says. */
export function unitOfResult(result: Result): string {
    const unit = unitOfQuantity(result);
    if (!measures[result.quantity.measure].units[0].includes(CURRENCY)) return unit;
    for (const i of allInputs(result)) {
        const currency = i.given?.facts.get('')?.amount?.currency;
        if (currency) return unit.replace(CURRENCY, currency);
    }
    for (const entry of result.part.entries.values()) {
        const node = entry.value?.list[0]?.[0];
        if (node?.is === 'quantity' && node.unit.currency) return unit.replace(CURRENCY, node.unit.currency);
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
    return show(result.value, unitOfResult(result), figures);
}
/** Half width of the bounds, in the unit shown: `± 0.16 V`; empty if there is none to speak of. */
export function showSpread(result: Result): string {
    return showBounds(result, unitOfResult(result));
}
/** Both: '2.05 V ± 0.16'. */
export const resultText = (result: Result): string => `${showResult(result)} ${showSpread(result)}`.trim();
/** The bounds of any number. @param unitText  unit in which it is shown */
export function showBounds({ value, low, high }: Pick<Result, 'value' | 'low' | 'high'>, unitText: string): string {
    const unit = unitOf(unitText);
    if (value !== value) return '';
    const up = high - value;
    const down = value - low;
    if (!(Math.max(up, down) > 1e-9 * Math.abs(value))) return '';
    const f = unit?.factor ?? 1;
    if (Math.abs(up - down) <= NEARLY_EVEN * Math.max(up, down)) return `± ${digits(Math.max(up, down) / f, 2)}`;
    // As many places as tell the width of the bounds by two figures.
    const places = Math.max(0, Math.min(6, 1 - Math.floor(Math.log10((up + down) / f))));
    const at = (si: number) => (Number.isFinite(si) ? String(Number((unit ? fromSi(si, unit) : si).toFixed(places))) : digits(si));
    return `(${at(low)} to ${at(high)})`;
}
/** The wider of its bounds as one ±, where there is little room: `± 0.16`; both where it is wider than the number itself. */
export function showHalf(result: Result): string {
    const half = Math.max(result.high - result.value, result.value - result.low);
    if (half > Math.abs(result.value)) return showSpread(result);
    return half > 0 ? `± ${digits(half / (unitOf(unitOfResult(result))?.factor ?? 1), 2)}` : '';
}
/** Lines of what a number's ± comes from, most first: 'surface of the electrodes ± 0.15 V a cell: 83 %'. */
export function showShares(result: Result, most: number): string[] {
    return result.value === result.value ? result.spread.shares.slice(0, most).map(showShare) : [];
}
function showShare({ root, atLow, atHigh, part }: Share): string {
    const nowhere = [atLow === atLow ? '' : 'lower', atHigh === atHigh ? '' : 'upper'].filter(Boolean).join(' and ');
    return `${root.label}${root.told && ` ${root.told}`}: ${nowhere ? `at its ${nowhere} end there is no such number` : `${Math.round(100 * part)} %`}`;
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
/** Where a text is: `line 12`, or `shelf.rig, line 8` where it is not the rig's own file. */
export function placeOf(span: Span, rig: Rig): string {
    const page = rig.pages.find(p => p.file === span.file);
    if (!page) return '';
    const line = `line ${linesOf(page).at(span.start).line + 1}`;
    return span.file === rig.root ? line : `${span.file.slice(Math.max(span.file.lastIndexOf('/'), span.file.lastIndexOf('\\')) + 1)}, ${line}`;
}
/** Where a given value comes from, in a few words; with its line if the rig is given. */
export function originOf(given: Given, rig?: Rig): string {
    const place = rig && given.entry ? placeOf(given.entry.keySpan, rig) : '';
    const at = place && `, ${place}`;
    switch (given.status) {
        case 'stated':
            return `stated${at}`;
        case 'like':
            return `as ${given.from?.name}${at}`;
        case 'assumed':
            return `assumed: ${given.because}`;
        case 'none':
            return `there is none${at}`;
        case 'unknown':
            return `said to be unknown${at}`;
        case 'broken':
            return `not understood${at}`;
        default:
            return 'not said';
    }
}
/** The value of an input: `2 mm`, `KOH`, `1.8 A`. */
export function showInputValue(input: Input): string {
    if (input.result) return resultText(input.result);
    if (input.text !== undefined) return input.text;
    const fact = input.given?.facts.get(input.key.includes('.') ? input.key.slice(input.key.indexOf('.') + 1) : '');
    return fact && (fact.amount || fact.sizes) ? showFact(fact) : show(input.value, input.unit, 4);
}
