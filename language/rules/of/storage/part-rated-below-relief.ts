import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'part-rated-below-relief',
    family: 'storage',
    severity: 'error',
    summary: 'A part on the high side bears less than the pressure at which the relief valve opens.',
    why: 'It is then the weakest place, and the relief valve does not guard it.',
    source: 'Directive 2014/68/EU Annex I 2.11, from memory',
    guardsLife: true,
    on: ['filter', 'dryer', 'check-valve', 'valve', 'tube', 'unloader', 'regulator', 'arrestor'],
    check(v, tell) {
        const key = v.kind === 'regulator' ? 'inlet-rating' : 'rating';
        const rating = v.maybe(key);
        const high = v.paths.before(v.name, 'hydrogen').some(n => v.other(n)?.kind === 'compressor') ||
            v.all('cylinder').some(c => v.paths.route(c.name, v.name, 'hydrogen') && !v.paths.between(c.name, v.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator'));
        if (!high || v.paths.before(v.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator')) return;
        const guards = v.all('cylinder').flatMap(c => v.all('relief-valve').filter(r => v.paths.route(c.name, r.name, 'hydrogen') && !v.paths.between(c.name, r.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator')));
        const set = Math.max(-Infinity, ...guards.map(r => r.maybe('set', -Infinity)));
        if (rating < set) tell({ at: v.at(key), message: `${v.name} bears ${show(rating, 'bar')}, but the relief valve opens only at ${show(set, 'bar')}.`, related: guards.map(g => ({ span: g.at('set'), message: 'opens here' })) });
    },
});
