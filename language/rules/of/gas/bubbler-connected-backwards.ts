import { defineRule } from '../../define.js';

export default defineRule({
    name: 'bubbler-connected-backwards',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'The gas comes in at the top and pushes the liquid out through the dip tube.',
    why: 'Lye water goes where gas should, and nothing stops a flame any more.',
    source: 'topology',
    guardsLife: true,
    on: ['bubbler', 'scrubber'],
    check(v, tell) {
        if (v.word('enters') === 'top') tell({ at: v.at('enters'), message: `Gas that enters ${v.name} by the top drives its liquid out through the dip tube.` });
    },
});
