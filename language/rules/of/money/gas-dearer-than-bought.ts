import { defineRule } from '../../define.js';

export default defineRule({
    name: 'gas-dearer-than-bought',
    family: 'money',
    severity: 'hint',
    summary: 'The gas costs more than it can be bought for.',
    why: 'Then the rig is a teacher or a hobby, and that should be known before the money is spent.',
    source: 'sums of this project',
    on: 'budget',
    check(v, tell) {
        const own = v.maybeQ('gas-cost');
        const bought = v.maybe('bought-gas');
        if (own > bought) tell({ at: v.at('bought-gas'), message: 'Made here it costs more than bought: see the number beside it.' });
    },
});
