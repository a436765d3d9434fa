import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'mixing-heat-boils',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Mixed at once, the lye comes near to boiling.',
    why: 'It spits: blindness is a matter of seconds.',
    source: 'heats of solution, from memory, ± 10 %',
    guardsLife: true,
    on: 'lye',
    check(v, tell) {
        const rise = v.maybeQ('mixing-rise');
        const site = v.the('site');
        const ready = site?.yes('goggles') === true && site.yes('face-shield') === true;
        if (rise > 55 && !ready) tell({ at: v.at(v.said('solute-mass') ? 'solute-mass' : 'strength'), severity: rise > 100 ? 'warning' : 'hint', message: `All at once it warms by about ${digits(rise, 2)} K: add the solid to cold water in small lots, never water to it, with goggles and face shield.` });
    },
});
