import { allRules } from '../../../language/rules/index.js';
import { Workings } from '../../../language/index.js';
import { judge } from '../../../language/rules/judge.js';
import type { Command, Surroundings } from '../command.js';
import { one } from '../one-rig.js';
import { styles } from '../style.js';
import { version } from '../version.js';
import { many } from '../words.js';

const rules: Command = {
    name: 'rules',
    summary: 'Lists the rules by family, or, given a rig, by the time that each takes on it.',
    args: '[FILE]',
    most: 1,
    options: { format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json'], doc: 'form of the output' }, on: { type: 'string', takes: 'DATE', doc: 'day to judge by, as 2026-06-15; today if not given' } },
    async run({ args, options }, around) {
        if (args.length) return timed(args, options.on, options.format === 'json', around);
        if (options.format === 'json') {
            const rows = allRules.map(({ name, severity, family, summary, source }) => ({ name, severity, family, summary, source }));
            around.out(`${JSON.stringify({ version, rules: rows }, null, 2)}\n`);
            return 0;
        }
        const s = styles(around.colour);
        const width = Math.max(...allRules.map(r => r.name.length));
        const out: string[] = [];
        for (const family of new Set(allRules.map(r => r.family))) {
            out.push(s.strong(family));
            for (const r of allRules.filter(x => x.family === family)) {
                out.push(`  ${s[r.severity](r.severity.padEnd(8))} ${r.name.padEnd(width)}  ${s.quiet(r.summary)}`);
            }
            out.push('');
        }
        out.push(`${many(allRules.length, 'rule')}. rigwright explain NAME tells why, the limit and its source.`, '');
        around.out(out.join('\n'));
        return 0;
    },
};
/** Rounds that are not counted, while everything is still new to the machine, and those that are. */
const WARMING = 200;
const COUNTED = 51;
/** Each rule by its middle time over some rounds on one rig, all numbers worked out already. */
function timed(args: readonly string[], on: string | boolean | undefined, json: boolean, around: Surroundings): number {
    const { analysis, today } = one(args, on, around, 'rules');
    const clock = () => performance.now();
    // One that keeps nothing from one round to the next but its numbers.
    const workings = new Workings(analysis.rig);
    const taken = new Map<string, number[]>();
    for (let round = 0; round < WARMING + COUNTED; round++) {
        const times = new Map<string, number>();
        judge(workings, { today, times, clock });
        if (round >= WARMING) for (const [rule, ms] of times) taken.set(rule, [...(taken.get(rule) ?? []), ms]);
    }
    const middle = (all: readonly number[]) => [...all].sort((a, b) => a - b)[all.length >> 1];
    const rows = [...taken].map(([rule, all]) => ({ rule, microseconds: Math.round(1000 * middle(all)) })).sort((a, b) => b.microseconds - a.microseconds);
    const whole = rows.reduce((sum, r) => sum + r.microseconds, 0);
    if (json) around.out(`${JSON.stringify({ version, rules: rows, microseconds: whole }, null, 2)}\n`);
    else around.out([...rows.map(r => `${String(r.microseconds).padStart(8)} µs  ${r.rule}`), '', `${many(rows.length, 'rule')} had something to look at: ${whole} µs in all, the numbers that they read not counted.`, ''].join('\n'));
    return 0;
}
export default rules;
