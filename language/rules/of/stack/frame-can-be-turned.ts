import { digits } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'frame-can-be-turned',
    family: 'stack',
    severity: 'warning',
    summary: 'Frames fit both ways round, and nothing marks which way is right.',
    why: 'One frame put in back to front sends its hydrogen into the oxygen channel, and no leak test at equal pressure shows it.',
    source: 'common practice, no source',
    on: 'stack',
    check(v, tell) {
        if (v.says('frame-key') !== 'none' && v.word('frame-key') !== 'none') return;
        const frames = v.maybe('cells') * v.maybe('groups', 1);
        tell({
            at: v.at('frame-key'),
            message: `One turned frame${frames > 1 ? ` of ${digits(frames)}` : ''} joins the two gases. A notch, a colour or an uneven ` +
                'shape shows it at a glance.',
            fixes: defined(setValue(v, 'frame-key', 'notch', 'Mark the frames with a notch')),
        });
    },
});
