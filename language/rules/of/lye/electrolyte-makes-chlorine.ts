import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'electrolyte-makes-chlorine',
    family: 'lye and materials',
    severity: 'error',
    summary: 'The liquid makes chlorine.',
    why: 'Chlorine is poisonous at a few millionths, eats the lungs, and explodes with hydrogen by daylight.',
    source: 'standard potentials of chlorine and oxygen, CRC Handbook; exposure limit 0.5 mL/m3, Directive 2006/15/EC',
    guardsLife: true,
    on: 'lye',
    check(v, tell) {
        const solute = v.word('solute');
        if (solute === 'NaCl') tell({ at: v.at('solute'), message: 'Salt in the water makes poisonous chlorine in place of oxygen.', fixes: defined(setValue(v, 'solute', 'KOH', 'Plan caustic potash')) });
        else if (v.word('water') === 'sea') tell({ at: v.at('water'), message: 'Sea water makes poisonous chlorine in place of oxygen.', fixes: defined(setValue(v, 'water', 'distilled', 'Plan distilled water')) });
        else if (v.maybe('chloride') > 1) tell({ at: v.at('chloride'), message: `${show(v.maybe('chloride'), 'g/L')} of chloride makes chlorine in place of oxygen.` });
    },
});
