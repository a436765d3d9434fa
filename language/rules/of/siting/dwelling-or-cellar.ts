import { defineRule } from '../../define.js';
import { missing, notGiven } from '../../stage.js';
import { runsAlone, standsOutside, stores } from '../../place.js';

export default defineRule({
    name: 'dwelling-or-cellar',
    family: 'siting',
    severity: 'error',
    summary: 'The rig stands in a home, under one, or against one.',
    why: 'A leak rises into rooms where people sleep, and a flammable store in a dwelling is barred by most fire codes.',
    source: 'model fire code, chapter on flammable gases (none in dwellings, few exceptions), as adopted locally; local law decides',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        const place = v.word('place');
        if (!stack || !place || ['outdoors', 'open-shelter'].includes(place)) return;
        const kept = [...stores(v), ...v.all('compressor')].filter(p => !standsOutside(p));
        const home = ['flat', 'cellar', 'attic'].includes(place);
        if (home) {
            tell({ at: v.at('place'), severity: missing(tell, kept.length || runsAlone(v) ? 'error' : 'warning'), message: kept.length ? `Hydrogen is made and kept in a ${place}: a leak rises into rooms where people are.` : `Hydrogen is made in a ${place}, among people: only in small amounts, watched, with both gases led outdoors.` });
            return;
        }
        const why = v.yes('people-above') ? 'people-above' : v.yes('attached-to-dwelling') ? 'attached-to-dwelling' : undefined;
        if (why && kept.length) tell({ at: v.at(why), severity: missing(tell, 'error'), message: `${kept[0].name} keeps hydrogen in a ${place} ${why === 'people-above' ? 'with people above it' : 'that is attached to a home'}: a leak finds its way to them.`, related: [{ span: kept[0].at(), message: 'what is kept' }] });
        else if (kept.length && place === 'garage' && notGiven(v, 'attached-to-dwelling')) tell.cannotCheck(v, 'attached-to-dwelling', 'whether a leak can reach a home');
    },
});
