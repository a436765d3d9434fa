import { defineRule } from '../../define.js';

export default defineRule({
    name: 'single-switch-guards-bag',
    family: 'controls',
    severity: 'warning',
    summary: 'One switch alone keeps the bag from being overfilled.',
    why: 'It is moved thousands of times, hangs on a string, and will stick one day.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const stops = v.controls.stackStoppers();
        const guards = [...v.controls.sensing(`${v.name}.volume`), ...v.controls.sensing(`${v.name}.pressure`)].filter(s => stops.has(s.name) && (s.word('breaks.side') === 'above' || s.word('trips.side') === 'above'));
        const near = new Set([...v.paths.after(v.name, 'hydrogen'), ...v.paths.before(v.name, 'hydrogen').flatMap(n => v.paths.after(n, 'hydrogen'))]);
        const seal = v.all('seal').some(s => near.has(s.name));
        if (!v.controls.sources().length || guards.length >= 2 || (guards.length === 1 && seal) || (!guards.length && seal && v.the('routine')?.word('attended') === 'yes')) return;
        tell({ at: v.at(), message: guards.length ? `${guards[0].name} alone stops the stack when ${v.name} is full, and no seal relieves it.` : `Nothing that senses ${v.name} stops the stack when it is full.`, related: guards.map(g => ({ span: g.at(), message: 'the only one' })) });
    },
});
