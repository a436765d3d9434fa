import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'engine-fuel-saving',
    family: 'use',
    severity: 'hint',
    summary: 'The cells ride on the vehicle whose engine drives them.',
    why: 'The alternator takes from the shaft more than the gas brings back as fuel. No independent measurement shows a net saving.',
    source: 'balance of energy; alternators of 50 to 70 %: from memory',
    on: 'engine',
    check(v, tell) {
        if (v.yes('on-board') !== true) return;
        const takes = v.maybeQ('shaft-power');
        const holds = v.maybeQ('made-fuel-power');
        tell({
            at: v.at('on-board'),
            message: takes > holds ? `Making the gas takes about ${show(takes, 'W')} from the shaft, by way of the alternator, for gas that holds ${show(holds, 'W')} as fuel.` : 'Making the gas takes more from the shaft, by way of the alternator, than the gas holds as fuel.',
        });
    },
});
