import { defineRule } from '../../define.js';

export default defineRule({
    name: 'neutral-plate-bypassed',
    family: 'stack',
    severity: 'error',
    summary: 'Tie rods pass through the plates without sleeves: the stack is shorted.',
    why: 'A bare rod joins all plates; the current takes it and makes heat instead of gas.',
    source: 'topology',
    on: 'stack',
    check(v, tell) {
        if (v.word('tie-rods.sleeves') !== 'bare') return;
        tell({ at: v.atSlot('tie-rods.sleeves'), message: 'Bare tie rods through the plates short the stack: they need insulating sleeves, or room outside the plates.' });
    },
});
