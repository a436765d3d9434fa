import { show } from '../../../units/format.js';
import { solutes } from '../../../vocabulary/solutes.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'electrolyte-makes-chlorine',
    family: 'lye and materials',
    severity: 'error',
    summary: 'Chloride in the lye makes chlorine instead of oxygen.',
    why: 'Chlorine is poisonous from about one part in a million of the air, and eats lungs, plates and hoses.',
    source: '200 mg/L in the water: common practice, no source; workplace ceiling 1 ppm, danger to life 10 ppm (OSHA, NIOSH), from memory',
    guardsLife: true,
    on: 'lye',
    check(v, tell) {
        const solute = v.word('solute') ?? '';
        const family = solutes.get(solute)?.family;
        const salt = family === 'chloride' || /chlor|bleach|hcl|salt|brine/i.test(solute);
        const water = v.word('water');
        const chloride = v.maybeQ('chloride-fed');
        if (salt) {
            tell({
                at: v.at('solute'),
                message: `${solute} makes chlorine at the plus plates instead of oxygen: poisonous at one part in a million.`,
            });
        } else if (water === 'sea') {
            tell({
                at: v.at('water'),
                message: 'Sea water brings so much chloride that chlorine comes with the oxygen: poisonous at one part in a million.',
            });
        } else if (tell.exceeds(chloride, 0.2, 'mg/L', v, v.said('chloride') ? 'chloride' : 'water')) {
            tell({
                at: v.said('chloride') ? v.at('chloride') : v.at('water'),
                message: `${show(chloride, 'mg/L')} of chloride in the water, above 200 mg/L: chlorine comes with the oxygen.`,
            });
        }
    },
});
