import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'torch-two-gases',
    family: 'use',
    severity: 'warning',
    summary: 'Two gases meet at a torch, and a line lacks its non-return valve or its arrestor.',
    why: 'The gas of higher pressure pushes back into the other line, and a flame follows it.',
    source: 'EN ISO 5175-1: non-return valve and flame arrestor in each line, as described by gas industry leaflets',
    guardsLife: true,
    on: 'burner',
    check(v, tell) {
        if (v.word('sort') !== 'torch-two-gas') return;
        for (const gas of ['hydrogen', 'oxygen'] as const) {
            if (!v.paths.mediaOf(v.name).has(gas)) continue;
            const before = v.paths.before(v.name, gas).map(n => v.other(n)?.kind);
            const own = v.rows('lines').find(r => r.get('gas')?.word === gas)?.get('')?.word;
            const lacking = [!before.includes('check-valve') && own !== 'both' && own !== 'check-valve' && 'a non-return valve', !before.includes('arrestor') && own !== 'both' && own !== 'arrestor' && 'an arrestor'].filter(Boolean);
            if (!lacking.length) continue;
            tell({ at: v.paths.place(v.name, gas) ?? v.at(), severity: missing(tell, 'warning'), message: `The ${gas} line of ${v.name} lacks ${lacking.join(' and ')}: each of the two lines needs both.` });
        }
    },
});
