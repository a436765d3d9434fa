import { defineRule } from '../../define.js';

export default defineRule({
    name: 'compresses-oxygen-or-mixture',
    family: 'compressor',
    severity: 'error',
    summary: 'The compressor presses oxygen, or both gases mixed.',
    why: 'Oil burns in oxygen under pressure, and a mixture explodes in the first stroke.',
    source: 'EIGA Doc 33 and ASTM G93 for oxygen, from memory',
    guardsLife: true,
    under: ['no-separator-gas-stored'],
    on: 'compressor',
    check(v, tell) {
        const oxygen = v.paths.mediaOf(v.name).has('oxygen');
        const stack = v.the('stack');
        const mixed = stack?.says('separator') === 'none' && v.paths.before(v.name, 'hydrogen').includes(stack.name);
        if (oxygen) tell({ at: v.paths.place(v.name, 'oxygen') ?? v.at(), message: `${v.name} presses oxygen: its oil burns in it. Let the oxygen go outdoors.` });
        else if (mixed) tell({ at: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: `${v.name} presses hydrogen and oxygen mixed: the heat of the stroke sets it off.` });
    },
});
