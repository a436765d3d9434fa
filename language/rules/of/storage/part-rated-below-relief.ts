import { defineRule } from '../../define.js';
import { guardedBy } from '../../relief.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'part-rated-below-relief',
    family: 'storage',
    severity: 'error',
    summary: 'A part on the same pressure bears less than the pressure at which the relief valve opens.',
    why: 'It is the weakest place, and nothing guards it.',
    source: 'weakest part of a section: Directive 2014/68/EU Annex I 2.11, from memory; derating with warmth by the maker',
    guardsLife: true,
    on: 'relief-valve',
    check(v, tell) {
        const set = v.maybe('set');
        if (set !== set || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        for (const p of guardedBy(v)) {
            if (!['filter', 'dryer', 'check-valve', 'valve', 'tube', 'arrestor', 'burner', 'unloader', 'fuel-cell'].includes(p.kind)) continue;
            const key = p.kind === 'fuel-cell' ? 'inlet-rating' : 'rating';
            const bears = p.maybe(key);
            if (tell.fallsShort(bears, set, 'bar', p, key)) tell({ at: p.at(key), message: `${p.name} bears ${show(bears, 'bar')}; ${v.name} opens only at ${show(set, 'bar')}.`, related: [{ span: v.at('set'), message: 'opens here' }] });
            else if (bears !== bears && p.kind !== 'burner') tell.cannotCheck(p, key, `whether ${p.name} bears the ${show(set, 'bar')} of ${v.name}`);
        }
    },
});
