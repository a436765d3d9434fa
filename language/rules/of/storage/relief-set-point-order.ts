import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relief-set-point-order',
    family: 'storage',
    severity: 'error',
    summary: 'The ladder cut-off, relief, rating is out of order.',
    why: 'A relief valve set above the rating guards nothing; one too near the cut-off weeps hydrogen every day and no longer seats.',
    source: 'API 520-1 for the gap between working and set pressure (about 10 %), from memory',
    guardsLife: true,
    on: 'relief-valve',
    check(v, tell) {
        const set = v.num('set');
        const joined = new Set([...v.paths.before(v.name, 'hydrogen')]);
        for (const vessel of v.all('cylinder').filter(c => v.paths.route(c.name, v.name, 'hydrogen') && !v.paths.between(c.name, v.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator'))) {
            const rating = vessel.maybe('rating');
            if (set > rating) tell({ at: v.at('set'), message: `${v.name} opens at ${show(set, 'bar')}; ${vessel.name} bears ${show(rating, 'bar')}.`, related: [{ span: vessel.at('rating'), message: 'its rating' }] });
            const off = vessel.maybeQ('cut-off');
            if (set < 1.1 * off) tell({ at: v.at('set'), severity: set <= off ? 'error' : 'warning', message: `${v.name} opens at ${show(set, 'bar')}, ${set <= off ? 'before' : 'hardly above'} the cut-off at ${show(off, 'bar')}: it will let gas out in ordinary running. 10 % between them is usual.` });
            if (set !== set) tell.cannotCheck(v, 'set', `${v.name} against the rating of ${vessel.name}`);
        }
        if (!joined.size && set !== set) tell.cannotCheck(v, 'set', `when ${v.name} opens`);
    },
});
