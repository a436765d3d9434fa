/** Where a name is defined; libraries shipped with the tool included. */
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { resolveUse } from '../../../language/rig/assemble.js';
import type { Span } from '../../../language/rig/rig.js';
import { namePiece, pageIn, spotAt } from '../spot.js';

const definition: Feature = {
    name: 'definition',
    capabilities: () => ({ definitionProvider: true, typeDefinitionProvider: false }),
    register(connection, house) {
        connection.onDefinition(({ textDocument, position }) => {
            const span = definitionAt(house, textDocument.uri, position);
            return span ? house.location(span) : null;
        });
    },
};
export default definition;

export function definitionAt(house: House, uri: string, position: { line: number; character: number }): Span | undefined {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc) return undefined;
    const offset = doc.lines.offset(position);
    const use = page.uses.find(u => u.span.start <= offset && offset <= u.span.end);
    if (use) return { file: resolveUse(uri, use), start: 0, end: 0 };
    const { occurrence } = spotAt(page, offset);
    if (!occurrence) return undefined;
    const piece = namePiece(page, occurrence, offset);
    const { rig } = analysis;
    const part = rig.parts.get(occurrence.names[0]) ?? rig.patterns.get(occurrence.names[0]);
    if (part && piece.index > 0) return part.entries.get(occurrence.names[1])?.keySpan ?? part.nameSpan;
    return part?.nameSpan ?? rig.lets.get(occurrence.names[0])?.nameSpan;
}
