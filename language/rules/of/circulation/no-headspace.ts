import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'no-headspace',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'Too little room is left above the lye for swell and foam.',
    why: 'Lye then goes out with the gas, into hoses, bubblers and the bag.',
    source: '50 mm: common practice, no source; lye swells by some 3 to 10 % while gas rises in it',
    under: ['impossible-geometry'],
    on: 'column',
    check(v, tell) {
        const free = v.maybeQ('headspace');
        const level = v.maybe('level');
        const lift = Math.max(0, -v.maybeQ('level-down', 0));
        const needed = Math.max(0.05, 0.05 * level + lift + 0.03);
        if (!(v.said('level') || v.said('height')) || !tell.fallsShort(free, needed - 5e-4, 'mm', v, v.said('height') ? 'height' : 'level')) return;
        const height = Math.ceil((level + needed) * 100) * 10;
        tell({
            at: v.at(v.said('height') ? 'height' : 'level'), related: [{ span: v.at('level'), message: 'the level' }],
            message: `${show(free, 'mm')} above the lye of ${v.name} is little; swell${lift > 0.001 ? ', the lift by the heads' : ''} and ` +
                `foam take ${show(needed, 'mm', 2)}.`,
            fixes: defined(setValue(v, 'height', `${height} mm`, `Make the column ${height} mm high`)),
        });
    },
});
