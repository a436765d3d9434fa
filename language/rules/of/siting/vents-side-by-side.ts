import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'vents-side-by-side',
    family: 'siting',
    severity: 'warning',
    summary: 'The vents of hydrogen and oxygen are close together.',
    why: 'Outside they make the mixture again that the stack has parted.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'vent',
    check(v, tell) {
        const d = v.maybe('distance');
        if (d < 2) tell({ at: v.at('distance'), message: `Its mouth is ${show(d, 'm')} from that of the other gas; 2 m and more keep them apart.` });
    },
});
