import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'lye-strength-off-optimum',
    family: 'lye and materials',
    severity: 'hint',
    summary: 'The lye conducts noticeably worse than it could.',
    why: 'Volts are lost as heat in every cell.',
    source: 'Gilliam et al., Int. J. Hydrogen Energy 32 (2007) 359',
    on: 'lye',
    check(v, tell) {
        const share = v.maybeQ('conductivity-share');
        if (share < 0.8 && v.says('strength') === 'stated') tell({ at: v.at('strength'), severity: share < 0.5 ? 'warning' : 'hint', message: `Conducts ${digits(100 * share, 2)} % of what the best strength does, which is ${show(v.maybeQ('best-strength'), 'wt%')}.` });
    },
});
