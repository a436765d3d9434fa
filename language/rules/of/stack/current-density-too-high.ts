import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'current-density-too-high',
    family: 'stack',
    severity: 'warning',
    summary: 'More current on each square centimetre than plates with a gap bear.',
    why: 'Bubbles blanket the plates, the lye foams, and the volts climb with the heat.',
    source: 'classic range of industrial cells, from memory; 250 mA/cm2 for plain stainless: common practice, no source',
    under: ['supply-far-above-stack'],
    on: 'stack',
    check(v, tell) {
        const j = v.q('current-density');
        const steel = /^stainless/.test(v.word('plate.material') ?? '');
        const limit = v.maybe('gap') === 0 ? 10000 : steel ? 2500 : 4000;
        if (!tell.exceeds(j, limit, 'mA/cm2', v, 'wetted')) return;
        tell({ at: v.at('wetted'), message: `${show(j, 'mA/cm2')} is above ${show(limit, 'mA/cm2')}, about what ${steel ? 'plain stainless' : 'plates with a gap'} bear: foam, heat and lost volts follow.` });
    },
});
