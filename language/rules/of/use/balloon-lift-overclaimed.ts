import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'balloon-lift-overclaimed',
    family: 'use',
    severity: 'error',
    summary: 'The balloon does not lift its load.',
    why: 'It hangs, drags and drifts into wires.',
    source: 'Archimedes; density of air from ISO 2533',
    on: 'balloon',
    check(v, tell) {
        const lift = v.maybeQ('lift');
        const load = v.maybe('package');
        if (load > lift) tell({ at: v.at('package'), message: `It lifts ${show(lift, 'g')}; the load is ${show(load, 'g')}.` });
        else if (load > 0.9 * lift) tell({ at: v.at('package'), severity: 'warning', message: `It lifts ${show(lift, 'g')}, hardly more than its load of ${show(load, 'g')}.` });
    },
});
