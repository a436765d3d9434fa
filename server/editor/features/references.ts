import type { Feature } from '../feature.js';
import { nameAt, valueAt } from '../names.js';

/** All places of a name, or of one value of a part, across the files of the rig. */
const references: Feature = {
    name: 'references',
    capabilities: () => ({ referencesProvider: true }),
    register(connection, house) {
        connection.onReferences(({ textDocument, position, context }) => {
            const places = nameAt(house, textDocument.uri, position)?.places ?? valueAt(house, textDocument.uri, position);
            return places?.filter(p => context.includeDeclaration || !p.write).map(p => house.location(p)) ?? null;
        });
    },
};
export default references;
