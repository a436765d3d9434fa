import { cutOffOf } from '../../relief.js';
import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cold-fill-overfills',
    family: 'storage',
    severity: 'warning',
    summary: 'Filled to its cut-off on the coldest day, the cylinder stands above its rating on an ordinary one.',
    why: 'Ratings hold at 21 °C. A cut-off that is right in summer lets in too much gas in winter, and the next warm day finds it above the stamp.',
    source: '49 CFR 173.301a(c), as cited; ideal gas law',
    under: ['sun-heats-cylinder', 'cut-off-above-rating'],
    on: 'cylinder',
    check(v, tell) {
        const cut = cutOffOf(v);
        const rating = v.maybe('rating');
        const off = v.maybeQ('cut-off');
        const later = v.maybeQ('pressure-filled-cold');
        const site = v.the('site');
        if (!cut || !site || off > rating || !tell.exceeds(later, rating, 'bar', cut.device, cut.key)) return;
        const air = site.maybeQ('air-pressure');
        const lower = Math.floor(((rating + air) * (off + air) / (later + air) - air) / 10000) * 10000;
        tell({
            at: cut.device.at(cut.key), severity: site.said('coldest') ? 'warning' : 'hint',
            message: `Filled to ${show(off, 'bar')} at ${show(site.num('coldest'), '°C')}${site.said('coldest') ? '' : ' (assumed)'}, ${v.name} stands at ${show(later, 'bar')} at 21 °C; it bears ${show(rating, 'bar')}.`,
            related: [{ span: site.at('coldest'), message: 'the coldest' }, { span: v.at('rating'), message: 'its rating' }],
            fixes: defined(lower > 1.05 * cut.device.maybe('makes.value', 0) ? setValue(cut.device, cut.key, `above ${show(lower, 'bar')}`, `Set the cut-off to ${show(lower, 'bar')}`) : undefined),
        });
    },
});
