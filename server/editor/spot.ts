/** What stands at a place of a text: the part, the property, the value, a name. Shared by hover, completion and the rest. */
import type { Analysis } from '../../language/index.js';
import type { Entry, Occurrence, Page, Part } from '../../language/rig/rig.js';

export interface Spot {
    readonly page: Page;
    readonly offset: number;
    readonly part?: Part;
    readonly entry?: Entry;
    /** On the key, in the value, on the header of a block. */
    readonly in?: 'key' | 'value' | 'header';
    readonly occurrence?: Occurrence;
    /** The word under the cursor, letters, digits, hyphens and units' signs. */
    readonly word?: { readonly text: string; readonly start: number; readonly end: number };
}
const wordPattern = /[\p{L}\p{N}_µ°%‰Ω€]+(?:-[\p{L}\p{N}_]+)*/gu;

export function spotAt(page: Page, offset: number): Spot {
    const part = page.parts.find(p => p.span.start <= offset && offset <= p.span.end);
    const entry = part && [...part.entries.values()].find(e => e.keySpan.start <= offset && offset <= Math.max(e.span.end, e.keySpan.end));
    const where = entry ? (offset <= entry.keySpan.end ? 'key' as const : 'value' as const) : part && offset <= (part.inside?.start ?? part.span.end) ? 'header' as const : undefined;
    const candidates = page.occurrences.filter(o => o.start <= offset && offset <= o.end);
    const occurrence = candidates.sort((a, b) => a.end - a.start - (b.end - b.start))[0];
    const lineStart = page.text.lastIndexOf('\n', offset - 1) + 1;
    const lineEnd = page.text.indexOf('\n', offset);
    const line = page.text.slice(lineStart, lineEnd < 0 ? undefined : lineEnd);
    let word: Spot['word'];
    for (const m of line.matchAll(wordPattern)) {
        const start = lineStart + m.index;
        if (start <= offset && offset <= start + m[0].length) word = { text: m[0], start, end: start + m[0].length };
    }
    return { page, offset, part, entry, in: where, occurrence, word };
}
/** Which of the names of an occurrence the cursor is on: 0 the part, 1 the quantity. */
export function namePiece(page: Page, occurrence: Occurrence, offset: number): { index: number; start: number; end: number } {
    let start = occurrence.start;
    for (let i = 0; i < occurrence.names.length; i++) {
        const end = Math.min(occurrence.end, start + occurrence.names[i].length);
        if (offset <= end) return { index: i, start, end };
        start = end + 1;
    }
    return { index: 0, start: occurrence.start, end: occurrence.start + occurrence.names[0].length };
}
export function pageIn(analysis: Analysis | undefined, uri: string): Page | undefined {
    return analysis?.rig.pages.find(p => p.file === uri);
}
