import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'arrestor-wrong-place',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The arrestor sits far from the flame, or before the bag.',
    why: 'Over a long hose a hydrogen flame gets so fast that it goes through the element; and a flame can settle between it and the bag.',
    source: 'length to the flame by the maker\'s word; 1 m: common practice, no source',
    guardsLife: true,
    on: 'arrestor',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        const after = v.paths.after(v.name, 'hydrogen');
        const flames = after.filter(n => ['burner', 'engine'].includes(v.other(n)?.kind ?? ''));
        const distance = v.maybe('distance');
        const bare = flames.find(f => {
            const between = v.paths.between(v.name, f, 'hydrogen').map(n => v.other(n)?.kind ?? '');
            return between.some(k => ['bag', 'gasometer', 'compressor', 'cylinder'].includes(k)) && !between.includes('arrestor');
        });
        if (bare) {
            const link = v.paths.to(bare, 'hydrogen')[0];
            tell({ at: v.paths.place(v.name, 'hydrogen') ?? v.at(), message: `${v.name} stands before the store; between the store and the flame of ${bare} there is none.`, related: link ? [{ span: link.to.span, message: 'the flame' }] : [] });
        } else if (distance > 1.0001) {
            tell({ at: v.at('distance'), message: `${v.name} sits ${show(distance, 'm')} from the flame; over more than about 1 m a hydrogen flame gets too fast for it.`, fixes: defined(setValue(v, 'distance', '0.5 m', 'Put it 0.5 m from the flame')) });
        } else if (flames.length && notGiven(v, 'distance')) tell.cannotCheck(v, 'distance', `whether ${v.name} is near enough to the flame`);
    },
});
