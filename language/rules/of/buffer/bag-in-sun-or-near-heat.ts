import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import { softReliefs } from '../../relief.js';

export default defineRule({
    name: 'bag-in-sun-or-near-heat',
    family: 'buffer',
    severity: 'warning',
    summary: 'Filled to its switch, the bag has no room left for the gas to grow when it gets warm.',
    why: 'Warm gas takes more room: a bag that was full in the morning stretches at noon, with nothing running and no switch that could help.',
    source: 'ideal gas law; moisture not counted, which adds some per cent more',
    on: 'bag',
    check(v, tell) {
        const hot = v.maybeQ('volume-hot');
        const site = v.the('site');
        if (hot !== hot || !site || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const full = v.controls.limits(v.controls.stackStoppers(), `${v.name}.volume`, 'above').sort((a, b) => a.maybe(`${v.controls.actsAt(a)}.value`, Infinity) - b.maybe(`${v.controls.actsAt(b)}.value`, Infinity))[0];
        const key = v.controls.actsAt(full);
        const to = full.maybe(`${key}.value`);
        const room = v.said('slack') ? to + v.maybe('slack') : v.maybe('volume');
        if (!tell.exceeds(hot, room, 'L', v, 'volume')) return;
        const seal = softReliefs(v)[0];
        const lower = Math.floor(to * room / hot * 1e4) / 1e4;
        // Nothing is offered that would come down on the point where the switch comes back.
        const fits = full.kind === 'switch' && lower > 1.05 * full.maybe('makes.value', Infinity);
        tell({
            at: full.at(key), severity: !site.said('hottest') || seal ? 'hint' : 'warning',
            message: `Filled to ${show(to, 'L')} at 20 °C, ${v.name} wants ${show(hot, 'L')} at ${show(site.num('hottest'), '°C')}${site.said('hottest') ? '' : ' (assumed)'}; it has room for ${show(room, 'L')}${seal ? `. ${seal.view.name} lets the rest out` : ', and no seal lets the rest out'}.`,
            related: [{ span: site.at('hottest'), message: 'the hottest' }, { span: v.at(v.said('slack') ? 'slack' : 'volume'), message: 'the room it has' }],
            fixes: defined(fits ? setValue(full, key, `above ${show(lower, 'L')}`, `Stop the filling at ${show(lower, 'L')}`) : undefined),
        });
    },
});
