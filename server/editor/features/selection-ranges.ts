import type { SelectionRange } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import type { House, Position } from '../house.js';
import { spotAt } from '../spot.js';

/** Word, item of a list, value, line, block: what grows under the cursor. */
const selectionRanges: Feature = {
    name: 'selection-ranges',
    capabilities: () => ({ selectionRangeProvider: true }),
    register(connection, house) {
        connection.onSelectionRanges(({ textDocument, positions }) => positions.map(p => selectionAt(house, textDocument.uri, p)));
    },
};
export default selectionRanges;

export function selectionAt(house: House, uri: string, position: Position): SelectionRange {
    const page = house.page(uri);
    const doc = house.doc(uri);
    if (!page || !doc) return { range: { start: position, end: position } };
    const { lines } = doc;
    const offset = lines.offset(position);
    const spot = spotAt(page, offset);
    const { line } = lines.at(offset);
    const text = lines.lineText(line);
    const start = lines.startOf(line);
    const spans: { start: number; end: number }[] = [
        { start: 0, end: page.text.length }, { start, end: lines.endOf(line) },
        { start: start + text.length - text.trimStart().length, end: start + text.trimEnd().length },
    ];
    if (spot.part) spans.push(spot.part.span);
    if (spot.part?.inside) spans.push(spot.part.inside);
    for (const p of page.paths) if (p.span.start <= offset && offset <= p.span.end) spans.push(p.span);
    if (spot.entry) {
        const { keySpan, span, value } = spot.entry;
        spans.push({ start: keySpan.start, end: Math.max(keySpan.end, span.end) }, keySpan, span);
        for (const sequence of value?.list ?? []) {
            if (!sequence.length) continue;
            spans.push({ start: span.start + sequence[0].start, end: span.start + sequence.at(-1)!.end });
            for (const node of sequence) spans.push({ start: span.start + node.start, end: span.start + node.end });
        }
    }
    if (spot.occurrence) spans.push(spot.occurrence);
    if (spot.word) spans.push(spot.word);
    const around = spans.filter(s => s.start <= offset && offset <= s.end && s.end > s.start).sort((a, b) => b.end - b.start - (a.end - a.start));
    let chosen: { range: SelectionRange; start: number; end: number } | undefined;
    for (const s of around) {
        // Each must lie in the one before, and be smaller.
        if (chosen && (s.start < chosen.start || s.end > chosen.end || s.end - s.start === chosen.end - chosen.start)) continue;
        chosen = { range: { range: lines.range(s), parent: chosen?.range }, start: s.start, end: s.end };
    }
    return chosen?.range ?? { range: { start: position, end: position } };
}
