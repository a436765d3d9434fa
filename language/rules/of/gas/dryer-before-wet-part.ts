import { defineRule } from '../../define.js';

export default defineRule({
    name: 'dryer-before-wet-part',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The gas goes through water again after the dryer.',
    why: 'It is as wet as before, and the dryer is used up for nothing.',
    source: 'order of the path',
    on: 'dryer',
    check(v, tell) {
        for (const gas of ['hydrogen', 'oxygen'] as const) {
            const wet = v.paths.after(v.name, gas).find(n => ['bubbler', 'scrubber'].includes(v.other(n)?.kind ?? '') &&
                v.paths.after(n, gas).some(m => ['bag', 'gasometer', 'compressor', 'cylinder', 'burner', 'fuel-cell', 'balloon', 'engine'].includes(v.other(m)?.kind ?? '')));
            if (!wet) continue;
            tell({ at: v.paths.place(v.name, gas) ?? v.at(), message: `${v.name} stands before ${wet}: the gas is wet again there.`, related: [{ span: v.paths.place(wet, gas)!, message: 'wets it again' }] });
        }
    },
});
