import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'no-high-opening',
    family: 'siting',
    severity: 'error',
    summary: 'The room has no opening at its highest point.',
    why: 'Hydrogen gathers there, and an opening lower down leaves it.',
    source: 'ISO/TR 15916',
    guardsLife: true,
    on: 'site',
    check(v, tell) {
        if (['outdoors', 'open-shelter'].includes(v.word('place') ?? '') || !v.the('stack')) return;
        if (v.says('openings') === 'none') { tell({ at: v.at('openings'), message: 'The room has no opening: what leaks stays, under the ceiling.' }); return; }
        const heights = v.rows('openings').map(r => r.get('height')?.number ?? NaN).filter(h => h === h);
        const high = v.maybe('high-point');
        if (!heights.length) { if (v.word('place')) tell.cannotCheck(v, 'openings', 'whether hydrogen finds a way out of the room'); return; }
        if (Math.max(...heights) < 0.8 * high) tell({ at: v.at('openings'), message: `The highest opening is at ${show(Math.max(...heights), 'm')}; the room reaches up to ${show(high, 'm')}, and the hydrogen with it.` });
    },
});
