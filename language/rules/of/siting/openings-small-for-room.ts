import { extracts } from '../../../quantities/surroundings.js';
import { isIndoors } from '../../place.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** m² of opening for each m³ of room, high and low each. Hydrogen best-practice pages (h2tools.org). */
const OPENING_PER_VOLUME = 0.003;

export default defineRule({
    name: 'openings-small-for-room',
    family: 'siting',
    severity: 'warning',
    summary: 'The openings of the room are small for its volume.',
    why: 'Without a fan the air moves only as fast as its openings let it, in below and out above.',
    source: '0.003 m² for each m³ of room, high and low each: hydrogen best-practice pages (h2tools.org)',
    under: ['ventilation-below-leak', 'no-high-opening'],
    on: 'rig',
    check(v, tell) {
        if (isIndoors(v) !== true || !v.the('stack') || v.all('fan').some(extracts)) return;
        const wanted = OPENING_PER_VOLUME * v.maybe('volume');
        const openings = v.rows('openings').map(r => ({ area: r.get('area')?.number ?? NaN, height: r.get('height')?.number ?? NaN }));
        if (!(wanted > 0) || !openings.length || openings.some(o => !(o.area > 0) || o.height !== o.height)) return;
        const heights = openings.map(o => o.height);
        const middle = v.maybe('high-point', Math.max(...heights)) / 2;
        const high = openings.filter(o => o.height >= middle).reduce((s, o) => s + o.area, 0);
        const low = openings.filter(o => o.height < middle).reduce((s, o) => s + o.area, 0);
        if (!tell.fallsShort(Math.min(high, low), 0.99 * wanted, 'm2', v, 'openings')) return;
        // What little a small stack makes is carried off all the same.
        const little = v.maybeQ('leak-share') <= 0.001;
        tell({
            at: v.at('openings'), severity: little ? 'hint' : 'warning',
            message: `${show(high, 'm2')} are open high up and ${low > 0 ? `${show(low, 'm2')} below` : 'nothing below'}; for ${show(v.num('volume'), 'm3')} ${show(wanted, 'm2', 2)} of each are usual.`,
        });
    },
});
