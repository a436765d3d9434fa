/** Text edits on paths and lists: something put before a part, a path led on, a name added to `stopped-by`. */
import type { View } from '../quantities/view.js';
import type { Link } from '../rig/paths.js';
import type { Fix, Span } from '../rig/rig.js';
import { addition } from './fixes.js';

type Edit = { readonly span: Span; readonly text: string };

/** Puts a part before the second part of a link: `a -> b` becomes `a -> new -> b`. */
export function insertBefore(link: Link, name: string, title: string): Fix {
    const at = link.to.span.start;
    return { title, edits: [{ span: { file: link.to.span.file, start: at, end: at }, text: `${name} -> ` }], preferred: true };
}
/** Leads a path on behind its last part: `a` becomes `a -> outdoors`. */
export function extendPath(after: Span, to: string, title: string): Fix {
    return { title, edits: [{ span: { ...after, start: after.end }, text: ` -> ${to}` }], preferred: true };
}
/** Adds a name to a list such as `stopped-by`, or the list itself. */
export function listEdit(v: View, key: string, item: string): Edit | undefined {
    const entry = v.part.entries.get(key);
    if (!entry) return addition(v, key, item);
    if (!entry.value || v.says(key) === 'none' || v.says(key) === 'unknown') return { span: entry.span, text: item };
    const at = entry.span.end;
    return { span: { file: entry.span.file, start: at, end: at }, text: `, ${item}` };
}
export function addToList(v: View, key: string, item: string, title: string): Fix | undefined {
    const edit = listEdit(v, key, item);
    return edit && { title, edits: [edit], preferred: true };
}
/** A name for a new part that is not taken: `name`, else `name-2`, `name-3` ... */
export function freeName(v: View, name: string): string {
    let free = name;
    for (let n = 2; v.written.parts.has(free); n++) free = `${name}-${n}`;
    return free;
}
/** The edits of several fixes as one. */
export function together(title: string, ...edits: (Fix | Edit | undefined)[]): Fix | undefined {
    const all = edits.flatMap(e => (!e ? [] : 'edits' in e ? e.edits : [e]));
    return all.length && edits.every(e => e) ? { title, edits: all, preferred: true } : undefined;
}
