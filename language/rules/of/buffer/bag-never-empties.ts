import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bag-never-empties',
    family: 'buffer',
    severity: 'error',
    summary: 'The compressor delivers less than the stack makes.',
    why: 'It never stops, the bag fills, and the gas goes out by the seal.',
    source: 'mass balance',
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const compressor = v.the('compressor');
        const stack = v.the('stack');
        if (!compressor || !stack || !v.paths.before(compressor.name, 'hydrogen').includes(v.name)) return;
        const made = stack.maybeQ('hydrogen-rate');
        const moved = compressor.maybeQ('free-delivery', compressor.maybeQ('free-delivery-start'));
        if (moved < made) tell({ at: compressor.at('displacement'), message: `${compressor.name} moves ${show(moved, 'NL/h')}; the stack makes ${show(made, 'NL/h')}.` });
    },
});
