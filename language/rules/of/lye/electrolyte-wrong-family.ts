import { defineRule } from '../../define.js';

export default defineRule({
    name: 'electrolyte-wrong-family',
    family: 'lye and materials',
    severity: 'error',
    summary: 'The liquid does not suit an alkaline stack.',
    why: 'Acid eats nickel and steel; carbonates conduct badly, foam, and give carbon dioxide off into the gas.',
    source: 'common practice, no source',
    on: 'lye',
    check(v, tell) {
        const solute = v.word('solute');
        if (solute === 'H2SO4') tell({ at: v.at('solute'), message: 'Acid dissolves nickel and steel plates; this stack is for lye.' });
        else if (solute === 'K2CO3' || solute === 'NaHCO3') tell({ at: v.at('solute'), severity: 'warning', message: `${solute} conducts a fraction of what hydroxide does${solute === 'NaHCO3' ? ' and gives carbon dioxide off into the gas' : ''}; what is computed for hydroxide does not hold for it.` });
    },
});
