import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** For rounding. Common practice, no source. */
const ROUNDING = 1.02;

export default defineRule({
    name: 'heat-claim-too-high',
    family: 'use',
    severity: 'error',
    summary: 'A flame is said to give more heat than its gas holds.',
    why: 'The heating value is all there is, whatever the burner looks like. What is promised beyond it is a wrong volume or a wish.',
    source: 'heating values 285.8 and 241.8 kJ/mol: CODATA Key Values; 2 % for rounding: common practice, no source',
    on: 'claim',
    check(v, tell) {
        for (const burner of v.all('burner')) {
            const entry = v.part.entries.get(`${burner.name}.flame-power`);
            const said = entry && tell.workings.amountOf(entry)?.si;
            const flame = burner.maybeQ('flame-power');
            const condensing = burner.maybeQ('flame-power-condensing');
            if (!entry || !(said! > ROUNDING * condensing)) continue;
            tell({
                at: entry.span,
                message: `${show(burner.num('flow'), 'NL/h')} of hydrogen give ${show(flame, 'W')} at most, ${show(condensing, 'W')} if all the steam condenses; ${show(said!, 'W')} is stated.`,
                related: [{ span: burner.at('flow'), message: 'what it burns' }],
            });
        }
    },
});
