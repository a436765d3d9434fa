/** The electrical side: source, rectifier, capacitor, leads, fuse. */
import { windingFactors, capacitorCurrent, diodesInPath, leadAcidTime, voltsPerTurn, type RectifierCircuit } from '../../physics/supply.js';
import { bleedTime, chargeEnergy } from '../../physics/combustion.js';
import { roughAmpacity } from '../../physics/wiring.js';
import { defineQuantity } from '../define.js';
import { leadsResistanceOf, leadsToStack } from '../leads-model.js';
import { BATTERY_RESISTANCE_PER_VOLT, batteryRest, panelLight, panelTemperature, secondaryResistance, secondaryTurns, SERIES_DIODE, smoothing, UNLOADED_OVER_RATED, USUAL_MAINS } from '../source.js';
import type { View } from '../view.js';

/** K/W, from the junction of a bolted bridge through paste to its sink: data sheets, from memory. */
const JUNCTION_TO_SINK = 1.1;
/** J, what may stay in a capacitor. Common practice, no source. */
const HARMLESS_ENERGY = 1;
/** Crest of the first surge over the rated current. Common practice, no source. */
const INRUSH = { toroid: 20, stacked: 10 };
/** Below this a form factor is that of smooth current. */
const SMOOTH = 1.0001;

/** A through the stack at the operating point. */
const stackCurrent = (q: View) => q.the('stack')?.q('current') ?? NaN;
/** The battery and the converter that runs from it, where a rig has both: volts and amperes differ on its two sides. */
const converterOf = (q: View) => {
    const supply = q.all('supply').find(s => s.word('sort') === 'converter');
    const battery = supply && (q.all('battery').find(b => q.paths.before(supply.name, 'current').includes(b.name)) ?? q.the('battery'));
    return battery && { supply, battery };
};
/** What a converter draws from its battery, at the battery's nominal volts. */
const drawn = ({ supply, battery }: { supply: View; battery: View }) => supply.q('working-voltage') * stackCurrent(supply) / supply.num('efficiency') / battery.num('voltage');
/** Working current in a part of the current path: on the battery side of a converter it is not that of the stack. */
const currentIn = (q: View, undrawn = stackCurrent(q)) => {
    const converter = converterOf(q);
    if (!converter) return stackCurrent(q);
    if (q.paths.after(q.name, 'current').includes(converter.supply.name)) return drawn(converter);
    return q.paths.before(q.name, 'current').includes(converter.supply.name) ? stackCurrent(q) : undrawn;
};
const circuit = (q: View) => (q.the('rectifier')?.word('circuit') ?? 'bridge') as RectifierCircuit | 'none';
/** Diodes that the current passes one after the other. */
const diodes = (q: View) => {
    const c = circuit(q);
    return c === 'none' ? 0 : diodesInPath[c];
};
/** V RMS of each turn on the iron. */
const turnVolts = (q: View) => voltsPerTurn(q.maybe('mains.frequency', USUAL_MAINS), q.maybe('flux'), q.num('core-area'));
/** The wave on a smoothing capacitor at the current of the stack. */
const wave = (q: View) => {
    const transformer = q.the('transformer');
    const current = stackCurrent(q);
    return transformer && current === current ? smoothing(q, transformer, current) : undefined;
};
/** V, crest of the winding without load. */
const crest = (q: View) => Math.SQRT2 * (q.the('transformer')?.maybe('secondary-unloaded', UNLOADED_OVER_RATED * (q.the('transformer')?.num('secondary') ?? NaN)) ?? NaN);

export default [
    defineQuantity({ name: 'working-voltage', of: ['supply', 'battery'], measure: 'voltage', meaning: 'Voltage at its terminals at the working current.', formula: 'voltage of the stack + leads + diodes; of a battery behind a converter: its volts - droop at what the converter draws', source: 'Kirchhoff', shownAt: 'voltage', shownAs: 'works at', work: q => {
        const stack = q.the('stack');
        const converter = q.kind === 'battery' ? converterOf(q) : undefined;
        if (converter) return q.num('voltage') - drawn(converter) * q.maybe('internal-resistance', BATTERY_RESISTANCE_PER_VOLT * q.num('voltage'));
        const i = stackCurrent(q);
        return stack ? stack.q('voltage') + i * leadsToStack(q).reduce((s, l) => s + leadsResistanceOf(l), 0) + q.all('diode').reduce((s, d) => s + d.maybe('forward-drop', SERIES_DIODE), 0) : NaN;
    } }),
    defineQuantity({ name: 'working-current', of: 'battery', measure: 'current', meaning: 'Current that it gives while the stack runs, at its nominal volts.', formula: 'current of the stack; before a converter: volts x amperes given / efficiency / volts of the battery', source: 'balance of power', shownAt: 'capacity', shownAs: 'gives', work: q => {
        const converter = converterOf(q);
        return converter ? drawn(converter) : stackCurrent(q);
    } }),
    defineQuantity({ name: 'rest-voltage', of: 'battery', measure: 'voltage', meaning: 'Voltage after an hour of rest at the charge stated; on its plate where none is. What a lead-acid or iron phosphate one shows.', formula: 'table of volts against charge x cells', source: 'battery table, second-hand; iron phosphate: makers\' sheets, from memory; ± 0.05 V for six lead cells', shownAt: 'charge', shownAs: 'at rest', work: q => batteryRest(q) }),
    defineQuantity({ name: 'time-to-empty', of: 'battery', measure: 'time', unit: 'h', meaning: 'Time until it is empty at the working current, from the charge stated (from full where none is). A lead-acid one gives less charge the more current it gives.', formula: 'capacity x charge / current; lead-acid: x (twenty-hour current / current)^0.2', source: 'definition; Peukert 1897, exponent 1.2 from memory', shownAt: 'capacity', shownAs: 'lasts', work: q => {
        const charge = q.maybe('charge', 1);
        const current = q.q('working-current');
        if (!(current > 0)) return NaN;
        return q.word('sort') === 'lead-acid' ? leadAcidTime(q.num('capacity'), charge, current) : q.num('capacity') * charge / current;
    } }),
    defineQuantity({ name: 'irradiance', of: 'panels', measure: 'irradiance', meaning: 'Light on the panels at the best hour: the brightest that the site tells, else that of a clear day at the equinox by the latitude and where they look, else full sun.', formula: 'straight light of the clear sky on the tilted face and a tenth of it from the sky', source: 'Meinel 1976, Kasten & Young 1989, Duffie & Beckman, from memory; ± 10 % on clear days', shownAt: 'facing', shownAs: 'light', work: q => panelLight(q, q) }),
    defineQuantity({ name: 'cell-temperature', of: 'panels', measure: 'temperature', meaning: 'Temperature of the solar cells in that light on an ordinary day: warm cells give fewer volts.', formula: 'air + 25 K x light / full sun', source: 'data sheets, from memory, ± 5 K', work: q => panelTemperature(q, q.q('irradiance')) }),
    defineQuantity({ name: 'volts-per-turn', of: 'transformer', measure: 'voltage', meaning: 'Voltage of one turn on this iron.', formula: '4.44 x frequency x flux density x iron', source: 'induction, exact for a sine', shownAt: 'core-area', shownAs: 'each turn', work: turnVolts }),
    defineQuantity({ name: 'primary-turns', of: 'transformer', measure: 'number', meaning: 'Turns of the primary for its mains on this iron. Fewer drive the iron into saturation.', formula: 'mains voltage / volts per turn', source: 'induction', work: q => q.num('mains.voltage') / turnVolts(q) }),
    defineQuantity({ name: 'secondary-turns', of: 'transformer', measure: 'number', meaning: 'Turns of the secondary for its voltage without load; of each half if it is centre-tapped.', formula: 'secondary without load / volts per turn', source: 'induction', shownAt: 'core-area', shownAs: 'secondary', work: q => (q.num('core-area') > 0 ? secondaryTurns(q) : NaN) }),
    defineQuantity({ name: 'secondary-resistance', of: 'transformer', measure: 'resistance', unit: 'mohm', meaning: 'Resistance of the secondary by its wire, copper at 75 °C. Where the plate tells no volts without load, it sets the droop.', formula: 'turns x length of a turn x resistivity / section', source: 'IEC 60028', shownAt: 'wire', shownAs: '', work: q => (q.num('wire') > 0 && q.num('mean-turn') > 0 && q.num('core-area') > 0 ? secondaryResistance(q) : NaN) }),
    defineQuantity({ name: 'ripple', of: 'capacitor', measure: 'voltage', meaning: 'How far the volts on it swing at the working current, from crest to trough.', formula: 'rectified sine through winding and diodes into the capacitor, current drawn steadily, step by step', source: 'Kirchhoff; held against a circuit simulation', shownAt: 'capacitance', shownAs: 'ripple', work: q => {
        const w = wave(q);
        return w ? w.most - w.least : NaN;
    } }),
    defineQuantity({ name: 'lowest-voltage', of: 'capacitor', measure: 'voltage', meaning: 'Volts on it in the trough at the working current.', formula: 'as capacitor.ripple', source: 'as capacitor.ripple', work: q => wave(q)?.least ?? NaN }),
    defineQuantity({ name: 'plug-power', of: ['supply', 'transformer'], measure: 'power', meaning: 'Power at the plug for the stack.', formula: 'as stack.plug-power', source: 'definition', work: q => q.the('stack')?.q('plug-power') ?? NaN }),
    defineQuantity({ name: 'crest-voltage', of: 'transformer', measure: 'voltage', meaning: 'Highest instantaneous voltage of the winding without load; a tenth more on high mains.', formula: '√2 x unloaded secondary', source: 'textbook', shownAt: 'secondary', shownAs: 'crest', work: q => Math.SQRT2 * q.maybe('secondary-unloaded', UNLOADED_OVER_RATED * q.num('secondary')) }),
    defineQuantity({ name: 'winding-current', of: 'transformer', measure: 'current', meaning: 'RMS current in the winding at the working current of the stack: pulses heat it more than the mean tells.', formula: 'stack current x form factor; stack current / 0.62 with a capacitor', source: 'rectifier guide of a transformer maker; closed form for pulses', work: q => {
        const i = stackCurrent(q);
        if ((q.the('capacitor')?.maybe('capacitance', 0) ?? 0) > 0) return i / windingFactors['bridge-capacitor'];
        const form = q.the('stack')?.maybeQ('form-factor') ?? NaN;
        return form > SMOOTH ? i * form : i / windingFactors['bridge-bare'];
    } }),
    defineQuantity({ name: 'rated-secondary-current', of: 'transformer', measure: 'current', meaning: 'RMS current that the winding is rated for.', formula: 'stated, or rated power / secondary voltage', source: 'nameplate', work: q => {
        const stated = q.maybe('secondary-current');
        return stated === stated ? stated : q.num('power') / q.num('secondary');
    } }),
    defineQuantity({ name: 'inrush', of: 'transformer', measure: 'current', meaning: 'Crest of the first surge from the mains when it is switched on at a bad moment: the iron saturates.', formula: 'rated power / mains voltage x 20 for a toroid, x 10 for stacked iron', source: 'toroids 15 to 25 times the rated current, stacked iron about half: common practice, no source', work: q => (q.word('sort') === 'toroid' ? INRUSH.toroid : INRUSH.stacked) * q.num('power') / q.num('mains.voltage') }),
    defineQuantity({ name: 'loss', of: 'rectifier', measure: 'power', meaning: 'Heat that its diodes make.', formula: 'diodes in the way x drop x current', source: 'textbook', work: q => diodes(q) * q.num('forward-drop') * stackCurrent(q) }),
    defineQuantity({ name: 'junction-temperature', of: 'rectifier', measure: 'temperature', meaning: 'Temperature inside the diodes on the hottest day.', formula: 'hottest + loss x (sink + junction to sink)', source: 'data sheet relation', shownAt: 'sink', shownAs: 'junction', work: q => (q.the('site')?.num('hottest') ?? NaN) + q.q('loss') * (q.num('sink') + q.maybe('junction-to-sink', JUNCTION_TO_SINK)) }),
    defineQuantity({ name: 'peak-inverse', of: 'rectifier', measure: 'voltage', meaning: 'Reverse voltage that each diode sees without load.', formula: 'crest (bridge), twice the crest of a half (centre tap)', source: 'textbook', work: q => (circuit(q) === 'centre-tap' ? 2 : 1) * crest(q) }),
    defineQuantity({ name: 'energy', of: 'capacitor', measure: 'energy', unit: 'J', meaning: 'Energy that stays in it when the mains is off.', formula: '½ C U²', source: 'textbook', work: q => chargeEnergy(q.num('capacitance'), crest(q)) }),
    defineQuantity({ name: 'discharge-time', of: 'capacitor', measure: 'time', meaning: 'Time for the bleed resistor to bring it under 1 J.', formula: 'R C ln(U / U at 1 J)', source: 'textbook', work: q => bleedTime(q.num('capacitance'), q.num('bleed'), crest(q), Math.sqrt(2 * HARMLESS_ENERGY / q.num('capacitance'))) }),
    defineQuantity({ name: 'ripple-current', of: 'capacitor', measure: 'current', meaning: 'RMS current in it.', formula: '√(winding² - direct²)', source: 'textbook', work: q => capacitorCurrent(stackCurrent(q) / windingFactors['bridge-capacitor'], stackCurrent(q)) }),
    defineQuantity({ name: 'resistance', of: 'leads', measure: 'resistance', unit: 'mohm', meaning: 'Resistance there and back, conductor at 50 °C.', formula: '2 length x resistivity / section', source: 'IEC 60028', work: q => (q.num('section') > 0 ? leadsResistanceOf(q) : NaN) }),
    defineQuantity({ name: 'drop', of: 'leads', measure: 'voltage', meaning: 'Volts lost there and back.', formula: 'resistance x current', source: 'Ohm', shownAt: 'section', shownAs: 'drop', work: q => q.q('resistance') * currentIn(q) }),
    defineQuantity({ name: 'loss', of: 'leads', measure: 'power', meaning: 'Heat in the leads.', formula: 'drop x current x form factor²', source: 'Joule', work: q => q.q('drop') * currentIn(q) * (q.the('stack')?.maybeQ('form-factor', 1) ?? 1) ** 2 }),
    defineQuantity({ name: 'ampacity', of: 'leads', measure: 'current', meaning: 'Current that the section bears for hours in free air, roughly.', formula: '5 A/mm² for small sections falling to 2.5 A/mm²', source: 'IEC 60364-5-52, from memory, ± 25 %', shownAt: 'section', shownAs: 'bears', work: q => {
        const stated = q.maybe('ampacity');
        return stated === stated ? stated : roughAmpacity(q.num('section'));
    } }),
    defineQuantity({ name: 'load-share', of: 'fuse', measure: 'fraction', meaning: 'Working current over its rating.', formula: 'current where it stands / rating', source: 'definition', shownAt: 'rating', shownAs: 'loaded', work: q => currentIn(q, NaN) / q.num('rating') }),
];
