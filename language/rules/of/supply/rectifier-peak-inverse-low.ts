import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'rectifier-peak-inverse-low',
    family: 'electrical supply',
    severity: 'error',
    summary: 'The diodes see more reverse voltage than they bear.',
    why: 'A diode that breaks down shorts the winding.',
    source: 'textbook rectifier relations; +10 % mains: EN 50160, from memory; 1.5 times: common practice, no source',
    on: 'rectifier',
    check(v, tell) {
        const seen = v.q('peak-inverse');
        const rating = v.num('reverse-rating');
        if (!tell.fallsShort(rating, 1.5 * seen, 'V', v, 'reverse-rating')) return;
        tell({ at: v.at('reverse-rating'), severity: rating < 1.1 * seen ? 'error' : 'warning', message: `Diodes for ${show(rating, 'V')} see ${show(seen, 'V')} in reverse, ${show(1.1 * seen, 'V')} when the mains is high.` });
    },
});
