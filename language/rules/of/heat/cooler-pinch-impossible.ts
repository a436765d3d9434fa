import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'cooler-pinch-impossible',
    family: 'heat',
    severity: 'error',
    summary: 'The lye is said to leave a cooler colder than the water comes in.',
    why: 'Heat does not flow that way. Something was measured at the wrong place, or the two were swapped.',
    source: 'second law',
    on: 'cooler',
    check(v, tell) {
        const out = v.maybe('lye-out');
        const water = v.maybe('water.temperature');
        if (!(out < water) || !v.said('lye-out')) return;
        tell({
            at: v.at('lye-out'),
            related: [{ span: v.at('water'), message: 'the water' }],
            message: `Lye cannot leave ${v.name} at ${show(out, '°C')} while its water comes in at ${show(water, '°C')}.`,
        });
    },
});
