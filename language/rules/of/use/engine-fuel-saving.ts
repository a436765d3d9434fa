import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** Share of the shaft's power that an alternator gives as current. Common practice, no source. */
const ALTERNATOR = 0.6;

export default defineRule({
    name: 'engine-fuel-saving',
    family: 'use',
    severity: 'hint',
    summary: 'The cells ride on the vehicle whose engine drives them.',
    why: 'The alternator takes from the shaft more than the gas brings back as fuel. No independent measurement shows a net saving.',
    source: 'balance of energy; alternator 60 %: common practice, no source',
    on: 'engine',
    check(v, tell) {
        if (v.yes('on-board') !== true) return;
        const stack = v.the('stack');
        const takes = stack?.maybeQ('power') ?? NaN;
        const holds = takes * (stack?.maybeQ('efficiency-lhv') ?? NaN);
        tell({
            at: v.at('on-board'),
            message: holds === holds ? `Making the gas takes ${show(takes / ALTERNATOR, 'W')} from the shaft, by an alternator of ${100 * ALTERNATOR} %, for gas that holds ${show(holds, 'W')} as fuel.` : 'Making the gas takes more from the shaft, by way of the alternator, than the gas holds as fuel.',
        });
    },
});
