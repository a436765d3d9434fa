import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { materials } from '../../../vocabulary/materials.js';
import { oxygenDuty } from '../../oxygen.js';

export default defineRule({
    name: 'oxygen-line-unfit',
    family: 'storage',
    severity: 'error',
    summary: 'A part on oxygen that is pressed or burnt is of something that burns in it.',
    why: 'In oxygen under pressure rubber, nylon and aluminium burn like tinder; a grain of dust at a bend, or gas that is rammed against a dead end, is enough to light them.',
    source: 'EIGA Doc 33 and ASTM G63 and G94 for materials, from memory',
    guardsLife: true,
    on: ['tube', 'filter'],
    check(v, tell) {
        const duty = oxygenDuty(v);
        if (!duty) return;
        if (v.kind === 'filter') {
            if (v.word('sort') === 'oil') tell({ at: v.at('sort'), message: `${v.name} gathers oil in a line of oxygen: that is the fuel of the fire. Nothing that can carry oil over belongs before it.` });
            return;
        }
        const name = v.word('material') ?? '';
        if (notGiven(v, 'material')) tell.cannotCheck(v, 'material', `whether ${v.name} burns in oxygen`);
        const fit = materials.get(name)?.oxygen;
        // Behind a regulator hoses of rubber are made for oxygen; what its maker names decides there.
        if (fit !== 'no' && name !== 'aluminium' && !(fit === 'poor' && duty === 'pressed')) return;
        tell({ at: v.at('material'), severity: duty === 'pressed' ? 'error' : 'warning', message: `${v.name} is of ${name} and carries oxygen ${duty === 'pressed' ? 'under full pressure' : duty === 'reduced' ? 'from a store' : 'to a flame'}: it burns in it.` });
    },
});
