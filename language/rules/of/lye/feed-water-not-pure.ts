import { show } from '../../../units/format.js';
import { waters } from '../../../vocabulary/waters.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'feed-water-not-pure',
    family: 'lye and materials',
    severity: 'hint',
    summary: 'The water is not distilled or deionised.',
    why: 'Lime and metals settle on the plates and in narrow ports, and what foams stays in the lye.',
    source: 'below 2 µS/cm wanted, told above 10 µS/cm: common practice, no source; ASTM D1193 type II is 1 µS/cm, from memory',
    under: ['electrolyte-makes-chlorine', 'chloride-pits-stainless'],
    on: 'lye',
    check(v, tell) {
        const water = v.word('water') ?? '';
        const conductivity = v.maybe('water-conductivity');
        const unfit = waters.get(water)?.fit === false;
        if (!unfit && !tell.exceeds(conductivity, 1e-3, 'µS/cm', v, 'water-conductivity')) return;
        tell({
            at: unfit ? v.at('water') : v.at('water-conductivity'),
            message: unfit
                ? `${water === 'tap' ? 'Tap' : water === 'softened' ? 'Softened' : 'This'} water leaves lime and salts in the ` +
                    'lye for good; 2 µS/cm is what is wanted.'
                : `${show(conductivity, 'µS/cm')} is more than 10 µS/cm: what it holds stays in the lye for good.`,
            fixes: defined(unfit ? setValue(v, 'water', 'distilled', 'Use distilled water') : undefined),
        });
    },
});
