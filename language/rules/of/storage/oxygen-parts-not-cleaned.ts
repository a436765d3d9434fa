import { covers } from '../../records.js';
import { defineRule } from '../../define.js';
import { oxygenDuty } from '../../oxygen.js';
import type { View } from '../../../quantities/view.js';

/** Parts that come oiled or greasy unless somebody saw to it. */
const cleaned: ReadonlySet<string> = new Set(['tube', 'valve', 'check-valve', 'filter', 'tee', 'arrestor']);

export default defineRule({
    name: 'oxygen-parts-not-cleaned',
    family: 'storage',
    severity: 'warning',
    summary: 'Nothing shows that the parts on oxygen from a store were cleaned of oil and grease.',
    why: 'Oil lights by itself in oxygen under pressure. What comes off a lathe or out of a shop is oiled.',
    source: 'ASTM G93 and EIGA Doc 33 for cleaning, from memory',
    guardsLife: true,
    from: 'built',
    on: 'rig',
    check(v, tell) {
        const parts = v.paths.on('oxygen').map(n => v.other(n)).filter((p): p is View => !!p && cleaned.has(p.kind) && ['pressed', 'reduced'].includes(oxygenDuty(p) ?? ''));
        const done = [...v.all('service'), ...v.all('test')].filter(r => /clean|grease|\boil/i.test(`${r.given('what').facts.get('')?.text ?? ''} ${r.given('with').facts.get('')?.text ?? ''}`));
        const left = parts.filter(p => !done.some(r => covers(r, p.name)));
        if (!left.length) return;
        tell({ at: left[0].at(), message: `Nothing on record shows that ${left.slice(0, 3).map(p => p.name).join(', ')}${left.length > 3 ? ` and ${left.length - 3} more` : ''} ${left.length > 1 ? 'were' : 'was'} cleaned of oil and grease for oxygen.`, related: left.slice(1, 4).map(p => ({ span: p.at(), message: 'and this' })) });
    },
});
