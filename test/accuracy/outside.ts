/**
 * Our numbers beside those of others. A row is declared once and is both the check and the line of the table: what stands in
 * ACCURACY.md has been compared, and what cannot be compared or does not agree stands in its second list with the reason.
 */
import { expect } from 'vitest';
import { analyseText } from '../../language/index.js';
import { ruleNamed } from '../../language/rules/index.js';

/** How the outside number is known. */
export type Provenance = 'read in the primary' | 'read in a secondary page' | 'second-hand copy' | 'recomputed' | 'from memory' | 'common practice, no source';
/** A number, or the two ends of a band. */
export type Outside = number | readonly [number, number];
/** Allowed distance: absolute in the unit of the row, or a share of the outside number. */
export type Within = number | { readonly share: number };

export interface Comparison<A extends readonly unknown[]> {
    /** What is compared. In `code`: read from a rig by its public name; else the law by itself. */
    readonly quantity: string;
    readonly unit: string;
    /** What holds for all points. */
    readonly under?: string;
    /** Our number at one point, in the unit of the row. */
    readonly ours: (...at: A) => number;
    /** What differs from point to point, then the outside number. */
    readonly points: readonly (readonly [...A, Outside])[];
    /** The point in words; its values joined by commas if not given. */
    readonly at?: (...at: A) => string;
    readonly within: Within;
    /** Why that much is allowed. */
    readonly why: string;
    readonly source: string;
    readonly known: readonly Provenance[];
}
export interface Row {
    readonly quantity: string;
    readonly unit: string;
    readonly under: string;
    readonly points: readonly { readonly at: string; readonly ours: () => number; readonly outside: Outside }[];
    readonly within: Within;
    readonly why: string;
    readonly source: string;
    readonly known: readonly Provenance[];
}
/** What is not met, or what nothing of ours answers to. With numbers where there are any, so that "off by" is worked out, not written down. */
export interface Unmet {
    readonly what: string;
    readonly reason: string;
    readonly source: string;
    readonly known: readonly Provenance[];
    readonly off?: { readonly unit: string; readonly ours: () => number; readonly outside: Outside; readonly within: Within };
    /** Rules that hold what has no number; their pages are tests. */
    readonly rules?: readonly string[];
}
export interface Chapter {
    readonly title: string;
    readonly rows: readonly Row[];
    readonly unmet: readonly Unmet[];
}

/** Declares a row; its points are worked out when it is checked. */
export function outside<A extends readonly unknown[]>(c: Comparison<A>): Row {
    const points = c.points.map(point => {
        const at = point.slice(0, -1) as unknown as A;
        return { at: c.at ? c.at(...at) : at.join(', '), ours: () => c.ours(...at), outside: point.at(-1) as Outside };
    });
    return { quantity: c.quantity, unit: c.unit, under: c.under ?? '', points, within: c.within, why: c.why, source: c.source, known: c.known };
}

const isBand = (o: Outside): o is readonly [number, number] => typeof o !== 'number';
/** Ours less theirs; 0 inside of a band. */
export const difference = (ours: number, o: Outside) => (isBand(o) ? (ours < o[0] ? ours - o[0] : ours > o[1] ? ours - o[1] : ours === ours ? 0 : NaN) : ours - o);
const size = (o: Outside) => (isBand(o) ? Math.max(Math.abs(o[0]), Math.abs(o[1])) : Math.abs(o));
/** Distance allowed at one point, in the unit of the row. */
export const allowed = (within: Within, o: Outside) => (typeof within === 'number' ? within : within.share * size(o));
export const isMet = (ours: number, o: Outside, within: Within) => Math.abs(difference(ours, o)) <= allowed(within, o);

/** Every point lies within what is allowed. NaN never does. */
export function check(row: Row): void {
    expect(row.points.length, row.quantity).toBeGreaterThan(0);
    for (const p of row.points) {
        const ours = p.ours();
        expect(isMet(ours, p.outside, row.within), `${row.quantity}, ${row.under} ${p.at}: ${ours} against ${p.outside} ${row.unit}`).toBe(true);
    }
}
/** What is listed as not met must not be met: else it belongs into the table. A rule that is named must exist. */
export function checkUnmet(unmet: Unmet): void {
    expect(unmet.reason.length, unmet.what).toBeGreaterThan(10);
    for (const rule of unmet.rules ?? []) expect(ruleNamed(rule), `${unmet.what}: there is no rule ${rule}`).toBeDefined();
    if (unmet.off) {
        const ours = unmet.off.ours();
        expect(isMet(ours, unmet.off.outside, unmet.off.within), `${unmet.what} is met now (${ours}): it belongs into the table`).toBe(false);
    }
}

const analysed = new Map<string, ReturnType<typeof analyseText>>();
/** SI value of a quantity of a rig as anybody would ask for it: `stack.hydrogen-rate`. Throws where there is no such part or quantity. */
export function ofRig(text: string, name: string): number {
    let analysis = analysed.get(text);
    if (!analysis) analysed.set(text, (analysis = analyseText(text, { today: '2026-06-15' })));
    const dot = name.indexOf('.');
    const part = analysis.rig.parts.get(name.slice(0, dot));
    const result = part && analysis.workings.quantity(part, name.slice(dot + 1));
    if (!result) throw new Error(`no ${name} in this rig`);
    return result.value;
}

// ---- the table ---------------------------------------------------------------------------------------------------------

const FIGURES = 6;
const figure = (x: number, figures = FIGURES) => (x === x ? String(Number(x.toPrecision(figures))) : 'none');
const told = (o: Outside) => (isBand(o) ? `${figure(o[0], 9)} … ${figure(o[1], 9)}` : figure(o, 9));
/** Below this the difference is the print of the outside number. */
const NOTHING = 1e-6;
function off(ours: number, o: Outside): string {
    const d = difference(ours, o);
    if (isBand(o) && d === 0) return 'inside';
    const by = size(o) || 1;
    if (Math.abs(d) < NOTHING * by) return '0';
    return `${d > 0 ? '+' : '−'}${figure(Math.abs(d), 2)}${size(o) > 0 ? ` (${figure(100 * Math.abs(d) / by, 2)} %)` : ''}`;
}
const limit = (w: Within) => (typeof w !== 'number' ? `± ${figure(100 * w.share, 3)} %` : w > 0 ? `± ${figure(w, 3)}` : 'nothing beyond');
const cell = (s: string) => s.replace(/\|/g, '\\|');
const line = (cells: readonly string[]) => `| ${cells.map(cell).join(' | ')} |`;

function rowLine(row: Row): string {
    const points = row.points.map(p => ({ ...p, is: p.ours() }));
    const worst = points.reduce((a, b) => (Math.abs(difference(b.is, b.outside)) / (allowed(row.within, b.outside) || 1) > Math.abs(difference(a.is, a.outside)) / (allowed(row.within, a.outside) || 1) ? b : a));
    const at = points.map(p => p.at).filter(Boolean).join('; ');
    return line([
        row.quantity, [row.under, at].filter(Boolean).join(': '), points.map(p => figure(p.is)).join('; '), points.map(p => told(p.outside)).join('; '), row.unit,
        off(worst.is, worst.outside), `${limit(row.within)}: ${row.why}`, row.source, row.known.join(', '),
    ]);
}
function unmetLine(u: Unmet): string {
    const o = u.off;
    const ours = o?.ours() ?? NaN;
    const gap = o ? `${figure(ours, 4)} against ${told(o.outside)} ${o.unit}, off by ${off(ours, o.outside)}; asked ${limit(o.within)}` : '';
    const rules = u.rules?.length ? `held by ${u.rules.map(r => `\`${r}\``).join(', ')}` : '';
    return line([u.what, [u.reason, rules].filter(Boolean).join('; '), gap, u.source, u.known.join(', ')]);
}

/** The whole file. */
export function table(chapters: readonly Chapter[]): string {
    const rows = chapters.flatMap(c => c.rows);
    const points = rows.reduce((sum, r) => sum + r.points.length, 0);
    const unmet = chapters.flatMap(c => c.unmet);
    const out = [
        '# Accuracy: our numbers beside those of others', '',
        `Made by the checks in this folder; renew with \`npm run accuracy\`. ${rows.length} rows with ${points} numbers agree within what is allowed; ${unmet.length} are listed below them as not met or not checked, with the reason.`, '',
        'A quantity in `code` was worked out from a rig as anybody would write it; the others are the laws by themselves. The difference is ours less theirs at the point of a row that comes nearest to what is allowed. "Recomputed" proves arithmetic, not physics: there the outside number was worked out again from the printed formula.', '',
        'Agreement with these numbers says nothing about the safety of any rig.', '',
    ];
    const head = ['Quantity', 'Conditions', 'Ours', 'Outside', 'Unit', 'Difference', 'Allowed, and why', 'Source', 'How it is known'];
    for (const c of chapters) if (c.rows.length) out.push(`## ${c.title}`, '', line(head), line(head.map(() => '---')), ...c.rows.map(rowLine), '');
    const unmetHead = ['What', 'Why not', 'Off by', 'Source', 'How it is known'];
    out.push('## Not met or not checked', '');
    for (const c of chapters) if (c.unmet.length) out.push(`### ${c.title}`, '', line(unmetHead), line(unmetHead.map(() => '---')), ...c.unmet.map(unmetLine), '');
    return `${out.join('\n').trimEnd()}\n`;
}
