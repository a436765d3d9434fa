import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'calcium-chloride-deliquesces',
    family: 'gas conditioning',
    severity: 'hint',
    summary: 'The desiccant turns to liquid, and nothing lets it out.',
    why: 'Calcium chloride and caustic soda melt in the water that they take. The brine cakes and shuts the way of the gas; the caustic burns like lye.',
    source: 'deliquescence, handbooks, from memory',
    on: 'dryer',
    check(v, tell) {
        const desiccant = v.word('desiccant');
        if ((desiccant !== 'CaCl2' && desiccant !== 'NaOH') || v.yes('drain') === true) return;
        tell({
            at: v.at('desiccant'),
            message: `${desiccant === 'CaCl2' ? 'Calcium chloride' : 'Caustic soda'} in ${v.name} melts in the water that it takes, and no drain lets the ${desiccant === 'CaCl2' ? 'brine' : 'caustic'} out: it cakes and blocks.`,
            fixes: defined(setValue(v, 'drain', 'yes', 'Give it a drain')),
        });
    },
});
