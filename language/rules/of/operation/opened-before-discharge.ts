import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** V that the stack still holds from which a slipping tool draws a spark. Common practice, no source. */
const SPARKS = 6;
/** Steps that lay hands on the stack; opening a valve or draining a trap is none. */
const opens = /^drain( the)?( lye| stack| columns?| cells?)?$|\b(open( the)? (stack|cells?|columns?)|dismantle|take apart|undo)\b/i;

export default defineRule({
    name: 'opened-before-discharge',
    family: 'operation',
    severity: 'error',
    summary: 'The steps drain or open the stack before it is discharged and its gas driven out.',
    why: 'A stopped stack is a battery: for an hour or more it holds over a volt in each cell, beside gas spaces that are still full. A spanner across it makes the spark.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'routine',
    check(v, tell) {
        const entry = v.part.entries.get('steps');
        const stack = v.the('stack');
        if (!entry || !stack) return;
        const volts = stack.maybeQ('held-voltage');
        if (volts <= SPARKS) return;
        let discharged = false;
        let purged = false;
        for (const row of v.rows('steps')) {
            const step = row.get('');
            const text = step?.text ?? '';
            if (/\b(start|run|first fill)\b/i.test(text)) discharged = purged = false;
            if (/discharg|short(ed|ing)? out/i.test(text)) discharged = true;
            if (/purg|nitrogen|flush/i.test(text)) purged = true;
            if (!step || !opens.test(text) || (discharged && purged)) continue;
            if (volts !== volts && !discharged) {
                tell.cannotCheck(stack, 'cells', 'what the stopped stack still holds when it is opened');
                return;
            }
            const lacking = [!purged && 'a purge with nitrogen', !discharged && 'a discharge through a resistor'].filter(Boolean).join(' and ');
            tell({
                at: { ...entry.span, start: entry.span.start + step.start, end: entry.span.start + step.end }, severity: discharged ? 'warning' : 'error',
                message: `"${text}" comes without ${lacking} before it: ${discharged ? 'the gas spaces are still full' : `the stopped stack still holds about ${show(volts, 'V', 2)}`}.`,
            });
            return;
        }
    },
});
