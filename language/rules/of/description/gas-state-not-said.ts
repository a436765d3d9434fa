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
    on: ['claim', 'reading'],
    check(v, tell) {
        const stack = v.the('stack');
        for (const name of ['hydrogen-rate', 'oxygen-rate', 'hydrogen-rate-room']) {
            const entry = stack && v.part.entries.get(`${stack.name}.${name}`);
            const amount = entry && tell.workings.amountOf(entry);
            const expected = stack?.maybeQ(name) ?? NaN;
            if (!stack || !entry || !amount || amount.dimension !== measures.flow.dimension || name === 'hydrogen-rate-room') continue;
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
