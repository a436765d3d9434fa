import { show } from '../../../units/format.js';
import { sourceModel } from '../../../quantities/source.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'no-current-limit',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'Nothing limits the current, and on a hot day it climbs well above that of an ordinary day.',
    why: 'Lye conducts better as it warms, and a stiff source then gives more, which warms it further. Fuse, leads and ' +
        'cooling were chosen for less.',
    source: 'operating point of source and stack; 1.3 times: common practice, no source',
    under: ['supply-far-above-stack', 'supply-below-reversible'],
    on: 'stack',
    check(v, tell) {
        const source = v.model(sourceModel);
        if (!source || source.limited || source.kind === 'current') return;
        const usual = v.maybe('current', v.maybeQ('current'));
        const cold = v.maybeQ('current-cold');
        const hot = v.maybeQ('current-hot');
        if (!tell.exceeds(hot, 1.3 * usual, 'A', v, 'cells')) return;
        const from = v.other(source.part);
        const limit = Math.ceil(usual);
        tell({
            at: from?.at() ?? v.at('cells'),
            message: `${show(usual, 'A', 2)} becomes about ${show(hot, 'A', 2)} on the hottest ` +
                `day${cold > 0 && cold < usual ? ` (and ${show(cold, 'A', 2)} at a cold start)` : ''}: nothing limits it.`,
            fixes: defined(from?.kind === 'supply' ? setValue(from, 'current-limit', `${limit} A`, `Limit the current to ${limit} A`) : undefined),
        });
    },
});
