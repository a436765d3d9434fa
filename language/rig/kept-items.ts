/**
 * What an item of the frame added to a page, kept with the item and moved with it: an edit reads anew what it touches.
 * Kept is only what nothing was wrong with; whatever has a problem is read again each time.
 */
import type { Item } from '../grammar/frame.js';
import type { Entry, Page, Part, Span } from './rig.js';

export type Added = Pick<Page, 'parts' | 'lets' | 'paths' | 'expects' | 'allows' | 'uses' | 'occurrences'>;
interface Kept {
    readonly file: string;
    /** Where the piece began, and the note that stood above the item. */
    readonly at: number;
    readonly note: string | undefined;
    readonly added: Added;
}
const kept = new WeakMap<Item, Kept>();

/** Keeps what an item added. `at` is where its piece begins in the file, `note` the note above it. */
export function keep(item: Item, file: string, at: number, note: string | undefined, added: Added): void {
    kept.set(item, { file, at, note, added });
}
/** What an item added before, at the place where it stands now; undefined if it must be read. */
export function again(item: Item, file: string, at: number, note: () => string | undefined): Added | undefined {
    const before = kept.get(item);
    if (!before || before.file !== file || before.note !== note()) return undefined;
    if (before.at === at) return before.added;
    const added = moved(before.added, at - before.at);
    kept.set(item, { ...before, at, added });
    return added;
}

function moved(a: Added, by: number): Added {
    const span = (s: Span): Span => ({ file: s.file, start: s.start + by, end: s.end + by });
    const entry = (e: Entry): Entry => ({ key: e.key, keySpan: span(e.keySpan), span: span(e.span), value: e.value, property: e.property, broken: e.broken, note: e.note });
    const part = (p: Part): Part => {
        const entries = new Map<string, Entry>();
        for (const [key, e] of p.entries) entries.set(key, entry(e));
        // Written out: copying by spread costs several times as much, and this is done for every part below an edit.
        return {
            name: p.name, kind: p.kind, kindWord: p.kindWord, file: p.file, nameSpan: span(p.nameSpan), kindSpan: span(p.kindSpan), span: span(p.span), inside: p.inside && span(p.inside),
            named: p.named, base: p.base && { name: p.base.name, span: span(p.base.span) }, entries, note: p.note, implied: p.implied, pattern: p.pattern,
        };
    };
    return {
        parts: a.parts.map(part),
        lets: a.lets.map(l => ({ ...l, nameSpan: span(l.nameSpan), span: span(l.span) })),
        paths: a.paths.map(p => ({ medium: p.medium, file: p.file, broken: p.broken, mediumSpan: span(p.mediumSpan), span: span(p.span), stops: p.stops.map(s => ({ name: s.name, port: s.port, span: span(s.span) })) })),
        expects: a.expects.map(e => ({ ...e, span: span(e.span), valueSpan: span(e.valueSpan), when: e.when && { ...e.when, span: span(e.when.span) } })),
        allows: a.allows.map(w => ({ ...w, span: span(w.span), ruleSpan: span(w.ruleSpan), on: w.on && { ...w.on, span: span(w.on.span) } })),
        uses: a.uses.map(u => ({ ...u, span: span(u.span), targetSpan: span(u.targetSpan) })),
        occurrences: a.occurrences.map(o => ({ names: o.names, start: o.start + by, end: o.end + by, role: o.role })),
    };
}
