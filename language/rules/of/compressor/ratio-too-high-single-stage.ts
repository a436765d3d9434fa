import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'ratio-too-high-single-stage',
    family: 'compressor',
    severity: 'warning',
    summary: 'One stage is asked for more pressure than one stage gives well.',
    why: 'Delivery falls to little, the gas gets hot, and leaks take the rest.',
    source: 'textbook, single-stage reciprocating machines stay below about 8 to 10 to one',
    on: 'compressor',
    check(v, tell) {
        const ratio = v.maybeQ('pressure-ratio');
        if (ratio > 12) tell({ at: v.at(), message: `${digits(ratio, 3)} to one in a single stage; above about 10 delivery falls and heat rises.` });
    },
});
