import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'gas-trapped-above-port',
    family: 'stack',
    severity: 'warning',
    summary: 'The outlet port lies so far below the top of the window that gas stays above it in every cell.',
    why: 'In that pocket separator and plate dry. A dry separator lets gas through, and the current crowds below.',
    source: '3 mm: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const below = v.maybe('port.below');
        if (!(below > 0.003)) return;
        tell({
            at: v.atSlot('port.below'),
            message: `The port ends ${show(below, 'mm')} below the top of the window: a pocket of gas that high stays in every cell, and ` +
                'the separator dries there. 3 mm is the limit.',
        });
    },
});
