import { matchCached } from '../../../rig/read-page.js';
import { nearest } from '../../../values/nearest.js';
import type { Fact } from '../../../values/match.js';
import type { ParsedValue } from '../../../values/parse-value.js';
import type { Property, Slot } from '../../../vocabulary/define.js';
import { materials, materialsCalled } from '../../../vocabulary/materials.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'word-not-known',
    family: 'the description',
    severity: 'hint',
    summary: 'A material or another free word is not one that is known here.',
    why: 'A word that nobody knows is never wrong: what lye, heat and gas do to such a material is not checked, and a slip of the pen hides a rule that would have spoken.',
    source: 'reading of the text',
    on: 'rig',
    check(v, tell) {
        for (const part of v.rig.parts.values()) {
            for (const entry of part.entries.values()) {
                if (!entry.property || !entry.value || entry.broken) continue;
                for (const { fact, near, called } of strange(entry.value, entry.property)) {
                    const span = { ...entry.span, start: entry.span.start + fact.start, end: entry.span.start + fact.end };
                    tell({
                        at: span, severity: called ? 'warning' : 'hint',
                        message: called ? `${fact.word} is called ${near} here: as it stands, nothing that lye, heat and gas do to it is checked.` : near ? `${fact.word} is not known here; did you mean ${near}?` : `${fact.word} is no material that is known here: what lye, heat and gas do to it is not checked.`,
                        fixes: near ? [{ title: `Write ${near}`, edits: [{ span, text: near }], preferred: true }] : [],
                    });
                }
            }
        }
    },
});

interface Strange {
    readonly fact: Fact;
    readonly near: string | undefined;
    /** Another word of the trade for a material that is known, not a slip. */
    readonly called: boolean;
}
const none: readonly Strange[] = [];
const seen = new WeakMap<ParsedValue, Map<Property, readonly Strange[]>>();
/** Free words of a value that are none of those known. Words in quotes are meant. Equal texts are looked at once. */
function strange(value: ParsedValue, property: Property): readonly Strange[] {
    const slots = open(property);
    if (!slots.length) return none; // speed only
    let byProperty = seen.get(value);
    if (!byProperty) seen.set(value, (byProperty = new Map()));
    let found = byProperty.get(property);
    if (!found) byProperty.set(property, (found = find(value, property, slots)));
    return found;
}
const openSlots = new WeakMap<Property, readonly Slot[]>();
function open(property: Property): readonly Slot[] {
    let slots = openSlots.get(property);
    if (!slots) openSlots.set(property, (slots = property.items.flat().filter((a): a is Slot => typeof a !== 'string' && typeof a.type === 'object' && 'words' in a.type && !!a.type.open)));
    return slots;
}
/** polypropylene-felt is PP-felt: the material in a word under its own name here. */
function spelledShort(word: string, words: readonly string[]): string | undefined {
    const short = word.split('-').map(w => materialsCalled.get(w.toLowerCase()) ?? w).join('-');
    return short === word ? undefined : words.find(w => w.toLowerCase() === short.toLowerCase());
}
function find(value: ParsedValue, property: Property, slots: readonly Slot[]): readonly Strange[] {
    return matchCached(value, property).rows.flatMap(row => slots.flatMap((slot): Strange[] => {
        const fact = row.get(slot.slot);
        if (!fact?.word || value.text[fact.start] === '"' || typeof slot.type !== 'object' || !('words' in slot.type)) return [];
        const { words } = slot.type;
        const { word } = fact;
        // `other` says openly that it is none of them.
        if (words.includes(word) || materials.has(word) || word === 'other') return [];
        const called = materialsCalled.get(word.toLowerCase());
        const near = called ?? spelledShort(word, words) ?? nearest(word, words) ?? words.find(w => w.toLowerCase().split('-').includes(word.toLowerCase()));
        const material = slot.slot === 'material' || property.name.endsWith('material');
        return near || material ? [{ fact, near, called: called !== undefined }] : [];
    }));
}
