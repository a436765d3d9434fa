import { defineRule } from '../../define.js';

export default defineRule({
    name: 'previous-gas-left',
    family: 'storage',
    severity: 'error',
    summary: 'What was in the cylinder before mixes with the hydrogen.',
    why: 'Oxygen or air inside burns with the first filling; oil and fuel stay in the pores; acetylene cylinders are full of solvent.',
    source: 'ISO 11621, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const was = v.word('previous');
        if (!was || ['new', 'hydrogen', 'nitrogen', 'argon', 'helium'].includes(was)) return;
        const purged = v.all('purge').some(p => p.names('covers').includes(v.name));
        if (was === 'air' && purged) return;
        tell({ at: v.at('previous'), severity: was === 'air' || was === 'carbon-dioxide' ? 'warning' : 'error', message: was === 'air' ? `${v.name} had air in it and no purge of it is on record: the first filling is a flammable mixture.` : `${v.name} held ${was} before; a change of gas is the business of a test body.` });
    },
});
