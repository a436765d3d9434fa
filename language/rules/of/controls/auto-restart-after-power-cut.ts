import { defineRule } from '../../define.js';

export default defineRule({
    name: 'auto-restart-after-power-cut',
    family: 'controls',
    severity: 'error',
    summary: 'After a power cut the rig starts again by itself.',
    why: 'Nobody has looked at levels, gas or valves since it stopped, and nobody expects it to move.',
    source: 'IEC 60204-1, 7.5, from memory',
    guardsLife: true,
    from: 'drawn',
    on: ['supply', 'transformer', 'compressor'],
    check(v, tell) {
        if (v.kind !== 'compressor' && v.yes('restarts-by-itself') !== true) return;
        const chain = [...v.controls.stoppers(v.name)].map(n => v.other(n));
        if (chain.some(c => c?.rows('latched-by').some(r => [...r.values()].some(f => f.condition?.of.some(o => ['button', 'stop-button', 'override'].includes(v.other(o.names[0])?.kind ?? '')))))) return;
        tell({ at: v.at(v.kind === 'compressor' ? undefined : 'restarts-by-itself'), severity: v.kind === 'compressor' ? 'warning' : 'error', message: `After a power cut ${v.name} starts by itself: nothing in what it needs must be latched again by hand.` });
    },
});
