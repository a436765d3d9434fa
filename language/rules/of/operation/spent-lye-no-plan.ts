import { defineRule } from '../../define.js';

export default defineRule({
    name: 'spent-lye-no-plan',
    family: 'operation',
    severity: 'warning',
    summary: 'Nobody says where used lye goes.',
    why: 'It is corrosive waste, and from stainless anodes it can carry poisonous chromate.',
    source: '40 CFR 261.22 (pH 12.5 and above) and 261.24 (chromium 5 mg/L); local waste law',
    from: 'built',
    on: 'routine',
    check(v, tell) {
        if (!v.the('stack') || (v.said('spent-lye') && v.says('spent-lye') !== 'none')) return;
        const at = v.part.implied ? v.the('lye')?.at() ?? v.at() : v.at(v.part.entries.has('spent-lye') ? 'spent-lye' : undefined);
        tell({ at, message: 'Where used lye goes is not said: it is corrosive waste and belongs to a collection point, not down the drain.' });
    },
});
