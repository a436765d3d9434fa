import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** Current of the better group over the mean, from which it is told. Common practice, no source. */
const TOLD = 1.25;

export default defineRule({
    name: 'groups-share-unequally',
    family: 'stack',
    severity: 'warning',
    summary: 'One of several groups takes much more of the current than the others.',
    why: 'Groups side by side share one voltage. The better group takes more, warms more, and so takes still more; the others make little and impure gas.',
    source: 'Kirchhoff with the curve of the stack; a quarter above the mean: common practice, no source',
    on: 'stack',
    check(v, tell) {
        if (!(v.maybe('groups', 1) > 1)) return; // speed only
        const share = v.maybeQ('group-share');
        const stated = v.said('better-group');
        if (!tell.exceeds(share, TOLD, '%', v, stated ? 'better-group' : 'groups')) return;
        tell({
            at: stated ? v.at('better-group') : v.at('groups'), severity: stated ? 'warning' : 'hint',
            message: `${stated ? 'The better group' : 'With the usual spread of cells the better group'} takes about ${show(v.q('better-group-current'), 'A', 2)} of ${show(v.q('current'), 'A', 2)}; ` +
                `alike it would be ${show(v.q('current-per-group'), 'A', 2)}. A supply or a limit for each group keeps them alike; so do equal leads that lose a little.`,
        });
    },
});
