import type { DocumentLink } from 'vscode-languageserver';
import { resolveUse } from '../../../language/rig/assemble.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** Files that a text uses, and addresses in its comments and sources. */
const links: Feature = {
    name: 'links',
    capabilities: () => ({ documentLinkProvider: { resolveProvider: false } }),
    register(connection, house) {
        connection.onDocumentLinks(({ textDocument }) => linksOf(house, textDocument.uri));
    },
};
export default links;

export function linksOf(house: House, uri: string): DocumentLink[] {
    const page = house.page(uri);
    const doc = house.doc(uri);
    if (!page || !doc) return [];
    const found: DocumentLink[] = page.uses.filter(u => !u.shipped || house.ownClient).map(u => ({ range: doc.lines.range(u.targetSpan), target: resolveUse(uri, u), tooltip: 'Open this file' }));
    for (const m of page.text.matchAll(/\bhttps?:\/\/[^\s"<>]+|\bdoi:\s?10\.\d{4,9}\/[^\s"<>]+/g)) {
        // What ends the sentence does not belong to the address; a bracket that was opened in it does.
        let text = m[0].replace(/[.,;:!?\]}]+$/, '');
        while (text.endsWith(')') && text.split(')').length > text.split('(').length) text = text.slice(0, -1).replace(/[.,;:!?]+$/, '');
        found.push({ range: doc.lines.range({ start: m.index, end: m.index + text.length }), target: text.startsWith('doi:') ? `https://doi.org/${text.slice(4).trim()}` : text });
    }
    return found;
}
