import { defineRule } from '../../define.js';
import { duration } from '../../../units/format.js';
import { isIndoors } from '../../place.js';

export default defineRule({
    name: 'sealed-room-clock',
    family: 'siting',
    severity: 'hint',
    summary: 'How long the shut room takes to become dangerous with everything leaking.',
    why: 'It makes the danger something that can be felt: minutes, hours or days.',
    source: 'dilution of a well-mixed room; 1 %, a quarter of the lower flammable limit: hydrogen best-practice pages (h2tools.org); within a day: common practice, no source',
    on: 'rig',
    check(v, tell) {
        if (isIndoors(v) !== true || !v.the('stack')) return;
        const clock = v.maybeQ('room-clock');
        if (!(clock < 86400)) return;
        tell({ at: v.at('volume'), message: `Shut, and with all the gas leaking, this room is at 1 % hydrogen after ${duration(clock)} and can burn at 4 % after about ${duration(4.06 * clock)}; at the ceiling much sooner.` });
    },
});
