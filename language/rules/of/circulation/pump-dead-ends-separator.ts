import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'pump-dead-ends-separator',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'Against a blocked port the circulation pump can press gas through the separators.',
    why: 'One blocked port puts all the pressure that the pump makes on one side of every separator.',
    source: 'Young-Laplace; half of the bubble point: common practice, no source',
    guardsLife: true,
    on: 'circulation-pump',
    check(v, tell) {
        const head = v.maybe('shut-off-head');
        const holds = v.the('stack')?.maybeQ('bubble-point') ?? NaN;
        if (head !== head || holds !== holds) {
            if (v.the('stack') && head !== head) tell.cannotCheck(v, 'shut-off-head', 'that the pump cannot press gas through the separators');
            return;
        }
        if (!tell.exceeds(head, 0.5 * holds, 'kPa', v, 'shut-off-head')) return;
        tell({
            at: v.at('shut-off-head'), severity: head > holds ? 'error' : 'warning',
            message: `Against a blocked port the pump makes ${show(head, 'kPa')}; the separators hold ${show(holds, 'kPa')}, and half of ` +
                'that is the limit.',
        });
    },
});
