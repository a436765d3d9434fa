import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'lye-volume-short',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Less lye is mixed than cells and columns take up to their level.',
    why: 'The level then stands lower than drawn: ports uncover sooner, and the cells may not be flooded.',
    source: 'geometry; 10 %: common practice, no source',
    on: 'lye',
    check(v, tell) {
        const stack = v.the('stack');
        const columns = v.all('column');
        const fill = v.maybe('fill');
        const needed = stack?.maybeQ('lye-needed') ?? NaN;
        // Silent while the geometry is a guess.
        if (!columns.length || columns.some(c => !c.said('bore') || !c.said('level')) || !stack?.said('gap') || !(fill < 0.9 * needed)) return;
        const buy = `${digits(Math.ceil(needed * 1e3 * 10 * 1.02) / 10, 3)} L`;
        tell({
            at: v.at('fill'),
            message: `Cells and columns take ${show(needed, 'L')} up to their level; ${show(fill, 'L')} is mixed.`,
            fixes: defined(setValue(v, 'fill', buy, `Mix ${buy}`)),
        });
    },
});
