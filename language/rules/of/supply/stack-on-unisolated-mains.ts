import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'stack-on-unisolated-mains',
    family: 'electrical supply',
    severity: 'error',
    summary: 'The stack is fed from the mains without separation: plates, lye, columns and hoses are live.',
    why: 'Lye conducts. Touching a wet fitting then means touching the mains, and that kills.',
    source: 'IEC 61140 and IEC 60364-4-41, 411.7.4 (a source without simple separation is part of the mains circuit), from memory',
    guardsLife: true,
    on: ['supply', 'transformer'],
    check(v, tell) {
        const sort = v.word('sort');
        const at = v.part.entries.has('sort') ? v.at('sort') : v.at();
        if (sort === 'direct-mains' || sort === 'autotransformer') {
            tell({ at, message: `${sort === 'autotransformer' ? 'An autotransformer does' : 'A rectifier on the mains does'} not keep the mains apart: the whole wet stack would be live. An isolating transformer or isolated supply must stand between.` });
            return;
        }
        if (v.kind === 'supply' && v.yes('isolated') === false) tell({ at: v.at('isolated'), message: `${v.name} is not isolated from the mains: the whole wet stack would be live.` });
        if (v.kind === 'transformer' && v.yes('insulated-from-core') === false) tell({ at: v.at('insulated-from-core'), message: `The winding of ${v.name} is not insulated from its core: the stack would be live.` });
        if (v.kind === 'transformer' && (sort === 'rewound' || sort === 'welder') && notGiven(v, 'insulated-from-core')) tell.cannotCheck(v, 'insulated-from-core', 'that the stack is kept apart from the mains');
        if (v.kind === 'supply' && !['bench', 'switch-mode', 'converter'].includes(sort ?? '') && notGiven(v, 'isolated')) tell.cannotCheck(v, 'isolated', 'that the stack is kept apart from the mains');
    },
});
