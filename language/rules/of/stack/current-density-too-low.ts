import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'current-density-too-low',
    family: 'stack',
    severity: 'hint',
    summary: 'The plates are much larger than the current needs.',
    why: 'What bypasses the cells and what leaks through the separators stays; the gas that dilutes it shrinks.',
    source: 'common practice, no source',
    under: ['supply-below-reversible', 'supply-below-useful-voltage'],
    on: 'stack',
    check(v, tell) {
        const j = v.q('current-density');
        if (!(j > 0 && j < 300)) return;
        tell({ at: v.at('wetted'), message: `${show(j, 'mA/cm2')} is little for plates of this size: bypass and impurity weigh more; 100 to 200 mA/cm2 is usual.` });
    },
});
