/** What a check found, ready to be printed in one form or another. */
import { linesOf, Lines } from '../../language/rig/lines.js';
import type { Finding } from '../../language/index.js';
import { decidedBy } from '../../language/what-if/decides.js';
import type { Span } from '../../language/rig/rig.js';
import { shown, type Checked } from './files.js';
import { github } from './formats/github.js';
import { json } from './formats/json.js';
import { junit } from './formats/junit.js';
import { sarif } from './formats/sarif.js';
import { text } from './formats/text.js';

export interface Report {
    readonly findings: readonly Finding[];
    /** First files of the rigs, libraries and pages that were checked, as shown. */
    readonly checked: readonly string[];
    readonly cwd: string;
    /** Lines of any file that a finding points into. */
    readonly linesOf: (file: string) => Lines;
    /** A file as it is shown. */
    readonly show: (file: string) => string;
    /** LSP range of a span. */
    readonly range: (span: Span) => ReturnType<Lines['range']>;
    /** Assumed values that decide a finding. */
    readonly decidedBy: (f: Finding) => readonly string[];
}
export type Format = (report: Report, colour: boolean) => string;
export const formats: Readonly<Record<string, Format>> = { text, json, sarif, github, junit };

/** Guesses of a finding that are tried at their ends. */
const MOST_TRIED = 6;
/** Each finding once, in whatever rig it was told. */
export function reportOf(checked: Checked, cwd: string): Report {
    const seen = new Set<string>();
    const lines = new Map<string, Lines>();
    for (const a of checked.analyses) for (const p of a.rig.pages) lines.set(p.file, linesOf(p));
    const linesIn = (file: string) => lines.get(file) ?? new Lines(checked.textOf(file) ?? '');
    const findings = checked.analyses.flatMap(a => a.findings).filter(f => {
        if (checked.only && !checked.only.has(f.span.file)) return false;
        const key = `${f.rule} ${f.span.file} ${f.span.start} ${f.message}`;
        return !seen.has(key) && !!seen.add(key);
    });
    const show = (file: string) => shown(file, cwd);
    const decided = (f: Finding) => {
        const analysis = checked.analyses.find(a => a.findings.includes(f));
        return analysis ? decidedBy(analysis.workings, f, MOST_TRIED, { today: checked.today }) : [];
    };
    return { decidedBy: decided, findings, checked: checked.analyses.map(a => show(a.rig.root)), cwd, linesOf: linesIn, show, range: span => linesIn(span.file).range(span) };
}
