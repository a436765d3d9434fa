/** Where a name is defined: a part, a named value, a value of a part, a file that is used; shipped libraries included. */
import type { Feature } from '../feature.js';
import type { House, Position } from '../house.js';
import { resolveUse } from '../../../language/rig/assemble.js';
import { quantityOf } from '../../../language/quantities/index.js';
import type { Span } from '../../../language/rig/rig.js';
import { meaningOf } from '../names.js';
import { namePiece, spotAt } from '../spot.js';

const definition: Feature = {
    name: 'definition',
    capabilities: () => ({ definitionProvider: true }),
    register(connection, house) {
        connection.onDefinition(({ textDocument, position }) => {
            const span = definitionAt(house, textDocument.uri, position);
            return span ? house.location(span) : null;
        });
    },
};
export default definition;

export function definitionAt(house: House, uri: string, position: Position): Span | undefined {
    const sight = house.sight(uri);
    if (!sight) return undefined;
    const { page, doc, analysis: { rig } } = sight;
    const offset = doc.lines.offset(position);
    const use = page.uses.find(u => u.span.start <= offset && offset <= u.span.end);
    if (use) {
        const file = resolveUse(uri, use);
        return house.page(file) ? { file, start: 0, end: 0 } : undefined;
    }
    const { occurrence } = spotAt(page, offset);
    const target = occurrence && meaningOf(rig, page, occurrence.names[0]);
    if (!target) return undefined;
    const piece = namePiece(occurrence, offset);
    if (piece.index === 0 || !('kindWord' in target)) return target.nameSpan;
    // A worked-out number leads to the line that shows it.
    const name = occurrence.names.slice(1).join('.');
    const key = target.entries.has(occurrence.names[1]) ? occurrence.names[1] : quantityOf(target.kindWord).get(name)?.shownAt;
    return (key && target.entries.get(key)?.keySpan) || target.nameSpan;
}
