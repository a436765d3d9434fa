import { defined, setValue } from '../../fixes.js';
import { stores } from '../../place.js';
import { onceBuilt } from '../../stage.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'access-not-controlled',
    family: 'siting',
    severity: 'warning',
    summary: 'Anybody can walk up to the rig.',
    why: 'Children and visitors turn valves and bring flames; they cannot know what it is.',
    source: 'common practice, no source; placard at a hydrogen store: 29 CFR 1910.103, from memory',
    on: 'rig',
    check(v, tell) {
        if (!v.the('stack')) return;
        const locked = v.yes('lock');
        const audience = v.the('purpose')?.word('audience');
        const strangers = audience === 'children' || audience === 'public';
        const kept = stores(v).filter(s => v.paths.mediaOf(s.name).has('hydrogen'));
        if (!kept.length && !strangers) return;
        if (locked === false) {
            tell({ at: v.at('lock'), severity: onceBuilt(tell, strangers ? 'warning' : 'hint', 'hint'), message: `It cannot be locked${strangers ? `, and ${audience === 'children' ? 'children' : 'the public'} come near` : `, and ${kept[0].name} keeps hydrogen`}.`, fixes: defined(setValue(v, 'lock', 'yes', 'Plan a lock')) });
        } else if (locked === undefined && strangers && tell.reached('built')) tell({ at: v.part.implied ? v.the('purpose')!.at('audience') : v.at(), message: `${audience === 'children' ? 'Children' : 'The public'} come near, and nothing says that the rig can be locked.` });
        if (v.yes('sign') === false && kept.length) tell({ at: v.at('sign'), severity: 'hint', message: `No sign tells that ${kept[0].name} keeps hydrogen: no flames, no smoking.`, fixes: defined(setValue(v, 'sign', 'yes', 'Plan a sign')) });
    },
});
