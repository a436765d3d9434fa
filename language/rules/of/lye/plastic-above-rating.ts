import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { stackGuards } from '../../guards.js'
import { wettedParts } from '../../wetted-parts.js';

export default defineRule({
    name: 'plastic-above-rating',
    family: 'lye and materials',
    severity: 'error',
    summary: 'The lye gets warmer than a wetted material bears.',
    why: 'Plastic creeps and softens, joints open, and hot lye comes out.',
    source: 'tables of makers, from memory; the very grade decides',
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        const hot = stack?.result('steady-temperature');
        if (!stack || !hot || !(hot.value > 0)) return;
        const guard = stackGuards(v, `${stack.name}.temperature`, 'above').map(g => g.at).filter(t => t === t);
        const most = Math.min(hot.value, ...guard);
        for (const w of wettedParts(v)) {
            const m = w.material;
            if (!m || typeof m.lyeUpToK !== 'number' || !tell.exceeds(most, m.lyeUpToK, '°C', w.part)) continue;
            tell({
                at: w.at, severity: Math.min(hot.low, ...guard) > m.lyeUpToK ? 'error' : 'warning',
                message: `${w.what[0].toUpperCase()}${w.what.slice(1)} of ${w.part.name} is of ${w.name}, good to ` +
                    `${show(m.lyeUpToK, '°C', 2)} in lye${m.lyeRemark ? ` (${m.lyeRemark})` : ''}; on the hottest day the lye ` +
                    `${guard.length ? `may reach ${show(most, '°C', 2)} before it is stopped` : `settles at about ${show(most, '°C', 2)}`}.`,
            });
        }
    },
});
