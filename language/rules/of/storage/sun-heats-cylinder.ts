import { cutOffOf, reliefsOf } from '../../relief.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'sun-heats-cylinder',
    family: 'storage',
    severity: 'warning',
    summary: 'On the hottest day the full cylinder comes near its relief valve, or above what it may.',
    why: 'Gas that is warmed in a shut vessel presses more, with nobody running anything: the relief valve lifts at noon.',
    source: 'ideal gas law; at most 5/4 of the service pressure when warm: 49 CFR 173.301a(d)',
    under: ['cut-off-above-rating'],
    on: 'cylinder',
    check(v, tell) {
        const hot = v.maybeQ('pressure-hot');
        const off = v.maybeQ('cut-off');
        const site = v.the('site');
        const cut = cutOffOf(v);
        if (off !== off || hot !== hot || !site || !cut) return;
        const rating = v.maybe('rating');
        const set = Math.min(...reliefsOf(v).open.map(r => r.maybe('set', Infinity)));
        const limit = Math.min(0.9 * set, rating === rating ? rating : Infinity);
        if (!tell.exceeds(hot, limit, 'bar', cut.device, cut.key)) return;
        const air = site.maybeQ('air-pressure', 101325);
        const lower = Math.floor(((limit + air) * (off + air) / (hot + air) - air) / 10000) * 10000;
        tell({
            at: cut.device.at(cut.key), severity: !site.said('hottest') ? 'hint' : hot > 1.25 * rating ? 'error' : 'warning',
            message: `Filled to ${show(off, 'bar')} at 20 °C and warmed to ${show(site.num('hottest'), '°C')}${site.said('hottest') ? '' : ' (assumed)'} it stands at ${show(hot, 'bar')}; ${0.9 * set < rating || rating !== rating ? `the relief valve opens at ${show(set, 'bar')}` : `it bears ${show(rating, 'bar')}`}.`,
            related: [{ span: site.at('hottest'), message: 'the hottest' }], fixes: defined(lower > 0 ? setValue(cut.device, cut.key, `above ${show(lower, 'bar')}`, `Set the cut-off to ${show(lower, 'bar')}`) : undefined),
        });
    },
});
