import { defineRule } from '../../define.js';
import { digits, duration } from '../../../units/format.js';

export default defineRule({
    name: 'bag-too-small-short-cycles',
    family: 'buffer',
    severity: 'warning',
    summary: 'The compressor starts too often.',
    why: 'Each start heats its winding and leaves oil behind; starts, not hours, wear such machines out.',
    source: 'at most 12 starts an hour and runs of at least 2 min: a compressor maker\'s guide; told from 10 on, to leave room: common practice, no source',
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const compressor = v.all('compressor').find(c => v.paths.before(c.name, 'hydrogen').includes(v.name));
        const often = v.maybeQ('starts-per-hour');
        const starts = often * 3600;
        if (!compressor || !tell.exceeds(often, 10 / 3600, '/h', v, 'volume')) return;
        tell({ at: v.at('volume'), message: `${compressor.name} starts ${digits(starts, 2)} times an hour: full after ${duration(v.q('fill-time'))}, empty after ${duration(v.q('empty-time'))}; 10 is the limit.`, related: [{ span: compressor.at(), message: 'starts' }] });
    },
});
