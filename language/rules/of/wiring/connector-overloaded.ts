import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'connector-overloaded',
    family: 'wiring',
    severity: 'warning',
    summary: 'A plug or terminal in the way of the current is rated for too little.',
    why: 'Contacts warm with the square of the current; a plug that softens beside a hydrogen hose opens and sparks.',
    source: 'nameplate; 1.25 times for running all day: common practice, no source',
    under: ['supply-far-above-stack'],
    on: 'leads',
    check(v, tell) {
        const rating = v.maybe('rating');
        const current = v.the('stack')?.maybeQ('current') ?? NaN;
        if (v.word('ends') === 'soldered' || !tell.fallsShort(rating, 1.25 * current, 'A', v, 'rating')) return;
        tell({
            at: v.at('rating'),
            severity: rating < current ? 'error' : 'warning',
            message: `${show(current, 'A')} run for hours through a ${v.word('ends') ?? 'terminal'} rated ${show(rating, 'A')}; ` +
                `${show(1.25 * current, 'A')} is usual.`,
        });
    },
});
