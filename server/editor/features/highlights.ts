import { DocumentHighlightKind } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import { nameAt } from '../names.js';

/** The same name elsewhere in this file. */
const highlights: Feature = {
    name: 'highlights',
    capabilities: () => ({ documentHighlightProvider: true }),
    register(connection, house) {
        connection.onDocumentHighlight(({ textDocument, position }) => nameAt(house, textDocument.uri, position)?.places.filter(p => p.file === textDocument.uri)
            .map(p => ({ range: house.linesOf(p.file).range(p), kind: p.write ? DocumentHighlightKind.Write : DocumentHighlightKind.Read })) ?? null);
    },
};
export default highlights;
