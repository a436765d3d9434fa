import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'refill-opens-gas-space',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'Water is added by opening the gas space of a column.',
    why: 'Hydrogen comes out under the roof and air goes in: the next gas that is stored is a mixture.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        if (v.word('fill-point') !== 'cap') return;
        const hydrogen = v.paths.mediaOf(v.name).has('hydrogen');
        if (!hydrogen && v.says('fill-point') === 'like') return;
        tell({
            at: v.at('fill-point'), severity: hydrogen ? 'error' : 'hint',
            message: hydrogen
                ? `Opening a cap on ${v.name} lets hydrogen out under the roof and air into the line.`
                : `Opening a cap on ${v.name} lets warm oxygen with lye mist out; a dip tube below the level does not.`,
            fixes: defined(setValue(v, 'fill-point', 'dip-tube', `Fill ${v.name} through a dip tube`)),
        });
    },
});
