import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'lye-strength-off-optimum',
    family: 'lye and materials',
    severity: 'hint',
    summary: 'The lye conducts noticeably worse than the best strength would.',
    why: 'The gaps then cost more volts for the same gas.',
    source: 'conductivity of Gilliam et al., Int. J. Hydrogen Energy 32 (2007) 359 for KOH; NaOH from memory; 15 % loss: ' +
        'common practice, no source',
    on: 'lye',
    check(v, tell) {
        const share = v.maybeQ('conductivity-share');
        const best = v.maybeQ('best-strength');
        // In front of children weak lye is the right one.
        if (!(share < 0.85) || !v.said('strength') || v.the('purpose')?.word('audience') === 'children') return;
        const better = Math.round(best * 100);
        tell({
            at: v.at('strength'),
            message: `${show(v.maybeQ('mass-fraction'), 'wt%')} conducts ${show(v.maybeQ('conductivity'), 'S/cm', 2)}, ` +
                `${digits(100 * share, 2)} % of what ${better} wt% would. A weaker lye burns less, and lets less current bypass the ` +
                'cells: it may be meant.',
            fixes: defined(v.said('solute-mass') && v.said('water-mass') ? undefined : setValue(v, 'strength', `${better} wt%`, `Use ${better} wt%`)),
        });
    },
});
