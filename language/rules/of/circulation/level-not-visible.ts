import { defineRule } from '../../define.js';
import { setValue } from '../../fixes.js';
import type { View } from '../../../quantities/view.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'level-not-visible',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'The level of a column, bubbler or seal cannot be seen.',
    why: 'Every head and every gas path hangs on these levels. The hydrogen side alone does not show what the oxygen side does.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const hidden: View[] = [];
        for (const c of v.all('column')) {
            if (c.yes('sight') === false || c.says('sight') === 'none' || (tell.reached('built') && notGiven(c, 'sight'))) hidden.push(c);
        }
        for (const kind of ['bubbler', 'scrubber', 'seal']) {
            for (const b of v.all(kind)) {
                if (b.part.pattern || !b.paths.mediaOf(b.name).size) continue;
                if (b.says('level-shown') === 'none' || (tell.reached('built') && b.says('level-shown') === 'assumed')) hidden.push(b);
            }
        }
        if (!hidden.length) return;
        const first = hidden[0];
        const key = first.kind === 'column' ? 'sight' : 'level-shown';
        const names = hidden.map(h => h.name);
        const edits = hidden.flatMap(h => (h.kind === 'column' ? setValue(h, 'sight', 'yes') : setValue(h, 'level-shown', 'sight'))?.edits ?? []);
        tell({
            at: first.part.entries.has(key) ? first.at(key) : first.at(),
            related: hidden.slice(1).map(h => ({ span: h.at(), message: 'and here' })),
            message: `Nothing shows the level of ` +
                `${names.slice(0, 4).join(', ')}${names.length > 4 ? ` and ${names.length - 4} more` : ''}: a vessel that has run ` +
                'dry unseen neither seals nor stops a flame.',
            fixes: edits.length === hidden.length
                ? [{ title: hidden.length > 1 ? 'Give each a sight tube' : `Give ${first.name} a sight tube`, edits }]
                : [],
        });
    },
});
