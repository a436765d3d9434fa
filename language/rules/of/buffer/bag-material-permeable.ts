import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bag-material-permeable',
    family: 'buffer',
    severity: 'hint',
    summary: 'Hydrogen creeps out through the film of the bag, and air creeps in.',
    why: 'Gas that has stood for a day is less pure than it was, and what came in is air.',
    source: 'permeabilities of films from memory, within a factor of two; 2 % a day: common practice, no source',
    on: 'bag',
    check(v, tell) {
        const lost = v.maybeQ('lost-per-day');
        if (!v.paths.mediaOf(v.name).has('hydrogen') || !tell.exceeds(lost, 0.02, '%', v, 'material')) return;
        tell({ at: v.at('material'), message: `${v.name} loses ${lost < 1 ? `about ${show(lost, '%', 1)} of its hydrogen in a day` : 'its hydrogen within a day'} through ${show(v.num('thickness'), 'mm')} of ${v.word('material')}, and air creeps in; 2 % is little.` });
    },
});
