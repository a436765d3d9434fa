import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'site-not-stated',
    family: 'siting',
    severity: 'warning',
    summary: 'Nobody says where the rig stands.',
    why: 'The same rig is tolerable in the open and deadly in a cellar.',
    source: 'common practice, no source',
    on: 'rig',
    check(v, tell) {
        if (!v.the('stack') || v.word('place') || v.part.entries.has('place')) return;
        const title = v.written.pages[0].title?.span;
        tell({
            at: v.part.implied ? title ?? v.at() : v.at(), severity: missing(tell, 'warning'), message: 'Where does it stand? Outdoors, open-shelter, shed, garage, room: what a leak can do depends on it.',
            fixes: defined(v.part.implied ? undefined : setValue(v, 'place', 'open-shelter', 'Plan it in an open shelter')),
        });
    },
});
