import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'shunt-dominates-at-part-load',
    family: 'stack',
    severity: 'warning',
    summary: 'At the lowest current allowed a large part of it passes by the cells.',
    why: 'Bypass follows the volts, which hardly fall; the current falls. What is left for the gas shrinks, and with it its purity.',
    source: 'Kirchhoff; a quarter: common practice, no source',
    under: ['shunt-current-high', 'bare-port-edge', 'plate-edge-leakage'],
    on: 'stack',
    check(v, tell) {
        const routine = v.the('routine');
        if (!routine?.said('lowest-current')) return;
        const lost = v.maybeQ('bypass-share-low');
        if (!tell.exceeds(lost, 0.25, '%', routine, 'lowest-current')) return;
        const full = v.maybeQ('bypass-share');
        tell({
            at: routine.at('lowest-current'),
            message: `At ${show(routine.num('lowest-current'), 'A')} about ${show(lost, '%', 2)} of the current passes by the cells through ports and channels${full > 0 ? ` (${show(full, '%', 2)} at the working current)` : ''}; a quarter is the usual limit.`,
        });
    },
});
