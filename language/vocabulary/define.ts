/**
 * How a kind of part is declared: its name, its properties, what may stand after each, what is assumed where nothing is
 * said, and why. One file per kind in `kinds/`; completion, hover, the check of a value and the reference pages come
 * from these declarations. This folder never reads a text and never computes.
 */
import type { MeasureName } from '../units/dimension.js';

/**
 * What may stand in one place of a value.
 *
 *   a measure name        a number of that dimension, with unit, tolerance or range
 *   'count'               a whole number without unit
 *   { words }             one of these words; `open` lets others pass, `called` leads from other words of the trade to them
 *   'yes-no'              yes or no
 *   'text'                words in quotes, or a run of bare words
 *   'date'                2026-03-14, 2026-03, 2026-03-14 15:10
 *   'clock'               15:35
 *   'part'                the name of a part (of these kinds, if given)
 *   'quantity'            part.quantity
 *   'condition'           names joined by `or` or `and`
 *   'sensed'              a number whose dimension is that of what the part senses
 *   'thread'              M8, G 1/4, "W 21.8 x 1/14 LH"
 *   'any'                 anything; kept as text
 */
export type SlotType =
    | MeasureName | 'count' | 'yes-no' | 'text' | 'date' | 'clock' | 'quantity' | 'condition' | 'sensed' | 'thread' | 'any'
    | { readonly words: readonly string[]; readonly open?: boolean; readonly called?: Readonly<Record<string, string>> }
    | { readonly part: readonly string[] }
    /** a x b or a x b x c of one dimension. */
    | { readonly size: 1 | 2 | 3; readonly of: MeasureName; readonly least?: number };

/** A slot: a named place, or a literal word that must (or, with `?` at its end, may) stand there. */
export type Atom = string | Slot;
export interface Slot {
    readonly slot: string;
    readonly type: SlotType;
    readonly optional?: boolean;
}
/** One item of a comma list, as a row of atoms: `[slot('free', 'length'), 'to', slot('pressed', 'length')]`. */
export type Item = readonly Atom[];

/** Shorthand: a slot with a name. */
export function slot(name: string, type: SlotType, optional = false): Slot {
    return { slot: name, type, optional };
}

export interface Assumption {
    /** In the language itself, so that it can be written into a text as it is: '80 mm'. */
    readonly value: string;
    /** Why this value, in half a sentence. */
    readonly because: string;
    /** Half width of the range in which most real ones lie: '± 30 %', '± 10 mm'. */
    readonly spread?: string;
    /** Name of the source, or 'common practice, no source', or 'from memory'. Defaults to 'common practice, no source'. */
    readonly source?: string;
}

export interface Property {
    readonly name: string;
    /** One or two sentences for hover: what it is, and why it matters. */
    readonly doc: string;
    readonly items: readonly Item[];
    /** Every item of the comma list is of the same form: a curve, a schedule, a list of names. */
    readonly rows: boolean;
    /** What completion inserts after the colon, tab stops as `${1:80 mm}`. */
    readonly example: string;
    readonly assume?: Assumption;
    /** Never assumed because a life may hang on it: rules say that they cannot check. */
    readonly neverAssumed: boolean;
    /** Usual range in the language, inclusive: '3 mm..10 mm'. Outside it a hint asks whether the number is meant. */
    readonly usual?: string;
    /** Cannot be zero or less. True for sizes and counts. */
    readonly positive: boolean;
    /** A fact of the world (stamped, tested, sealed, measured), which no fix may change. */
    readonly fact: boolean;
    /** Unit to show it in, if not the first of its measure. */
    readonly unit?: string;
    /** 'none' says that there is no such thing; false where that makes no sense. */
    readonly none: boolean;
}

/** An example of its value without the marks for an editor's cursor; empty if there is none. */
export function exampleOf(p: Pick<Property, 'example'>): string {
    return p.example.replace(/\$\{\d+\|([^,|}]*)[^}]*\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\{?\d+\}?/g, '').trim();
}

export interface Options {
    readonly assume?: readonly [value: string, because: string, spread?: string, source?: string];
    readonly neverAssumed?: boolean;
    readonly usual?: string;
    readonly positive?: boolean;
    readonly fact?: boolean;
    readonly unit?: string;
    readonly example?: string;
    readonly none?: boolean;
}

type Unnamed = Omit<Property, 'name'>;

function property(doc: string, items: readonly Item[], rows: boolean, fallback: string, o: Options, positive = false): Unnamed {
    return {
        doc, items, rows, example: o.example ?? (o.assume ? `\${1:${o.assume[0]}}` : fallback),
        assume: o.assume && { value: o.assume[0], because: o.assume[1], spread: o.assume[2], source: o.assume[3] },
        neverAssumed: o.neverAssumed ?? false, usual: o.usual, positive: o.positive ?? positive, fact: o.fact ?? false, unit: o.unit,
        none: o.none ?? true,
    };
}
/** Measures that can be zero or negative in a sound rig. */
const signed = new Set<MeasureName>(['temperature', 'temperature-difference', 'pressure', 'fraction', 'number', 'angle', 'slope', 'mass-fraction']);

/** A number with a unit. */
export function quantity(measure: MeasureName, doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', measure)]], false, '${1}', o, !signed.has(measure));
}
/** A whole number. */
export function count(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'count')]], false, '${1:1}', o, true);
}
/** One of a few words. */
export function words(of: readonly string[], doc: string, o: Options & { open?: boolean; called?: Readonly<Record<string, string>> } = {}): Unnamed {
    return property(doc, [[slot('', { words: of, open: o.open, called: o.called })]], false, `\${1|${of.join(',')}|}`, o);
}
/** Yes or no. */
export function yesNo(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'yes-no')]], false, '${1|yes,no|}', o);
}
/** Free text, in quotes if it has commas. */
export function text(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'text')]], false, '"${1}"', o);
}
export function date(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'date')]], false, '${1:2026-01-31}', { fact: true, ...o });
}
/** a x b (x c). */
export function size(n: 2 | 3, doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', { size: n, of: 'length' })]], false, n === 2 ? '${1:100 x 120 mm}' : '${1:150 x 180 x 1 mm}', o, true);
}
/** Several facts in one value, each item of the comma list in its own form. Items may be left out from the end. */
export function facts(items: readonly Item[], doc: string, o: Options & { example: string }): Unnamed {
    return property(doc, items, false, o.example, o);
}
/** A list of which every item has the same form. */
export function rows(item: Item, doc: string, o: Options & { example: string }): Unnamed {
    return property(doc, [item], true, o.example, o);
}
/** Points on a curve: `23.4 V at 45 A, 24.1 V at 30 A`. Slots `y` and `x`. */
export function points(y: MeasureName, x: MeasureName, doc: string, o: Options & { example: string }): Unnamed {
    return property(doc, [[slot('y', y), 'at', slot('x', x)]], true, o.example, o);
}
/** Values by the clock: `4 °C at 15:30, -3 °C at 22:00`. A single value holds all day. Slots `value` and `at`. */
export function schedule(measure: MeasureName, doc: string, o: Options & { example: string }): Unnamed {
    return property(doc, [[slot('value', measure), 'at?', slot('at', 'clock', true)]], true, o.example, o);
}
/** A threshold of a switch or trip: `above 48 L ± 1 L`, `below 3 A for 30 s`. Slots `side`, `value`, `for`. */
export function threshold(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('side', { words: ['above', 'below'] }), slot('value', 'sensed'), 'for?', slot('for', 'time', true)]], false, '${1|above,below|} ${2}', o);
}
/** One part, by name. */
export function part(kinds: readonly string[], doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', { part: kinds })]], false, '${1}', o);
}
/** Several parts, by name. */
export function parts(kinds: readonly string[], doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', { part: kinds })]], true, '${1}', o);
}
/** What must be so: names joined by `or`, `and`, one condition to an item. */
export function conditions(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'condition')]], true, '${1}', o);
}
/** A quantity of a part: `store-bag.volume`. */
export function sensed(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'quantity')]], false, '${1}', o);
}
/** Kept as it is written. */
export function anything(doc: string, o: Options = {}): Unnamed {
    return property(doc, [[slot('', 'any')]], true, '${1}', o);
}

export type Medium = 'hydrogen' | 'oxygen' | 'lye' | 'water' | 'current';
export const media: readonly Medium[] = ['hydrogen', 'oxygen', 'lye', 'water', 'current'];

export type Group = 'current' | 'cells' | 'low side' | 'high side' | 'use' | 'control' | 'world' | 'records' | 'statements';

export interface Kind {
    readonly name: string;
    /** One or two sentences: what it is, what it is for. */
    readonly doc: string;
    /** Other words of the trade for it: no names in a text, but known when they are typed. */
    readonly called: readonly string[];
    readonly group: Group;
    /** There is one in a rig, named like its kind unless it says otherwise: `stack { }`. */
    readonly single: boolean;
    /** Exists in every rig, said or not: site, budget, purpose, routine. */
    readonly always: boolean;
    /** Media whose paths it may stand on. */
    readonly on: readonly Medium[];
    /** How many path ends it may have: a two-port part joins one line, a vessel many, an end one. */
    readonly ports: 'none' | 'one' | 'two' | 'many';
    readonly properties: Readonly<Record<string, Property>>;
    /** Takes dotted keys about other parts: a reading, a claim, a change ... and what sort of statement that is. */
    readonly statement?: 'seen' | 'claimed' | 'changed' | 'supposed' | 'replaced' | 'columns' | 'scenario';
    /** What can be said of it in events and expectations over time: running, stopped, open, tripped ... */
    readonly states: readonly string[];
    /** What can befall it, for events and `expect if`: sticks made, blocked, lost ... */
    readonly events: readonly string[];
    /** Lines that completion inserts for a new one, tab stops as `${1:80 mm}`; made from the properties if left out. */
    readonly template?: readonly string[];
}

export interface KindDeclaration {
    name: string;
    doc: string;
    called?: readonly string[];
    group: Group;
    single?: boolean;
    always?: boolean;
    on?: readonly Medium[];
    ports?: Kind['ports'];
    properties: Readonly<Record<string, Unnamed>>;
    statement?: Kind['statement'];
    states?: readonly string[];
    events?: readonly string[];
    template?: readonly string[];
}

/** Properties that every part may have. */
const everywhere: Readonly<Record<string, Unnamed>> = {
    note: text('Free words about it; hover shows them.'),
    source: text('Where its figures are from: nameplate, maker\'s sheet, stamp, measured.'),
    price: quantity('money', 'What it cost or would cost.', { example: '${1:20 EUR}', positive: false }),
    'only-in': parts(['variant'], 'It belongs to these variants only.'),
};

/** Declares a kind of part. */
export function kind(d: KindDeclaration): Kind {
    const properties: Record<string, Property> = {};
    for (const [name, p] of Object.entries(d.properties)) properties[name] = { name, ...p };
    for (const [name, p] of Object.entries(everywhere)) properties[name] ??= { name, ...p };
    return {
        name: d.name, doc: d.doc, called: d.called ?? [], group: d.group, single: d.single ?? false, always: d.always ?? false, on: d.on ?? [],
        ports: d.ports ?? (d.on?.length ? 'two' : 'none'), properties, statement: d.statement, states: d.states ?? [],
        events: d.events ?? [], template: d.template,
    };
}
