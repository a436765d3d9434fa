import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'chloride-pits-stainless',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Chloride from the feed water gathers in the lye and pits stainless steel.',
    why: 'Only water leaves; what it brought stays. Pits go through thin steel without a sign.',
    source: '100 mg/L, and a thousand hours to get there: common practice, no source; strong lye slows pitting',
    under: ['electrolyte-makes-chlorine'],
    on: 'lye',
    check(v, tell) {
        const time = v.maybeQ('chloride-time');
        const fed = v.maybeQ('chloride-fed');
        const stack = v.the('stack');
        const ofStack = stack
            ? ['plate.material', 'anode-material', 'cathode-material', 'manifold.material'].map(k => stack.word(k))
            : [];
        const steel = [...ofStack, ...v.all('column').map(c => c.word('material'))].some(m => /^stainless/.test(m ?? ''));
        if (!steel || !(time < 1000 * 3600)) return;
        tell({
            at: v.said('chloride') ? v.at('chloride') : v.at('water'),
            message: `With ${show(fed, 'mg/L')} of chloride in the water, the lye holds 100 mg/L after ${digits(time / 3600, 2)} h of ` +
                'running: stainless steel pits.',
            fixes: defined(v.said('chloride') ? undefined : setValue(v, 'water', 'distilled', 'Use distilled water')),
        });
    },
});
