/** Findings of two states of a rig told apart by what they are about, since their places and numbers move. */
import type { Analysis, Finding } from '../../index.js';
import { linesOf } from '../../rig/lines.js';
import type { Span } from '../../rig/rig.js';

/** A finding with where it stands: the part, else the beginning of the line. */
export interface Placed {
    readonly finding: Finding;
    /** Name of the part; undefined where it stands at none. */
    readonly part: string | undefined;
    /** From 1, in the file that it stands in. */
    readonly line: number;
    readonly key: string;
}
const holds = (outer: Span, inner: Span) => outer.file === inner.file && outer.start <= inner.start && inner.start <= outer.end;

/** All findings, each with the part and the line that it is about, which tell it from others. */
export function placed({ rig, findings }: Analysis): Placed[] {
    const parts = [...rig.parts.values()];
    const values = parts.flatMap(p => [...p.entries.values()].map(e => ({ name: p.name, span: { ...e.keySpan, end: e.span.end } })));
    return findings.map(finding => {
        const { span } = finding;
        // A value that a variant replaced stands in the variant and belongs to its part.
        const part = values.find(v => holds(v.span, span))?.name ?? parts.find(p => !p.implied && holds(p.span, span))?.name;
        const page = rig.pages.find(p => p.file === span.file);
        const lines = page && linesOf(page);
        const at = lines?.at(span.start).line ?? 0;
        const about = part ?? (page?.title && holds(page.title.span, span) ? '' : lines?.text.slice(lines.startOf(at), lines.endOf(at)).split(/[<>=]|\bbetween\b/)[0].trim() ?? '');
        return { finding, part, line: at + 1, key: `${finding.rule} ${about}` };
    });
}
/** Findings about the same thing, several of them in the order of the text. */
export function byKey(all: readonly Placed[]): Map<string, Placed[]> {
    const found = new Map<string, Placed[]>();
    for (const p of all) found.set(p.key, [...(found.get(p.key) ?? []), p]);
    return found;
}
export interface Told {
    readonly come: readonly Placed[];
    readonly gone: readonly Placed[];
    /** Still there, and graver, milder, or with other words. */
    readonly other: readonly { readonly before: Placed; readonly after: Placed }[];
}
export const gravity = { error: 2, warning: 1, hint: 0 } as const;
/** The gravest first; else as in the text. */
export const gravestFirst = (a: Placed, b: Placed): number => gravity[b.finding.severity] - gravity[a.finding.severity];

/** Which findings came, which went, and which are there as before with other words or another weight. */
export function findingsOf(before: Analysis, after: Analysis): Told {
    const [was, is] = [byKey(placed(before)), byKey(placed(after))];
    const come: Placed[] = [];
    const gone: Placed[] = [];
    const other: { before: Placed; after: Placed }[] = [];
    for (const key of new Set([...was.keys(), ...is.keys()])) {
        const then = [...(was.get(key) ?? [])];
        const now = (is.get(key) ?? []).filter(n => {
            const same = then.findIndex(t => t.finding.message === n.finding.message && t.finding.severity === n.finding.severity);
            if (same >= 0) then.splice(same, 1);
            return same < 0;
        });
        const pairs = Math.min(then.length, now.length);
        for (let i = 0; i < pairs; i++) other.push({ before: then[i], after: now[i] });
        gone.push(...then.slice(pairs));
        come.push(...now.slice(pairs));
    }
    return { come: come.sort(gravestFirst), gone: gone.sort(gravestFirst), other: other.sort((a, b) => gravestFirst(a.after, b.after)) };
}
