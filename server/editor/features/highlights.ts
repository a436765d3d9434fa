import { DocumentHighlightKind } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import { nameAt, valueAt } from '../names.js';

/** The same name, or the same value of a part, elsewhere in this file. */
const highlights: Feature = {
    name: 'highlights',
    capabilities: () => ({ documentHighlightProvider: true }),
    register(connection, house) {
        connection.onDocumentHighlight(({ textDocument: { uri }, position }) => {
            const places = nameAt(house, uri, position)?.places ?? valueAt(house, uri, position);
            return places?.filter(p => p.file === uri).map(p => ({ range: house.linesOf(uri).range(p), kind: p.write ? DocumentHighlightKind.Write : DocumentHighlightKind.Read })) ?? null;
        });
    },
};
export default highlights;
