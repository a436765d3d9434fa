import { defineRule } from '../../define.js';
import { digits, duration } from '../../../units/format.js';

export default defineRule({
    name: 'bag-too-small-short-cycles',
    family: 'buffer',
    severity: 'warning',
    summary: 'The compressor starts too often.',
    why: 'A small motor needs minutes to cool its starter; started sooner it hums, trips and burns out.',
    source: 'makers of hermetic machines give about 10 starts an hour and 5 min of rest, from memory',
    on: ['bag', 'gasometer'],
    check(v, tell) {
        const compressor = v.the('compressor');
        if (!compressor || !v.paths.before(compressor.name, 'hydrogen').includes(v.name)) return;
        const starts = v.maybeQ('starts-per-hour');
        const fill = v.maybeQ('fill-time');
        const rest = compressor.maybe('min-off');
        if (starts * 3600 > 10) tell({ at: v.at('volume'), message: `${compressor.name} starts ${digits(starts * 3600, 2)} times an hour on ${v.name}; about 10 is what such motors bear.` });
        else if (fill < rest) tell({ at: v.at('volume'), message: `${v.name} is full again after ${duration(fill)}, but ${compressor.name} must rest ${duration(rest)}.` });
    },
});
