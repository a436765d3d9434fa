import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'discharge-too-hot',
    family: 'compressor',
    severity: 'warning',
    summary: 'The gas leaves the compressor hotter than oil and valves bear.',
    why: 'Oil cokes on the valves, they leak, the gas gets hotter still.',
    source: 'common limit of oiled small machines, 150 °C at the valve; ISO 1217 does not set one; from memory',
    on: 'compressor',
    check(v, tell) {
        const hot = v.maybeQ('discharge-temperature-hot');
        if (!(hot > 413.15)) return;
        tell({ at: v.at(), severity: hot > 453.15 ? 'error' : 'warning', message: `Gas leaves at ${show(hot, '°C')} on the hottest day; oil and valves bear about 140 °C.` });
    },
});
