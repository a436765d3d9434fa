import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'tap-water-tops-up',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Water that is not pure goes into the lye.',
    why: 'Only water leaves; all that was dissolved in it stays, adds up, pits steel and clogs ports.',
    source: 'table of waters of this project, from memory',
    on: 'lye',
    check(v, tell) {
        const water = v.word('water');
        if (water === 'tap' || water === 'softened') tell({ at: v.at('water'), message: `${water === 'tap' ? 'Tap' : 'Softened'} water leaves its chloride and salts in the lye; they add up with every filling.`, fixes: defined(setValue(v, 'water', 'distilled', 'Plan distilled water')) });
    },
});
