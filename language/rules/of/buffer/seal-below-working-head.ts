import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'seal-below-working-head',
    family: 'buffer',
    severity: 'error',
    summary: 'The seal blows in ordinary running.',
    why: 'The gas then goes outdoors instead of into the bag, and the seal empties itself without a word.',
    source: 'hydrostatics',
    on: 'seal',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const medium = v.paths.mediaOf(v.name).has('hydrogen') ? 'hydrogen' : 'oxygen';
        const first = v.paths.before(v.name, medium).some(n => ['bag', 'gasometer'].includes(v.other(n)?.kind ?? ''));
        if (first || !v.paths.before(v.name, medium).includes(stack.name)) return;
        const head = stack.maybeQ(`${medium}-head`);
        const opens = v.maybeQ('opens-at');
        if (!(opens < 1.2 * head)) return;
        tell({ at: v.at('depth'), severity: opens <= head ? 'error' : 'warning', message: `${v.name} opens at ${show(opens, 'kPa')}; the ${medium} side stands at ${show(head, 'kPa')} while it runs.` });
    },
});
