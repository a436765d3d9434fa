/** Every place where a part or a named value is named, in all files of its rig. */
import type { Analysis } from '../../language/index.js';
import type { Named, Page, Part, Rig, Span } from '../../language/rig/rig.js';
import type { House, Position } from './house.js';
import { namePiece } from './spot.js';

export interface NamePlace extends Span {
    readonly write: boolean;
}
export interface NameAt {
    readonly name: string;
    readonly here: Span;
    readonly part?: Part;
    readonly named?: Named;
    readonly places: readonly NamePlace[];
    /** Stands in a library shipped with the tool: cannot be renamed. */
    readonly shipped: boolean;
    /** Rigs in which it is named: one, or for a pattern of a library every rig that uses it. */
    readonly rigs: readonly Rig[];
}

/** What a name means on a page: on the page of a library its patterns, elsewhere the parts of the rig before the patterns. */
export function meaningOf(rig: Rig, page: Page | undefined, name: string): Part | Named | undefined {
    if (page?.sort === 'library' && !rig.isLibrary) return rig.patterns.get(name);
    return rig.parts.get(name) ?? rig.lets.get(name) ?? rig.patterns.get(name);
}
const place = (x: Part | Named) => `${x.nameSpan.file} ${x.nameSpan.start}`;

/** The name under the cursor and all its places; undefined if there is no name of a part or value there. */
export function nameAt(house: House, uri: string, position: Position): NameAt | undefined {
    const sight = house.sight(uri);
    if (!sight) return undefined;
    const { analysis, page, doc } = sight;
    const offset = doc.lines.offset(position);
    const occurrence = page.occurrences.find(o => o.start <= offset && offset <= o.end && namePiece(o, offset).index === 0 && meaningOf(analysis.rig, page, o.names[0]));
    if (!occurrence) return undefined;
    const name = occurrence.names[0];
    const target = meaningOf(analysis.rig, page, name)!;
    const inLibrary = analysis.rig.pages.find(p => p.file === target.nameSpan.file)?.sort === 'library';
    const analyses = new Set<Analysis>([analysis, ...(inLibrary ? house.allAnalyses().filter(a => a.files.includes(target.nameSpan.file)) : [])]);
    const places = new Map<string, NamePlace>();
    for (const { rig } of analyses) {
        for (const p of rig.pages) {
            const meant = meaningOf(rig, p, name);
            if (!meant || place(meant) !== place(target)) continue;
            for (const o of p.occurrences) {
                if (o.names[0] !== name) continue;
                const key = `${p.file} ${o.start}`;
                const write = o.role === 'definition';
                if (write || !places.has(key)) places.set(key, { file: p.file, start: o.start, end: o.start + name.length, write });
            }
        }
    }
    const isPart = 'kindWord' in target;
    return {
        name, here: { file: uri, start: occurrence.start, end: occurrence.start + name.length }, part: isPart ? target : undefined, named: isPart ? undefined : target,
        places: [...places.values()].sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : a.start - b.start)),
        shipped: target.nameSpan.file.startsWith('rigwright-library:'), rigs: [...analyses].map(a => a.rig),
    };
}

/** The places of one value of a part, as `h2-column.level`: where it is given and where it is read. Undefined if there is none under the cursor. */
export function valueAt(house: House, uri: string, position: Position): NamePlace[] | undefined {
    const sight = house.sight(uri);
    if (!sight) return undefined;
    const { analysis: { rig }, page, doc } = sight;
    const offset = doc.lines.offset(position);
    const occurrence = page.occurrences.find(o => o.start <= offset && offset <= o.end && namePiece(o, offset).index > 0);
    const own = page.parts.flatMap(p => [...p.entries.values()]
        .filter(e => e.keySpan.start <= offset && offset <= e.keySpan.end && !e.key.includes('.'))
        .map(e => ({ part: p, key: e.key })))[0];
    const meant = occurrence ? meaningOf(rig, page, occurrence.names[0]) : own?.part;
    const key = occurrence?.names[1] ?? own?.key;
    if (!meant || !('kindWord' in meant) || key === undefined) return undefined;
    const places: NamePlace[] = [];
    const entry = meant.entries.get(key);
    if (entry) places.push({ ...entry.keySpan, write: true });
    for (const p of rig.pages) {
        for (const o of p.occurrences) {
            if (o.names[1] !== key || o.names[0] !== meant.name || meaningOf(rig, p, o.names[0]) !== meant) continue;
            places.push({ file: p.file, start: o.start + meant.name.length + 1, end: o.start + meant.name.length + 1 + key.length, write: false });
        }
    }
    return places;
}
