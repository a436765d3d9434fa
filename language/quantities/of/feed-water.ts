/** What the feed water leaves behind in the lye: only water is used up. */
import { waters } from '../../vocabulary/waters.js';
import { defineQuantity } from '../define.js';
import { WATER_DENSITY } from '../surroundings.js';
import type { View } from '../view.js';

/** kg/m³ of chloride in the feed water: stated, else what such water usually holds. */
function chlorideOf(q: View): number {
    const stated = q.maybe('chloride');
    return stated === stated ? stated : waters.get(q.word('water') ?? '')?.chlorideKgPerM3 ?? NaN;
}
/** kg/m³ of chloride, 100 mg/L: where stainless steel in warm lye is watched. Common practice, no source. */
const WATCHED = 0.1;

export default [
    defineQuantity({ name: 'chloride-fed', of: 'lye', measure: 'density', unit: 'mg/L', meaning: 'Chloride in the feed water: as stated, or what such water usually holds.', formula: 'as stated, or the table of waters', source: 'from memory; real waters differ widely', work: chlorideOf }),
    defineQuantity({
        name: 'chloride-time', of: 'lye', measure: 'time', unit: 'h', meaning: 'Running hours until the chloride of the feed water has gathered to 100 mg/L in the lye.',
        formula: '(100 mg/L / fed - 1) x fill / (water split + vapour)', source: 'mass balance: chloride stays, water leaves; 100 mg/L: common practice, no source',
        work: q => {
            const fed = chlorideOf(q);
            const stack = q.the('stack');
            const fill = q.maybe('fill');
            const held = fill === fill ? fill : stack?.q('lye-needed') ?? NaN;
            const flow = ((stack?.q('water-use') ?? NaN) + (stack?.q('vapour-loss') ?? NaN)) / WATER_DENSITY;
            return fed > 0 ? Math.max(0, WATCHED / fed - 1) * held / flow : NaN;
        },
    }),
];
