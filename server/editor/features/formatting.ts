import { formatEdits } from '../../../language/rig/format.js';
import type { Feature } from '../feature.js';

/** The whole text or a stretch of it, line by line: a line that cannot be read stays as it is. */
const formatting: Feature = {
    name: 'formatting',
    capabilities: () => ({ documentFormattingProvider: true, documentRangeFormattingProvider: true }),
    register(connection, house) {
        const edits = (uri: string, from = 0, to = Infinity) => {
            const doc = house.doc(uri);
            return doc ? formatEdits(doc.text).filter(e => e.line >= from && e.line <= to).map(e => ({ range: { start: { line: e.line, character: 0 }, end: { line: e.line + e.count, character: 0 } }, newText: e.text })) : [];
        };
        connection.onDocumentFormatting(({ textDocument }) => edits(textDocument.uri));
        connection.onDocumentRangeFormatting(({ textDocument, range }) => edits(textDocument.uri, range.start.line, range.end.line));
    },
};
export default formatting;
