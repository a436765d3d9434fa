import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'sum-wrong',
    family: 'money',
    severity: 'error',
    summary: 'The total does not match the sum of the prices.',
    why: 'One of the two is wrong, and every cost rests on it.',
    source: 'arithmetic; 1 % for rounding: common practice, no source',
    on: 'budget',
    check(v, tell) {
        const total = v.maybe('total');
        const sum = v.maybeQ('parts-total');
        if (!(Math.abs(sum - total) > 0.01 * total) || !(sum > 0)) return;
        const unit = v.given('total').facts.get('')?.amount?.unit?.text ?? 'EUR';
        tell({ at: v.at('total'), message: `The prices add up to ${show(sum, unit, 5)}; the total says ${show(total, unit, 5)}.`, fixes: defined(setValue(v, 'total', show(sum, unit, 5), `Write ${show(sum, unit, 5)}`)) });
    },
});
