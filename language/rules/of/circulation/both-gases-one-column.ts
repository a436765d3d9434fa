import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'both-gases-one-column',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'Hydrogen and oxygen rise into one vessel, with no dividing wall deep enough between them.',
    why: 'Their mixture detonates from a spark that nobody sees.',
    source: 'hydrogen burns in oxygen from 4 to 94 %, from memory; 50 mm under the lowest level: common practice, no source',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        if (!media.has('hydrogen') || !media.has('oxygen')) return;
        const divider = v.maybe('divider');
        if (divider >= 0.05) return;
        const place = v.paths.place(v.name, 'oxygen') ?? v.at();
        const related = [{ span: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: 'hydrogen comes in here' }];
        if (divider === divider) {
            tell({
                at: v.at('divider'),
                related,
                message: `The wall in ${v.name} reaches ${show(divider, 'mm')} under the lowest level; 50 mm is the least. Below it the ` +
                    'two gases meet.',
                fixes: defined(setValue(v, 'divider', '80 mm', 'Let the wall reach 80 mm under the lowest level')),
            });
        } else tell({ at: place, related, message: `Hydrogen and oxygen both rise into ${v.name}, and nothing in it keeps them apart.` });
    },
});
