import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'fuel-and-oxygen-stored-together',
    family: 'siting',
    severity: 'error',
    summary: 'Oxygen cylinders stand near the hydrogen store.',
    why: 'In a fire the one feeds the other.',
    source: '29 CFR 1910.253(b)(4)(iii): 6.1 m, or a wall 1.5 m high that stands half an hour of fire',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        if (!v.all('cylinder').some(c => v.paths.mediaOf(c.name).has('hydrogen'))) return;
        const entry = v.part.entries.get('oxygen-cylinders');
        for (const row of v.rows('oxygen-cylinders')) {
            const distance = row.get('distance')?.number ?? NaN;
            if (!(distance < 6.1) || !entry) continue;
            tell({ at: { ...entry.span, start: entry.span.start + (row.get('what')?.start ?? 0), end: entry.span.start + row.get('distance')!.end }, message: `Oxygen stands ${show(distance, 'm')} from the hydrogen store; 6.1 m is the rule, or a wall that stands half an hour of fire.` });
        }
    },
});
