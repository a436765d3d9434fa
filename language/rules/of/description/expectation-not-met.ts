import { weigh } from '../../../quantities/expectation.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'expectation-not-met',
    family: 'the description',
    severity: 'error',
    summary: 'A value that you expect of the rig does not come out so.',
    why: 'An expectation says what must hold for the rig to do its work. What no longer holds after a change is found at ' +
        'once, not at the bench.',
    source: 'your own line',
    on: 'rig',
    check(v, tell) {
        for (const e of v.rig.expects) {
            const w = weigh(tell.workings, e);
            if (!w.node || w.troubles.length) continue;
            const written = (n: { start: number; end: number }) => e.value!.text.slice(n.start, n.end).trim();
            const { op, a, b, c } = w.node;
            const where = e.when ? `With ${e.when.text.trim()}: ` : '';
            const wanted = op === 'between' && c ? `between ${written(b)} and ${written(c)}` : `${says[op] ?? op} ${written(b)}`;
            if (w.holds === undefined) {
                tell({
                    at: e.valueSpan, severity: 'hint', why: 'It is looked at again as soon as that is given.',
                    message: `${where}${where ? 'whether' : 'Whether'} ${written(a)} is ${wanted} cannot be known ` +
                        `yet${w.missing.length ? `: ${w.missing.slice(0, 3).join(', ')} ${w.missing.length > 1 ? 'are' : 'is'} not given` : ''}.`,
                });
            } else if (!w.holds) {
                const { sure, plusMinus } = w.bounds!();
                const doubt = plusMinus && !sure ? ` Its bounds (± ${plusMinus}) reach into that, so it may still hold.` : '';
                const gas = w.stateTaken ? ' A plain litre was taken at 20 °C, dry.' : '';
                tell({ at: e.valueSpan, message: `${where}${written(a)} is ${w.now}; you expect ${wanted}.${doubt}${gas}` });
            }
        }
    },
});

const says: Readonly<Record<string, string>> = { '<': 'less than', '<=': 'at most', '>': 'more than', '>=': 'at least', '=': 'exactly' };
