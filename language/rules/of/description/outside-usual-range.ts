import { evaluate, isTrouble, type Amount } from '../../../values/evaluate.js'
import { one } from '../../../units/dimension.js'
import { parseValue } from '../../../values/parse-value.js';
import { defineRule } from '../../define.js';

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
            if (part.implied || part.pattern) continue;
            const view = v.other(part.name);
            for (const entry of part.entries.values()) {
                const usual = entry.property?.usual && rangeOf(entry.property.usual);
                if (!view || !usual || entry.broken || view.says(entry.key) !== 'stated') continue;
                const facts = view.given(entry.key).facts;
                const fact = facts.get('') ?? facts.values().next().value;
                const amount = fact?.amount;
                if (!fact || !amount || amount.dimension !== usual.dimension || amount.basis === 'absolute') continue;
                if (amount.high >= usual.low * (1 - 1e-9) && amount.low <= usual.high * (1 + 1e-9)) continue;
                if (amount.si === 0 && usual.dimension === one) continue;
                const span = { ...entry.span, start: entry.span.start + fact.start, end: entry.span.start + fact.end };
                const written = entry.value!.text.slice(fact.start, fact.end);
                tell({
                    at: span,
                    message: `${written} is outside what is usual for ${entry.key}, ${entry.property!.usual!.replace('..', ' to ')}. Is ` +
                        'it meant?',
                });
            }
        }
    },
});

const ranges = new Map<string, Amount | undefined>();
function rangeOf(text: string): Amount | undefined {
    if (!ranges.has(text)) {
        const node = parseValue(text).list[0]?.[0];
        const w = node && evaluate(node);
        ranges.set(text, w && !isTrouble(w) ? w : undefined);
    }
    return ranges.get(text);
}
