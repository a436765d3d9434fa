import { defineRule } from '../../define.js';
import { stores } from '../../place.js';

export default defineRule({
    name: 'permission-not-asked',
    family: 'siting',
    severity: 'hint',
    summary: 'Nobody has been asked whether hydrogen may be kept there, or the answer was no.',
    why: 'Fire, building and pressure-equipment law, and the insurer, decide what may stand where; local rules can begin at zero.',
    source: 'local law; the US federal table for hydrogen begins at 400 ft³ (29 CFR 1910.103)',
    on: 'rig',
    check(v, tell) {
        if (!v.the('stack') || tell.stage === 'idea') return;
        for (const [key, who] of [['permission', 'Whoever decides has'], ['insurer', 'The insurer has']] as const) {
            if (v.word(key) === 'refused') tell({ at: v.at(key), severity: key === 'permission' ? 'error' : 'warning', message: `${who} refused: what was refused is not to be run there.` });
        }
        const answer = v.word('permission');
        if (v.says('permission') === 'unknown' || (v.said('permission') && answer !== 'no' && answer !== 'asked')) return;
        if (answer === 'asked' && !tell.reached('running')) return;
        const kept = stores(v).filter(s => v.paths.mediaOf(s.name).has('hydrogen'));
        if (!kept.length) return;
        if (answer === 'asked') tell({ at: v.at('permission'), severity: 'warning', message: `It runs, and ${kept[0].name} keeps hydrogen, before the answer to the question has come.` });
        else tell({ at: answer === 'no' ? v.at('permission') : v.part.implied ? v.written.pages[0].title?.span ?? v.at() : v.at(), message: `Has the fire authority been asked, and the insurer? ${kept[0].name} keeps hydrogen; local rules decide.` });
    },
});
