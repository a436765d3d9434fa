import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';
import { reliefsOf } from '../../relief.js';

export default defineRule({
    name: 'relief-isolated',
    family: 'storage',
    severity: 'error',
    summary: 'Something that can shut or clog stands between the cylinder and its relief valve, or behind it.',
    why: 'One closed handle, and the protection is not there.',
    source: 'no intervening stop valve: ASME BPVC VIII-1 UG-135(d), as cited; newer editions moved it',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const { open, shut } = reliefsOf(v);
        if (!open.length) {
            for (const { relief, by } of shut) {
                tell({ at: v.paths.place(by.name, 'hydrogen') ?? by.at(), severity: missing(tell, 'error'), message: `${by.name} stands between ${v.name} and ${relief.name}: ${by.kind === 'valve' ? 'shut' : by.kind === 'check-valve' ? 'holding' : 'clogged'}, it leaves ${v.name} without relief.`, related: [{ span: relief.at(), message: 'the relief valve' }] });
            }
        }
        for (const relief of [...open, ...shut.map(s => s.relief)]) {
            const out = v.paths.after(relief.name, 'hydrogen').find(n => ['valve', 'check-valve', 'filter', 'arrestor'].includes(v.other(n)?.kind ?? ''));
            if (out) tell({ at: v.paths.place(out, 'hydrogen') ?? relief.at(), severity: missing(tell, 'error'), message: `${out} stands behind ${relief.name}: ${v.other(out)!.kind === 'valve' ? 'shut' : 'clogged'}, it lets nothing out.`, related: [{ span: relief.at(), message: 'the relief valve' }] });
        }
    },
});
