import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'less-made-than-wanted',
    family: 'use',
    severity: 'hint',
    summary: 'In the hours that it runs, the stack makes less gas than is wanted.',
    why: 'The plan does not hold: more hours, more current or more cells are needed, and each of them changes the rest.',
    source: 'Faraday; sums of the text',
    on: 'purpose',
    check(v, tell) {
        const stack = v.the('stack');
        const hours = v.the('routine')?.maybe('hours') ?? NaN;
        if (!stack || !v.said('wanted')) return;
        const wanted = v.maybe('wanted.count', 1) * v.num('wanted');
        const made = stack.q('hydrogen-rate') * hours;
        // Within the doubt of the yield it may be enough.
        if (!(made < 0.95 * wanted)) return;
        tell({
            at: v.at('wanted'),
            message: `In ${show(hours, 'h/day')} the stack makes about ${show(made, 'NL/day')}; ${show(wanted, 'NL/day')} is wanted.`,
            related: [{ span: v.the('routine')!.at('hours'), message: 'how long it runs' }],
        });
    },
});
