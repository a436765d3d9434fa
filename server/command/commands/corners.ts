import { rowOf } from '../../../language/reference/quantities.js';
import { showResult } from '../../../language/reference/values.js';
import { cornersOf } from '../../../language/what-if/corners.js';
import type { Command } from '../command.js';
import { one } from '../one-rig.js';
import { styles } from '../style.js';
import { version } from '../version.js';
import { caution } from '../words.js';

const corners: Command = {
    name: 'corners',
    summary: 'Looks at a rig on its coldest and hottest day, at low current, with full and empty cylinder, after idle days.',
    args: 'FILE',
    most: 1,
    options: {
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright corners shed.rig'],
    async run({ options, args }, around) {
        const { analysis: { workings }, today } = one(args, options.on, around, 'corners');
        const found = cornersOf(workings, { today });
        if (options.format === 'json') {
            around.out(`${JSON.stringify({
                version, corners: found.corners.map((c, i) => ({
                    name: c.name, meaning: c.meaning, skipped: c.skipped ?? null, breaks: c.breaks.map(f => ({ rule: f.rule, severity: f.severity, message: f.message })),
                    numbers: found.lines.flatMap(l => (l.results[i] ? [rowOf(l.results[i])] : [])),
                })),
            }, null, 2)}\n`);
            return 0;
        }
        const s = styles(around.colour);
        const cells = found.lines.map(l => l.results.map(r => (r && r.value === r.value ? showResult(r) : '')));
        const first = Math.max(...found.lines.map(l => l.name.length), 0);
        const heads = found.corners.map(c => c.name.split(' '));
        const widths = heads.map((words, i) => Math.max(...words.map(w => w.length), ...cells.map(row => row[i].length)));
        const tall = Math.max(...heads.map(h => h.length));
        const out: string[] = [];
        for (let k = 0; k < tall; k++) out.push(s.strong(`${''.padEnd(first)}  ${heads.map((h, i) => (h[k - (tall - h.length)] ?? '').padStart(widths[i])).join('  ')}`.trimEnd()));
        for (const [k, l] of found.lines.entries()) out.push(`${l.name.padEnd(first)}  ${cells[k].map((t, i) => t.padStart(widths[i])).join('  ')}`.trimEnd());
        out.push('');
        for (const c of found.corners) {
            out.push(`${s.strong(c.name)}${s.quiet(`  ${c.meaning}`)}`);
            if (c.skipped) out.push(`  not looked at: ${c.skipped}`);
            for (const f of c.breaks) out.push(`  ${f.severity} ${f.rule}: ${f.message}`);
            if (!c.skipped && !c.breaks.length && c.name !== found.corners[0].name) out.push(s.quiet('  nothing that the rig as described does not have'));
        }
        out.push('', s.quiet(caution), '');
        around.out(out.join('\n'));
        return 0;
    },
};
export default corners;
