import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cut-off-above-rating',
    family: 'storage',
    severity: 'error',
    summary: 'The compressor goes on above what the cylinder bears.',
    why: 'The relief valve then is the only thing between the machine and a burst.',
    source: 'normal working stays below the rating stamped on the vessel: Directive 2014/68/EU Annex I 2.11, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const rating = v.num('rating');
        for (const s of v.controls.sensing(`${v.name}.pressure`)) {
            const key = s.kind === 'switch' ? (s.word('breaks.side') === 'above' ? 'breaks' : s.word('makes.side') === 'above' ? 'makes' : undefined) : s.word('trips.side') === 'above' ? 'trips' : undefined;
            if (!key) continue;
            const high = s.bounds(`${key}.value`).high;
            if (!(high > rating)) continue;
            tell({ at: s.at(key), severity: s.maybe(`${key}.value`) > rating ? 'error' : 'warning', message: `${s.name} may act as late as ${show(high, 'bar')}; ${v.name} bears ${show(rating, 'bar')}.`, related: [{ span: v.at('rating'), message: 'its rating' }] });
        }
        if (rating !== rating && v.controls.sensing(`${v.name}.pressure`).length) tell.cannotCheck(v, 'rating', 'the cut-off against the rating');
    },
});
