import { digits, duration, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** K by which the temperature must have moved for a test to count as one of warmth. Own choice, no source. */
const WARMED = 5;

export default defineRule({
    name: 'test-shorter-than-warm-up',
    family: 'heat',
    severity: 'hint',
    summary: 'A test of the warmth ended long before the stack was as warm as it gets.',
    why: 'A stack that is still warming looks cooler than it will be, and its cooling looks better than it is.',
    source: 'exponential approach: after two time constants 86 % of the rise is done',
    from: 'built',
    on: 'test',
    check(v, tell) {
        const lasted = v.maybe('lasted');
        const stack = v.the('stack');
        if (!(lasted > 0) || !stack || !v.names('covers').includes(stack.name)) return;
        const seen = v.bounds('temperature');
        if (!(seen.high - seen.low > WARMED)) return;
        const constant = stack.maybeQ('time-constant');
        if (!(lasted < 2 * constant)) return;
        const steady = stack.maybeQ('temperature');
        tell({
            at: v.at('lasted'), related: [{ span: v.at('temperature'), message: 'was still on its way' }],
            message: `After ${duration(lasted)} only about ${digits(100 * (1 - Math.exp(-lasted / constant)), 2)} % of the warming is done: ${show(seen.high, '°C')} is not yet how warm it gets` +
                `${steady > seen.high ? `, worked out as ${show(steady, '°C', 2)}` : ''}. ${duration(Math.ceil(2 * constant / 1800) * 1800)} or more tells it.`,
        });
    },
});
