import { shippedText } from '../../../language/rig/assemble.js';
import type { Feature } from '../feature.js';

/** The text of a library that comes with the tool: going to a pattern of it opens a page that can only be read. */
const libraryText: Feature = {
    name: 'library-text',
    capabilities: client => (client.workspace?.textDocumentContent ? { workspace: { textDocumentContent: { schemes: ['rigwright-library'] } } } : {}),
    register(connection) {
        connection.workspace.textDocumentContent.on(({ uri }) => ({ text: shippedText(uri) ?? '' }));
    },
};
export default libraryText;
