import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'below-thermoneutral-claim',
    family: 'stack',
    severity: 'warning',
    summary: 'A claimed voltage would let the stack cool itself.',
    why: 'Splitting water takes heat as well as work. Below the thermoneutral voltage the missing part must flow in as heat, or the lye gets cold and the current falls. Mixing both floors up gives efficiencies above 100 %.',
    source: 'thermoneutral voltage 1.48 V at 25 °C from the enthalpy of water, CODATA Key Values; LeRoy et al. 1980',
    under: ['efficiency-over-100'],
    on: 'claim',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const neutral = stack.maybeQ('thermoneutral-voltage', 1.481);
        const floor = stack.maybeQ('reversible-voltage', 1.229);
        const volts = v.part.entries.get(`${stack.name}.volts-per-cell`);
        const claimed = volts && tell.workings.amountOf(volts)?.si;
        if (volts && claimed! >= floor && claimed! < neutral) {
            const heat = (neutral - claimed!) * stack.maybeQ('current-per-group') * stack.maybeQ('cells-total');
            tell({ at: volts.span, message: `At ${show(claimed!, 'V')} a cell the stack would cool itself: below ${show(neutral, 'V')} heat must flow in${heat > 0 ? `, here about ${show(heat, 'W', 2)}` : ''}. Is there a heater, or was almost no current flowing?` });
        }
        const energy = v.part.entries.get(`${stack.name}.energy-per-volume`);
        const spent = energy && tell.workings.amountOf(energy)?.si;
        if (energy && spent! >= KWH_PER_VOLT * floor && spent! < KWH_PER_VOLT * neutral) {
            tell({ at: energy.span, message: `${show(spent!, 'kWh/m3')} is less than the ${show(KWH_PER_VOLT * neutral, 'kWh/m3')} that leave with the gas: the rest would have to flow in as heat. Was the gas counted wet, warm or with the oxygen?` });
        }
    },
});

/** J for each m³ (0 °C, 101.325 kPa, dry) and volt: 2F times the moles in it. */
const KWH_PER_VOLT = 2.3915 * 3.6e6;
