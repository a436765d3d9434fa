import { defineRule } from '../../define.js';
import { stores } from '../../place.js';

export default defineRule({
    name: 'permission-not-asked',
    family: 'siting',
    severity: 'hint',
    summary: 'Nobody has been asked whether hydrogen may be kept there.',
    why: 'Fire, building and pressure-equipment law, and the insurer, decide what may stand where; local rules can begin at zero.',
    source: 'local law; the US federal table for hydrogen begins at 400 ft³ (29 CFR 1910.103)',
    on: 'rig',
    check(v, tell) {
        if (!v.the('stack') || tell.stage === 'idea' || v.said('permission') || v.says('permission') === 'unknown') return;
        const kept = stores(v).filter(s => v.paths.mediaOf(s.name).has('hydrogen'));
        if (!kept.length) return;
        tell({ at: v.part.implied ? v.written.pages[0].title?.span ?? v.at() : v.at(), message: `Has the fire authority been asked, and the insurer? ${kept[0].name} keeps hydrogen; local rules decide.` });
    },
});
