/** The check of a separator under lye: how fast a level moves while one side is pressed, and how fast it may. */
import { defineQuantity } from '../define.js';
import type { View } from '../view.js';

/** m², cross-section of the column that was pressed: the one that the test covers, else the first. */
function columnArea(q: View): number {
    const column = q.names('covers').map(n => q.other(n)).find(c => c?.kind === 'column') ?? q.the('column');
    return column ? Math.PI / 4 * column.num('bore') ** 2 : NaN;
}

export default [
    defineQuantity({ name: 'level-rate', of: 'test', measure: 'speed', unit: 'mm/h', meaning: 'How fast the level of the pressed side moved.', formula: 'level change / time', source: 'definition', shownAt: 'level-change', shownAs: '', work: q => Math.abs(q.num('level-change')) / q.num('lasted') }),
    defineQuantity({ name: 'seeping-rate', of: 'test', measure: 'speed', unit: 'mm/h', meaning: 'How fast it moves at most while the separators are whole: lye that seeps through their pores at the pressure of the test.', formula: 'permeability x pressure x wetted area x cells / cross-section of the column', source: 'Darcy', work: q => {
        const stack = q.the('stack');
        const wetted = stack?.sizes('wetted');
        if (!stack || !wetted) return NaN;
        return (q.the('separator')?.num('permeability') ?? NaN) * q.num('pressure') * wetted[0] * wetted[1] * stack.q('cells-total') / columnArea(q);
    } }),
];
