import { beyondCurve, curvedMake, ownCurve, stackMake } from '../../../quantities/operating-point.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** V for each cell: further off no surface lies from smooth nickel, the best activated ones included. */
const FAR = 0.5;

export default defineRule({
    name: 'off-its-own-curve',
    family: 'stack',
    severity: 'hint',
    summary: 'The curve that a stack states does not reach its working point, or cannot be its own.',
    why: 'Within its range a measured curve is worth more than any law; beyond it, or with a slip in it, every number that follows is only as good as the guess.',
    source: 'half a volt a cell: spread of seven measured stacks (polarisation surfaces)',
    on: 'stack',
    check(v, tell) {
        if (!v.rows('curve').length) return;
        const points = ownCurve(v);
        if (!points) {
            tell({ at: v.at('curve'), severity: 'warning', message: 'The curve is not used: at one temperature the volts of a stack rise with the current, and each point needs volts and amperes above zero.' });
            return;
        }
        const off = (v.model(curvedMake)?.offset ?? NaN) - (v.model(stackMake)?.offset ?? NaN);
        if (Math.abs(off) > FAR) {
            tell({
                at: v.at('curve'), severity: 'warning',
                message: `The curve lies ${show(Math.abs(off), 'V', 2)} a cell ${off > 0 ? 'above' : 'below'} what this description gives, more than any surface explains; the numbers follow the curve. Do count of cells, wetted face and the meter agree?`,
            });
            return;
        }
        const side = beyondCurve(v);
        if (!side) return;
        const [first, last] = [points[0], points[points.length - 1]];
        tell({
            at: v.at('curve'),
            message: `It works at ${show(v.q('current'), 'A')}; the curve goes ${side === 'above' ? 'up to' : 'from'} ${show(side === 'above' ? last.current : first.current, 'A')}${side === 'above' ? '' : ' on'}. Beyond it the laws go on from its end.`,
        });
    },
});
