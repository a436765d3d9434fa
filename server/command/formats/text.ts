/** Findings for people: what and where, the line itself, why, and what can be done. */
import type { Finding } from '../../../language/index.js';
import { rulePage } from '../../../language/rules/index.js';
import { counts } from '../counts.js';
import type { Report } from '../report.js';
import { styles, type Styles } from '../style.js';
import { caution, many } from '../words.js';

/** Longer lines are shown from near the mark on. */
const WIDEST = 110;
const MOST_GUESSES = 4;

export function text(report: Report, colour: boolean): string {
    const s = styles(colour);
    const toldWhy = new Set<string>();
    const out: string[] = [];
    for (const f of report.findings) {
        const { start } = report.range(f.span);
        out.push(`${report.show(f.span.file)}:${start.line + 1}:${start.character + 1}  ${s[f.severity](f.severity)}  ${s.strong(f.rule)}`, `  ${f.message}`);
        out.push(...frame(f, report, s));
        // The same reason again and again would only hide what differs.
        if (!toldWhy.has(f.rule)) {
            if (f.why) out.push(s.quiet(`  why: ${f.why}`));
            const mend = f.fixes.length ? undefined : howToMend(f.rule);
            if (mend) out.push(s.quiet(`  do:  ${mend}`));
        }
        toldWhy.add(f.rule);
        for (const fix of f.fixes) out.push(s.quiet(`  do:  ${fix.title}`));
        for (const r of f.related) {
            out.push(s.quiet(`  see: ${report.show(r.span.file)}:${report.range(r.span).start.line + 1}  ${r.message}`));
        }
        if (f.rests.length && f.severity !== 'hint') {
            out.push(s.quiet(`  rests on what is assumed: ${f.rests.slice(0, MOST_GUESSES).join(', ')}${f.rests.length > MOST_GUESSES ? ' …' : ''}`));
            const decided = report.decidedBy(f);
            if (decided.length) out.push(s.quiet(`  a guess decides it: within what is usual for ${decided.join(', ')} it may not be so`));
        }
        out.push('');
    }
    const { errors, warnings, hints } = counts(report.findings);
    const found = report.findings.length ? `${many(errors, 'error')}, ${many(warnings, 'warning')}, ${many(hints, 'hint')}.` : 'nothing found.';
    out.push(`${many(report.checked.length, 'file')}: ${found}`);
    if (report.findings.length) out.push(s.quiet('rigwright explain NAME tells more about a finding.'));
    out.push(s.quiet(`${caution} Silence is no statement that a rig is free of danger.`), '');
    return out.join('\n');
}
/** The line with marks under the words it is about. */
function frame(f: Finding, report: Report, s: Styles): string[] {
    const { start, end } = report.range(f.span);
    const line = report.linesOf(f.span.file).lineText(start.line).replace(/[\t\u0000-\u001f]/g, ' ');
    const to = Math.max(start.character + 1, end.line === start.line ? end.character : line.trimEnd().length);
    const cut = line.length > WIDEST && to > WIDEST ? Math.max(0, start.character - 20) : 0;
    const shownLine = `${cut ? '…' : ''}${line.slice(cut, cut + WIDEST)}${line.length > cut + WIDEST ? '…' : ''}`;
    const margin = String(start.line + 1).padStart(6);
    const marks = '^'.repeat(Math.min(to, cut + WIDEST) - start.character);
    return [
        `${s.quiet(`${margin} | `)}${shownLine.trimEnd()}`,
        `${s.quiet(`${' '.repeat(6)} | `)}${' '.repeat(start.character - cut + (cut ? 1 : 0))}${s[f.severity](marks)}`,
    ];
}
/** The first sentence of what the page of a rule says about mending it. */
function howToMend(rule: string): string | undefined {
    const section = /^## How to mend\s+(\S[^]*?)(?=^## |(?![^]))/m.exec(rulePage(rule) ?? '')?.[1];
    return section && /^[^]*?[.!?](?=\s+\p{Lu}|\s*$)/u.exec(section.trim())?.[0].replace(/\s+/g, ' ').replaceAll('`', '');
}
