import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'ripple-costs-energy',
    family: 'electrical supply',
    severity: 'hint',
    summary: 'The current comes in pulses, and they cost energy that makes no gas.',
    why: 'Gas follows the mean of the current, the loss in the lye follows its square: between pulses nothing is made up for.',
    source: 'Joule; limits of 3 % and 8 %: common practice, no source',
    under: ['ac-through-stack', 'capacitor-ripple-overload'],
    on: 'stack',
    check(v, tell) {
        if (!(v.maybe('cells') > 0) || !(v.the('rectifier') || v.the('transformer') || v.the('supply')?.said('form-factor'))) return; // speed only
        const loss = v.maybeQ('ripple-loss');
        if (!tell.exceeds(loss, 0.03, '%', v)) return;
        const supply = v.the('supply');
        const place = supply?.said('form-factor') ? supply.at('form-factor') : (v.the('rectifier') ?? v.the('transformer'))?.at();
        tell({
            at: place ?? v.at(), severity: loss > 0.08 ? 'warning' : 'hint',
            message: `The RMS of the current is ${digits(v.q('form-factor'), 3)} times its mean: the pulses cost about ${show(loss, '%', 2)} more energy for the same gas, all of it as heat in the lye. ` +
                'A choke, a three-phase rectifier or a switch-mode supply smooths it.',
        });
    },
});
