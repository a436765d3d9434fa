import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'reverse-current-wears-electrodes',
    family: 'electrical supply',
    severity: 'hint',
    summary: 'Many stops a day wear the electrodes by the current that flows backwards after each.',
    why: 'After a stop both gases cling to the plates and discharge through the lye that the cells share: hydrogen plates are oxidised a little each time. Porous and plated surfaces suffer first.',
    source: 'reverse current in bipolar alkaline stacks, from memory; more than three stops a day: common practice, no source',
    under: ['bag-too-small-short-cycles'],
    on: 'stack',
    check(v, tell) {
        const routine = v.the('routine');
        if (!routine?.said('starts') || v.maybe('trickle') > 0 || !(v.maybe('cells') > 1) || v.word('layout') === 'monopolar') return;
        const starts = routine.num('starts') * DAY;
        if (!(starts > MANY)) return;
        const surface = v.said('electrode') ? v.word('electrode') : undefined;
        const coated = surface !== undefined && ['nickel-plated', 'activated', 'highly-activated'].includes(surface);
        tell({
            at: routine.at('starts'), severity: coated ? 'warning' : 'hint',
            message: `${digits(starts, 2)} stops a day: after each the plates discharge backwards through the lye that they share${coated ? `, and that spoils a surface that is ${surface}` : ''}. ` +
                'Fewer and longer runs spare them.',
        });
    },
});

/** s in a day. */
const DAY = 86400;
/** Starts in a day from which it is told. Common practice, no source. */
const MANY = 3;
