import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'ratio-too-high-single-stage',
    family: 'compressor',
    severity: 'hint',
    summary: 'One stage is asked for more than it gives well.',
    why: 'What is left in the clearance expands again and takes the room of fresh gas; hydrogen leaks back as well.',
    source: '8 to one, 40 % of the swept volume: common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const ratio = v.maybeQ('pressure-ratio');
        if (!(ratio > 8)) return;
        const share = v.maybeQ('volumetric-efficiency');
        const hot = v.maybeQ('discharge-temperature') > 408.16;
        tell({ at: v.at(), severity: share < 0.4 || hot ? 'warning' : 'hint', message: `${digits(ratio, 2)} to one in a single stage: about ${show(share, '%', 2)} of the swept volume leaves as fresh gas at the cut-off.` });
    },
});
