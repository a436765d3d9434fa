/** Text edits that rules offer. A fix changes a choice, never a fact; it never takes a safeguard away. */
import type { View } from '../quantities/view.js';
import type { Fix, Page, Part, Rig, Span } from '../rig/rig.js';

function pageOf(rig: Rig, file: string): Page | undefined {
    return rig.pages.find(p => p.file === file);
}
function column(text: string, offset: number): string {
    const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
    return /^[ \t]*/.exec(text.slice(lineStart, offset))![0];
}

/** Replaces the whole value of a property; adds the property if it is not said in this part. */
export function setValue(v: View, key: string, text: string, title = `Set ${v.name}.${key} to ${text}`): Fix | undefined {
    const entry = v.part.entries.get(key);
    if (entry?.property?.fact) return undefined;
    if (entry) return { title, edits: [{ span: entry.span, text }], preferred: true };
    const edit = addition(v, key, text);
    return edit && { title, edits: [edit], preferred: true };
}
/** Adds `key: text` to a part's block; opens a block where there is none. Undefined for a part that stands in no text. */
export function addition(v: View, key: string, text: string): { span: Span; text: string } | undefined {
    return additionTo(v.written, v.part, key, text);
}
export function additionTo(rig: Rig, part: Part, key: string, text: string): { span: Span; text: string } | undefined {
    const page = pageOf(rig, part.file);
    if (!page) return undefined;
    if (part.implied) {
        const end = page.text.trimEnd().length;
        return { span: { file: part.file, start: end, end }, text: `\n\n${part.name === part.kindWord ? part.kindWord : `${part.kindWord} ${part.name}`} {\n  ${line(key, text)}\n}\n` };
    }
    if (!part.inside) return { span: { file: part.file, start: part.span.end, end: part.span.end }, text: ` { ${key}: ${text} }` };
    const block = page.text.slice(part.inside.start, part.inside.end);
    const last = [...part.entries.values()].at(-1);
    if (!block.includes('\n')) {
        const at = part.inside.start + block.trimEnd().length;
        return { span: { file: part.file, start: at, end: at }, text: `${last ? '  ' : ' '}${key}: ${text}${block.trimEnd() === block ? ' ' : ''}` };
    }
    const at = last ? endOfLine(page.text, last.span.end) : part.inside.start;
    const indent = last ? column(page.text, last.keySpan.start) || '  ' : '  ';
    return { span: { file: part.file, start: at, end: at }, text: `\n${indent}${line(key, text)}` };
}
function line(key: string, text: string): string {
    return `${`${key}:`.padEnd(18)}${text}`;
}
function endOfLine(text: string, offset: number): number {
    const end = text.indexOf('\n', offset);
    const rest = text.slice(offset, end < 0 ? undefined : end);
    return offset + rest.trimEnd().length;
}
/** Puts new lines after a part's block. */
export function insertAfter(v: View, text: string, title: string): Fix | undefined {
    const page = pageOf(v.written, v.part.file);
    if (!page) return undefined;
    const at = v.part.implied ? page.text.trimEnd().length : endOfLine(page.text, v.part.span.end);
    return { title, edits: [{ span: { file: v.part.file, start: at, end: at }, text: `\n\n${text}` }] };
}
/** Puts new lines at the end of the rig's own file. */
export function append(v: View, text: string, title: string): Fix {
    const page = pageOf(v.written, v.written.root)!;
    const at = page.text.trimEnd().length;
    return { title, edits: [{ span: { file: page.file, start: at, end: at }, text: `\n\n${text}\n` }] };
}
export function defined<T>(...items: (T | undefined)[]): T[] {
    return items.filter((i): i is T => i !== undefined);
}
