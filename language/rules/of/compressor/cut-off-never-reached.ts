import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cut-off-never-reached',
    family: 'compressor',
    severity: 'error',
    summary: 'The compressor stalls before the switch acts.',
    why: 'It runs for ever, hot, delivering nothing.',
    source: 'textbook clearance formula',
    on: 'compressor',
    check(v, tell) {
        const off = v.the('cylinder')?.maybeQ('cut-off') ?? NaN;
        const stall = v.maybeQ('stall-pressure');
        const most = v.maybe('max-pressure');
        if (off > most) tell({ at: v.at('max-pressure'), message: `${v.name} is made for ${show(most, 'bar')}; the cut-off stands at ${show(off, 'bar')}.` });
        else if (off > stall) tell({ at: v.at(v.said('clearance') ? 'clearance' : undefined), message: `${v.name} delivers nothing above ${show(stall, 'bar')}; the cut-off at ${show(off, 'bar')} is never reached.` });
    },
});
