import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'lye-strength-inconsistent',
    family: 'lye and materials',
    severity: 'error',
    summary: 'The strength does not follow from the masses that were weighed.',
    why: 'One of the two is wrong, and all numbers rest on it. Pellets hold water too.',
    source: 'definition',
    on: 'lye',
    check(v, tell) {
        const stated = v.maybeQ('mass-fraction');
        const weighed = v.maybeQ('strength-from-masses');
        if (v.says('strength') === 'stated' && Math.abs(stated - weighed) > 0.02) tell({ at: v.at('strength'), message: `${show(stated, 'wt%')} is stated, but the masses make ${show(weighed, 'wt%')} with the water in the pellets counted.`, related: [{ span: v.at('solute-mass'), message: 'weighed' }] });
    },
});
