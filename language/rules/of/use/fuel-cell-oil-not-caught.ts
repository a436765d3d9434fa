import { defineRule } from '../../define.js';

export default defineRule({
    name: 'fuel-cell-oil-not-caught',
    family: 'use',
    severity: 'warning',
    summary: 'Gas that went through an oiled compressor reaches a fuel cell with nothing to catch the oil.',
    why: 'A film of oil covers catalyst and membrane, and no later cleaning brings them back.',
    source: 'limits for hydrocarbons in ISO 14687, from memory',
    on: 'fuel-cell',
    check(v, tell) {
        const before = v.paths.before(v.name, 'hydrogen');
        const compressor = before.map(n => v.other(n)).find(p => p?.kind === 'compressor');
        if (!compressor || compressor.says('oil') === 'none' || compressor.word('sort') === 'diaphragm') return;
        const filters = (v.paths.route(compressor.name, v.name, 'hydrogen') ?? []).map(n => v.other(n)).filter(p => p?.kind === 'filter').map(p => p!.word('sort'));
        const lacking = ['oil', 'carbon'].filter(s => !filters.includes(s));
        const link = v.paths.to(v.name, 'hydrogen')[0];
        if (!lacking.length || !link) return;
        tell({
            at: link.to.span,
            message: `${compressor.name} gives off oil, and the way from it to ${v.name} has no ${lacking.join(' and no ')} filter.`,
            related: [{ span: compressor.at(), message: 'where the oil comes from' }],
        });
    },
});
