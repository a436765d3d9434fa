/** Comparisons as data. What stands where is held by the schema in `language/reference/output-schema.ts`. */
import type { Result } from '../../quantities/workings.js';
import { rowOf } from '../../reference/quantities.js';
import type { Comparison, Moved } from './compare.js';
import type { Placed } from './findings.js';
import type { Line, SideBySide } from './side-by-side.js';

const FIGURES = 4;
const orNull = (x: number) => (Number.isFinite(x) ? Number(x.toPrecision(FIGURES)) : null);
const findingJson = (p: Placed) => ({ rule: p.finding.rule, severity: p.finding.severity, part: p.part ?? null, line: p.line, message: p.finding.message });
const movedJson = (m: Moved) => ({ name: m.name, before: m.before, after: m.after, share: orNull(m.share), within: m.within, twins: m.twins });

/** A comparison for programs. @param names  of both, as the reader knows them */
export function comparisonJson(c: Comparison, names: readonly [before: string, after: string]): object {
    return {
        before: { name: names[0], title: c.before }, after: { name: names[1], title: c.after }, added: c.added, removed: c.removed,
        changed: c.changed.map(x => ({ name: x.name, before: x.before ?? null, after: x.after ?? null, like: x.like })),
        headlines: c.headlines.map(h => ({ name: h.name, before: h.before ?? null, after: h.after ?? null, moved: h.moved, share: orNull(h.share) })),
        moved: c.moved.map(movedJson), appeared: c.appeared, vanished: c.vanished,
        come: c.findings.come.map(findingJson), gone: c.findings.gone.map(findingJson), other: c.findings.other.map(o => ({ before: findingJson(o.before), after: findingJson(o.after) })),
        nearer: c.nearer.map(({ near: n, before }) => ({ rule: n.rule, part: n.part, left: orNull(n.left), before: before ? orNull(before.left) : null })),
        again: c.again.map(a => ({ what: a.what, stale: a.stale })),
    };
}
/** Variants side by side for programs: of each number a value for each column, null where it is not known. */
export function sideBySideJson(s: SideBySide): object {
    const number = (r: Result | undefined) => {
        if (!r) return null;
        const { value, unit, plusMinus } = rowOf(r);
        return { value, unit, plusMinus };
    };
    const line = (l: Line) => ({ name: l.name, values: l.results.map(number), twins: l.twins });
    return {
        title: s.title, columns: s.columns.map(c => ({ name: c.name, says: c.says })), headlines: s.headlines.map(line), differing: s.differing.map(line),
        findings: s.findings.map(f => ({ rule: f.rule, at: f.at.map(p => (p ? findingJson(p) : null)) })), shared: s.shared,
    };
}
