import type { Feature } from '../feature.js';
import { resolveUse } from '../../../language/rig/assemble.js';

/** Files that a text uses, and addresses in its comments. */
const links: Feature = {
    name: 'links',
    capabilities: () => ({ documentLinkProvider: {} }),
    register(connection, house) {
        connection.onDocumentLinks(({ textDocument }) => {
            const page = house.page(textDocument.uri);
            const doc = house.doc(textDocument.uri);
            if (!page || !doc) return [];
            return [
                ...page.uses.filter(u => !u.shipped).map(u => ({ range: doc.lines.range(u.targetSpan), target: resolveUse(textDocument.uri, u), tooltip: 'Open this file' })),
                ...[...page.text.matchAll(/\bhttps?:\/\/[^\s"<>)]+/g)].map(m => ({ range: doc.lines.range({ start: m.index, end: m.index + m[0].length }), target: m[0] })),
            ];
        });
    },
};
export default links;
