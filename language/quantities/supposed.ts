/**
 * What a rig is supposed to say instead of what its text says: one gap wider, a colder day, a surface worse than usual. A
 * `Workings` made with it works out the same numbers from the other values; the text is not touched.
 */
import { measures, type MeasureName } from '../units/dimension.js';
import { fromSi, unitOf } from '../units/unit.js';
import { match, type Fact, type Facts } from '../values/match.js';
import { parseValue } from '../values/parse-value.js';
import type { Property, Slot } from '../vocabulary/define.js';

const MAIN = '';
const split = (key: string): [string, string] => {
    const dot = key.indexOf('.');
    return dot < 0 ? [key, MAIN] : [key.slice(0, dot), key.slice(dot + 1)];
};

export class Supposed {
    /** SI by slot, by `part.property`. */
    private readonly values = new Map<string, Map<string, number>>();
    private readonly lets = new Map<string, number>();
    private readonly doubts = new Map<string, number>();

    /** @param before taken over, so that one supposition can be made on top of others */
    constructor(before?: Supposed) {
        if (!before) return;
        for (const [name, slots] of before.values) this.values.set(name, new Map(slots));
        for (const [name, n] of before.lets) this.lets.set(name, n);
        for (const [name, n] of before.doubts) this.doubts.set(name, n);
    }
    /**
     * A property or a slot of it has another number.
     * @param part  name of the part
     * @param key   'gap', 'port.bore'
     * @param si    SI, on the scale that its text is written on; of a size a x b: the area, its shape kept
     */
    value(part: string, key: string, si: number): this {
        const [property, slot] = split(key);
        const name = `${part}.${property}`;
        const slots = this.values.get(name);
        if (slots) slots.set(slot, si);
        else this.values.set(name, new Map([[slot, si]]));
        return this;
    }
    /** A named value has another number, SI. */
    named(name: string, si: number): this {
        this.lets.set(name, si);
        return this;
    }
    /** What a law leaves open about a part is off by so many half widths. */
    off(part: string, doubt: string, halfWidths: number): this {
        this.doubts.set(`${part} ${doubt}`, halfWidths);
        return this;
    }
    doubt(part: string, doubt: string): number {
        return this.doubts.get(`${part} ${doubt}`) ?? 0;
    }
    let(name: string): number | undefined {
        return this.lets.get(name);
    }
    says(part: string, property: string): boolean {
        return this.values.has(`${part}.${property}`);
    }
    /** The facts of a property with the supposed numbers in them. */
    facts(part: string, property: Property, facts: Facts): Facts {
        const slots = this.values.get(`${part}.${property.name}`);
        if (!slots) return facts;
        const out = new Map(facts);
        for (const [slot, si] of slots) {
            const fact = facts.get(slot) ?? factOf(property, slot, si);
            if (fact) out.set(slot, withNumber(fact, si));
        }
        return out;
    }
}
function withNumber(fact: Fact, si: number): Fact {
    if (fact.sizes) {
        const [a, b = 1] = fact.sizes;
        const scale = fact.sizes.length > 1 ? Math.sqrt(si / (a * b)) : si / a;
        return { ...fact, sizes: fact.sizes.map((x, i) => (i < 2 ? x * scale : x)) };
    }
    return { ...fact, number: si, low: si, high: si, amount: fact.amount && { ...fact.amount, si, low: si, high: si } };
}
/** The slot of a property by its name; undefined if it has none of that name. */
function slotOf(property: Property, name: string): Slot | undefined {
    return property.items.flat().find((a): a is Slot => typeof a !== 'string' && a.slot === name);
}
/** What would be a fact if the text said it: for properties that it leaves out. */
function factOf(property: Property, slot: string, si: number): Fact | undefined {
    const type = slotOf(property, slot)?.type;
    if (type === 'count') return match(parseValue(String(Math.max(0, Math.round(si)))), property).facts.get(slot);
    const measure = typeof type === 'string' ? measures[type as MeasureName] : undefined;
    const unit = measure && unitOf(measure.units[0]);
    return unit ? match(parseValue(`${fromSi(si, unit)} ${unit.text}`), property).facts.get(slot) : undefined;
}
