import { defineRule } from '../../define.js';

export default defineRule({
    name: 'oil-hygroscopic',
    family: 'compressor',
    severity: 'hint',
    summary: 'Moist gas goes into a compressor whose oil suffers from water.',
    why: 'Ester oils take up water and fall apart into acids, the sooner with a trace of lye; glycol oils take up much water. Bearings and winding pay for it.',
    source: 'nature of ester and glycol oils, from memory',
    on: 'compressor',
    check(v, tell) {
        const oil = v.word('oil');
        const stack = v.the('stack');
        if (oil !== 'POE' && oil !== 'PAG' || !stack) return;
        const route = v.paths.route(stack.name, v.name, 'hydrogen');
        if (!route || route.some(n => v.other(n)?.kind === 'dryer')) return;
        tell({ at: v.atSlot('oil'), message: `${oil} oil meets moist gas from ${stack.name}: it ${oil === 'POE' ? 'falls apart into acid' : 'takes up the water'}, and no dryer stands before ${v.name}.` });
    },
});
