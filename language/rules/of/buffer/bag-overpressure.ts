import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bag-overpressure',
    family: 'buffer',
    severity: 'error',
    summary: 'The seal opens only above what the bag bears.',
    why: 'The bag tears first, in the room.',
    source: 'hydrostatics',
    guardsLife: true,
    on: 'bag',
    check(v, tell) {
        const rating = v.maybe('rating');
        const near = new Set([...v.paths.after(v.name, 'hydrogen'), ...v.paths.before(v.name, 'hydrogen').flatMap(n => v.paths.after(n, 'hydrogen'))]);
        const seals = v.all('seal').filter(s => near.has(s.name));
        if (!seals.length) return;
        const opens = Math.min(...seals.map(s => s.maybeQ('opens-at', Infinity)));
        const seal = seals.find(s => s.maybeQ('opens-at') === opens);
        if (rating !== rating) tell.cannotCheck(v, 'rating', `whether the seal opens before ${v.name} tears`);
        else if (seal && opens > rating) tell({ at: seal.at('depth'), message: `${seal.name} opens at ${show(opens, 'kPa')}; ${v.name} bears ${show(rating, 'kPa')}.`, related: [{ span: v.at('rating'), message: 'its rating' }] });
    },
});
