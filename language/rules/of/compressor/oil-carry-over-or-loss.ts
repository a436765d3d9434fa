import { append, defined } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { duration } from '../../../units/format.js';
import { freeName, insertBefore, together } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'oil-carry-over-or-loss',
    family: 'compressor',
    severity: 'warning',
    summary: 'Oil leaves the compressor with the gas, and nothing catches it or brings it back.',
    why: 'The oil fouls dryer, valves and burner, and the machine runs dry and seizes.',
    source: 'some tenths of a gram to 2 g in an hour: common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const oil = v.word('oil');
        const sealed = (v.word('sort') ?? '').startsWith('hermetic');
        if (oil === 'none' || v.says('oil') === 'none' || !oil && !sealed || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const store = v.all('cylinder').find(c => v.paths.route(v.name, c.name, 'hydrogen'));
        if (!store) return;
        const route = v.paths.route(v.name, store.name, 'hydrogen')!;
        const filter = route.map(n => v.other(n)).find(p => p?.kind === 'filter' && (p.word('sort') ?? 'oil') === 'oil');
        const hours = v.maybe('oil.charge') / v.maybe('oil.loss');
        const dry = hours === hours ? `; what it holds is gone after ${duration(hours)} of running` : '';
        if (filter) {
            if (!filter.yes('returns-oil')) tell({ at: filter.at('returns-oil'), severity: 'hint', message: `What ${filter.name} catches does not go back to ${v.name}${dry || ': it slowly runs dry'}.`, related: [{ span: v.at('oil'), message: 'the oil' }] });
            return;
        }
        const before = route.findIndex((n, i) => i > 0 && ['dryer', 'filter', 'check-valve', 'cylinder'].includes(v.other(n)?.kind ?? ''));
        const link = v.paths.link(route[before - 1], route[before], 'hydrogen')!;
        const name = freeName(v, 'oil-filter');
        tell({
            at: v.at('oil'), severity: missing(tell, 'warning'), message: `Nothing catches the oil that ${v.name} sends along with the gas${dry || '; it goes into ' + store.name}.`,
            fixes: defined(together('Plan an oil filter that returns it', append(v, `filter ${name} { sort: oil   returns-oil: yes   rating: unknown }`, ''), insertBefore(link, name, ''))),
        });
    },
});
