import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bag-never-empties',
    family: 'buffer',
    severity: 'error',
    summary: 'The compressor moves less than the stack makes.',
    why: 'The bag fills although the compressor runs without end, and then the stack starts and stops on its full switch.',
    source: 'clearance formula of piston machines, ± 30 % unless measured',
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const compressor = v.all('compressor').find(c => v.paths.before(c.name, 'hydrogen').includes(v.name));
        const stack = v.the('stack');
        if (!compressor || !stack) return;
        const made = stack.maybeQ('hydrogen-rate');
        const key = compressor.maybeQ('free-delivery') > 0 ? 'free-delivery' : 'free-delivery-start';
        const moved = compressor.maybeQ(key);
        if (!tell.fallsShort(moved, made, 'NL/h', compressor, compressor.said('displacement') ? 'displacement' : undefined)) return;
        const surely = (compressor.result(key)?.high ?? NaN) < made;
        tell({
            at: compressor.at(compressor.said('displacement') ? 'displacement' : undefined), severity: surely ? 'error' : 'warning',
            message: `${compressor.name} moves about ${show(moved, 'NL/h')}${key === 'free-delivery' ? ' at the cut-off' : ''}, the stack makes ${show(made, 'NL/h')}: ${v.name} fills however long it runs.`, related: [{ span: v.at(), message: 'fills' }],
        });
    },
});
