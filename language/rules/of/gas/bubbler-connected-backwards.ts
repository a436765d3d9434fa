import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'bubbler-connected-backwards',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'The gas comes in above the liquid and leaves by the dip tube.',
    why: 'It pushes the liquid out into the next part: no seal, no flame stop, and lye where it does harm.',
    source: 'order of the ports',
    guardsLife: true,
    on: ['bubbler', 'scrubber'],
    check(v, tell) {
        if (v.word('enters') !== 'top') return;
        tell({ at: v.at('enters'), message: `Gas enters ${v.name} above its liquid and drives it out through the dip tube.`, fixes: defined(setValue(v, 'enters', 'dip-tube', 'Swap its two hoses')) });
    },
});
