import type { TextEdit } from 'vscode-languageserver';
import { formatEdits, formatText } from '../../../language/rig/format.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** The whole text or a stretch of it, line by line: a line that cannot be read stays as it is. */
const formatting: Feature = {
    name: 'formatting',
    capabilities: () => ({ documentFormattingProvider: true, documentRangeFormattingProvider: true }),
    register(connection, house) {
        connection.onDocumentFormatting(({ textDocument }) => formatAll(house, textDocument.uri));
        connection.onDocumentRangeFormatting(({ textDocument, range: { start, end } }) =>
            // A selection that ends at the beginning of a line does not reach into it.
            formatLines(house, textDocument.uri, start.line, end.character === 0 && end.line > start.line ? end.line - 1 : end.line));
    },
};
export default formatting;

export function formatLines(house: House, uri: string, from = 0, to = Infinity): TextEdit[] {
    const doc = house.doc(uri);
    if (!doc) return [];
    const { lines, text } = doc;
    return formatEdits(text).filter(e => e.line >= from && e.line <= to).map(e => ({
        range: lines.range({ start: lines.startOf(e.line), end: e.line + e.count < lines.count ? lines.startOf(e.line + e.count) : text.length }), newText: e.text,
    }));
}
/** Line by line, so that the cursor and what is folded stay; and the end of the text as the command `format` leaves it. */
export function formatAll(house: House, uri: string): TextEdit[] {
    const doc = house.doc(uri);
    if (!doc) return [];
    const { lines, text } = doc;
    const edits = formatLines(house, uri);
    let out = text;
    for (const e of [...edits].reverse()) out = out.slice(0, lines.offset(e.range.start)) + e.newText + out.slice(lines.offset(e.range.end));
    const wanted = formatText(text);
    if (out === wanted) return edits;
    return [{ range: lines.range({ start: 0, end: text.length }), newText: wanted }];
}
