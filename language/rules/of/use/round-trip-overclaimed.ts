import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

/** Share that comes back from the best of small plants. Common practice, no source. */
const BEST = 0.45;

export default defineRule({
    name: 'round-trip-overclaimed',
    family: 'use',
    severity: 'warning',
    summary: 'More current is said to come back from the gas than the losses on the way leave.',
    why: 'Supply, stack, compressor and fuel cell each keep their part, and the parts multiply.',
    source: 'balance of energy; 45 % as the best case, 5 % for rounding: common practice, no source',
    on: 'claim',
    check(v, tell) {
        for (const cell of v.all('fuel-cell')) {
            const entry = v.part.entries.get(`${cell.name}.round-trip`);
            const said = entry && tell.workings.amountOf(entry)?.si;
            const most = cell.maybeQ('round-trip');
            if (entry && said !== undefined && (said > 1.05 * most || said > BEST)) tell({ at: entry.span, severity: said >= 1 ? 'error' : 'warning', message: `${digits(100 * said, 3)} % of the current is said to come back; ${most === most ? `supply, stack and fuel cell leave ${digits(100 * most, 2)} %` : `${digits(100 * BEST)} % is a best case`}.` });
        }
    },
});
