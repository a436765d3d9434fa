import { fromSi, unitOf } from '../../../units/unit.js';
import { measures } from '../../../units/dimension.js'
import { show } from '../../../units/format.js';
import { withUnit } from '../../../units/format.js'
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'gas-state-not-said',
    family: 'the description',
    severity: 'hint',
    summary: 'A volume of gas is given without its temperature, pressure and moisture, where that decides.',
    why: 'A hundred litres at 0 °C and dry are 107 at 20 °C and 135 warm over the lye. Figures on different footings ' +
        'cannot be compared.',
    source: 'ideal gas; Dalton',
    under: ['more-gas-than-charge'],
    on: ['claim', 'reading', 'relief-valve'],
    check(v, tell) {
        if (v.kind === 'relief-valve') {
            const fact = v.given('capacity').facts.get('');
            const passes = v.maybeQ('capacity-hydrogen');
            const needed = v.maybeQ('worst-inflow');
            // Seven per cent lie between 0 °C and 20 °C: told only where they decide.
            if (!fact?.stateTaken || !(needed > 0) || passes * 0.93 >= needed || passes * 1.073 < needed) return;
            tell({
                at: v.atSlot('capacity'),
                message: `Is that at 0 °C or at 20 °C? It is taken at 20 °C, ${show(passes, 'Nm3/h')}; ${show(needed, 'Nm3/h')} may come, ` +
                    'and 7 % decide here.',
            });
            return;
        }
        const stack = v.the('stack');
        for (const name of ['hydrogen-rate', 'oxygen-rate']) {
            const entry = stack && v.part.entries.get(`${stack.name}.${name}`);
            const amount = entry && tell.workings.amountOf(entry);
            const expected = stack?.maybeQ(name) ?? NaN;
            if (!stack || !entry || !amount || amount.dimension !== measures.flow.dimension) continue;
            const ratio = tell.workings.asGas(amount) / expected;
            // Far off, its state decides nothing; within a third, it does.
            if (!(ratio > 0.7 && ratio < 1.4)) continue;
            const plain = withUnit(fromSi(amount.si, amount.unit ?? unitOf('L/h')!), amount.unit ?? unitOf('L/h')!);
            tell({
                at: entry.span,
                message: `${plain} of which gas? It is taken at 20 °C and dry, ${show(tell.workings.asGas(amount), 'NL/h')}; dry at 0 °C ` +
                    'it would be 7 % more, warm over the lye up to a fifth less. Write NL/h for 0 °C and dry.',
            });
        }
    },
});
