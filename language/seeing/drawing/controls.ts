/**
 * What drives what, as rungs of a circuit: contacts in a row, at its end the coil or the part that is driven. A device stands at its
 * place in the flow, its contact in the rungs under the same name (detached representation, as in IEC 61082).
 */
import type { View } from '../../quantities/view.js';
import type { Workings } from '../../quantities/workings.js';

export type Contact = 'make' | 'break' | 'press-make' | 'press-break';
export interface Group {
    /** The key of the text in plain words: 'stopped by'. */
    readonly words: string;
    /** One after the other; what stands beside each other in one entry is an `or`. */
    readonly row: readonly (readonly { readonly name: string; readonly shape: Contact }[])[];
}
export interface Rung {
    readonly name: string;
    readonly kind: string;
    readonly groups: readonly Group[];
    /** Of a timer: '12 s'. */
    readonly says?: string;
}
/** Any one of the entries is enough, so they stand beside each other. */
const anyOf = new Set(['latched-by', 'sounded-by', 'opened-by']);
const keys: readonly (readonly [key: string, shape: 'make' | 'break'])[] = [
    ['latched-by', 'make'], ['follows', 'make'], ['needs', 'make'], ['open-while', 'make'], ['shut-while', 'make'], ['stopped-by', 'break'], ['shut-by', 'break'],
    ['opened-by', 'break'], ['sounded-by', 'make'],
];
/** Names that a part is driven by directly, each once. */
export function drivenBy(view: View): string[] {
    const kind = view.part.kind;
    if (!kind || kind.statement) return [];
    return [...new Set(keys.filter(([k]) => k in kind.properties).flatMap(([k]) => rowOf(view, k).flat()))];
}
/** @param without  parts that are not told of */
export function rungs(workings: Workings, without: ReadonlySet<string>): Rung[] {
    const found: Rung[] = [];
    for (const view of workings.allViews()) {
        const { kind, pattern } = view.part;
        if (!kind || kind.statement || pattern || without.has(view.name)) continue;
        const groups: Group[] = [];
        for (const [key, shape] of keys) {
            if (!(key in kind.properties)) continue;
            const row = rowOf(view, key).map(names => names.filter(n => !without.has(n.split('.')[0]))).filter(names => names.length).map(names => names.map(name => ({ name, shape: isButton(workings, name) ? `press-${shape}` as const : shape })));
            if (!row.length) continue;
            const beside = anyOf.has(key) ? [row.flat()] : row;
            // What is latched holds itself by a contact of its own.
            if (key === 'latched-by') beside[0].push({ name: view.name, shape: 'make' });
            groups.push({ words: key.replace('-', ' '), row: beside });
        }
        if (groups.length) found.push({ name: view.name, kind: view.kind, groups, says: view.kind === 'timer' ? view.given('time').entry?.value?.text.trim() : undefined });
    }
    return found;
}
const isButton = (workings: Workings, name: string) => workings.viewOf(name.split('.')[0])?.kind === 'button';
/** Entries of a list of conditions, each with the names that are joined by `or`; those joined by `and` are entries of their own. */
function rowOf(view: View, key: string): string[][] {
    const row: string[][] = [];
    for (const facts of view.rows(key)) {
        for (const f of facts.values()) {
            const names = f.condition ? f.condition.of.map(c => c.names.join('.')) : f.names ? [f.names.join('.')] : [];
            if (f.condition?.join === 'or') row.push(names);
            else row.push(...names.map(n => [n]));
        }
    }
    if (!row.length && key === 'follows') {
        const one = view.word(key) ?? view.names(key)[0];
        if (one) row.push([one]);
    }
    return row;
}
