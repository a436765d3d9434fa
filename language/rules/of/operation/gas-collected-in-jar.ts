import { how } from '../../records.js';
import { defineRule } from '../../define.js';
import { isIndoors } from '../../place.js';
import { digits } from '../../../units/format.js';

/** L. Common practice, no source. */
const MOST = 1;

export default defineRule({
    name: 'gas-collected-in-jar',
    family: 'operation',
    severity: 'warning',
    summary: 'Gas was caught in a large jar to measure it.',
    why: 'Glass with litres of hydrogen over water, often with air left in it, is a bomb in somebody\'s hands; it measures no better than a small one.',
    source: '1 L: common practice, no source',
    guardsLife: true,
    on: ['test', 'reading'],
    check(v, tell) {
        const words = how(v);
        const size = Number(/(\d+(?:\.\d+)?)\s*L\b/.exec(words)?.[1] ?? NaN);
        if (!/\b(jar|bottle|bell glass|glass|bucket|over water|inverted)\b/i.test(words) || !(size > MOST)) return;
        tell({
            at: v.at('with'), severity: isIndoors(v) === true || isIndoors(v) === undefined ? 'warning' : 'hint',
            message: `Gas was caught in ${digits(size)} L over water; ${MOST} L is enough to measure a flow: take the time for it, or weigh the water that is used up.`,
        });
    },
});
