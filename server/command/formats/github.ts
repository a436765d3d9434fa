/** Findings as workflow commands, which a hosted check shows beside the lines. */
import type { Report } from '../report.js';

const words = { error: 'error', warning: 'warning', hint: 'notice' } as const;

export function github({ findings, show, range }: Report): string {
    return findings.map(f => {
        const { start, end } = range(f.span);
        // Columns count only where a finding stands on one line.
        const columns = start.line === end.line ? `,col=${start.character + 1},endColumn=${end.character + 1}` : '';
        const where = `file=${property(show(f.span.file))},line=${start.line + 1},endLine=${end.line + 1}${columns},title=${property(f.rule)}`;
        return `::${words[f.severity]} ${where}::${data([f.message, f.why].filter(Boolean).join('\n'))}\n`;
    }).join('');
}
function data(text: string): string {
    return text.replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');
}
function property(text: string): string {
    return data(text).replace(/:/g, '%3A').replace(/,/g, '%2C');
}
