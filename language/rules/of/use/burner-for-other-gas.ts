import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'burner-for-other-gas',
    family: 'use',
    severity: 'error',
    summary: 'A burner made for another gas is fed with hydrogen.',
    why: 'Hydrogen burns about seven times as fast as natural gas: the flame runs back through the holes into the body of the burner.',
    source: 'burning velocity: hydrogen in air 2.7 to 3.3 m/s, methane 0.38 m/s (Edmondson & Heap), combustion handbooks',
    guardsLife: true,
    on: 'burner',
    check(v, tell) {
        const sort = v.word('sort') ?? '';
        if (!['natural-gas', 'LPG'].includes(sort) || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        tell({ at: v.at('sort'), message: `${v.name} is made for ${sort === 'LPG' ? 'LPG' : 'natural gas'}: a hydrogen flame runs back through its holes.`, fixes: defined(setValue(v, 'sort', 'diffusion', 'Plan a diffusion burner for hydrogen')) });
    },
});
