import { defineRule } from '../../define.js';
import { insertBefore } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'no-bubbler-or-seal',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'Nothing stops a flame on its way back to the gas, or only water does.',
    why: 'A flame that runs back meets the stack, the columns or the bag. A bubbler alone can be sucked dry, boil off or freeze.',
    source: 'flashback arrestor as non-return valve and flame arrestor: EN ISO 5175-1; both together: common practice, no source',
    guardsLife: true,
    on: ['burner', 'balloon', 'engine'],
    check(v, tell) {
        const stack = v.the('stack');
        const way = stack ? v.paths.route(stack.name, v.name, 'hydrogen')?.slice(1, -1) : v.paths.before(v.name, 'hydrogen');
        if (!way || (!stack && !way.length)) return;
        const kinds = way.map(n => v.other(n)?.kind ?? '');
        const own = v.rows('lines').find(r => r.get('gas')?.word === 'hydrogen')?.get('')?.word;
        const dry = kinds.includes('arrestor') || own === 'both' || own === 'arrestor';
        const wet = kinds.includes('bubbler') || kinds.includes('scrubber');
        if (dry || (wet && v.kind !== 'burner')) return;
        const link = v.paths.to(v.name, 'hydrogen')[0];
        const behind = [...way].reverse().find(n => ['bag', 'gasometer', 'cylinder'].includes(v.other(n)?.kind ?? '')) ?? stack?.name ?? way[0];
        const placed = v.all('arrestor').length > 0;
        tell({
            at: link?.to.span ?? v.at(), severity: missing(tell, wet ? 'warning' : 'error'),
            message: wet ? `Only water stands between the flame of ${v.name} and ${behind}: it can be sucked back, dry out or freeze. A dry arrestor at the burner is missing.`
                : `Neither a bubbler nor an arrestor stands before ${v.name}: a flame that runs back reaches ${behind}.`,
            fixes: link && !placed ? [insertBefore(link, 'arrestor', `Put an arrestor before ${v.name}`)] : [],
        });
    },
});
