import { digits, show, withUnit } from '../../../units/format.js';
import { fromSi } from '../../../units/unit.js';
import { defineRule } from '../../define.js';

const rates = { 'hydrogen-rate': 'hydrogen', 'oxygen-rate': 'oxygen', 'water-use': 'water' } as const;

export default defineRule({
    name: 'reading-disagrees',
    family: 'the description',
    severity: 'warning',
    summary: 'What was read is not what the rig as described should give.',
    why: 'Either something leaks or passes by, or the meter or the description is wrong. Each of them wants to be found, not averaged away.',
    source: 'Faraday, bypass and crossing at the current of the reading; ± of the meters and of what is expected',
    under: ['more-gas-than-charge', 'low-faraday-efficiency'],
    on: 'reading',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        for (const [rate, what] of Object.entries(rates)) {
            const entry = v.part.entries.get(`${stack.name}.${rate}`);
            const result = entry && v.result(`${what}-off`);
            if (!entry || !result || !(result.low > 0 || result.high < 0)) continue;
            const { low, high, value: off } = result;
            const unit = rate === 'water-use' ? 'g/h' : 'NL/h';
            const current = v.seen(`${stack.name}.current`);
            const written = tell.workings.amountOf(entry);
            tell({
                at: entry.span,
                message: `${written?.unit ? withUnit(fromSi(written.si, written.unit), written.unit) : show(v.seen(`${stack.name}.${rate}`), unit)} were read; ` +
                    `${show(v.maybeQ(`${what}-expected`), unit)} are expected${current === current ? ` at ${show(current, 'A')}` : ''}: ` +
                    `${digits(100 * Math.abs(off), 2)} % too ${off > 0 ? 'much' : 'little'}, where ${digits(100 * (off > 0 ? off - low : high - off), 2)} % is left open.`,
            });
        }
    },
});
