import { defineRule } from '../../define.js';

export default defineRule({
    name: 'oxygen-kept',
    family: 'separators and purity',
    severity: 'error',
    summary: 'Oxygen is kept.',
    why: 'Oil, cloth and rubber burn fiercely in it, and a leak enriches the whole room. Under pressure it takes parts cleaned and made for oxygen.',
    source: 'EIGA Doc 33 and ASTM G93 for cleanliness, from memory',
    guardsLife: true,
    on: ['bag', 'gasometer', 'cylinder'],
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('oxygen')) return;
        const pressed = v.kind === 'cylinder';
        const link = v.paths.to(v.name, 'oxygen')[0];
        tell({
            at: v.paths.place(v.name, 'oxygen') ?? v.at(), severity: pressed ? 'error' : 'warning', message: pressed ? `${v.name} stores oxygen: oil or an ordinary part ignites in it. Let the oxygen go outdoors.` : `${v.name} keeps oxygen: a burst enriches the whole room. Let it go outdoors instead.`,
            fixes: link && !v.paths.from(v.name, 'oxygen').length ? [{ title: 'Let it go outdoors', edits: [{ span: link.to.span, text: 'outdoors' }], preferred: true }] : [],
        });
    },
});
