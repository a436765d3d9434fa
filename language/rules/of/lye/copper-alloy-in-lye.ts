import { defineRule } from '../../define.js';

export default defineRule({
    name: 'copper-alloy-in-lye',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Copper or brass touches lye.',
    why: 'With oxygen in the lye it dissolves, plates out on the electrodes, and blue lye follows.',
    source: 'common practice, no source',
    on: ['stack', 'column', 'cooler', 'tube', 'scrubber', 'bubbler', 'link'],
    check(v, tell) {
        for (const key of ['material', 'plate.material', 'body.material', 'manifold.material']) {
            const m = v.word(key);
            if (!m || !/^(copper|brass|bronze)/.test(m)) continue;
            if (v.kind === 'tube' && !v.paths.mediaOf(v.name).has('lye')) continue;
            tell({ at: v.atSlot(key), message: `${m} dissolves slowly in lye and plates out in the stack.` });
        }
    },
});
