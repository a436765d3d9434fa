import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'plate-terminal-hot-spot',
    family: 'stack',
    severity: 'warning',
    summary: 'The terminal of an end plate gets hot, or the plate loses volts along itself.',
    why: 'Only the end plates carry current along themselves. Stainless steel and thin nickel resist it; a small stud presses all of it through a few square millimetres, works loose and burns the gasket.',
    source: 'Ohm; 1 A/mm² of bolted contact and 50 mV: common practice, no source',
    on: 'stack',
    check(v, tell) {
        if (!v.said('stud')) return; // speed only
        const density = v.maybeQ('terminal-density');
        const drop = v.maybeQ('end-plate-drop');
        if (tell.exceeds(density, 1e6, 'A/mm2', v, 'stud')) {
            tell({ at: v.at('stud'), message: `${show(density, 'A/mm2', 2)} flows through the contact of the terminal; 1 A/mm2 is the most that a bolted joint bears for hours.` });
        } else if (tell.exceeds(drop, 0.05, 'mV', v, 'stud')) {
            tell({ at: v.at('stud'), message: `About ${show(drop, 'mV', 2)} is lost along the end plate, 50 mV is the usual limit: a thicker end plate, or a copper bar along its dry side.` });
        }
    },
});
