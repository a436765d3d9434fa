import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'bypass-normally-wrong',
    family: 'compressor',
    severity: 'warning',
    summary: 'Without power the unloader stays shut.',
    why: 'After a power cut the motor meets the full pressure when it starts.',
    source: 'common practice, no source',
    on: 'unloader',
    check(v, tell) {
        const does = v.word('if-unpowered');
        if (does === 'shuts' || does === 'stays') tell({ at: v.at('if-unpowered'), message: `Without power ${v.name} ${does === 'shuts' ? 'shuts' : 'stays as it was'}: after a power cut the motor starts against the pressure.`, fixes: defined(setValue(v, 'if-unpowered', 'opens', 'Use one that opens without power')) });
    },
});
