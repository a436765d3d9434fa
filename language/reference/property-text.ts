/** A property in words: what it is, what may stand there, what is assumed without it. */
import { measures } from '../units/dimension.js';
import type { Property, SlotType } from '../vocabulary/define.js';

const MOST_WORDS = 14;
const MOST_UNITS = 4;

const forms: Readonly<Record<string, string>> = {
    count: 'a whole number', 'yes-no': 'yes or no', text: 'words, in quotes if there are commas in them', date: 'a date', clock: 'a time of day',
    quantity: 'a value of a part, as part.quantity', condition: 'names, joined by or / and', sensed: 'a value of what it senses', thread: 'a thread', any: 'anything',
};
/** What may stand in one place of a value: 'a length (mm, cm, m, µm)'. */
export function slotText(type: SlotType): string {
    if (typeof type === 'object') {
        if ('words' in type) {
            const words = type.words.slice(0, MOST_WORDS).join(', ');
            return `${words}${type.words.length > MOST_WORDS ? ' …' : ''}${type.open ? ', or another word' : ''}`;
        }
        if ('part' in type) return type.part.length ? `the name of a ${type.part.join(' or ')}` : 'the name of a part';
        return `${['', 'a size', 'a x b', 'a x b x c'][type.size]} in ${measures[type.of].units[0]}`;
    }
    if (forms[type]) return forms[type];
    const { says, units } = measures[type as keyof typeof measures];
    return units[0] ? `${says} (${units.slice(0, MOST_UNITS).join(', ')})` : says;
}
/** The form of the whole value: '*count* of *bore*, *length* long'. */
export function formOf(p: Property): string {
    const atom = (a: Property['items'][number][number]) => (typeof a === 'string' ? a.replace(/\?$/, '') : a.slot ? `*${a.slot}*` : slotText(a.type));
    return `${p.items.map(item => item.map(atom).join(' ')).join(', ')}${p.rows ? ', and so on' : ''}`;
}
/** An example of its value without the marks for an editor's cursor; empty if there is none. */
export function exampleOf(p: Property): string {
    return p.example.replace(/\$\{\d+\|([^,|}]*)[^}]*\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\{?\d+\}?/g, '').trim();
}
/** What may stand in a property, its default and its reason, as Markdown. */
export function propertyText(p: Property): string {
    const slots = p.items.flat().filter((a): a is Exclude<typeof a, string> => typeof a !== 'string' && !!a.slot);
    const example = exampleOf(p);
    const { assume } = p;
    return [
        p.doc,
        [`Written: ${formOf(p)}.`, ...slots.map(s => `- *${s.slot}*: ${slotText(s.type)}`)].join('\n'),
        /\d|"| /.test(example) && `For instance \`${p.name}: ${example}\`.`,
        assume && `If not said: ${assume.value}${assume.spread ? ` ${assume.spread}` : ''}, ${assume.because} (${assume.source ?? 'common practice, no source'}).`,
        p.neverAssumed && 'Never assumed: a check waits until it is said.',
        p.usual && `Usually ${p.usual}; outside of that a hint asks whether it is meant.`,
        p.fact && 'A fact: no fix changes it.',
    ].filter(Boolean).join('\n\n');
}
