import { csvOf } from '../../../language/reference/csv.js';
import { notInRuns } from '../../../language/reference/run-pages.js';
import { alikeEnds, faultGroups, GUARDS_TESTED, guardText, healthyHazards, HIDDEN_TITLE, hiddenText, outcomeText, trialText } from '../../../language/reference/run-text.js';
import { faultFindings } from '../../../language/reference/fault-findings.js';
import { trialOf } from '../../../language/rules/test-intervals.js';
import { faultsIn, type Faults } from '../../../language/run/faults.js';
import type { Command } from '../command.js';
import { one } from '../one-rig.js';
import { formats } from '../report.js';
import { styles } from '../style.js';
import { version } from '../version.js';
import { caution } from '../words.js';
import { canRun, timeOf } from './run.js';

/** Faults told with their story; of the others a list is enough. */
const MOST_TOLD = 40;

const faults: Command = {
    name: 'faults',
    summary: 'Breaks one thing after the other on the hottest day, and a second one beside what nothing shows; tells which failure hurts, how soon, and what stops it.',
    args: 'FILE',
    most: 1,
    options: {
        for: { type: 'string', takes: 'TIME', default: '24h', doc: 'how long each failure is followed' },
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json', 'csv', 'sarif'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright faults shed.rig'],
    async run({ options, args }, around) {
        const { analysis: { workings }, report, today } = one(args, options.on, around, 'faults');
        const found = canRun(() => faultsIn(workings, timeOf(String(options.for))));
        if (options.format === 'sarif') {
            around.out(formats.sarif(report(faultFindings(workings, found, today)), false));
            return 0;
        }
        if (options.format === 'csv') {
            around.out(asCsv(found));
            return 0;
        }
        const kindOf = (part: string) => workings.viewOf(part)?.kind ?? '';
        if (options.format === 'json') {
            around.out(`${JSON.stringify({
                version,
                healthy: found.healthy.hazards.map(h => ({ time: h.t, hazard: h.name, message: h.words })),
                faults: found.faults.map(f => ({ part: f.part, way: f.what, outcome: f.outcome, time: f.hazard?.t ?? null, earliest: f.earliest ?? null, hazard: f.hazard?.name ?? null, message: f.hazard?.words ?? null, escaped: f.escaped === undefined ? null : Number(f.escaped.toPrecision(4)), 'caught-by': f.caughtBy?.name ?? null, 'caught-after': f.caughtBy?.t ?? null, story: f.story, help: f.help ?? null })),
                guards: found.guards.map(g => ({ name: g.name, without: g.without.map(w => ({ part: w.fault.part, way: w.fault.what, outcome: w.outcome, hazard: w.hazard?.name ?? null, 'caught-by': w.caughtBy ?? null })) })),
                hidden: found.hidden.map(h => ({ part: h.part, ways: h.ways, 'test-each': trialOf(kindOf(h.part)).each, test: trialOf(kindOf(h.part)).how, seconds: h.seconds.map(x => ({ part: x.fault.part, way: x.fault.what, time: x.hazard.t, hazard: x.hazard.name, message: x.hazard.words })) })),
                'not-followed': found.left, notes: found.notes,
            }, null, 2)}\n`);
            return 0;
        }
        const s = styles(around.colour);
        const out: string[] = [];
        for (const text of healthyHazards(found)) out.push(s.strong(text), '');
        for (const { title, faults: group } of faultGroups(found)) {
            out.push(s.strong(`${title} (${group.length})`));
            const brief = group[0].outcome === 'unseen' || group[0].outcome === 'stops';
            if (brief) out.push(...wrapped(group.map(f => `${f.part} ${f.what}`)));
            else {
                for (const { names, fault, story } of alikeEnds(group).slice(0, MOST_TOLD)) {
                    out.push(`  ${names}: ${outcomeText(fault)}`);
                    for (const line of fault.outcome === 'hazard' ? story : []) out.push(s.quiet(`    ${line}`));
                    if (fault.help) out.push(s.quiet(`    what would help: ${fault.help}`));
                }
            }
            out.push('');
        }
        if (found.hidden.length) {
            out.push(s.strong(`${HIDDEN_TITLE} (${found.hidden.length})`));
            for (const h of found.hidden) out.push(`  ${hiddenText(h)}`, s.quiet(`    ${trialText(h, kindOf(h.part))}`));
            out.push('');
        }
        if (found.guards.length) {
            out.push(s.strong('What each guard is good for'), s.quiet(`  ${GUARDS_TESTED}`));
            const wide = Math.max(...found.guards.map(g => g.name.length));
            for (const g of found.guards) out.push(`  ${g.name.padEnd(wide)}  ${guardText(g)}`);
            out.push('');
        }
        if (found.left.length) out.push(s.strong(`Not followed by a run (${found.left.length})`), ...wrapped(found.left), '');
        out.push(s.strong('Left out of a run'), ...[...found.notes, ...notInRuns].map(n => `  ${n}`), '');
        out.push(s.quiet('One thing fails at a time, ten minutes after the start of a warm rig with a half full store; a leak is a hole of 1 mm. Of two at once only those are tried of which nothing shows the first: others can do more.'), s.quiet(caution), '');
        around.out(out.join('\n'));
        return 0;
    },
};
export default faults;

/** A line for each run: one failure, one beside a guard out of action, one beside a hidden failure. */
function asCsv(found: Faults): string {
    return csvOf([
        ['sort', 'first', 'first way', 'part', 'way', 'outcome', 'hazard', 'time (s)', 'caught by', 'message'],
        ...found.faults.map(f => ['single', '', '', f.part, f.what, f.outcome, f.hazard?.name ?? '', f.hazard ? f.hazard.t.toFixed(2) : '', f.caughtBy?.name ?? '', f.hazard?.words ?? '']),
        ...found.guards.flatMap(g => g.without.map(w => ['guard', g.name, 'out of action', w.fault.part, w.fault.what, w.outcome, w.hazard?.name ?? '', w.hazard ? w.hazard.t.toFixed(2) : '', w.caughtBy ?? '', w.hazard?.words ?? ''])),
        ...found.hidden.flatMap(h => h.seconds.map(x => ['hidden', h.part, h.ways.join(' or '), x.fault.part, x.fault.what, 'hazard', x.hazard.name, x.hazard.t.toFixed(2), '', x.hazard.words])),
    ]);
}
function wrapped(names: readonly string[]): string[] {
    const lines: string[] = [];
    let line = ' ';
    for (const [i, name] of names.entries()) {
        const piece = ` ${name}${i < names.length - 1 ? ',' : ''}`;
        if (line.length + piece.length > 110) {
            lines.push(line);
            line = ' ';
        }
        line += piece;
    }
    return [...lines, line];
}
