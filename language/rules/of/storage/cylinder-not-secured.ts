import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'cylinder-not-secured',
    family: 'storage',
    severity: 'warning',
    summary: 'Nothing keeps the cylinder from falling.',
    why: 'A valve knocked off turns a full cylinder into a rocket with a flame behind it.',
    source: 'CGA P-1, from memory; caps on when not in use: 29 CFR 1910.253(b)(2)(iv)',
    on: 'cylinder',
    check(v, tell) {
        const says = v.word('secured');
        if (says === 'free-standing') tell({ at: v.at('secured'), message: `${v.name} stands free: chain it at two thirds of its height.`, fixes: defined(setValue(v, 'secured', 'chained', 'Chain it')) });
        else if (!says && tell.reached('built')) tell({ at: v.at(), severity: 'hint', message: `What keeps ${v.name} from falling?` });
    },
});
