/** How hard separators are pressed when they are tried. */
import type { View } from '../../quantities/view.js';
import type { Bench } from './bench.js';

/** As the rule separator-test-proves-little. */
const OVER_HEAD = 2;
const OF_BUBBLE_POINT = 0.5;

export interface Press {
    /** Pa: what shows a hole. NaN if it cannot be known. */
    readonly least: number;
    /** What that is. */
    readonly by: string;
    /** Pa: half of what they hold, or what the weakest lid told bears. Infinity if neither is known. */
    readonly most: number;
    readonly weakest: string;
}
/** At least twice the head of the work, and what one blocked outlet can put across them if that is more. */
export function separatorPress(b: Bench, stack: View): Press {
    const twice = OVER_HEAD * b.q(stack, 'separator-head');
    const blocked = b.q(stack, 'separator-head-worst');
    const half = OF_BUBBLE_POINT * b.q(stack, 'bubble-point');
    const lid = Math.min(...b.parts('column').map(c => b.num(c, 'lid.rating')).filter(n => n === n));
    return {
        least: blocked > twice ? blocked : twice, by: blocked > twice ? 'what one blocked outlet can put across them' : 'twice what stands across them in the work',
        most: Math.min(half === half ? half : Infinity, lid), weakest: lid < half || half !== half ? 'the weakest lid' : 'half of what they hold at best',
    };
}
