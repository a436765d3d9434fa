import { show } from '../../../units/format.js';
import { columnOf } from '../../../quantities/lye-loop.js';
import { defineRule } from '../../define.js';

/** K, lye that warms by more on its way through the cells: their tops run hotter than any sensor outside tells. Common practice, no source. */
const MOST_RISE = 15;

export default defineRule({
    name: 'lye-stands-still',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'The gas lifts no lye round, or so little that the cells run much hotter at the top.',
    why: 'Lye that does not go round leaves its heat in the cells, reaches no cooler, and gas collects between the plates.',
    source: 'drift balance, Zuber & Findlay 1965, -30 .. +50 %; a rise of 15 K: common practice, no source',
    under: ['column-below-stack', 'supply-below-reversible'],
    on: 'stack',
    check(v, tell) {
        if (!(v.maybeQ('current') > 0)) return;
        for (const side of ['hydrogen', 'oxygen'] as const) {
            if (v.maybeQ(`lye-flow-${side}`) !== 0) continue;
            const column = columnOf(v, side);
            const above = (column?.maybe('inlet-port') ?? NaN) - (column?.maybe('level') ?? NaN);
            tell({
                at: column?.said('inlet-port') ? column.at('inlet-port') : v.at(),
                message: `The ${side} lifts no lye${column && above > 0 ? ` into ${column.name}: its inlet lies ${show(above, 'mm')} above the level` : ''}. The lye stands still, and its heat stays in the cells.`,
            });
            return;
        }
        const rise = v.maybeQ('lye-rise');
        if (!tell.exceeds(rise, MOST_RISE, 'K', v)) return;
        tell({
            at: v.at(), severity: v.all('cooler').length ? 'warning' : 'hint',
            message: `The lye warms by about ${show(rise, 'K', 2)} on its way through the cells: too little goes round. A wider return, cooler tube or riser lets more pass.`,
        });
    },
});
