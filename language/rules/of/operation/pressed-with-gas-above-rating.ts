import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { digits, show } from '../../../units/format.js';

/** J, 50 bar L: above it a vessel that gives way throws its pieces. Common practice, no source. */
const ENERGETIC = 5000;
/** J in one bar L. */
const BAR_LITRE = 100;

export default defineRule({
    name: 'pressed-with-gas-above-rating',
    family: 'operation',
    severity: 'warning',
    summary: 'A vessel was pressed with gas beyond what is stamped on it, or with nothing stamped on it.',
    why: 'Pressed gas throws the pieces of a vessel that gives way; water hardly does. That is why strength is tested with water, and tightness with gas below the rating.',
    source: 'water before gas: ASME BPVC VIII-1, UG-99 and UG-100, from memory; 50 bar L: common practice, no source',
    guardsLife: true,
    on: 'test',
    check(v, tell) {
        const pressure = v.maybe('pressure');
        if (!(pressure > 0) || /\b(water|hydraulic)/i.test(v.rows('with')[0]?.get('')?.text ?? '')) return;
        for (const name of v.names('covers')) {
            const vessel = v.other(name);
            if (vessel?.kind !== 'cylinder') continue;
            const rating = vessel.maybe('rating');
            const content = pressure * vessel.maybe('volume');
            if (notGiven(vessel, 'volume') && !(pressure <= 1.001 * rating)) tell.cannotCheck(vessel, 'volume', `how much gas was pressed into ${vessel.name}`);
            if (!(content > ENERGETIC) || pressure <= 1.001 * rating) continue;
            tell({
                at: v.at('pressure'),
                message: `${show(pressure, 'bar')} of gas on ${show(vessel.num('volume'), 'L')}${rating === rating ? `, stamped ${show(rating, 'bar')}` : ' without a stamped rating'}, hold ${digits(content / BAR_LITRE)} bar L. ` +
                    `Above ${ENERGETIC / BAR_LITRE} bar L strength is tested with water; a vessel that was pressed beyond its stamp goes to a test body.`,
                related: [{ span: vessel.at('rating'), message: 'what is stamped' }],
            });
        }
    },
});
