import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'efficiency-over-100',
    family: 'stack',
    severity: 'error',
    summary: 'A claim needs less energy than splitting water takes at the very least.',
    why: 'Free energy is the floor. Below it lies a wrong volume, a wrong meter or a wrong sum.',
    source: '237.1 kJ/mol at 25 °C, CODATA Key Values',
    on: 'claim',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const floor = 2.3915 * 3.6e6 * (stack.maybeQ('reversible-voltage', 1.229));
        for (const entry of v.part.entries.values()) {
            const name = entry.key.split('.')[1] ?? '';
            const amount = tell.workings.amountOf(entry);
            if (!amount) continue;
            if (/energy-per-volume/.test(name) && amount.si < floor) tell({ at: entry.span, message: `${show(amount.si, 'kWh/m3')} is below ${show(floor, 'kWh/m3')}, the least that splitting water can take: volume, moisture, leak or meter?` });
            if (name === 'volts-per-cell' && amount.si < stack.maybeQ('reversible-voltage', 1.229)) tell({ at: entry.span, message: `${show(amount.si, 'V')} a cell is below the reversible voltage of ${show(stack.maybeQ('reversible-voltage', 1.229), 'V')}: no gas is made there.` });
            if (/efficiency/.test(name) && amount.si > 1) tell({ at: entry.span, message: `${show(amount.si, '%')} is more than there is.` });
        }
    },
});
