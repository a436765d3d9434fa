import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'end-plate-bends',
    family: 'stack',
    severity: 'warning',
    summary: 'The end boards bow between the tie rods and let go of the gaskets there.',
    why: 'In the middle between two rods the gaskets are pressed less than beside them: that is where it weeps first, most of all warm and after months.',
    source: 'bending of plates, Timoshenko; plastics at half of their stiffness and 10 % of squeeze left: common practice, no source',
    under: ['gasket-under-compressed'],
    on: 'stack',
    check(v, tell) {
        const left = v.maybeQ('gasket-squeeze-between');
        if (!tell.fallsShort(left, 0.1, '%', v, 'end-board')) return;
        const bow = v.q('end-board-bow');
        tell({
            at: v.at('end-board'),
            message: `Under ${show(v.q('clamp-force'), 'kN', 2)} each board bows out by about ${bow < LARGE ? show(bow, 'mm', 2) : 'several millimetres, or cracks,'} between the rods. ` +
                `${left > 0 ? `Only ${show(left, '%', 2)} of squeeze is left` : 'Nothing presses the gaskets'} there; 10 % is the least that holds. A thicker board, or more rods at less torque.`,
        });
    },
});

/** m, above which the law of small bows tells no number. */
const LARGE = 3e-3;
