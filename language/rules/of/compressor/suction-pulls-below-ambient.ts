import { defineRule } from '../../define.js';

export default defineRule({
    name: 'suction-pulls-below-ambient',
    family: 'compressor',
    severity: 'error',
    summary: 'Nothing stops the compressor when the bag is empty, so that it draws air in.',
    why: 'Below the air pressure outside every joint leaks inwards: the store fills with a burnable mixture.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: 'compressor',
    check(v, tell) {
        const before = v.paths.before(v.name, 'hydrogen');
        const buffers = [...v.all('bag'), ...v.all('gasometer')].filter(b => before.includes(b.name));
        if (!before.length) return;
        const stoppers = v.controls.stoppers(v.name);
        const low = [...stoppers].map(n => v.other(n)).filter(s => s && ['switch', 'trip', 'sensor'].includes(s.kind)).some(s => {
            const what = v.controls.sensed(s!) ?? '';
            const [part, quantity] = what.split('.');
            const side = s!.word('breaks.side') ?? s!.word('trips.side');
            return side === 'below' && (quantity === 'volume' && buffers.some(b => b.name === part) || quantity === 'pressure' && (before.includes(part) || part === v.name) || quantity === 'suction-pressure');
        });
        if (!low) tell({ at: v.at(), message: `Nothing stops ${v.name} when ${buffers[0]?.name ?? before[0]} is empty: it then draws air in at every joint.` });
    },
});
