import { defineRule } from '../../define.js';

export default defineRule({
    name: 'crankcase-breathes-into-room',
    family: 'compressor',
    severity: 'error',
    summary: 'The crankcase breathes hydrogen into the room.',
    why: 'Some gas passes every piston; an open crankcase hands it to the room at the motor.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        if (v.word('crankcase') === 'open' && !v.paths.mediaOf(v.name).has('oxygen')) tell({ at: v.at('crankcase'), message: `What passes the piston of ${v.name} goes into the room, next to its motor.` });
    },
});
