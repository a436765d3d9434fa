import { show } from '../../../units/format.js';
import { materials } from '../../../vocabulary/materials.js';
import { defineRule } from '../../define.js';

/** mol/(m·s·Pa), 200 barrer: permeability from which a hose loses what matters; only silicone lies above it. Own choice between the groups of the table, no source. */
const MOST = 6.7e-14;
/** m of it that is no matter. Common practice, no source. */
const SHORT = 0.5;

export default defineRule({
    name: 'hose-material-leaks-hydrogen',
    family: 'gas conditioning',
    severity: 'hint',
    summary: 'Hydrogen goes through the wall of this hose.',
    why: 'While gas flows it is too little to miss. Overnight it empties what stands behind it, and air creeps in the same way.',
    source: 'table of materials, from memory, within a factor of two',
    on: 'tube',
    check(v, tell) {
        const material = materials.get(v.word('material') ?? '');
        if (!((material?.hydrogenPermeability ?? NaN) > MOST) || !(v.maybe('length') > SHORT)) return;
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        const lost = v.maybeQ('seepage');
        tell({
            at: v.at('material'),
            message: `${v.word('material')![0].toUpperCase()}${v.word('material')!.slice(1)} lets hydrogen through: ` +
                `${lost > 0 ? `${show(v.maybe('length'), 'm')} of it lose about ${show(lost, 'mL/h', 1)} while they stand full` : 'some ten millilitres for each metre and hour while it stands full'}. PVC or polyamide holds it a hundred times better.`,
        });
    },
});
