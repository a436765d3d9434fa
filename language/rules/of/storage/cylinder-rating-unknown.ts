import { defineRule } from '../../define.js';

export default defineRule({
    name: 'cylinder-rating-unknown',
    family: 'storage',
    severity: 'error',
    summary: 'Nobody knows what pressure this vessel bears.',
    why: 'A vessel bursts at what it bears, not at what is hoped for; the pieces kill.',
    source: 'pressure equipment law everywhere marks the vessel with its limits, e.g. Directive 2014/68/EU Annex I 3.3, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const says = v.says('rating');
        if (says === 'unknown' || says === 'none') tell({ at: v.at('rating'), message: `The rating of ${v.name} is not known: it must not be filled. A test body can say what it bears.` });
        else if (says === 'silent' || says === 'broken') tell.cannotCheck(v, 'rating', `what ${v.name} bears`);
    },
});
