import { defineRule } from '../../define.js';
import { duration, show } from '../../../units/format.js';

export default defineRule({
    name: 'bag-run-too-short',
    family: 'buffer',
    severity: 'warning',
    summary: 'Each run of the compressor is shorter than two minutes.',
    why: 'The oil does not come back in so short a run, and the unloading takes a part of it.',
    source: 'runs of at least 2 min: a compressor maker\'s guide',
    under: ['bag-too-small-short-cycles'],
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const compressor = v.all('compressor').find(c => v.paths.before(c.name, 'hydrogen').includes(v.name));
        const run = v.maybeQ('empty-time');
        if (!compressor || !(run > 0) || !tell.fallsShort(run, 120, 's', v, 'volume')) return;
        const wanted = v.q('usable') * 120 / run;
        tell({ at: v.at('volume'), message: `A run lasts ${duration(run)}; 2 min is the least, which takes ${show(wanted, 'L', 2)} between full and empty.`, related: [{ span: compressor.at(), message: 'runs' }] });
    },
});
