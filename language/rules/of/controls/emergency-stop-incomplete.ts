import { defineRule } from '../../define.js';

export default defineRule({
    name: 'emergency-stop-incomplete',
    family: 'controls',
    severity: 'error',
    summary: 'The emergency stop leaves something running that it should stop.',
    why: 'Who hits it expects that everything stops that makes or moves gas.',
    source: 'ISO 13850, from memory',
    guardsLife: true,
    on: 'stop-button',
    check(v, tell) {
        const stops = new Set(v.controls.stops(v.name));
        const left = new Set(v.names('leaves-on'));
        const must = [...v.controls.sources(), ...v.all('compressor')].filter(p => !p.part.pattern && !stops.has(p.name));
        for (const p of must) tell({ at: v.at(), message: `${v.name} does not stop ${p.name}${left.has(p.name) ? ', which is even said to be left on' : ''}.`, related: [{ span: p.at(), message: 'runs on' }] });
        if (v.word('if-wire-breaks') === 'nothing') tell({ at: v.at('if-wire-breaks'), message: `With its wire broken ${v.name} does nothing.` });
    },
});
