/** Findings as data: the same words and the same ranges as in the editor. */
import type { Report } from '../report.js';
import { version } from '../version.js';

export function json({ findings, show, range }: Report): string {
    return `${JSON.stringify({
        version,
        findings: findings.map(f => ({
            file: show(f.span.file), rule: f.rule, severity: f.severity, message: f.message, why: f.why, source: f.source, range: range(f.span),
            related: f.related.map(r => ({ file: show(r.span.file), range: range(r.span), message: r.message })),
            fixes: f.fixes.map(x => ({
                title: x.title, keepsMeaning: x.keepsMeaning ?? false,
                edits: x.edits.map(e => ({ file: show(e.span.file), range: range(e.span), text: e.text })),
            })),
        })),
    }, null, 2)}\n`;
}
