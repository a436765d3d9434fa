import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unattended-without-guards',
    family: 'operation',
    severity: 'error',
    summary: 'The rig runs unwatched without the guards for it.',
    why: 'What a person would notice in a minute goes on for hours.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: 'routine',
    check(v, tell) {
        const w = v.word('attended');
        if (w !== 'no') return;
        const stops = v.controls.stackStoppers();
        const guarded = new Set([...stops].map(n => v.other(n)).filter(s => s).map(s => (v.controls.sensed(s!) ?? '').split('.')[1]));
        const lacking = [['temperature', 'temperature'], ['level', 'level'], ['oxygen', 'purity'], ['hydrogen', 'gas in the room']].filter(([q]) => !guarded.has(q)).map(([, say]) => say);
        if (lacking.length) tell({ at: v.at('attended'), severity: lacking.length > 1 ? 'error' : 'warning', message: `It runs unwatched, and nothing that senses ${lacking.join(', ')} stops it.` });
    },
});
