import { explain, type Explanation } from '../../../language/reference/explain.js';
import type { Feature } from '../feature.js';
import type { House, Position } from '../house.js';
import { meaningOf } from '../names.js';
import { namePiece, spotAt } from '../spot.js';

/** `rigwright/explain`: the page about a name, or about what stands at a place of a text. */
const explainRequest: Feature = {
    name: 'explain-request',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/explain', (params: { name?: string; uri?: string; position?: Position }) =>
            (params?.name !== undefined ? explain(String(params.name)) : params?.uri && params.position ? explainAt(house, params.uri, params.position) : undefined) ?? null);
    },
};
export default explainRequest;

export function explainAt(house: House, uri: string, position: Position): Explanation | undefined {
    const sight = house.sight(uri);
    if (!sight) return undefined;
    const { page, doc, analysis } = sight;
    const offset = doc.lines.offset(position);
    const told = analysis.findings.find(f => f.span.file === uri && f.span.start <= offset && offset <= f.span.end);
    const rule = told && explain(told.rule);
    if (rule) return rule;
    const spot = spotAt(page, offset);
    if (spot.quiet === 'comment') return undefined;
    const kind = spot.part?.kind?.name;
    const aboutKey = kind && spot.entry ? explain(`${kind}.${spot.entry.key}`) : undefined;
    if (spot.in === 'key' && aboutKey) return aboutKey;
    const target = spot.occurrence && meaningOf(analysis.rig, page, spot.occurrence.names[0]);
    if (target && 'kindWord' in target) {
        const piece = namePiece(spot.occurrence!, offset);
        const page = explain(piece.index > 0 ? `${target.kindWord}.${spot.occurrence!.names.slice(1).join('.')}` : target.kindWord);
        if (page) return page;
    }
    // A number or a word of the value: its unit, else its property.
    const word = spot.word && /[\p{L}°%µΩ€]/u.test(spot.word.text) ? explain(spot.word.text) : undefined;
    return word ?? aboutKey ?? (kind ? explain(kind) : undefined);
}
