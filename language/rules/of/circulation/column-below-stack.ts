import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'column-below-stack',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'The level in a column is not above the cells.',
    why: 'The tops of the cells then stand in gas: separators dry, and the two gases meet there.',
    source: 'hydrostatics; 50 mm above: common practice, no source',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        const stack = v.the('stack');
        const top = stack?.maybe('top-height') ?? NaN;
        const base = v.maybe('base-height');
        const stands = base + v.maybe('level') - Math.max(0, v.maybeQ('level-down', 0));
        if (!stack || v.all('circulation-pump').length) return;
        // Where one column is like the other, it is told once.
        const from = v.given('base-height').from;
        if (from && v.other(from.name)) return;
        if (top !== top || base !== base) {
            if (top === top) tell.cannotCheck(v, 'base-height', 'that the cells stay flooded');
            else if (base === base) tell.cannotCheck(stack, 'top-height', 'that the cells stay flooded');
            return;
        }
        if (!(stands < top + 0.05)) return;
        const raise = Math.ceil((top + 0.1 - stands + base) * 100) * 10;
        tell({
            at: v.at('base-height'),
            severity: stands < top ? 'error' : 'warning',
            related: [{ span: stack.at('top-height'), message: 'the top of the cells' }],
            message: stands < top
                ? `The lye of ${v.name} stands at ${show(stands, 'mm')}, ${show(top - stands, 'mm')} below the top of the cells: ` +
                    'they run dry there.'
                : `The lye of ${v.name} stands only ${show(stands - top, 'mm')} above the cells; 50 mm is the least that keeps ` +
                    'them flooded.',
            fixes: defined(setValue(v, 'base-height', `${raise} mm`, `Stand ${v.name} at ${raise} mm`)),
        });
    },
});
