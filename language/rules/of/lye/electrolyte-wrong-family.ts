import { solutes } from '../../../vocabulary/solutes.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'electrolyte-wrong-family',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'The electrolyte is neither potash nor caustic soda.',
    why: 'Carbonates conduct about ten times worse and give off carbon dioxide; acid dissolves nickel and steel.',
    source: 'chemistry from memory; 1.5 A for a school cell: common practice, no source',
    under: ['electrolyte-makes-chlorine'],
    on: 'lye',
    check(v, tell) {
        const solute = v.word('solute') ?? '';
        const guess = /acid|vinegar/i.test(solute) ? 'acid' : /carbonate|soda/i.test(solute) ? 'carbonate' : undefined;
        const family = solutes.get(solute)?.family ?? guess;
        const stack = v.the('stack');
        const plate = stack?.word('plate.material') ?? 'nickel';
        const fixes = defined(setValue(v, 'solute', 'KOH', 'Use potash'));
        if (family === 'acid') {
            const eaten = /nickel|steel|stainless/.test(plate);
            tell({
                at: v.at('solute'),
                severity: eaten ? 'error' : 'warning',
                fixes,
                message: `${solute} is an acid: ` +
                    `${eaten ? `it dissolves plates of ${plate}, with hydrogen from both sides` : 'hardly any plate bears it on the plus side'}.`,
            });
        } else if (family === 'carbonate') {
            const small = (stack?.maybeQ('current') ?? NaN) <= 1.5;
            tell({
                at: v.at('solute'),
                severity: small ? 'hint' : 'warning',
                fixes,
                message: `${solute} conducts about ten times worse than potash, and carbon dioxide comes with the oxygen.`,
            });
        }
    },
});
