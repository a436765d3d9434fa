import { defineRule } from '../../define.js';

export default defineRule({
    name: 'cylinder-not-secured',
    family: 'storage',
    severity: 'warning',
    summary: 'Nothing keeps the cylinder from falling.',
    why: 'A valve knocked off turns a full cylinder into a rocket.',
    source: 'CGA P-1 and EIGA, from memory',
    on: 'cylinder',
    check(v, tell) {
        if (v.word('secured') === 'free-standing') tell({ at: v.at('secured'), message: `${v.name} stands free: chain or strap it, or lay it down in a cradle.` });
    },
});
