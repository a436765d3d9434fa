/** The compressor over its ratio: what it delivers, how hot, when it stalls. */
import { ATMOSPHERE, GAS_CONSTANT, MOLAR_MASS } from '../../physics/constants.js';
import { gasMoles } from '../../physics/gas-volume.js';
import { clearanceEfficiency, dischargeTemperature, isothermalWork, stallRatio, SUCTION_HEATING_FACTOR } from '../../physics/compression.js';
import { heatCapacityRatio } from '../../physics/gases.js';
import { holeFlow } from '../../physics/flow.js';
import { hydrogenHeatRatio } from '../../physics/hydrogen.js';
import { defineQuantity } from '../define.js';
import { deliveryDoubt } from '../doubts.js';
import { MOLES_PER_NORMAL_CUBIC_METRE } from './energy.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

/** Pa gauge, the store at the start of a fill: nearly empty, so that the ratio is still small. Common practice, no source. */
const NEARLY_EMPTY = 0.5e5;
/** K, middle of the gas temperatures of a stroke, at which the ratio of heat capacities is taken: it moves by 0.3 % around it. */
const MID_STROKE = 350;
/** Ratio of the heat capacities of hydrogen in the stroke. */
const heatRatio = hydrogenHeatRatio(MID_STROKE, ATMOSPHERE);

/** A compressor that draws from a bag or bell draws at the air's pressure: their own few hundred pascal do not count. */
const suction = airPressureOf;
const ratioAt = (q: View, gauge: number) => (gauge + suction(q)) / suction(q);
function efficiency(q: View, ratio: number): number {
    const clearance = clearanceEfficiency(q.num('clearance'), ratio, q.num('polytropic'));
    return Math.max(0, (1 + q.doubt(deliveryDoubt)) * SUCTION_HEATING_FACTOR * clearance * (1 - q.num('leak-back')));
}
/** Gauge pressure at which the store's control switch ends the filling. */
const cutOff = (q: View) => q.the('cylinder')?.q('cut-off') ?? NaN;
/** Share of the ideal flow that a small round hole passes, on the high side: what comes through it is a danger. Textbook, sharp edges pass 0.6. */
const HOLE_HIGH = 0.8;
const delivery = (q: View, gauge: number) => gasMoles(q.q('displacement-flow') * efficiency(q, ratioAt(q, gauge)), ROOM, suction(q));

export default [
    defineQuantity({ name: 'displacement-flow', of: 'compressor', measure: 'flow', unit: 'L/h', meaning: 'Volume swept by the piston.', formula: 'displacement x speed', source: 'nameplate', work: q => q.num('displacement') * q.num('speed') }),
    defineQuantity({ name: 'pressure-ratio', of: 'compressor', measure: 'number', meaning: 'Absolute pressure at the cut-off over the pressure at suction.', formula: '(cut-off + air) / air', source: 'definition', work: q => ratioAt(q, cutOff(q)) }),
    defineQuantity({ name: 'volumetric-efficiency', of: 'compressor', measure: 'fraction', meaning: 'Part of the swept volume that leaves as fresh gas at the cut-off.', formula: '0.8 x (1 + c - c r^(1/n)) x (1 - leak-back)', source: 'textbook clearance formula; suction heating after Ren 2022; ± 30 % unless measured', work: q => efficiency(q, q.q('pressure-ratio')) }),
    defineQuantity({ name: 'free-delivery', of: 'compressor', measure: 'gas-flow', unit: 'NL/h', meaning: 'Hydrogen delivered at the cut-off pressure, drawn at 20 °C.', formula: 'swept volume x volumetric efficiency', source: 'as volumetric-efficiency', shownAt: 'displacement', shownAs: 'delivers', work: q => delivery(q, cutOff(q)) }),
    defineQuantity({ name: 'free-delivery-start', of: 'compressor', measure: 'gas-flow', unit: 'NL/h', meaning: 'Hydrogen delivered into an empty store.', formula: 'as free-delivery, at 0.5 bar above the air', source: 'as volumetric-efficiency', work: q => delivery(q, NEARLY_EMPTY) }),
    defineQuantity({ name: 'stall-pressure', of: 'compressor', measure: 'pressure', unit: 'bar', meaning: 'Pressure at which nothing more is delivered.', formula: 'ratio ((1 + c)/c)^n', source: 'textbook clearance formula; leaks bring it down', work: q => (stallRatio(q.num('clearance'), q.num('polytropic')) - 1) * suction(q) }),
    defineQuantity({ name: 'discharge-temperature', of: 'compressor', measure: 'temperature', meaning: 'Temperature of the gas that leaves at the cut-off pressure, drawn at 20 °C, with the cooling of a small slow machine.', formula: 'T r^(φ (k-1)/k)', source: 'isentropic exponent of hydrogen 1.405; φ by measurement or assumed', shownAt: 'speed', shownAs: 'discharge', work: q => ROOM * q.q('pressure-ratio') ** (q.num('cooling') * (heatRatio - 1) / heatRatio) }),
    defineQuantity({ name: 'discharge-temperature-hot', of: 'compressor', measure: 'temperature', meaning: 'The same on the hottest day of the site.', formula: 'as discharge-temperature', source: 'as discharge-temperature', work: q => (q.the('site')?.num('hottest') ?? NaN) * q.q('discharge-temperature') / ROOM }),
    defineQuantity({ name: 'discharge-temperature-adiabatic', of: 'compressor', measure: 'temperature', meaning: 'The same without any cooling.', formula: 'T r^((k-1)/k)', source: 'textbook', work: q => dischargeTemperature(ROOM, q.q('pressure-ratio'), heatRatio) }),
    defineQuantity({ name: 'ideal-power', of: 'compressor', measure: 'power', meaning: 'Least power that the gas made needs at the cut-off pressure.', formula: 'hydrogen x R T ln r', source: 'textbook', work: q => (q.the('stack')?.q('hydrogen-rate') ?? NaN) * isothermalWork(ROOM, q.q('pressure-ratio')) }),
    defineQuantity({ name: 'running-power-least', of: 'compressor', measure: 'power', meaning: 'Least power that pressing its delivery takes at the cut-off pressure, while it runs. Small machines draw two to five times as much.', formula: 'delivery x R T ln r', source: 'textbook', work: q => q.q('free-delivery') * isothermalWork(ROOM, q.q('pressure-ratio')) }),
    defineQuantity({ name: 'gas-cooling', of: 'compressor', measure: 'thermal-conductance', meaning: 'Heat that the hydrogen made carries off for each kelvin that it warms on its way through.', formula: 'hydrogen x k/(k-1) R', source: 'ideal gas', work: q => (q.the('stack')?.q('hydrogen-rate') ?? NaN) * heatRatio / (heatRatio - 1) * GAS_CONSTANT }),
    defineQuantity({ name: 'open-flow', of: 'unloader', measure: 'gas-flow', unit: 'Nm3/h', meaning: 'Hydrogen that comes back through it from a full store if the check valve behind it lets through.', formula: 'flow through a hole at the speed of sound, 0.8 of the ideal', source: 'textbook', work: q => {
        const bore = q.num('orifice');
        return holeFlow(Math.PI / 4 * bore * bore, HOLE_HIGH, cutOff(q) + suction(q), suction(q), ROOM, MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen) / MOLAR_MASS.hydrogen;
    } }),
    defineQuantity({ name: 'duty', of: 'compressor', measure: 'fraction', meaning: 'Share of the time that it runs to move what the stack makes.', formula: 'hydrogen / mean delivery', source: 'mass balance', work: q => Math.min(1, (q.the('stack')?.q('hydrogen-rate') ?? NaN) / (0.5 * (q.q('free-delivery') + q.q('free-delivery-start')))) }),
    defineQuantity({ name: 'energy-per-volume', of: 'compressor', measure: 'energy-per-gas', unit: 'kWh/m3', meaning: 'Electrical energy of the compressor for each m³ of hydrogen (0 °C, dry).', formula: 'power x duty / hydrogen', source: 'mass balance', shownAt: 'power', shownAs: '', work: q => q.num('power') * q.q('duty') / ((q.the('stack')?.q('hydrogen-rate') ?? NaN) / MOLES_PER_NORMAL_CUBIC_METRE) }),
    defineQuantity({ name: 'starts', of: 'compressor', measure: 'frequency', unit: '/h', meaning: 'Starts in an hour, from the volume between the switches of the bag.', formula: 'as bag.starts-per-hour', source: 'mass balance', shownAt: 'displacement', shownAs: 'starts', work: q => (q.the('bag') ?? q.the('gasometer'))?.q('starts-per-hour') ?? NaN }),
];
