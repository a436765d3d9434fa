import { defineRule } from '../../define.js';
import { notGiven, onceBuilt } from '../../stage.js';

export default defineRule({
    name: 'previous-gas-left',
    family: 'storage',
    severity: 'error',
    summary: 'What was in the cylinder before mixes with the hydrogen.',
    why: 'Oxygen or air inside burns with the first filling; oil and fuel stay in the pores; an acetylene cylinder is full of solvent.',
    source: 'change of gas service: ISO 11621, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const was = v.word('previous');
        // A vessel that is only drawn on is another's: it comes full from whoever fills it.
        if (!was && notGiven(v, 'previous') && v.paths.to(v.name, 'hydrogen').length) tell.cannotCheck(v, 'previous', `what ${v.name} held before`);
        if (!was || ['new', 'hydrogen', 'nitrogen', 'argon', 'helium'].includes(was)) return;
        const purged = v.all('purge').some(p => p.names('covers').includes(v.name));
        if (was === 'air' && purged) return;
        tell({
            at: v.at('previous'), severity: was === 'air' || was === 'carbon-dioxide' ? onceBuilt(tell, 'error', 'warning') : 'error',
            message: was === 'air' ? `${v.name} held air, and no purge of it is on record: the first filling passes through what explodes.` : `${v.name} held ${was} before: emptying, cleaning and passing it for hydrogen is the business of a test body.`,
        });
    },
});
