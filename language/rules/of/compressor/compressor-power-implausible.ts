import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'compressor-power-implausible',
    family: 'compressor',
    severity: 'hint',
    summary: 'The plate of the compressor names less power than pressing its delivery takes.',
    why: 'Then it delivers less than is worked out, or draws more than its plate says: times, heat and costs are wrong.',
    source: 'isothermal work, textbook; seven tenths as the best of small machines: common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const power = v.maybe('power');
        const least = v.maybeQ('running-power-least');
        if (!(least > 0.7 * power)) return;
        tell({
            at: v.at('power'), severity: least > power ? 'warning' : 'hint',
            message: `Pressing what it delivers takes at least ${show(least, 'W', 2)} at the cut-off, and small machines draw two to five times that; the plate of ${v.name} says ${show(power, 'W')}.`,
            related: [{ span: v.at('displacement'), message: 'what it moves' }],
        });
    },
});
