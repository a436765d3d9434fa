import { evaluate, isTrouble, type Amount } from '../../../values/evaluate.js'
import { matchCached } from '../../../rig/read-page.js'
import { parseValue, type ParsedValue } from '../../../values/parse-value.js'
import { defineRule } from '../../define.js';
import type { Fact } from '../../../values/match.js'
import type { Property } from '../../../vocabulary/define.js';

export default defineRule({
    name: 'outside-usual-range',
    family: 'the description',
    severity: 'hint',
    summary: 'A number lies outside what is usual for it.',
    why: 'Most such numbers are slips: a wrong unit, a nought too many, a diameter where a radius was meant.',
    source: 'range declared for each property; common practice, no source',
    on: 'rig',
    check(v, tell) {
        for (const part of v.rig.parts.values()) {
            for (const entry of part.entries.values()) {
                if (!entry.property?.usual || !entry.value || entry.broken) continue;
                const at = outside(entry.value, entry.property);
                if (!at) continue;
                const span = { ...entry.span, start: entry.span.start + at.start, end: entry.span.start + at.end };
                const written = entry.value.text.slice(at.start, at.end);
                tell({
                    at: span,
                    message: `${written} is outside what is usual for ${entry.key}, ${entry.property.usual.replace('..', ' to ')}. Is it ` +
                        'meant?',
                });
            }
        }
    },
});

const known = new WeakMap<ParsedValue, Map<Property, Fact | undefined>>();
/** The number of a value that lies outside; what names other values is left out. Equal texts are looked at once. */
function outside(value: ParsedValue, property: Property): Fact | undefined {
    let byProperty = known.get(value);
    if (!byProperty) known.set(value, (byProperty = new Map()));
    if (byProperty.has(property)) return byProperty.get(property); // speed only
    const fact = find(value, property);
    byProperty.set(property, fact);
    return fact;
}
function find(value: ParsedValue, property: Property): Fact | undefined {
    const usual = rangeOf(property.usual!);
    const m = matchCached(value, property);
    const fact = m.facts.get('') ?? m.facts.values().next().value;
    const amount = fact?.amount;
    if (!usual || !amount || amount.dimension !== usual.dimension || amount.basis === 'absolute' || amount.high >= usual.low * (1 - 1e-9) && amount.low <= usual.high * (1 + 1e-9)) return undefined;
    return fact;
}
const ranges = new Map<string, Amount | undefined>();
function rangeOf(text: string): Amount | undefined {
    if (!ranges.has(text)) {
        const node = parseValue(text).list[0]?.[0];
        const w = node && evaluate(node);
        ranges.set(text, w && !isTrouble(w) ? w : undefined);
    }
    return ranges.get(text);
}
