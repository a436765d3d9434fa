import { extracts } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';
import { isIndoors, standsOutside, stores } from '../../place.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'no-high-opening',
    family: 'siting',
    severity: 'error',
    summary: 'Nothing lets hydrogen out at the highest point of the room.',
    why: 'It rises and stays in the pocket above the highest opening, where the lamp hangs.',
    source: 'outlet at the high point: hydrogen best-practice pages (h2tools.org); 0.1 m: common practice, no source',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        if (isIndoors(v) !== true || !v.the('stack')) return;
        const kept = [...stores(v), ...v.all('compressor')].filter(p => !standsOutside(p));
        const little = !kept.length && v.maybeQ('leak-share') <= 0.001;
        const severity = missing(tell, little ? 'hint' : 'error');
        if (v.yes('pockets') && !little) tell({ at: v.at('pockets'), severity: 'warning', message: 'Beams, shelves or a false ceiling make pockets under the roof where hydrogen stays.' });
        const high = v.maybe('high-point');
        const openings = v.rows('openings').map(r => r.get('height')?.number ?? NaN);
        const fans = v.all('fan').filter(extracts).map(f => f.maybe('place')).filter(h => h === h);
        const heights = [...openings, ...fans].filter(h => h === h);
        if (!heights.length) {
            if (v.says('openings') === 'none' && !v.all('fan').length) tell({ at: v.at('openings'), severity, message: 'The room has no opening: whatever leaks stays.' });
            return;
        }
        const top = Math.max(...heights);
        if (!(top < high - 0.1001)) return;
        tell({ at: v.at(openings.includes(top) ? 'openings' : undefined), severity, message: `The highest way out lies at ${show(top, 'm')}, ${show(high - top, 'm', 2)} under the highest point: hydrogen stays above it.`, related: [{ span: v.at('high-point'), message: 'the highest point' }] });
    },
});
