import type { Feature } from '../feature.js';
import { nameAt } from '../names.js';

/** All places of a name, across the files of the rig. */
const references: Feature = {
    name: 'references',
    capabilities: () => ({ referencesProvider: true }),
    register(connection, house) {
        connection.onReferences(({ textDocument, position, context }) => nameAt(house, textDocument.uri, position)?.places.filter(p => context.includeDeclaration || !p.write).map(p => house.location(p)) ?? null);
    },
};
export default references;
