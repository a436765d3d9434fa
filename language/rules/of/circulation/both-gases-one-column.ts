import { defineRule } from '../../define.js';

export default defineRule({
    name: 'both-gases-one-column',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'Both gases rise into the same column.',
    why: 'They mix there to a charge that detonates.',
    source: 'ISO/TR 15916, limits of hydrogen in oxygen 4 to 94 %',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        if (media.has('hydrogen') && media.has('oxygen')) tell({ at: v.paths.place(v.name, 'oxygen') ?? v.at(), message: `Hydrogen and oxygen both go to ${v.name}.`, related: [{ span: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: 'hydrogen comes in here' }] });
    },
});
