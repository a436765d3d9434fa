/** Every place where a part or a named value is named, in all files of its rig. */
import type { Span } from '../../language/rig/rig.js';
import type { House } from './house.js';
import { namePiece, pageIn, spotAt } from './spot.js';

export interface NamePlace extends Span {
    readonly write: boolean;
}
export interface NameAt {
    readonly name: string;
    readonly here: Span;
    readonly places: readonly NamePlace[];
    /** Stands in a library shipped with the tool: cannot be renamed. */
    readonly shipped: boolean;
}

/** The name under the cursor and all its places; undefined if there is no name of a part or value there. */
export function nameAt(house: House, uri: string, position: { line: number; character: number }): NameAt | undefined {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc) return undefined;
    const offset = doc.lines.offset(position);
    const occurrence = page.occurrences.filter(o => o.start <= offset && offset <= o.end && namePiece(page, o, offset).index === 0)
        .find(o => analysis.rig.parts.has(o.names[0]) || analysis.rig.patterns.has(o.names[0]) || analysis.rig.lets.has(o.names[0]));
    if (!occurrence) return undefined;
    const name = occurrence.names[0];
    const target = analysis.rig.parts.get(name) ?? analysis.rig.patterns.get(name);
    const places: NamePlace[] = [];
    for (const p of analysis.rig.pages) {
        for (const o of p.occurrences) {
            if (o.names[0] === name) places.push({ file: p.file, start: o.start, end: o.start + name.length, write: o.role === 'definition' });
        }
    }
    const unique = [...new Map(places.map(p => [`${p.file} ${p.start}`, p])).values()];
    return { name, here: { file: uri, start: occurrence.start, end: occurrence.start + name.length }, places: unique, shipped: !!target?.file.startsWith('rigwright-library:') };
}
