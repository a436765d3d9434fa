/** A property in words: what it is, what may stand there, what is assumed without it. */
import { measures } from '../units/dimension.js';
import { exampleOf, type Atom, type Property, type Slot, type SlotType } from '../vocabulary/define.js';

export { exampleOf };

const MOST_WORDS = 14;
const MOST_UNITS = 4;

const forms: Readonly<Record<string, string>> = {
    count: 'a whole number', 'yes-no': 'yes or no', text: 'words, in quotes if there are commas in them', date: 'a date', clock: 'a time of day',
    quantity: 'a value of a part, as part.quantity', condition: 'names, joined by or / and', sensed: 'a value of what it senses', thread: 'a thread', any: 'anything',
};
/**
 * What may stand in one place of a value: 'a length (mm, cm, m, µm)'.
 *
 * @param first the unit that is usual there
 */
export function slotText(type: SlotType, first?: string): string {
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
    const all = [...new Set([...(first ? [first] : []), ...units])].filter(Boolean);
    return all.length ? `${says} (${all.slice(0, MOST_UNITS).join(', ')})` : says;
}
/** Few enough words to be shown where they stand. */
const FEW_WORDS = 4;
/** What stands in a place of a form; a name of its own only where a line below tells more about it. */
function placeText(slot: Slot, unit: string | undefined): string {
    const { type } = slot;
    if (typeof type === 'object' && 'words' in type && !type.open && type.words.length <= FEW_WORDS) return type.words.join(' or ');
    return slot.slot ? `*${slot.slot}*` : slotText(type, unit);
}
/** The form of the whole value: '*count* of *bore*, *length* long', 'above or below *value* (for *time*)'. */
export function formOf(p: Property): string {
    const unit = unitOfExample(p);
    const item = (atoms: readonly Atom[]) => {
        let text = '';
        for (let i = 0; i < atoms.length; i++) {
            const atom = atoms[i];
            const next = atoms[i + 1];
            let piece = typeof atom === 'string' ? atom.replace(/\?$/, '') : placeText(atom.slot === next ? { ...atom, slot: '' } : atom, unit);
            if (typeof atom === 'string' && atom.endsWith('?') && typeof next === 'object' && next.optional) {
                piece = `(${piece} ${placeText(named(next, piece), unit)})`;
                i++;
            }
            text += `${text ? ' ' : ''}${piece}`;
        }
        return text;
    };
    return `${p.items.map(item).join(', ')}${p.rows ? ', and so on' : ''}`;
}
/** A slot called as the word before it says nothing: `for *for*`. Then it is called what it is: `for *time*`. */
function named(slot: Slot, word: string): Slot {
    return slot.slot === word && typeof slot.type === 'string' ? { ...slot, slot: slot.type } : slot;
}
/** The unit in which its example is written. */
function unitOfExample(p: Property): string | undefined {
    return /^[-\d.]+ ([^\s,]+)$/.exec(exampleOf(p))?.[1];
}
/** What may stand in a property, its default and its reason, as Markdown. */
export function propertyText(p: Property): string {
    const form = formOf(p);
    const slots = p.items.flatMap(item => item.map((a, i) => (typeof a === 'string' ? undefined : typeof item[i - 1] === 'string' ? named(a, (item[i - 1] as string).replace(/\?$/, '')) : a)))
        .filter((a): a is Slot => !!a?.slot && form.includes(`*${a.slot}*`));
    const example = exampleOf(p);
    const { assume } = p;
    return [
        p.doc,
        [`Written: ${form}.`, ...slots.map(s => `- *${s.slot}*: ${slotText(s.type)}`)].join('\n'),
        /\d|"| /.test(example) && `For instance \`${p.name}: ${example}\`.`,
        assume && `If not said: ${assume.value}${assume.spread ? ` ${assume.spread}` : ''}, ${assume.because} (${assume.source ?? 'common practice, no source'}).`,
        p.neverAssumed && 'Never assumed: a check waits until it is said.',
        p.usual && `Usually ${p.usual}; outside of that a hint asks whether it is meant.`,
        p.fact && 'A fact: no fix changes it.',
    ].filter(Boolean).join('\n\n');
}
