import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'column-below-stack',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'The level in the column is not above the stack.',
    why: 'Bubbles lift the lye only when the column stands above the plates; otherwise cells run dry at the top.',
    source: 'hydrostatics',
    on: 'column',
    check(v, tell) {
        const base = v.maybe('base-height');
        const top = v.the('stack')?.maybe('top-height') ?? NaN;
        const stands = base + v.num('level');
        if (stands < top) tell({ at: v.at('base-height'), message: `The lye in ${v.name} stands at ${show(stands, 'mm')}, below the top of the stack at ${show(top, 'mm')}.` });
    },
});
