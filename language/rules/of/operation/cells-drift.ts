import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { readingBefore } from '../../../quantities/of/readings.js';
import type { View } from '../../../quantities/view.js';

/** Share of volts gained at the same current from which something has changed in the cells. Common practice, no source. */
const DRIFT = 0.1;
export default defineRule({
    name: 'cells-drift',
    family: 'operation',
    severity: 'warning',
    summary: 'At the same current the stack needs more volts than it did.',
    why: 'Carbonate in the lye, a clogged port, a cell that runs dry, a coating worn off: all of them show as volts, long before they show as anything else.',
    source: 'law of the cell between both readings, what warmth saves ± half of it; 10 %: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const dated = v.all('reading').filter(r => (r.word('date') ?? '') && r.seen(`${v.name}.voltage`) > 0 && r.seen(`${v.name}.current`) > 0);
        const last = dated.reduce<View | undefined>((a, b) => (a && a.word('date')! > b.word('date')! ? a : b), undefined);
        const first = last && readingBefore(last);
        const gained = last?.maybeQ('volts-gained') ?? NaN;
        if (!last || !first || !(gained > DRIFT)) return;
        const { low, value } = last.result('volts-gained')!;
        if (!(low > 0)) return;
        const at = (r: View) => r.part.entries.get(`${v.name}.voltage`)!.span;
        tell({
            at: at(last),
            message: `${show(last.seen(`${v.name}.voltage`), 'V')} at ${show(last.seen(`${v.name}.current`), 'A')}, ${digits(100 * gained, 2)} % more than ${show(last.maybeQ('volts-before'), 'V')} ` +
                `by ${first.name} (± ${digits(100 * (value - low), 2)} %); from ${100 * DRIFT} % on something in the cells has changed.`,
            related: [{ span: at(first), message: 'what it was' }],
        });
    },
});
