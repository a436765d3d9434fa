import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'balloon-fill-static',
    family: 'use',
    severity: 'warning',
    summary: 'The filling nozzle is not bonded, or the gas rushes through it.',
    why: 'Film and flowing gas gather charge, and hydrogen lights from a spark that nobody feels.',
    source: 'practice at sounding stations: bonded nozzle, cotton, no repaired balloons; 2 m/s: common practice, no source',
    on: 'balloon',
    check(v, tell) {
        if (v.yes('nozzle-bonded') === false) tell({ at: v.at('nozzle-bonded'), message: `The nozzle that fills ${v.name} is not joined to earth; film and gas gather charge.`, fixes: defined(setValue(v, 'nozzle-bonded', 'yes', 'Join it to earth')) });
        else if (v.said('fill-speed') && v.num('fill-speed') > 2.0001) tell({ at: v.at('fill-speed'), message: `Gas at ${show(v.num('fill-speed'), 'm/s')} in the nozzle gathers charge; 2 m/s is a usual limit.`, fixes: defined(setValue(v, 'fill-speed', '2 m/s')) });
    },
});
