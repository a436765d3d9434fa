import { cutOffOf, reliefsOf } from '../../relief.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relief-set-point-order',
    family: 'storage',
    severity: 'error',
    summary: 'Cut-off, relief valve and rating stand in the wrong order or too close.',
    why: 'A relief valve above the rating guards nothing. One close to the cut-off weeps hydrogen in every cycle, until its owner plugs it.',
    source: 'set at or below the rating: ASME BPVC VIII-1 UG-134, as cited; 10 % between working and set pressure for spring valves, 3 % for pilot types',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const rating = v.maybe('rating');
        const cut = cutOffOf(v);
        const off = v.maybeQ('cut-off');
        for (const relief of reliefsOf(v).open) {
            const set = relief.maybe('set');
            if (set !== set) {
                tell.cannotCheck(relief, 'set', `whether ${relief.name} guards ${v.name}`);
                continue;
            }
            if (set > rating * 1.0001) tell({ at: relief.at('set'), message: `${relief.name} opens at ${show(set, 'bar')}; ${v.name} bears ${show(rating, 'bar')}.`, related: [{ span: v.at('rating'), message: 'its rating' }] });
            if (!cut || !(off > 0.9 * set * 1.0001) || off > rating) continue;
            const lower = Math.floor(0.9 * Math.min(set, rating) / 10000) * 10000;
            tell({
                at: cut.device.at(cut.key), severity: off >= set ? 'error' : 'warning',
                message: off >= set ? `${relief.name} opens at ${show(set, 'bar')}, before the cut-off at ${show(off, 'bar')}: it lets gas out in every fill.` : `The cut-off at ${show(off, 'bar')} is within 10 % of ${relief.name} at ${show(set, 'bar')}: it weeps in every fill; ${show(0.9 * set, 'bar')} is the limit.`,
                related: [{ span: relief.at('set'), message: 'opens here' }], fixes: defined(setValue(cut.device, cut.key, `above ${show(lower, 'bar')}`, `Set the cut-off to ${show(lower, 'bar')}`)),
            });
        }
    },
});
