import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bubbler-too-shallow',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The bubbler holds too little liquid over its mouth to stop a flame.',
    why: 'At high flow the bubbles join to a channel, and a flame runs down it.',
    source: 'common practice, no source',
    on: 'bubbler',
    check(v, tell) {
        const depth = v.num('immersion');
        const least = v.maybe('minimum', 0.05);
        if (depth < least) tell({ at: v.at('immersion'), message: `${show(depth, 'mm')} over the mouth is below the least depth of ${show(least, 'mm')}.` });
    },
});
