import { cutOffOf } from '../../relief.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'discharge-too-hot',
    family: 'compressor',
    severity: 'warning',
    summary: 'The gas leaves the compressor hotter than its oil and valves bear.',
    why: 'Oil chars, valves stick, seals harden; hydrogen heats as much as air does.',
    source: '135 °C for gas rich in hydrogen: API 618, from memory; general practice is 149 °C to 177 °C; 200 °C for an error: common practice, no source',
    under: ['cut-off-above-rating'],
    on: 'compressor',
    check(v, tell) {
        const mild = v.maybeQ('discharge-temperature');
        const hot = v.maybeQ('discharge-temperature-hot', mild);
        if (!tell.exceeds(hot, 408.15, '°C', v)) return;
        const trip = v.controls.limits(v.controls.stoppers(v.name), `${v.name}.discharge-temperature`, 'above')[0];
        const store = v.the('cylinder');
        const at = store && cutOffOf(store);
        tell({
            at: v.at(), severity: hot > 473.15 ? 'error' : trip ? 'hint' : 'warning',
            message: `At the cut-off the gas leaves at about ${show(mild, '°C')}, ${show(hot, '°C')} on the hottest day; 135 °C is the limit${trip ? `. ${trip.name} will stop it then` : ''}.`,
            related: at ? [{ span: at.device.at(at.key), message: 'the cut-off' }] : [],
        });
    },
});
