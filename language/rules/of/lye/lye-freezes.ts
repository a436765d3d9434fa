import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'lye-freezes',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Lye or water freezes on the coldest day.',
    why: 'Ice breaks ports, columns and seals, and a frozen seal holds back what it should let out.',
    source: 'producers\' handbooks, from memory, ± 3 K; water 0 °C',
    on: 'lye',
    check(v, tell) {
        const coldest = v.the('site')?.maybe('coldest') ?? NaN;
        const freezes = v.maybeQ('freezing-point');
        if (coldest < freezes) tell({ at: v.at('strength'), message: `The lye freezes at ${show(freezes, '°C')}; it gets ${show(coldest, '°C')} there.` });
        if (!(coldest < 273.15) || v.the('site')?.says('coldest') === 'assumed') return;
        for (const s of [...v.all('seal'), ...v.all('bubbler'), ...v.all('scrubber')].filter(s => (s.word('fluid') ?? 'water') === 'water' && !s.part.pattern)) {
            tell({ at: s.at(s.said('fluid') ? 'fluid' : undefined), severity: s.kind === 'seal' ? 'warning' : 'hint', message: `${s.name} holds water, which freezes; it gets ${show(coldest, '°C')} there${s.kind === 'seal' ? ', and a frozen seal lets nothing out' : ''}.` });
        }
    },
});
