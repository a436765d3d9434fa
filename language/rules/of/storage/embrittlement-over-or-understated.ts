import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'embrittlement-over-or-understated',
    family: 'storage',
    severity: 'hint',
    summary: 'The steel is too strong for hydrogen at this pressure, or too much is made of it at a low one.',
    why: 'Strong hard steel cracks in hydrogen under pressure. At some bar it is not steel that hurts people but air inside, a stuck relief valve or a fall.',
    source: 'below 50 bar outside of the tests of ISO 11114-4, as summarised; 950 MPa: ISO 11114-1, from memory',
    on: ['cylinder', 'claim'],
    check(v, tell) {
        if (v.kind === 'claim') {
            const stores = v.all('cylinder').filter(c => !c.part.pattern);
            const most = Math.max(...stores.map(c => c.maybe('rating')));
            if (!v.said('steel') || !(most < 5e6)) return;
            tell({ at: v.at('steel'), message: `At ${show(most, 'bar')} no special steel is needed: makers' tests for hydrogen begin at 50 bar. Mind the air inside, the relief valve and the date of the test instead.` });
            return;
        }
        const pressure = v.maybeQ('cut-off', v.maybe('rating'));
        const strength = v.maybe('steel');
        if (!v.paths.mediaOf(v.name).has('hydrogen') || !(pressure >= 5e6)) return;
        if (tell.exceeds(strength, 950e6, 'MPa', v, 'steel')) tell({ at: v.atSlot('steel'), severity: 'warning', message: `Steel of ${show(strength, 'MPa')} can crack in hydrogen of ${show(pressure, 'bar')}; 950 MPa is the limit for cylinders.` });
        else if (v.word('steel.seam') === 'welded') tell({ at: v.atSlot('steel.seam'), severity: 'warning', message: `${v.name} is welded and holds ${show(pressure, 'bar')}: hydrogen above 50 bar is kept in seamless cylinders that are marked for it.` });
    },
});
