/** The cylinder: set points, contents as real gas, time to fill, sun and cold; the relief valve that guards it. */
import { LOWER_HEATING_VALUE, MOLAR_MASS, OXYGEN_IN_AIR } from '../../physics/constants.js';
import { burstEnergy } from '../../physics/compression.js';
import { holeFlow, reliefVolumeOfGas, tubeDrop } from '../../physics/flow.js';
import { gasVolume } from '../../physics/gas-volume.js';
import { gasViscosity, heatCapacityRatio, idealGasDensity } from '../../physics/gases.js';
import { compressibility, hydrogenHeatRatio, hydrogenMoles } from '../../physics/hydrogen.js';
import { defineQuantity } from '../define.js';
import { ENTRY_AND_EXIT } from '../heads.js';
import { mostDelivered } from './compressor.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

const air = airPressureOf;
/** Most oxygen that leaves hydrogen too rich to burn, volume fraction, rounded down from 0.2095 x (1 - 0.75). */
const TOO_RICH = 0.05;
/** K, 70 °F, at which service pressures are stamped: 49 CFR 173.301a(c), as cited. */
const RATED_AT = 294.26;

/** The control switch that ends the filling: senses the cylinder's pressure and breaks, or whose making stops the compressor. */
function fillSwitch(q: View): { off: number; on: number } {
    for (const s of q.controls.sensing(`${q.name}.pressure`, ['switch'])) {
        const off = s.word('breaks.side') === 'above' ? s.maybe('breaks.value') : s.word('makes.side') === 'above' ? s.maybe('makes.value') : NaN;
        const on = s.word('makes.side') === 'below' ? s.maybe('makes.value') : s.word('breaks.side') === 'below' ? s.maybe('breaks.value') : NaN;
        if (off === off) return { off, on };
    }
    return { off: NaN, on: NaN };
}
const full = (q: View) => {
    const cut = q.maybeQ('cut-off');
    return cut === cut ? cut : q.num('rating');
};
const at = (q: View, kelvin: number) => (full(q) + air(q)) * kelvin / ROOM - air(q);

export default [
    defineQuantity({ name: 'cut-off', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'Pressure at which the control switch ends the filling, above the air outside.', formula: 'from the switch that senses the pressure of this cylinder', source: 'as set', work: q => fillSwitch(q).off }),
    defineQuantity({ name: 'restart', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'Pressure at which the filling begins again.', formula: 'from the same switch', source: 'as set', work: q => fillSwitch(q).on }),
    defineQuantity({ name: 'stored-gas', of: 'cylinder', measure: 'gas-volume', unit: 'NL', meaning: 'Hydrogen in it when full at 20 °C, as real gas.', formula: 'real-gas density at cut-off (or rating) x volume', source: 'Lemmon, Huber & Leachman 2008', shownAt: 'volume', shownAs: 'full', work: q => hydrogenMoles(q.num('volume'), ROOM, full(q) + air(q)) }),
    defineQuantity({ name: 'usable-gas', of: 'cylinder', measure: 'gas-volume', unit: 'NL', meaning: 'What can be taken out before the pressure left in it is reached.', formula: 'full - contents at the end pressure', source: 'Lemmon, Huber & Leachman 2008', work: q => q.q('stored-gas') - hydrogenMoles(q.num('volume'), ROOM, q.num('end-pressure') + air(q)) }),
    defineQuantity({ name: 'stored-energy', of: 'cylinder', measure: 'energy', unit: 'MJ', meaning: 'Energy of the gas when full, lower heating value.', formula: 'moles x 241.8 kJ/mol', source: 'CODATA Key Values', work: q => q.q('stored-gas') * LOWER_HEATING_VALUE }),
    defineQuantity({ name: 'burst-energy', of: 'cylinder', measure: 'energy', unit: 'kJ', meaning: 'Work that the gas can do if the vessel bursts, chemistry not counted.', formula: 'isentropic expansion to the air outside', source: 'textbook', work: q => burstEnergy(q.num('volume'), full(q) + air(q), air(q), hydrogenHeatRatio(ROOM, full(q) + air(q))) }),
    defineQuantity({ name: 'pressure-volume', of: 'cylinder', measure: 'energy', unit: 'kJ', meaning: 'Pressure times volume: what many rules for vessels begin with. 1 kJ is 10 bar litres.', formula: 'rating x volume', source: 'definition', work: q => q.num('rating') * q.num('volume') }),
    defineQuantity({ name: 'fill-time', of: 'cylinder', measure: 'time', unit: 'h', meaning: 'Time to fill it from the pressure left in it to the cut-off with what the stack makes.', formula: '(full - rest) / hydrogen', source: 'mass balance', shownAt: 'volume', shownAs: 'fills in', work: q => q.q('usable-gas') / (q.the('stack')?.q('hydrogen-rate') ?? NaN) }),
    defineQuantity({ name: 'pressure-hot', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'Pressure of the full cylinder at the hottest of the site.', formula: 'absolute pressure x T / 293 K', source: 'ideal gas, within 0.2 %', shownAt: 'rating', shownAs: 'hottest day', work: q => at(q, q.the('site')?.num('hottest') ?? NaN) }),
    defineQuantity({ name: 'pressure-cold', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'Pressure of the full cylinder at the coldest of the site.', formula: 'absolute pressure x T / 293 K', source: 'ideal gas, within 0.2 %', work: q => at(q, q.the('site')?.num('coldest') ?? NaN) }),
    defineQuantity({ name: 'pressure-filled-cold', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'Pressure at 21 °C, which ratings refer to, of a cylinder that was filled to its cut-off at the coldest of the site.', formula: 'absolute pressure x 294 K / T', source: 'ideal gas, within 0.2 %', work: q => (full(q) + air(q)) * RATED_AT / (q.the('site')?.num('coldest') ?? NaN) - air(q) }),
    defineQuantity({ name: 'pressure-empty-cold', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'Pressure of the used-up cylinder at the coldest of the site, used up at 20 °C. Below that of the air it breathes in.', formula: 'absolute end pressure x T / 293 K', source: 'ideal gas', work: q => (q.num('end-pressure') + air(q)) * (q.the('site')?.num('coldest') ?? NaN) / ROOM - air(q) }),
    defineQuantity({ name: 'inventory-share', of: 'cylinder', measure: 'fraction', meaning: 'Contents let go into the room, evenly mixed.', formula: 'full contents at 20 °C / room volume', source: 'definition', work: q => gasVolume(q.q('stored-gas'), ROOM, air(q)) / (q.the('site')?.num('volume') ?? NaN) }),
    defineQuantity({ name: 'first-fill-oxygen', of: 'cylinder', measure: 'pressure', unit: 'bar', meaning: 'If air is left in it: the pressure below which the first filling can burn inside, about 5 % oxygen left.', formula: '0.2095 x air pressure / 0.05', source: 'rich limit of hydrogen in air, 75 %', work: q => OXYGEN_IN_AIR * air(q) / TOO_RICH - air(q) }),
    defineQuantity({ name: 'capacity-hydrogen', of: 'relief-valve', measure: 'gas-flow', unit: 'Nm3/h', meaning: 'Hydrogen that it passes at 1.1 times its set pressure; a capacity stated for air counts for 3.8 times as much hydrogen.', formula: 'as stated, or choked flow through its seat', source: 'ISO 4126-1 form of the choked flow; Lemmon, Huber & Leachman 2008', shownAt: 'capacity', shownAs: 'hydrogen', work: q => {
        const stated = q.maybe('capacity');
        if (stated === stated) return q.word('capacity.gas') === 'air' ? reliefVolumeOfGas(stated, heatCapacityRatio.air, heatCapacityRatio.hydrogen, MOLAR_MASS.air, MOLAR_MASS.hydrogen) : stated;
        const bore = q.num('orifice');
        const relieving = (1 + q.num('overpressure')) * q.num('set') + air(q);
        return holeFlow(Math.PI / 4 * bore * bore, q.num('coefficient'), relieving, air(q), ROOM, MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen, compressibility(ROOM, relieving)) / MOLAR_MASS.hydrogen;
    } }),
    defineQuantity({ name: 'capacity', of: 'relief-valve', measure: 'gas-flow', unit: 'Nm3/h', meaning: 'The same as capacity-hydrogen.', formula: 'as capacity-hydrogen', source: 'as capacity-hydrogen', work: q => q.q('capacity-hydrogen') }),
    defineQuantity({ name: 'worst-inflow', of: 'relief-valve', measure: 'gas-flow', unit: 'Nm3/h', meaning: 'Most that can come in on its side by the compressor running at full speed.', formula: 'swept volume at the pressure and the coldest of the site, 20 °C at most', source: 'ideal gas', work: q => {
        const compressor = q.paths.before(q.name, 'hydrogen').map(n => q.other(n)).find(v => v?.kind === 'compressor');
        // Cold gas is denser: the most comes in on the coldest day.
        return compressor ? mostDelivered(compressor, Math.min(ROOM, q.the('site')?.maybe('coldest', ROOM) ?? ROOM)) : NaN;
    } }),
    defineQuantity({ name: 'back-pressure', of: 'relief-valve', measure: 'pressure', unit: 'bar', meaning: 'Pressure that builds up in its outlet line at full flow.', formula: 'friction in the outlet pipe', source: 'Blasius', work: q => {
        const bore = q.num('outlet');
        const flow = gasVolume(q.q('capacity-hydrogen'), ROOM, air(q));
        return tubeDrop(flow, bore, q.num('outlet.length'), idealGasDensity(MOLAR_MASS.hydrogen, ROOM, air(q)), gasViscosity('hydrogen', ROOM), ENTRY_AND_EXIT);
    } }),
    defineQuantity({ name: 'inlet-loss', of: 'relief-valve', measure: 'pressure', unit: 'bar', meaning: 'Pressure lost in the pipe to it at full flow.', formula: 'friction in the inlet pipe, gas at the set pressure', source: 'Blasius', work: q => {
        const pressure = q.num('set') + air(q);
        const flow = gasVolume(q.q('capacity-hydrogen'), ROOM, pressure);
        return tubeDrop(flow, q.num('inlet'), q.num('inlet.length'), idealGasDensity(MOLAR_MASS.hydrogen, ROOM, pressure), gasViscosity('hydrogen', ROOM), ENTRY_AND_EXIT);
    } }),
];
