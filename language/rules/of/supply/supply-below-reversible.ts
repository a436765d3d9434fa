import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'supply-below-reversible',
    family: 'electrical supply',
    severity: 'error',
    summary: 'The supply gives less than the reversible voltage of the cells in series: no gas can be made.',
    why: 'Below the reversible voltage water does not split; only a little current leaks through the lye past the cells.',
    source: 'Reversible voltage: LeRoy, Bowen & LeRoy, J. Electrochem. Soc. 127 (1980) 1954.',
    on: 'stack',
    check(stack, tell) {
        const open = stack.maybeQ('source-open-voltage');
        const cells = stack.num('cells');
        const each = stack.q('reversible-voltage');
        const needed = cells * each;
        if (!tell.fallsShort(open, needed, 'V', stack, 'cells')) return;
        const fits = Math.max(1, Math.floor(open / 2));
        tell({
            at: stack.at('cells'),
            message: `${show(open, 'V')} cannot drive ${digits(cells)} cells in series: they need at least ${show(needed, 'V')} before any gas appears (${digits(cells)} x ${show(each, 'V', 4)}).`,
            fixes: defined(setValue(stack, 'cells', String(fits), `Use ${fits} cells, about 2 V for each`)),
        });
    },
});
