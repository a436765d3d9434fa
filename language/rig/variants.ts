/**
 * A rig with some of its variants applied: values replaced, parts taken away. Pure and total: what cannot be applied is told and left
 * out. A value that came from a variant keeps the place of the variant's line, so that findings and fixes point there.
 */
import { nearest, offering } from '../values/nearest.js';
import { matchCached } from './read-page.js';
import type { Entry, Part, Path, Problem, Rig, Span } from './rig.js';

export interface Varied {
    readonly rig: Rig;
    readonly problems: readonly Problem[];
}
/** Variants of a rig, in the order of the text. */
export function variantsOf(rig: Rig): Part[] {
    return [...rig.parts.values()].filter(isVariant);
}
const isVariant = (p: Part | undefined): p is Part => p?.kind?.name === 'variant' && !p.pattern;
const NOTHING: ReadonlyMap<string, Entry> = new Map();

/** The rig without what belongs to variants only; names and places of all of it stand in `whole`. */
export function asItStands(rig: Rig): Rig {
    const away = onlyElsewhere(rig, new Set());
    if (!away.size) return rig;
    return { ...rig, parts: new Map([...rig.parts].filter(([name]) => !away.has(name))), paths: joined(rig.paths, away), whole: rig };
}
/** Parts that belong only to variants that are not there. */
function onlyElsewhere(rig: Rig, there: ReadonlySet<string>): Set<string> {
    const away = new Set<string>();
    for (const part of rig.parts.values()) {
        const only = part.entries.has('only-in') ? namesIn(part.entries.get('only-in')) : [];
        if (only.length && !only.some(n => there.has(n))) away.add(part.name);
    }
    return away;
}
/**
 * @param names  in the order in which they are laid over the rig, later ones winning; with none it is the rig without what belongs to
 *               variants only
 */
export function withVariants(asRead: Rig, names: readonly string[]): Varied {
    const { whole: rig = asRead } = asRead;
    const problems: Problem[] = [];
    const applied = inOrder(rig, names, problems);
    const parts = new Map(rig.parts);
    const away = onlyElsewhere(rig, new Set(applied.map(v => v.name)));
    for (const variant of applied) {
        for (const entry of variant.entries.values()) {
            if (entry.property || entry.broken) continue;
            const [name, ...rest] = entry.key.split('.');
            const part = parts.get(name);
            if (!part) problems.push({ code: 'unknown-name', span: entry.keySpan, message: offering(`A part ${name} does not exist`, nearest(name, parts.keys())) });
            else if (rest.length) replaced(parts, part, rest.join('.'), entry, problems);
            else if (entry.value?.text.trim() === 'none') away.add(name);
            else problems.push({ code: 'value-not-understood', span: entry.span, message: `A variant can take ${name} away, by ${name}: none; a value of it is written ${name}.PROPERTY: …` });
        }
    }
    for (const name of away) parts.delete(name);
    // What a variant says is said now: names that it took away must not be missed in it.
    for (const variant of variantsOf(rig)) if (parts.has(variant.name)) parts.set(variant.name, { ...variant, entries: NOTHING });
    return { rig: { ...rig, parts, paths: away.size ? joined(rig.paths, away) : rig.paths }, problems };
}
/** Variants with those that they add to before them, each once, the last place counting. */
function inOrder(rig: Rig, names: readonly string[], problems: Problem[]): Part[] {
    const order: Part[] = [];
    const follow = (name: string, span: Span, trail: readonly string[]) => {
        const variant = rig.parts.get(name);
        if (!isVariant(variant)) {
            problems.push({ code: 'unknown-name', span, message: offering(`There is no variant ${name}`, nearest(name, variantsOf(rig).map(v => v.name))) });
            return;
        }
        if (trail.includes(name)) {
            problems.push({ code: 'circular-reference', span, message: `${name} adds to itself${trail.at(-1) === name ? '' : `, by way of ${trail.at(-1)}`}; that counts for nothing.` });
            return;
        }
        const from = variant.entries.get('with');
        for (const other of namesIn(from)) follow(other, from!.span, [...trail, name]);
        const before = order.indexOf(variant);
        if (before >= 0) order.splice(before, 1);
        order.push(variant);
    };
    const top: Span = rig.pages[0].title?.span ?? { file: rig.root, start: 0, end: 0 };
    for (const name of names) follow(name, top, []);
    return order;
}
/** First words of what a list names. */
function namesIn(entry: Entry | undefined): string[] {
    if (!entry?.value || !entry.property || entry.broken) return [];
    const { facts, rows } = matchCached(entry.value, entry.property);
    return [...new Set([facts, ...rows].flatMap(f => [...f.values()].flatMap(x => x.names?.slice(0, 1) ?? [])))];
}
function replaced(parts: Map<string, Part>, part: Part, key: string, entry: Entry, problems: Problem[]): void {
    const property = part.kind?.properties[key];
    if (!property) {
        const [first] = key.split('.');
        if (part.kind) problems.push({ code: 'value-not-understood', span: entry.keySpan, message: part.kind.properties[first] ? `A variant replaces whole values: write ${part.name}.${first}: … with all that belongs to it.` : offering(`${part.name} has no value ${key} that could be replaced`, nearest(key, Object.keys(part.kind.properties))) });
        return;
    }
    const wrong = entry.value ? matchCached(entry.value, property).problems : [];
    for (const p of wrong) problems.push({ code: p.code, span: { ...entry.span, start: entry.span.start + p.start, end: entry.span.start + p.end }, message: p.message });
    if (wrong.length || !entry.value) return;
    parts.set(part.name, { ...part, entries: new Map(part.entries).set(key, { ...entry, key, property }) });
}
/** What stood before and behind a part that is gone joins. */
function joined(paths: readonly Path[], away: ReadonlySet<string>): Path[] {
    return paths.flatMap(path => {
        if (!path.stops.some(s => away.has(s.name))) return [path];
        const stops = path.stops.filter(s => !away.has(s.name)).filter((s, i, all) => s.name !== all[i - 1]?.name);
        return stops.length > 1 ? [{ ...path, stops }] : [];
    });
}
