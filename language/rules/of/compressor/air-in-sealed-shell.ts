import { covers } from '../../records.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'air-in-sealed-shell',
    family: 'compressor',
    severity: 'error',
    summary: 'Nothing shows that the air was driven out of the closed shell before hydrogen came.',
    why: 'The motor stands in the gas. The first run mixes what was air with hydrogen, around a winding and an overload contact that can spark.',
    source: 'common practice, no source; 1 % oxygen before power: common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'compressor',
    check(v, tell) {
        if (!(v.word('sort') ?? '').startsWith('hermetic') || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        if (v.all('purge').some(p => covers(p, v.name))) return;
        tell({ at: v.at(), message: `No purge of ${v.name} is on record: its shell held ${show(v.num('shell-volume'), 'L', 2)} of air around its motor.`, related: v.said('shell-volume') ? [{ span: v.at('shell-volume'), message: 'its shell' }] : [] });
    },
});
