/** What the gas is for, and what it costs. */
import { ballVolume, grossLift } from '../../physics/balloon.js';
import { LOWER_HEATING_VALUE } from '../../physics/constants.js';
import { vapourFlow } from '../../physics/vapour.js';
import { saturationPressure } from '../../physics/water.js';
import { defineQuantity } from '../define.js';
import { MOLES_PER_NORMAL_CUBIC_METRE } from './energy.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

/** m³: stated, or of a ball of the stated width. */
function balloonVolume(q: View): number {
    const stated = q.maybe('volume');
    return stated === stated ? stated : ballVolume(q.num('diameter'));
}
/** kg/s of water with which the hydrogen of the stack is saturated at 20 °C and the air's pressure. */
const carried = (q: View, over = 0) => vapourFlow(q.the('stack')?.q('hydrogen-rate') ?? NaN, saturationPressure(ROOM), airPressureOf(q) + over);
/** J for each m³ of hydrogen (0 °C, dry) by all compressors together, as far as it is known. */
const pressing = (q: View) => q.all('compressor').filter(c => !q.paths.on('oxygen').includes(c.name)).reduce((sum, c) => sum + c.maybeQ('energy-per-volume', 0), 0);
/** kg of water for each kg of desiccant after which it is changed: half of what makers' pages state. */
const TAKEN_AT_CHANGE = 0.1;

export default [
    defineQuantity({ name: 'gas-volume', of: 'balloon', measure: 'volume', meaning: 'Volume when full: stated, or of a ball of that width.', formula: 'π d³ / 6', source: 'geometry', shownAt: 'diameter', shownAs: '', work: balloonVolume }),
    defineQuantity({ name: 'lift-gross', of: 'balloon', measure: 'mass', unit: 'g', meaning: 'Mass that the gas alone can hold up at 20 °C.', formula: 'volume x (density of air - density of hydrogen)', source: 'Archimedes; ideal air', work: q => grossLift(balloonVolume(q), ROOM, airPressureOf(q)) }),
    defineQuantity({ name: 'lift', of: 'balloon', measure: 'mass', unit: 'g', meaning: 'What is left for string and load after the film.', formula: 'gross lift - film', source: 'Archimedes', shownAt: 'diameter', shownAs: 'lifts', work: q => q.q('lift-gross') - q.maybe('film', 0) }),
    defineQuantity({ name: 'flame-power', of: 'burner', measure: 'power', meaning: 'Heat of its flame at its flow, without condensing the steam.', formula: 'flow x 241.8 kJ/mol', source: 'CODATA Key Values', shownAt: 'flow', shownAs: 'flame', work: q => q.num('flow') * LOWER_HEATING_VALUE }),
    defineQuantity({ name: 'output', of: 'fuel-cell', measure: 'power', meaning: 'Electrical power at its flow.', formula: 'flow x lower heating value x efficiency', source: 'CODATA Key Values', work: q => {
        const p = q.maybe('power');
        return p === p ? p : q.num('flow') * LOWER_HEATING_VALUE * q.num('efficiency');
    } }),
    defineQuantity({ name: 'round-trip', of: 'fuel-cell', measure: 'fraction', meaning: 'Electrical energy out over energy at the plug, compressors counted.', formula: 'efficiency x 3.00 kWh/m³ / energy at the plug', source: 'CODATA Key Values', work: q => q.num('efficiency') * LOWER_HEATING_VALUE * MOLES_PER_NORMAL_CUBIC_METRE / ((q.the('stack')?.q('plug-energy-per-volume') ?? NaN) + pressing(q)) }),
    defineQuantity({ name: 'water-taken', of: 'dryer', measure: 'mass-flow', unit: 'g/h', meaning: 'Water that gas saturated at 20 °C leaves in it.', formula: 'hydrogen x saturation; after a compressor only what the pressed gas still holds', source: 'IAPWS', work: q => {
        const compressor = q.paths.before(q.name, 'hydrogen').map(n => q.other(n)).find(v => v?.kind === 'compressor');
        return compressor ? carried(q, compressor.q('draws-at')) / compressor.q('pressure-ratio') : carried(q);
    } }),
    defineQuantity({ name: 'hours-to-full', of: 'dryer', measure: 'time', unit: 'h', meaning: 'Running hours until the desiccant has taken a tenth of its mass: change it by then.', formula: '0.1 x mass / water taken', source: 'makers\' pages, half of what they state', shownAt: 'mass', shownAs: 'lasts', work: q => TAKEN_AT_CHANGE * q.num('mass') / q.q('water-taken') }),
    defineQuantity({ name: 'electricity-cost', of: 'budget', measure: 'money-per-gas', meaning: 'Electricity for each m³ of hydrogen (0 °C, dry), stack and compressors.', formula: 'energy at the plug x tariff', source: 'definition', shownAt: 'tariff', shownAs: '', work: q => ((q.the('stack')?.q('plug-energy-per-volume') ?? NaN) + pressing(q)) * q.num('tariff') }),
    defineQuantity({ name: 'parts-total', of: 'budget', measure: 'money', meaning: 'All prices in the text and what else is stated.', formula: 'sum', source: 'as stated', work: q => {
        let sum = q.maybe('other', 0);
        for (const v of q.every()) sum += v.maybe('price', 0);
        return sum;
    } }),
    defineQuantity({ name: 'parts-cost', of: 'budget', measure: 'money-per-gas', meaning: 'Parts spread over the gas of their life.', formula: 'parts / (life x hydrogen)', source: 'definition', work: q => q.q('parts-total') / (q.num('life') * (q.the('stack')?.q('hydrogen-rate') ?? NaN) / MOLES_PER_NORMAL_CUBIC_METRE) }),
    defineQuantity({ name: 'gas-cost', of: 'budget', measure: 'money-per-gas', meaning: 'A m³ of hydrogen (0 °C, dry): electricity and parts.', formula: 'electricity + parts', source: 'definition', shownAt: 'tariff', shownAs: 'gas', work: q => q.q('electricity-cost') + q.q('parts-cost') }),
    defineQuantity({ name: 'cost-per-litre', of: 'budget', measure: 'money-per-gas', unit: 'EUR/L', meaning: 'The same for a litre at 0 °C, dry.', formula: 'gas cost / 1000', source: 'definition', work: q => q.q('gas-cost') }),
];
