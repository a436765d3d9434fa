/** The few numbers that stand at a part. How many there are depends on its kind alone: a changed value moves nothing. */
import { showResult } from '../../reference/values.js';
import type { Workings } from '../../quantities/workings.js';
import type { Part } from '../../rig/rig.js';
import { show } from '../../units/format.js';

/** A quantity by its name, or a property with its unit; and a word before the number, where the unit does not tell what it is. */
interface Shown {
    readonly quantity?: string;
    readonly property?: string;
    readonly unit?: string;
    readonly word?: string;
}
const q = (quantity: string, word?: string): Shown => ({ quantity, word });
const p = (property: string, unit: string, word?: string): Shown => ({ property, unit, word });

const byKind: Readonly<Record<string, readonly Shown[]>> = {
    supply: [q('working-voltage')],
    battery: [q('working-voltage'), q('working-current')],
    transformer: [q('winding-current')],
    panels: [q('power')],
    fuse: [p('rating', 'A')],
    isolator: [p('rating', 'A')],
    leads: [q('drop')],
    stack: [q('voltage'), q('current'), q('temperature'), q('hydrogen-rate')],
    column: [q('head'), p('level', 'mm')],
    bubbler: [q('head')],
    scrubber: [q('head')],
    seal: [q('opens-at', 'opens')],
    bag: [q('pressure'), p('volume', 'L')],
    gasometer: [q('head'), p('volume', 'L')],
    compressor: [q('free-delivery'), q('discharge-temperature')],
    cylinder: [q('cut-off'), p('volume', 'L')],
    'relief-valve': [p('set', 'bar', 'set')],
    regulator: [p('set', 'bar', 'set')],
    cooler: [q('duty')],
    burner: [p('flow', 'NL/h')],
    'fuel-cell': [q('output')],
    'circulation-pump': [p('flow', 'L/min')],
};
/** How many lines of numbers the kind has. */
export const valueLines = (kind: string): number => (Object.hasOwn(byKind, kind) ? byKind[kind].length : 0);

/** A number with its unit, characters. */
const WIDTH = 10;
/** Room for the longest, whatever it comes to. */
export const valueWidth = (kind: string): number => (Object.hasOwn(byKind, kind) ? Math.max(...byKind[kind].map(s => WIDTH + (s.word ? s.word.length + 1 : 0))) : 0);

export interface Value {
    /** Of the quantity or property. */
    readonly name: string;
    readonly text: string;
}
export function valuesOf(part: Part, workings: Workings): Value[] {
    if (!Object.hasOwn(byKind, part.kindWord)) return [];
    return byKind[part.kindWord].map(s => {
        const name = (s.quantity ?? s.property)!;
        const shown = s.quantity !== undefined ? ofQuantity(part, name, workings) : ofProperty(part, name, s.unit!, workings);
        return { name, text: shown === undefined ? `${s.word ?? name.split('-').at(-1)!} ?` : s.word ? `${s.word} ${shown}` : shown };
    });
}
function ofQuantity(part: Part, name: string, workings: Workings): string | undefined {
    const result = workings.quantity(part, name);
    return result && result.value === result.value ? showResult(result) : undefined;
}
/** As the text writes it, where that is a plain number. */
function ofProperty(part: Part, name: string, unit: string, workings: Workings): string | undefined {
    const { entry } = workings.given(part, name);
    const written = entry && !entry.value?.names ? entry.value?.text.split(/[,±]/)[0].trim() : undefined;
    if (written && written.length <= WIDTH && /\d/.test(written)) return written;
    const n = workings.number(part, name, false);
    return n === n ? show(n, unit) : undefined;
}
