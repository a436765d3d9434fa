import { defineRule } from '../../define.js';

export default defineRule({
    name: 'oxygen-kept',
    family: 'separators and purity',
    severity: 'error',
    summary: 'Oxygen is kept or compressed.',
    why: 'Oil, cloth and rubber burn fiercely in it, and a leak enriches the whole room. Compressing it takes parts cleaned and made for oxygen.',
    source: 'EIGA Doc 33 and ASTM G93 for cleanliness, from memory',
    guardsLife: true,
    on: ['bag', 'gasometer', 'compressor', 'cylinder'],
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        if (!media.has('oxygen')) return;
        const pressed = v.kind === 'compressor' || v.kind === 'cylinder';
        tell({ at: v.paths.place(v.name, 'oxygen') ?? v.at(), severity: pressed ? 'error' : 'warning', message: pressed ? `${v.name} presses or stores oxygen: an oily or ordinary one ignites in it. Let the oxygen go outdoors.` : `${v.name} keeps oxygen: let it go outdoors instead.` });
    },
});
