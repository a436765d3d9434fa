/** One number of a rig that may be supposed to be another: `stack.gap`, `stack.port.bore`, `bag-full.breaks`. */
import { measures, type MeasureName } from '../units/dimension.js';
import { digits } from '../units/format.js';
import { fromSi, unitOf, type Unit } from '../units/unit.js';
import { evaluate, inMeasure, isTrouble, type Amount } from '../values/evaluate.js';
import type { Fact } from '../values/match.js';
import { nearest, offering } from '../values/nearest.js';
import { parseValue } from '../values/parse-value.js';
import { Supposed } from '../quantities/supposed.js';
import { spreadOf } from '../quantities/spread.js';
import { Workings, type Given } from '../quantities/workings.js';
import type { View } from '../quantities/view.js';
import type { Fix } from '../rig/rig.js';
import { setValue } from '../rules/fixes.js';
import type { Property, Slot } from '../vocabulary/define.js';

/** Why something cannot be tried, in a sentence for the maker. */
export class CannotTry extends Error {}

/** Figures with which a number that was found is written. */
const FIGURES = 3;
/** How far beyond the usual range, and beyond the present value, a number is looked for. */
const BEYOND_USUAL = 4;
const BEYOND_PRESENT = 20;
/** Cells, turns, holes: more are looked at only if a range asks for them. */
const MOST_COUNTED = 200;

export interface TriedInput {
    /** As written: 'stack.port.bore'. */
    readonly name: string;
    readonly view: View;
    readonly property: Property;
    /** A whole number. */
    readonly counted: boolean;
    /** A size a x b: the number is its area, its shape is kept. */
    readonly isArea: boolean;
    readonly unit: Unit | undefined;
    /** SI; NaN where nothing is said and nothing assumed. */
    readonly now: number;
    /** SI, between which it is looked for. */
    readonly low: number;
    readonly high: number;
    /** The rig with another number here. */
    readonly at: (si: number) => Workings;
    readonly suppose: (s: Supposed, si: number) => Supposed;
    /** The number in its own unit, rounded: '2.4 mm'; of a size '90 x 130 mm'. */
    readonly say: (si: number) => string;
    /** The number as it comes out once it is written. */
    readonly rounded: (si: number, direction: -1 | 0 | 1) => number;
    /** Writes it into the text; undefined where a fact of the world stands there, or no text of this rig. */
    readonly write: (si: number) => Fix | undefined;
}

/**
 * @param name     PART.PROPERTY, with a slot where the property has several numbers
 * @param between  'a..b' in the unit of the property, where it is looked for; its usual range if left out
 */
export function inputOf(workings: Workings, name: string, between?: string): TriedInput {
    const [partName, propertyName, ...slots] = name.trim().split('.');
    const view = workings.viewOf(partName);
    if (!view || view.part.kind?.statement) throw new CannotTry(offering(`There is no part ${partName}`, nearest(partName, [...workings.rig.parts.values()].filter(p => !p.kind?.statement).map(p => p.name))));
    const properties = view.part.kind?.properties ?? {};
    const property = propertyName ? properties[propertyName] : undefined;
    if (!property) throw new CannotTry(propertyName ? offering(`${partName} has no property ${propertyName}`, nearest(propertyName, Object.keys(properties))) : `${partName} is a part: say which of its properties, ${partName}.…`);
    const slot = slotFor(property, slots.join('.'), name);
    const key = slot.slot ? `${property.name}.${slot.slot}` : property.name;
    const given = workings.given(view.part, property.name);
    const fact = given.facts.get(slot.slot);
    const counted = slot.type === 'count';
    const isArea = !!fact?.sizes && fact.sizes.length > 1;
    if (typeof slot.type === 'object' && !isArea) throw new CannotTry(`${name} is no number.`);
    const unit = fact?.amount?.unit ?? (typeof slot.type === 'string' ? unitOf(measures[slot.type as MeasureName]?.units[0] ?? '') : undefined);
    const now = isArea ? fact!.sizes![0] * fact!.sizes![1] : fact?.number ?? NaN;
    const [low, high] = range(name, property, fact, now, counted, isArea, unit, between);
    const suppose = (s: Supposed, si: number) => s.value(partName, key, si);
    const figures = (si: number) => (counted ? String(Math.round(si)) : unit ? digits(fromSi(si, unit), FIGURES) : digits(si, FIGURES));
    const say = (si: number) => (isArea ? sized(fact!, si) : unit && !counted ? `${figures(si)} ${unit.text}` : figures(si));
    const read = (si: number) => (counted ? Math.round(si) : isArea ? si : unit ? Number(figures(si)) * unit.factor + unit.offset : Number(figures(si)));
    return {
        name, view, property, counted, isArea, unit, now, low, high, suppose, say,
        at: si => new Workings(workings.rig, undefined, suppose(new Supposed(workings.supposed), si)),
        rounded: (si, direction) => {
            if (counted) return direction > 0 ? Math.ceil(si) : direction < 0 ? Math.floor(si) : Math.round(si);
            // One in the last figure further, where rounding has gone to the wrong side.
            const near = read(si);
            if (!direction || (near - si) * direction >= 0) return near;
            const step = 10 ** (Math.floor(Math.log10(Math.abs(unit ? fromSi(near, unit) : near))) - FIGURES + 1) * (unit?.factor ?? 1);
            return read(near + direction * step);
        },
        write: si => setValue(view, property.name, written(given, fact, say(si))),
    };
}
/** The slot that is meant: the one that is named, else the only number there is. */
function slotFor(property: Property, named: string, name: string): Slot {
    const all = property.items.flat().filter((a): a is Slot => typeof a !== 'string');
    const numbers = all.filter(s => (typeof s.type === 'string' && (s.type === 'count' || s.type === 'sensed' || s.type in measures)) || (typeof s.type === 'object' && 'size' in s.type && s.type.size > 1));
    if (property.rows) throw new CannotTry(`${name} is a list: which number of it is meant cannot be said.`);
    const found = named ? numbers.find(s => s.slot === named) : numbers.find(s => !s.slot) ?? (numbers.length === 1 ? numbers[0] : undefined);
    if (found) return found;
    if (!numbers.length) throw new CannotTry(`${name} is no number.`);
    throw new CannotTry(`Say which number of ${property.name} is meant: ${numbers.map(s => `${name.split('.').slice(0, 2).join('.')}${s.slot ? `.${s.slot}` : ''}`).join(', ')}.`);
}
function range(name: string, property: Property, fact: Fact | undefined, now: number, counted: boolean, isArea: boolean, unit: Unit | undefined, between: string | undefined): readonly [number, number] {
    if (between !== undefined) {
        const a = amountOf(between);
        const fits = a && (counted || !fact?.amount ? a : inMeasure(a, fact.amount.dimension));
        if (!fits || !(fits.low < fits.high)) throw new CannotTry(`${between} is no range for ${name}: write two numbers with their unit, as 2..5 ${counted ? '' : unit?.text ?? ''}`.trimEnd() + '.');
        return [fits.low, fits.high];
    }
    if (counted) return [1, Math.max(2, Math.min(MOST_COUNTED, now === now ? now * BEYOND_USUAL : MOST_COUNTED))];
    const usual = !isArea && property.usual ? amountOf(property.usual) : undefined;
    if (usual && usual.low < usual.high) {
        const onScale = (fact?.amount?.point ?? false) || usual.low < 0;
        const [low, high] = onScale ? [usual.low, usual.high] : [usual.low / BEYOND_USUAL, usual.high * BEYOND_USUAL];
        return [now === now ? Math.min(low, now) : low, now === now ? Math.max(high, now) : high];
    }
    if (fact && !isArea) {
        const [a, b] = spreadOf(property, fact);
        if (fact.amount?.point && a < b) return [now - BEYOND_USUAL * (now - a), now + BEYOND_USUAL * (b - now)];
    }
    if (now > 0) return [now / BEYOND_PRESENT, now * BEYOND_PRESENT];
    throw new CannotTry(`Nothing is said of ${name}: say between which numbers to look.`);
}
function amountOf(text: string): Amount | undefined {
    const node = parseValue(text).list[0]?.[0];
    const w = node && evaluate(node);
    return w && !isTrouble(w) ? w : undefined;
}
/** A size of another area and the same shape: '90 x 130 mm'. */
function sized(fact: Fact, area: number): string {
    const [a, b] = fact.sizes!;
    const scale = Math.sqrt(area / (a * b));
    return `${fact.sizes!.map((x, i) => digits((i < 2 ? x * scale : x) * 1000, FIGURES)).join(' x ')} mm`;
}
/** The value as it stands, or as it is assumed, with one number of it replaced. */
function written(given: Given, fact: Fact | undefined, number: string): string {
    const text = given.entry?.value?.text ?? given.assumedText;
    if (text === undefined || !fact) return number;
    return text.slice(0, fact.start) + number + text.slice(fact.end);
}
