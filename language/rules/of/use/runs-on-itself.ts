import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'runs-on-itself',
    family: 'use',
    severity: 'error',
    summary: 'What burns the gas is to drive the stack that makes it.',
    why: 'Each turn of such a circle loses more than half. It stops at once, however good its parts are.',
    source: 'first and second law; balance of energy',
    on: ['engine', 'fuel-cell'],
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const made = v.paths.before(v.name, 'hydrogen').includes(stack.name);
        const path = v.paths.before(stack.name, 'current').includes(v.name);
        const supply = v.all('supply').find(s => s.names('follows').includes(v.name) || s.word('follows')?.split('.')[0] === v.name);
        if (!made || (!path && !supply)) return;
        // Light on panels or a battery filled from elsewhere is not the circle.
        if (v.all('panels').length) return;
        const takes = stack.maybeQ('power');
        const holds = takes * stack.maybeQ('efficiency-lhv');
        tell({
            at: path ? v.paths.place(v.name, 'current') ?? v.at() : supply!.at('follows'),
            message: `${v.name} is to drive the stack that makes its gas${holds === holds ? `: the stack takes ${show(takes, 'W')}, and its gas holds ${show(holds, 'W')} before ${v.name} loses more than half of them` : ''}.`,
            related: [{ span: v.at(), message: 'what burns the gas' }],
        });
    },
});
