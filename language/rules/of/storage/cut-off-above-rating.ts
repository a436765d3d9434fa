import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cut-off-above-rating',
    family: 'storage',
    severity: 'error',
    summary: 'The filling may go on above what the cylinder bears.',
    why: 'The error of the switch belongs to the limit; the relief valve is then all that is left.',
    source: 'pressure at 21 °C not above the service pressure: 49 CFR 173.301a(c)',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const rating = v.num('rating');
        const devices = v.controls.sensing(`${v.name}.pressure`);
        for (const s of devices) {
            const key = s.kind === 'switch' ? (['breaks', 'makes'].find(k => s.word(`${k}.side`) === 'above')) : s.word('trips.side') === 'above' ? 'trips' : undefined;
            const nominal = s.maybe(`${key}.value`);
            const bound = s.bounds(`${key}.value`).high;
            const high = bound > nominal ? bound : nominal * (1 + s.maybe('tolerance', 0.05));
            if (!key || !tell.exceeds(high, rating, 'bar', s, key)) continue;
            const lower = Math.floor(0.85 * rating / 10000) * 10000;
            const spread = bound > nominal ? ` ± ${show(bound - nominal, 'bar')}` : '';
            tell({
                at: s.at(key), severity: nominal > rating ? 'error' : 'warning', message: `${s.name} acts at ${show(nominal, 'bar')} and may act as late as ${show(high, 'bar')}; ${v.name} bears ${show(rating, 'bar')}.`,
                related: [{ span: v.at('rating'), message: 'its rating' }], fixes: defined(s.kind === 'switch' ? setValue(s, key, `above ${show(lower, 'bar')}${spread}`, `Set it to ${show(lower, 'bar')}`) : undefined),
            });
        }
        if (rating !== rating && devices.length) tell.cannotCheck(v, 'rating', 'the cut-off against the rating');
    },
});
