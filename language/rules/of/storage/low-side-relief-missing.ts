import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'low-side-relief-missing',
    family: 'storage',
    severity: 'warning',
    summary: 'Behind the regulator nothing lets the pressure out when it creeps.',
    why: 'The seat of a regulator leaks one day, and the pressure of the store stands on a hose made for one bar.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'regulator',
    check(v, tell) {
        const store = v.all('cylinder').find(c => v.paths.route(c.name, v.name, 'hydrogen'));
        if (!store || v.maybe('has-relief') > 0) return;
        const after = v.paths.after(v.name, 'hydrogen').map(n => v.other(n)).filter((p): p is View => !!p);
        if (after.some(p => p.kind === 'relief-valve') || !after.length) return;
        const pressure = store.maybeQ('cut-off', store.maybe('rating'));
        const bears = (p: View) => (p.kind === 'fuel-cell' ? p.maybe('inlet-rating') : ['tube', 'valve', 'arrestor', 'burner', 'filter', 'dryer', 'check-valve'].includes(p.kind) ? p.maybe('rating') : p.kind === 'balloon' ? 0 : Infinity);
        const weak = after.filter(p => bears(p) < pressure).sort((a, b) => bears(a) - bears(b))[0] ?? after.find(p => !(bears(p) >= pressure));
        if (!weak) return;
        tell({
            at: v.at(v.part.entries.has('has-relief') ? 'has-relief' : undefined), severity: missing(tell, 'warning'),
            message: `When ${v.name} creeps, ${pressure === pressure ? show(pressure, 'bar') : 'the pressure of the store'} stands on ${weak.name}${bears(weak) >= 0 && bears(weak) < Infinity && weak.kind !== 'balloon' ? `, which bears ${show(bears(weak), 'bar')}` : ''}; no relief valve stands behind it${v.says('has-relief') === 'none' ? '' : ', and none built in is named'}.`,
            related: [{ span: weak.at(), message: 'the weakest behind it' }],
        });
    },
});
