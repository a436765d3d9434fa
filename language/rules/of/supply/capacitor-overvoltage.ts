import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'capacitor-overvoltage',
    family: 'electrical supply',
    severity: 'error',
    summary: 'The smoothing capacitor bears less than the crest it charges to without load.',
    why: 'With the stack unplugged it charges to the crest, and more when the mains is high; it can burst.',
    source: 'textbook; +10 % mains: EN 50160, from memory',
    on: 'capacitor',
    check(v, tell) {
        const crest = v.the('transformer')?.q('crest-voltage') ?? NaN;
        const rating = v.num('rating');
        if (!tell.fallsShort(rating, 1.1 * crest, 'V', v, 'rating')) return;
        tell({ at: v.at('rating'), message: `A capacitor for ${show(rating, 'V')} sees ${show(crest, 'V')} with the stack unplugged, ${show(1.1 * crest, 'V')} when the mains is high.` });
    },
});
