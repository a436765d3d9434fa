/** What stands at a place of a text: the part, the property, the value, a name. Shared by hover, completion and the rest. */
import type { Entry, Occurrence, Page, Part } from '../../language/rig/rig.js';

export interface Word {
    readonly text: string;
    readonly start: number;
    readonly end: number;
}
export interface Spot {
    readonly page: Page;
    readonly offset: number;
    readonly part?: Part;
    readonly entry?: Entry;
    /** On the key, in the value, on the header of a block. */
    readonly in?: 'key' | 'value' | 'header';
    readonly occurrence?: Occurrence;
    /** The word under the cursor: letters, digits, hyphens, signs of units. */
    readonly word?: Word;
    /** In a comment, or between quotes. */
    readonly quiet?: 'comment' | 'quoted';
}
const wordPattern = /[\p{L}\p{N}_µ°%‰Ω€²³]+(?:-[\p{L}\p{N}_]+)*(?:[/·*](?:\([^()\s]*\)|[\p{L}µ°%‰Ω€²³][\p{L}\p{N}µ°%‰Ω€²³]*))*/gu;

export function spotAt(page: Page, offset: number): Spot {
    const start = page.text.lastIndexOf('\n', offset - 1) + 1;
    const found = page.text.indexOf('\n', offset);
    const line = page.text.slice(start, found < 0 ? undefined : found);
    const quiet = quietAt(line, offset - start);
    const part = page.parts.find(p => p.span.start <= offset && offset <= p.span.end);
    const entry = part && [...part.entries.values()].find(e => e.keySpan.start <= offset && offset <= Math.max(e.span.end, e.keySpan.end));
    const where = entry ? (offset <= entry.keySpan.end ? 'key' as const : 'value' as const)
        : part && offset <= (part.inside?.start ?? part.span.end) ? 'header' as const : undefined;
    let occurrence: Occurrence | undefined;
    for (const o of page.occurrences) if (o.start <= offset && offset <= o.end && (!occurrence || o.end - o.start < occurrence.end - occurrence.start)) occurrence = o;
    let word: Word | undefined;
    for (const m of line.matchAll(wordPattern)) {
        // A number and its unit may stand together: 24V.
        const digits = /^\d+(?=[^\d]*[\p{L}µ°%‰Ω€])/u.exec(m[0])?.[0].length ?? 0;
        for (const [from, to] of digits ? [[m.index, m.index + digits], [m.index + digits, m.index + m[0].length]] : [[m.index, m.index + m[0].length]]) {
            if (start + from <= offset && offset <= start + to) word = { text: line.slice(from, to), start: start + from, end: start + to };
        }
    }
    return { page, offset, part, entry, in: where, occurrence, word, quiet };
}
/** Whether a place of a line stands in a comment or between quotes. */
export function quietAt(line: string, at: number): Spot['quiet'] {
    let quoted = false;
    for (let i = 0; i < at; i++) {
        if (line[i] === '"') quoted = !quoted;
        else if (line[i] === '#' && !quoted) return 'comment';
    }
    return quoted ? 'quoted' : undefined;
}
/** Which of the names of an occurrence the cursor is on: 0 the part, 1 the quantity. */
export function namePiece(occurrence: Occurrence, offset: number): { index: number; start: number; end: number } {
    let start = occurrence.start;
    for (let i = 0; i < occurrence.names.length; i++) {
        const end = Math.min(occurrence.end, start + occurrence.names[i].length);
        if (offset <= end) return { index: i, start, end };
        start = end + 1;
    }
    return { index: 0, start: occurrence.start, end: occurrence.start + occurrence.names[0].length };
}
