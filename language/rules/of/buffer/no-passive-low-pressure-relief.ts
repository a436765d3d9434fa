import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-passive-low-pressure-relief',
    family: 'buffer',
    severity: 'error',
    summary: 'Nothing but switches keeps the bag from bursting.',
    why: 'Switches stick. A water seal has no parts that can.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const near = new Set([...v.paths.before(v.name, 'hydrogen'), ...v.paths.after(v.name, 'hydrogen'), ...v.paths.before(v.name, 'hydrogen').flatMap(n => v.paths.after(n, 'hydrogen'))]);
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        if (v.all('seal').some(s => near.has(s.name))) return;
        tell({ at: v.at(), message: `No liquid seal relieves ${v.name}: when a switch fails, ${v.kind === 'bag' ? 'the bag bursts' : 'the bell overflows'} indoors.` });
    },
});
