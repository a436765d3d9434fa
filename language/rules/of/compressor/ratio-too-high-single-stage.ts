import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';

/** The most to which one stage presses well. */
const MOST = 8;

export default defineRule({
    name: 'ratio-too-high-single-stage',
    family: 'compressor',
    severity: 'hint',
    summary: 'One stage is asked for more than it gives well.',
    why: 'What is left in the clearance expands again and takes the room of fresh gas; hydrogen leaks back as well.',
    source: '8 to one, 40 % of the swept volume: common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const ratio = v.maybeQ('stage-ratio');
        if (!tell.exceeds(ratio, MOST, '', v, 'stages')) return;
        const share = v.maybeQ('volumetric-efficiency');
        const hot = v.maybeQ('discharge-temperature') > 408.16;
        const stages = v.num('stages');
        const whole = v.q('pressure-ratio');
        const enough = Math.ceil(Math.log(whole) / Math.log(MOST));
        // Of one that stands there nobody can change how it was built.
        const fix = v.said('stages') || tell.reached('built') ? undefined : setValue(v, 'stages', `${enough}`, `Plan ${enough} stages, ${digits(whole ** (1 / enough), 2)} to one each`);
        tell({
            at: v.at(stages > 1 ? 'stages' : undefined), severity: share < 0.4 || hot ? 'warning' : 'hint',
            message: `${digits(ratio, 2)} to one in ${stages > 1 ? `each of ${stages} stages` : 'a single stage'}: about ${show(share, '%', 2)} of the swept volume leaves as fresh gas at the cut-off.`,
            fixes: defined(fix),
        });
    },
});
