import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import type { View } from '../../../quantities/view.js';

/** Share of volts gained at the same current from which something has changed in the cells. Common practice, no source. */
const DRIFT = 0.1;
/** V/K for each cell: warmer cells need less, 3 to 5 mV/K. From memory. */
const PER_KELVIN = 0.004;
/** Currents that count as the same; temperatures further apart than this, in K, are not compared. Common practice, no source. */
const SAME_CURRENT = 0.05;
const SAME_WARMTH = 15;

export default defineRule({
    name: 'cells-drift',
    family: 'operation',
    severity: 'warning',
    summary: 'At the same current the stack needs more volts than it did.',
    why: 'Carbonate in the lye, a clogged port, a cell that runs dry, a coating worn off: all of them show as volts, long before they show as anything else.',
    source: '10 %: common practice, no source; 3 to 5 mV/K for each cell: from memory',
    on: 'stack',
    check(v, tell) {
        const readings = v.all('reading');
        const seen = readings.map(r => ({ r, day: r.word('date') ?? '', volts: r.seen(`${v.name}.voltage`), amperes: r.seen(`${v.name}.current`), warmth: r.seen(`${v.name}.temperature`) }))
            .filter(s => s.day && s.volts > 0 && s.amperes > 0).sort((a, b) => (a.day < b.day ? -1 : 1));
        const last = seen.at(-1);
        const first = last && seen.find(s => s !== last && Math.abs(s.amperes - last.amperes) <= SAME_CURRENT * last.amperes);
        if (!first || first.day === last.day) return;
        const colder = first.warmth === first.warmth && last.warmth === last.warmth ? first.warmth - last.warmth : 0;
        if (Math.abs(colder) > SAME_WARMTH) return;
        const expected = first.volts + colder * PER_KELVIN * v.maybe('cells', 0);
        if (!(last.volts > (1 + DRIFT) * expected)) return;
        const at = (r: View) => r.part.entries.get(`${v.name}.voltage`)!.span;
        tell({
            at: at(last.r),
            message: `${show(last.volts, 'V')} at ${show(last.amperes, 'A')}, ${digits(100 * (last.volts / expected - 1), 2)} % more than ${show(expected, 'V')} in ${first.r.name}; from ${100 * DRIFT} % on something in the cells has changed.`,
            related: [{ span: at(first.r), message: 'what it was' }],
        });
    },
});
