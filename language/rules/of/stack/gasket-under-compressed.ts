import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'gasket-under-compressed',
    family: 'stack',
    severity: 'warning',
    summary: 'The gaskets are squeezed too little or too much.',
    why: 'Too little weeps, too much cuts the rubber and creeps.',
    source: '15 to 35 % for soft rubber: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const squeeze = v.q('gasket-squeeze');
        if (!(squeeze < 0.1495 || squeeze > 0.3505)) return;
        const free = v.num('gasket.free');
        tell({ at: v.at('gasket'), message: `The gasket is squeezed by ${digits(100 * squeeze, 2)} %; 15 to 35 % is usual for soft rubber: ${show(0.85 * free, 'mm', 2)} down to ${show(0.65 * free, 'mm', 2)}.` });
    },
});
