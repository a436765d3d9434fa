import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'mains-inrush-trips',
    family: 'electrical supply',
    severity: 'hint',
    summary: 'The surge of a large transformer throws the breaker of the house.',
    why: 'Switched on at a bad moment the iron saturates and draws many times its rated current. Whoever then fits a larger breaker takes the protection from the cable in the wall.',
    source: 'bands of IEC 60898-1: B from 3, C from 5, D from 10 times the rated current, from memory; the surge: common practice, no source',
    on: 'transformer',
    check(v, tell) {
        const site = v.the('site');
        const curve = site?.word('breaker.curve');
        const from = FROM[curve ?? ''];
        const rating = site?.maybe('breaker') ?? NaN;
        if (!from || v.yes('soft-start') || !(rating > 0)) return;
        const surge = v.maybeQ('inrush');
        const holds = Math.SQRT2 * from * rating;
        if (!tell.exceeds(surge, holds, 'A', v, 'power')) return;
        tell({
            at: v.at('power'),
            message: `Switched on at a bad moment it draws a crest of about ${show(surge, 'A', 2)}; a breaker of ${show(rating, 'A')} and curve ${curve} may act from ${show(holds, 'A', 2)} on. A soft start helps; a larger breaker than the cable allows never.`,
            fixes: defined(setValue(v, 'soft-start', 'yes', 'Give it a soft start')),
        });
    },
});

/** Times the rated current from which a breaker may act at once. */
const FROM: Readonly<Record<string, number>> = { B: 3, C: 5, D: 10 };
