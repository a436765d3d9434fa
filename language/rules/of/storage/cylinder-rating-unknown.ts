import { defineRule } from '../../define.js';

export default defineRule({
    name: 'cylinder-rating-unknown',
    family: 'storage',
    severity: 'error',
    summary: 'Nobody knows what pressure this vessel bears.',
    why: 'Wall, steel and history cannot be guessed from size or look. It bursts at what it bears, not at what is hoped for.',
    source: 'contents legibly marked: 29 CFR 1910.253(b)(1)(ii); marking of the limits: Directive 2014/68/EU Annex I 3.3, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const says = v.says('rating');
        if (says === 'unknown' || says === 'none') tell({ at: v.at('rating'), message: `The rating of ${v.name} is not known: it must not be filled. A test body can say what it bears.` });
        else if (says === 'silent') {
            if (tell.reached('built')) tell({ at: v.at(), message: `${v.name} has no rating: cut-off and relief cannot be checked, and it must not be filled.` });
            else tell.cannotCheck(v, 'rating', `what ${v.name} bears`);
        }
        const open = (['specification', 'permitted-gas'] as const).filter(key => ['silent', 'unknown', 'none'].includes(v.says(key)));
        if (open.length && tell.reached('built')) tell({ at: v.at(v.part.entries.has(open[0]) ? open[0] : undefined), severity: 'warning', message: `${v.name}: ${open.map(k => (k === 'specification' ? 'what it was built to' : 'which gas is stamped on it')).join(' and ')} is not given.` });
    },
});
