import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-dryer-before-cylinder',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'Wet gas goes into the cylinder.',
    why: 'Water drops out under pressure, rusts the steel from inside where nobody sees it, and freezes in valves.',
    source: 'common practice, no source',
    from: 'drawn',
    on: 'cylinder',
    check(v, tell) {
        const before = v.paths.before(v.name, 'hydrogen').map(n => v.other(n)?.kind);
        if (!before.includes('compressor') || before.includes('dryer')) return;
        tell({ at: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: `No dryer stands before ${v.name}: water drops out inside it at pressure.` });
    },
});
