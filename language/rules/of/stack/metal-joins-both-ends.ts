import { metalInLye } from '../../../quantities/of/groups.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** A, below this the film of gas on the metal is no danger by its amount. Common practice, no source. */
const LITTLE = 0.02;

export default defineRule({
    name: 'metal-joins-both-ends',
    family: 'stack',
    severity: 'error',
    summary: 'Metal in the lye is joined to both ends of the stack, with all of its volts between them.',
    why: 'Metal between two points of lye that differ by more than about 1.5 V works as an electrode: it makes hydrogen at one end and oxygen at the other, in one vessel, and dissolves.',
    source: 'reversible voltage, LeRoy et al. 1980; Ohm for the lye of the hoses',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const metal = metalInLye(v);
        if (!metal) return;
        if (!v.word('hose-ends')) {
            tell.cannotCheck(v, 'hose-ends', `that ${metal.name}, of metal, does not join both ends of the stack`);
            return;
        }
        const current = v.maybeQ('metal-bridge-current');
        if (!(current > 0)) return;
        tell({
            at: metal.at('material'), severity: current > LITTLE ? 'error' : 'warning',
            related: [{ span: v.at('hose-ends'), message: 'hoses at both ends' }],
            message: `${metal.name} is of metal and its lye reaches both ends of the stack, ${show(v.q('voltage'), 'V')} apart: about ${show(current, 'A', 2)} can pass through the lye of the hoses and make both gases on the metal. Plastic, or hoses at one end.`,
        });
    },
});
