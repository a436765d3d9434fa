import { defineRule } from '../../define.js';

export default defineRule({
    name: 'relief-isolated',
    family: 'storage',
    severity: 'error',
    summary: 'Something that can shut stands between the vessel and its relief valve, or behind the relief valve.',
    why: 'A relief valve behind a shut valve, a check valve or a clogged filter is not there.',
    source: 'ASME BPVC VIII-1 UG-135 and API 520-2, from memory',
    guardsLife: true,
    on: 'relief-valve',
    check(v, tell) {
        const shutting = ['valve', 'check-valve', 'filter', 'dryer', 'arrestor', 'bubbler'];
        const name = (n: string) => shutting.includes(v.other(n)?.kind ?? '');
        const vessels = v.all('cylinder').filter(c => v.paths.route(c.name, v.name, 'hydrogen') && !v.paths.between(c.name, v.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator'));
        for (const c of vessels) {
            const way = v.paths.between(c.name, v.name, 'hydrogen').find(name);
            if (way) tell({ at: v.paths.place(way, 'hydrogen') ?? v.at(), message: `${way} stands between ${c.name} and ${v.name}: shut or clogged, nothing relieves ${c.name}.`, related: [{ span: v.at(), message: 'the relief valve' }] });
        }
        const out = v.paths.after(v.name, 'hydrogen').find(n => v.other(n)?.kind === 'valve' || v.other(n)?.kind === 'check-valve');
        if (out) tell({ at: v.paths.place(out, 'hydrogen') ?? v.at(), message: `${out} stands behind ${v.name}: shut, nothing gets out.` });
    },
});
