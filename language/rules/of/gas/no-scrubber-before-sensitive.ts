import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-scrubber-before-sensitive',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'Lye mist reaches a part that it eats.',
    why: 'Fine droplets of lye ride on the gas: they eat aluminium and seals, and spoil membranes and oil.',
    source: 'common practice, no source',
    from: 'drawn',
    on: ['compressor', 'fuel-cell', 'balloon'],
    check(v, tell) {
        const stack = v.the('stack');
        const route = stack && v.paths.route(stack.name, v.name, 'hydrogen');
        if (!route) return;
        if (route.some(n => ['scrubber', 'bubbler', 'filter', 'recombiner'].includes(v.other(n)?.kind ?? ''))) return;
        tell({ at: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: `Lye mist from the columns reaches ${v.name}: nothing washes the gas on the way.` });
    },
});
