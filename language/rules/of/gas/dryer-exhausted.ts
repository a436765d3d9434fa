import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** s in the periods that a plan names by a word. A run is a day's running where hours are told by the day. */
const periods: Readonly<Record<string, number>> = { day: 86400, week: 604800, month: 2629800, year: 31557600 };

export default defineRule({
    name: 'dryer-exhausted',
    family: 'gas conditioning',
    severity: 'hint',
    summary: 'The desiccant is used up before anybody renews it.',
    why: 'A full dryer looks like a fresh one; from then on the water goes through into the cylinder.',
    source: 'change at a tenth of the mass, half of what makers state; 20 °C saturated gas, IAPWS',
    on: 'dryer',
    check(v, tell) {
        if (!v.said('mass') || v.word('desiccant') === 'none') return;
        const lasts = v.maybeQ('hours-to-full');
        const daily = v.the('routine')?.maybe('hours') ?? NaN;
        // `hours` is the share of the clock in which it runs.
        const untilFull = lasts / daily;
        const routine = v.the('routine')!;
        const row = routine.rows('plan').find(r => new RegExp(`dryer|drier|desiccant|silica|sieve|${v.name}`, 'i').test(r.get('')?.text ?? ''));
        const word = row?.get('period')?.word ?? '';
        const each = word === 'run' ? 86400 : row?.get('each')?.number ?? periods[word] ?? NaN;
        const told = `${show(v.maybe('mass'), 'g')} of desiccant lasts about ${show(lasts, 'h', 2)} of running, ${digits(untilFull / 86400, 2)} days at ${show(daily, 'h/day')}`;
        if (!row) {
            // What lasts for years needs no line in a plan.
            if (untilFull < periods.year) tell({ at: v.at('mass'), message: `${told}; no line of the plan renews it.` });
        } else if (each > untilFull * 1.001) {
            const fact = row.get('')!;
            const span = routine.at('plan');
            tell({
                at: { ...span, start: span.start + fact.start, end: span.start + fact.end }, related: [{ span: v.at('mass'), message: 'what it holds' }],
                message: `${told}; the plan renews it only after ${digits(each / 86400, 2)} days.`,
            });
        }
    },
});
