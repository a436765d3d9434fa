/** Corners and sweeps as pages of Markdown, for whoever shows pages. */
import type { Result } from '../quantities/workings.js';
import type { Corners } from '../what-if/corners.js';
import type { Sweep } from '../what-if/sweep.js';
import { caution } from './caution.js';
import { sweepLines } from './sweep-table.js';
import { showResult, unitOfResult } from './values.js';

const cell = (text: string) => text.replace(/\|/g, '\\|');

export function cornersPage({ corners, lines }: Corners, title: string): string {
    const out = [`# ${title} at its corners`, '', 'The same rig where it is pressed hardest. What a corner breaks is what the rig as described does not have.', ''];
    if (lines.length) {
        out.push(`| number | ${corners.map(c => cell(c.name)).join(' | ')} |`, `|---|${corners.map(() => '---|').join('')}`);
        for (const l of lines) {
            // The unit once, so that the columns stay narrow.
            const unit = unitOfResult(l.results.find(r => r)!);
            const number = (r: Result | undefined) => (r && r.value === r.value ? showResult(r).slice(0, -unit.length || undefined).trim() : '');
            out.push(`| ${cell(l.name)}${unit && `, ${cell(unit)}`} | ${l.results.map(number).join(' | ')} |`);
        }
        out.push('');
    }
    for (const c of corners.slice(1)) {
        out.push(`## ${c.name}`, '', `${c.meaning[0].toUpperCase()}${c.meaning.slice(1)}.`, '');
        if (c.skipped) out.push(`Not looked at: ${c.skipped}`, '');
        else if (!c.breaks.length) out.push('Nothing that the rig as described does not have.', '');
        else out.push(...c.breaks.map(f => `* **${f.severity}** [${f.rule}](rigwright-page:/rule/${f.rule}): ${f.message}`), '');
    }
    return [...out, caution, ''].join('\n');
}
export function sweepPage(sweep: Sweep, title: string): string {
    const { head, units, rows } = sweepLines(sweep);
    return [`# ${title}: ${sweep.axes.map(a => a.input.name).join(' and ')}`, '', '```', head, units, ...rows.map(r => (r.curve ? `${r.numbers}  ${r.curve}` : r.numbers)), '```', '', 'Each row is the whole rig worked out again.', '', caution, ''].join('\n');
}
