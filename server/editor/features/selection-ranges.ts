import type { SelectionRange } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import { spotAt } from '../spot.js';

/** Word, item of a list, value, line, block: what grows under the cursor. */
const selectionRanges: Feature = {
    name: 'selection-ranges',
    capabilities: () => ({ selectionRangeProvider: true }),
    register(connection, house) {
        connection.onSelectionRanges(({ textDocument, positions }) => {
            const page = house.page(textDocument.uri);
            const doc = house.doc(textDocument.uri);
            if (!page || !doc) return null;
            return positions.map(position => {
                const offset = doc.lines.offset(position);
                const spot = spotAt(page, offset);
                const line = doc.lines.at(offset).line;
                const spans: { start: number; end: number }[] = [{ start: 0, end: page.text.length }];
                if (spot.part) {
                    spans.push(spot.part.span);
                    if (spot.part.inside) spans.push(spot.part.inside);
                }
                spans.push({ start: doc.lines.startOf(line), end: doc.lines.endOf(line) });
                if (spot.entry) {
                    spans.push({ start: spot.entry.keySpan.start, end: Math.max(spot.entry.keySpan.end, spot.entry.span.end) });
                    if (spot.in === 'value') {
                        spans.push(spot.entry.span);
                        const item = spot.entry.value?.list.find(s => s.length && spot.entry!.span.start + s[0].start <= offset && offset <= spot.entry!.span.start + s.at(-1)!.end);
                        if (item) spans.push({ start: spot.entry.span.start + item[0].start, end: spot.entry.span.start + item.at(-1)!.end });
                    }
                }
                if (spot.word) spans.push(spot.word);
                const nested = spans.filter(s => s.start <= offset && offset <= s.end).sort((a, b) => b.end - b.start - (a.end - a.start));
                let range: SelectionRange | undefined;
                for (const s of nested) if (!range || s.end - s.start < doc.lines.offset(range.range.end) - doc.lines.offset(range.range.start)) range = { range: doc.lines.range(s), parent: range };
                return range!;
            });
        });
    },
};
export default selectionRanges;
