/** What a tightness test can and cannot show. */
import { gasLost } from '../../physics/leak-test.js';
import { defineQuantity } from '../define.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

/** K that a closed rig drifts while it is tested and nobody writes it down. Common practice, no source. */
const UNSEEN_DRIFT = 1;

/** m³ of gas space of what a test covers, as far as it is known: cylinders, and the space over the lye of columns. NaN if of nothing. */
function spaceOf(q: View): number {
    let sum = NaN;
    for (const name of q.names('covers')) {
        const part = q.other(name);
        const own = part?.kind === 'cylinder' ? part.num('volume') : part?.kind === 'column' ? Math.PI / 4 * part.num('bore') ** 2 * part.q('headspace') : NaN;
        if (own === own) sum = (sum === sum ? sum : 0) + own;
    }
    return sum;
}

export default [
    defineQuantity({
        name: 'may-hide', of: 'test', measure: 'flow', unit: 'L/h',
        meaning: 'Gas that could leak at the test pressure, as a volume at the air\'s pressure, and the test would still look as it did: the drop seen or allowed, and what a change of temperature could cover. The gas spaces of columns and cylinders count; hoses do not.',
        formula: 'gas space x (drop + pressure x change of temperature / temperature) / (air pressure x time)', source: 'ideal gas; 1 K where no temperature is written down: common practice, no source',
        work: q => {
            const drift = q.bounds('temperature');
            const kelvin = drift.high === drift.high ? drift.high - drift.low : UNSEEN_DRIFT;
            return gasLost(spaceOf(q), q.num('pressure'), Math.max(q.maybe('drop', 0), q.maybe('limit', 0)), kelvin, ROOM, q.num('lasted'), airPressureOf(q));
        },
    }),
];
