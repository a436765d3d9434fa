import type { View } from '../../../quantities/view.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cable-unprotected',
    family: 'wiring',
    severity: 'error',
    summary: 'The cable bears less current than the fuse before it lets pass, or there is no fuse and the source can give more.',
    why: 'A fuse protects the cable; one that is too large lets the cable burn first.',
    source: 'IEC 60364-4-43, from memory; rough ampacity IEC 60364-5-52, from memory, ± 25 %',
    guardsLife: true,
    on: 'leads',
    check(v, tell) {
        const bears = v.q('ampacity');
        // Behind a converter another current flows: the fuse before it does not guard this cable.
        const apart = (f: View) => v.paths.between(f.name, v.name, 'current').some(n => ['supply', 'transformer', 'charger'].includes(v.other(n)?.kind ?? ''));
        const fuses = v.all('fuse').filter(f => !apart(f));
        const smallest = Math.min(...fuses.map(f => f.maybe('rating', Infinity)));
        const supply = v.the('supply');
        const limited = (supply?.maybe('current-limit', Infinity) ?? Infinity) <= bears;
        if (smallest < Infinity && tell.exceeds(smallest, 1.25 * bears, 'A', v, 'section')) {
            const f = fuses.find(x => x.maybe('rating') === smallest)!;
            tell({ at: v.at('section'), message: `${show(v.num('section'), 'mm2')} bears about ${show(bears, 'A', 2)}; the fuse before it lets ${show(smallest, 'A')} pass.`, related: [{ span: f.at('rating'), message: 'the fuse' }] });
        } else if (!fuses.length && !limited && (v.the('battery') || v.the('transformer'))) {
            tell({ at: v.at(), message: 'No fuse stands before this cable, and its source can give more than it bears.' });
        }
    },
});
