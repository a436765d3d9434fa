import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'stored-energy-note',
    family: 'storage',
    severity: 'hint',
    summary: 'How much energy stands in the cylinder.',
    why: 'It gives the scale for where it may stand.',
    source: 'lower heating value: CODATA Key Values; work of expansion: textbook; 25 bar L: Directive 2014/68/EU, from memory',
    on: 'cylinder',
    check(v, tell) {
        if (!(v.maybeQ('pressure-volume') > 2500)) return;
        const chem = v.maybeQ('stored-energy');
        const burst = v.maybeQ('burst-energy');
        tell({ at: v.at('volume'), message: `Full it holds ${show(v.q('stored-gas'), 'NL')}: ${show(chem, 'MJ', 2)} when burnt, ${show(burst, 'kJ', 2)} if it bursts. From 25 bar L on, pressure equipment law asks more.` });
    },
});
