import { how } from '../../records.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'stainless-anode-chromate',
    family: 'stack',
    severity: 'warning',
    summary: 'Stainless plates that make oxygen can let chromate into the lye.',
    why: 'Hexavalent chromium is poisonous and causes cancer; it colours the lye yellow, or not visibly at all.',
    source: 'waste limit 5.0 mg/L chromium: 40 CFR 261.24; release: from memory, amounts disputed',
    on: 'stack',
    check(v, tell) {
        const anode = v.word('anode-material') ?? v.word('plate.material') ?? '';
        if (!/^stainless/.test(anode)) return;
        if (v.all('test').some(t => /chrom/i.test(`${t.name} ${how(t)}`))) return;
        tell({ at: v.part.entries.has('anode-material') ? v.at('anode-material') : v.atSlot('plate.material'), message: 'Stainless plates that make oxygen can put chromate into the lye: treat it as poisonous until a chromium test says otherwise.' });
    },
});
