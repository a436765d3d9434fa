import { defineRule } from '../../define.js';

export default defineRule({
    name: 'ac-through-stack',
    family: 'electrical supply',
    severity: 'error',
    summary: 'Alternating current runs through the stack: both gases form on every plate.',
    why: 'Each plate makes hydrogen and oxygen in turn, so both lines carry a mixture that explodes.',
    source: 'physics',
    guardsLife: true,
    on: ['rectifier', 'transformer'],
    check(v, tell) {
        const none = v.kind === 'rectifier' ? v.word('circuit') === 'none' : !v.the('rectifier') && !!v.the('stack');
        if (!none) return;
        tell({ at: v.kind === 'rectifier' ? v.at('circuit') : v.at(), message: 'Without a rectifier both gases form on every plate: both lines would carry an explosive mixture.' });
    },
});
