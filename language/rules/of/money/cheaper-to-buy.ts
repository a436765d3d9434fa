import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cheaper-to-buy',
    family: 'money',
    severity: 'hint',
    summary: 'Bought gas costs less than this rig\'s.',
    why: 'It helps to decide while nothing is built yet.',
    source: 'the maker\'s own figures',
    on: 'budget',
    check(v, tell) {
        const own = v.maybeQ('gas-cost');
        const bought = v.maybe('bought-gas');
        if (!(own > bought)) return;
        const unit = v.given('bought-gas').facts.get('')?.amount?.unit?.text ?? 'EUR/m3';
        tell({ at: v.at('bought-gas'), message: `Own gas comes to ${show(own, unit)} over the life of the parts; bought gas to ${show(bought, unit)}.` });
    },
});
