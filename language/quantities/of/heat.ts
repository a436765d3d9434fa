/** Heat made, where it goes, how warm it gets and how soon. */
import { defineQuantity } from '../define.js';
import { capacityDoubt } from '../doubts.js';
import { hottestPoint, operatingPoint, stackMake } from '../operating-point.js';

/** Volume of plates, frames, boards and rods over that of the cells between their wetted faces; and what a cubic metre of them takes to
 *  warm, J/(m³·K), between polypropylene (1.7e6) and steel (3.9e6, handbook values, from memory). Own choice, no source. */
const FRAMES = 1.8;
const SOLID_HEAT = 2.4e6;

const balance = 'electrical power - enthalpy of the gases and vapour = loss of the surfaces (free convection and radiation) + cooler';
const sources = 'LeRoy 1980; Churchill & Chu 1975; vessels without a description counted after Diéguez 2008, second-hand; ± 30 %';

export default [
    defineQuantity({ name: 'temperature', of: 'stack', measure: 'temperature', meaning: 'Temperature of the lye after hours in a room of 20 °C, or as stated.', formula: balance, source: sources, shownAt: 'header', shownAs: '', work: q => {
        const p = q.model(operatingPoint);
        if (!p) return NaN;
        return q.says('temperature') === 'stated' ? p.temperature : { value: p.temperature, remarks: p.runsAway ? ['No steady temperature below boiling was found: the current must be limited or the heat led away.'] : [] };
    } }),
    defineQuantity({ name: 'steady-temperature', of: 'stack', measure: 'temperature', meaning: 'Temperature after hours on the hottest day of the site, controls of the cooling in force.', formula: balance, source: sources, shownAt: 'max-temperature', shownAs: 'hottest day', work: q => {
        const p = q.model(hottestPoint);
        if (!p) return NaN;
        return { value: p.temperature, remarks: p.runsAway ? ['No steady temperature below boiling was found on the hottest day.'] : [] };
    } }),
    defineQuantity({ name: 'heat', of: 'stack', measure: 'power', meaning: 'Heat that stays in the stack: electrical power less what the gases and the vapour carry away as energy.', formula: 'V I - 2F x hydrogen x enthalpy voltage with vapour', source: 'LeRoy 1980', work: q => q.model(operatingPoint)?.heat ?? NaN }),
    defineQuantity({ name: 'surface-loss', of: 'stack', measure: 'power', meaning: 'Heat that the surfaces of stack, vessels and hoses give to the room.', formula: 'free convection and radiation', source: sources, work: q => q.model(operatingPoint)?.loss ?? NaN }),
    defineQuantity({ name: 'surface-conductance', of: 'stack', measure: 'thermal-conductance', meaning: 'That loss for each kelvin over the room.', formula: 'surface loss / (temperature - room)', source: sources, work: q => {
        const p = q.model(operatingPoint);
        return p && p.temperature > p.room ? p.loss / (p.temperature - p.room) : NaN;
    } }),
    defineQuantity({ name: 'cooler-duty', of: 'stack', measure: 'power', meaning: 'Heat that the coolers take on the hottest day.', formula: 'counterflow effectiveness', source: 'Kays & London; coefficient stated or assumed', work: q => q.model(hottestPoint)?.cooling ?? NaN }),
    defineQuantity({ name: 'heat-capacity-total', of: 'stack', measure: 'heat-capacity', unit: 'kJ/K', meaning: 'Heat that warms stack and lye by one kelvin.', formula: 'lye by mass, plates and frames by volume', source: 'sum of masses, ± 40 %; one measured stack with its vessels has 120 kJ/K per m² of cell area (Ulleberg 2003)', work: q => {
        const stated = q.maybe('heat-capacity');
        if (stated === stated) return stated;
        const make = q.model(stackMake);
        const lye = q.the('lye');
        if (!make || !lye) return NaN;
        const fill = lye.maybe('fill');
        const volume = fill === fill ? fill : q.q('lye-needed');
        const solid = (1 + q.doubt(capacityDoubt)) * make.area * FRAMES * make.cells * make.groups * make.pitch * SOLID_HEAT;
        return volume * lye.q('density') * lye.q('heat-capacity') + solid;
    } }),
    defineQuantity({ name: 'time-constant', of: 'stack', measure: 'time', unit: 'h', meaning: 'Time in which two thirds of the warming are done. A test shorter than twice this shows too little.', formula: 'heat capacity / surface conductance', source: 'definition', work: q => q.q('heat-capacity-total') / q.q('surface-conductance') }),
    defineQuantity({ name: 'warm-up-time', of: 'stack', measure: 'time', unit: 'h', meaning: 'Time from cold to within a tenth of the steady temperature.', formula: 'ln 10 x time constant', source: 'exponential approach', work: q => Math.LN10 * q.q('time-constant') }),
    defineQuantity({ name: 'duty', of: 'cooler', measure: 'power', meaning: 'Heat that this cooler takes on the hottest day, shared equally among the coolers.', formula: 'as stack.cooler-duty', source: 'Kays & London', shownAt: 'length', shownAs: 'takes', work: q => (q.the('stack')?.q('cooler-duty') ?? NaN) / Math.max(1, q.all('cooler').length) }),
    defineQuantity({ name: 'needed', of: 'cooler', measure: 'power', meaning: 'Heat that must be led away on the hottest day so that the stack stays at its highest allowed temperature.', formula: 'heat made - loss of the surfaces at that temperature', source: sources, work: q => {
        const stack = q.the('stack');
        const p = stack?.model(hottestPoint);
        const limit = stack?.num('max-temperature') ?? NaN;
        if (!p || !(p.temperature > p.room)) return NaN;
        const conductance = p.loss / (p.temperature - p.room);
        return Math.max(0, p.heat - conductance * (limit - p.room));
    } }),
];
