import { defineRule } from '../../define.js';

export default defineRule({
    name: 'trip-resets-by-itself',
    family: 'controls',
    severity: 'warning',
    summary: 'A trip comes back by itself and lets the rig start again.',
    why: 'The cause may still be there, and nobody has looked.',
    source: 'IEC 60204-1, 9.2.5.3 (reset by hand), from memory',
    guardsLife: true,
    on: ['trip', 'analyser', 'detector'],
    check(v, tell) {
        if (v.word('resets.by') !== 'itself') return;
        const quantity = (v.controls.sensed(v) ?? '').split('.')[1] ?? '';
        if (!['hydrogen', 'oxygen', 'volume', 'pressure', 'level', 'temperature'].includes(quantity)) return;
        const driven = v.controls.listeners(v.name).map(n => v.other(n));
        if (driven.some(d => d?.rows('latched-by').length) || !driven.length) return;
        const heat = quantity === 'temperature';
        tell({ at: v.at('resets'), severity: heat ? 'hint' : 'warning', message: `${v.name} comes back by itself, and ${driven[0]!.name} starts again.` });
    },
});
