import { digits, show, withUnit } from '../../../units/format.js';
import { fromSi } from '../../../units/unit.js';
import { defineRule } from '../../define.js';

/** Share by which a gas rate may differ before it is told: the doubts of yield and meter together. Common practice, no source. */
const MAY_DIFFER = 0.1;
const rates = ['hydrogen-rate', 'oxygen-rate', 'water-use'] as const;

export default defineRule({
    name: 'reading-disagrees',
    family: 'the description',
    severity: 'warning',
    summary: 'What was read is not what the rig as described should give.',
    why: 'Either something leaks or passes by, or the meter or the description is wrong. Each of them wants to be found, not averaged away.',
    source: 'Faraday at the current of the reading; 10 %: common practice, no source',
    under: ['more-gas-than-charge', 'low-faraday-efficiency'],
    on: 'reading',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const wanted = rates.filter(name => v.part.entries.has(`${stack.name}.${name}`));
        if (!wanted.length) return; // speed only
        const now = stack.maybeQ('current');
        const then = v.seen(`${stack.name}.current`);
        // Rates follow the current; a reading at quite another one is not compared.
        const scale = then === then ? then / now : 1;
        if (!(scale > 0.5 && scale < 2)) return;
        for (const name of wanted) {
            const entry = v.part.entries.get(`${stack.name}.${name}`)!;
            const amount = tell.workings.amountOf(entry);
            if (!amount) continue;
            const read = name === 'water-use' ? amount.si : tell.workings.asGas(amount);
            const expected = scale * stack.maybeQ(name);
            const half = (amount.high - amount.low) / 2 / Math.abs(amount.si);
            if (!(Math.abs(read - expected) > Math.max(MAY_DIFFER, half === half ? half : 0) * expected)) continue;
            const unit = name === 'water-use' ? 'g/h' : 'NL/h';
            const written = amount.unit ? withUnit(fromSi(amount.si, amount.unit), amount.unit) : show(read, unit);
            tell({
                at: entry.span,
                message: `${written} were read; ${show(expected, unit)} are expected${then === then ? ` at ${show(then, 'A')}` : ''}: ${digits(100 * Math.abs(read / expected - 1), 2)} % too ${read > expected ? 'much' : 'little'}.`,
            });
        }
    },
});
