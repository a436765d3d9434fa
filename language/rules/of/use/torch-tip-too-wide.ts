import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { show } from '../../../units/format.js';

/** Speed at the tip over that of the flame that keeps it out while the flow dips. Common practice, no source. */
const FASTER = 3;

export default defineRule({
    name: 'torch-tip-too-wide',
    family: 'use',
    severity: 'warning',
    summary: 'Mixed gas leaves the tip more slowly than keeps the flame out.',
    why: 'Where the gas is slower than its flame, the flame runs up the tip into everything that holds the mixture.',
    source: 'burning velocity of hydrogen in air 2.65 m/s as in the table of combustion data; in oxygen about 10 m/s, from memory; factor 3: common practice, no source',
    guardsLife: true,
    on: 'burner',
    check(v, tell) {
        const sort = v.word('sort');
        if (sort !== 'torch-common-duct' && sort !== 'premix') return;
        for (const key of ['tip', 'flow']) if (notGiven(v, key)) tell.cannotCheck(v, key, `whether the flame runs back into ${v.name}`);
        const speed = v.maybeQ('tip-speed');
        const flame = v.q('flame-speed');
        if (!tell.fallsShort(speed, FASTER * flame, 'm/s', v, 'tip')) return;
        tell({
            at: v.at('tip'), severity: sort === 'torch-common-duct' || speed < flame ? 'error' : 'warning',
            message: `Mixed gas leaves the tip at ${show(speed, 'm/s')} and burns at about ${show(flame, 'm/s')}: ${speed < flame ? 'the flame runs back' : 'it runs back as soon as the flow dips'}. ${show(FASTER * flame, 'm/s', 2)} is wanted.`,
        });
    },
});
