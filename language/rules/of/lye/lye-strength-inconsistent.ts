import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'lye-strength-inconsistent',
    family: 'lye and materials',
    severity: 'error',
    summary: 'The stated strength is not what the weighed masses make.',
    why: 'Strength decides how the lye conducts, boils and freezes. Per cent of the whole is often taken for per cent of ' +
        'the water.',
    source: 'mass fraction = hydroxide / (hydroxide + water); water in bought pellets counted; 5 %: common practice, no source',
    on: 'lye',
    check(v, tell) {
        const made = v.result('strength-from-masses');
        const stated = v.said('strength') ? v.maybeQ('mass-fraction') : NaN;
        if (!made || !(made.value > 0) || !(stated < 0.95 * made.low || stated > 1.05 * made.high)) return;
        const text = `${digits(100 * made.value)} wt%`;
        const assay = v.says('assay') === 'assumed' ? ', the water in bought pellets counted' : '';
        tell({
            at: v.at('strength'),
            related: [{ span: v.at('solute-mass'), message: 'the solid' }, { span: v.at('water-mass'), message: 'the water' }],
            message: `${show(v.maybe('solute-mass'), 'kg')} of ${v.word('solute')} in ${show(v.maybe('water-mass'), 'kg')} of water make ` +
                `${text}${assay}, not ${show(stated, 'wt%')}.`,
            fixes: defined(setValue(v, 'strength', text, `Write ${text}`)),
        });
    },
});
