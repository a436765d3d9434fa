import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'topped-up-with-lye',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Used water was replaced by lye.',
    why: 'Only water is used up; the hydroxide stays. Each such filling makes the lye stronger: it conducts worse, creeps, ' +
        'and soda freezes sooner.',
    source: 'mass balance',
    on: 'top-up',
    check(v, tell) {
        const added = v.maybe('lye');
        if (!(added > 0)) return;
        const lye = v.the('lye');
        const fill = lye?.maybe('fill') ?? NaN;
        const strength = v.maybe('strength', lye?.maybeQ('mass-fraction') ?? NaN);
        const points = 100 * added * strength / fill;
        const gained = points > 0 ? ` Each time it gains about ${digits(points, 2)} wt%, if only water had been used.` : '';
        tell({ at: v.at('lye'), message: `${show(added, 'L')} of lye was added in place of water: hydroxide is not used up.${gained}` });
    },
});
