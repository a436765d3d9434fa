import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'balloon-lift-overclaimed',
    family: 'use',
    severity: 'error',
    summary: 'A balloon is said to lift more than the air that it pushes aside allows.',
    why: 'Lift is the weight of the air pushed aside less the weight of the gas. Nothing adds to it.',
    source: 'Archimedes; density of dry air 1.204 and of hydrogen 0.084 kg/m³ at 20 °C and 101.325 kPa; 2 % for rounding: common practice, no source',
    on: ['claim', 'reading'],
    check(v, tell) {
        for (const balloon of v.all('balloon')) {
            for (const key of ['lift', 'lift-gross']) {
                const entry = v.part.entries.get(`${balloon.name}.${key}`);
                const said = entry && tell.workings.amountOf(entry)?.si;
                const most = balloon.q(key);
                if (!entry || !(said! > 1.02 * most)) continue;
                tell({ at: entry.span, message: `${balloon.name} of ${show(balloon.q('gas-volume'), 'L')} lifts ${show(most, 'g')}${key === 'lift' ? ' after its film' : ''} at most; ${show(said!, 'g')} is stated.`, related: [{ span: balloon.at('diameter'), message: 'the balloon' }] });
            }
        }
    },
});
