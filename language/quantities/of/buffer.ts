/** Bag or bell between stack and compressor: how long it fills and empties, how often the compressor starts. */
import { GRAVITY, LOWER_HEATING_VALUE } from '../../physics/constants.js';
import { gasMoles, gasVolume } from '../../physics/gas-volume.js';
import { defineQuantity } from '../define.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import { filmArea, lostByFilm } from '../walls.js';
import type { View } from '../view.js';

/** Part of a bag that cannot be drawn out of its folds where no dead volume is stated. Common practice, no source. */
const DEAD_SHARE = 0.02;

/** Volumes between which the compressor (or the stack) is switched: the lowest and highest set point of control switches. */
function switched(q: View): { low: number; high: number } {
    const points: number[] = [];
    for (const s of q.controls.sensing(`${q.name}.volume`, ['switch'])) {
        for (const key of ['makes.value', 'breaks.value']) {
            const n = s.maybe(key);
            if (n === n) points.push(n);
        }
    }
    const calling = drawPair(q);
    if (calling) return calling;
    if (points.length < 2) return { low: NaN, high: NaN };
    return { low: Math.min(...points), high: Math.max(...points) };
}
/** The pair that latches and stops a draw: full makes, empty breaks. */
function drawPair(q: View): { low: number; high: number } | undefined {
    for (const relay of [...q.all('relay'), ...q.all('contactor')]) {
        const full = relay.names('latched-by').map(n => q.other(n)).find(s => s && q.controls.sensed(s) === `${q.name}.volume`);
        const empty = relay.names('stopped-by').map(n => q.other(n)).find(s => s?.kind === 'switch' && q.controls.sensed(s) === `${q.name}.volume`);
        if (full && empty) {
            const high = full.maybe('makes.value');
            const low = empty.maybe('breaks.value');
            if (high === high && low === low) return { low, high };
        }
    }
    return undefined;
}
/** What the stack puts in, m³/s at 20 °C and the air's pressure. */
const inflow = (q: View) => gasVolume(q.the('stack')?.q('hydrogen-rate') ?? NaN, ROOM, airPressureOf(q));
/** What the compressor draws at the start of a fill, m³/s at 20 °C and the air's pressure; NaN without one. */
const outflow = (q: View) => {
    const compressor = q.paths.after(q.name, 'hydrogen').map(n => q.other(n)).find(v => v?.kind === 'compressor') ?? q.the('compressor');
    return compressor ? gasVolume(compressor.q('free-delivery-start'), ROOM, airPressureOf(q)) : NaN;
};
const used = (q: View) => q.q('usable');
/** s */
const DAY = 86400;
/** Volume at which the filling ends, m³: the lowest point at which something stops the stack; NaN where nothing does. */
function filledTo(q: View): number {
    const points = q.controls.limits(q.controls.stackStoppers(), `${q.name}.volume`, 'above').map(d => d.maybe(`${q.controls.actsAt(d)}.value`)).filter(n => n === n);
    return points.length ? Math.min(...points) : NaN;
}

export default [
    defineQuantity({ name: 'usable', of: ['bag', 'gasometer'], measure: 'volume', meaning: 'Volume between the switch that begins a draw and the one that ends it; the whole less the dead volume where there are none.', formula: 'from the switches that sense its volume', source: 'definition', shownAt: 'volume', shownAs: 'usable', work: q => {
        const s = switched(q);
        return s.high > s.low ? s.high - s.low : q.num('volume') - q.maybe('dead-volume', DEAD_SHARE * q.num('volume'));
    } }),
    defineQuantity({ name: 'fill-time', of: ['bag', 'gasometer'], measure: 'time', unit: 'min', meaning: 'Time to fill the usable volume with nothing drawn, gas at 20 °C.', formula: 'usable volume / hydrogen', source: 'mass balance', shownAt: 'volume', shownAs: 'fills in', work: q => used(q) / inflow(q) }),
    defineQuantity({ name: 'empty-time', of: ['bag', 'gasometer'], measure: 'time', unit: 'min', meaning: 'Time in which the compressor empties the usable volume while the stack goes on.', formula: 'usable volume / (delivery - hydrogen)', source: 'mass balance', work: q => used(q) / (outflow(q) - inflow(q)) }),
    defineQuantity({ name: 'drain-time', of: ['bag', 'gasometer'], measure: 'time', unit: 'min', meaning: 'Time in which the compressor empties the full usable volume with the stack stopped.', formula: 'usable volume / delivery', source: 'mass balance', work: q => used(q) / outflow(q) }),
    defineQuantity({ name: 'starts-per-hour', of: ['bag', 'gasometer'], measure: 'frequency', unit: '/h', meaning: 'How often the compressor starts.', formula: '1 / (fill time + empty time)', source: 'mass balance', work: q => 1 / (q.q('fill-time') + q.q('empty-time')) }),
    defineQuantity({ name: 'inventory-share', of: ['bag', 'gasometer'], measure: 'fraction', meaning: 'Hydrogen of a full bag as a share of the room, evenly mixed; at the ceiling it is several times more.', formula: 'volume / room volume', source: 'definition', work: q => q.num('volume') / (q.the('site')?.num('volume') ?? NaN) }),
    defineQuantity({ name: 'head', of: 'gasometer', measure: 'pressure', unit: 'kPa', meaning: 'Pressure under the bell by its weight.', formula: '(bell mass - counterweight) x g / area', source: 'statics', shownAt: 'bell-mass', shownAs: '', work: q => (q.num('bell-mass') - q.maybe('counterweight', 0)) * GRAVITY / (Math.PI / 4 * q.num('diameter') ** 2) }),
    defineQuantity({ name: 'pressure', of: 'bag', measure: 'pressure', unit: 'kPa', meaning: 'Pressure in the bag while it is neither flat nor stretched.', formula: 'as stated or assumed', source: 'as stated', work: q => q.num('own-pressure') }),
    defineQuantity({ name: 'film-area', of: 'bag', measure: 'area', unit: 'm2', meaning: 'Film around the bag: both layers of its size as it lies flat. Where no size is told, by its volume, between a ball and a long cushion.', formula: '2 x length x width; else 1.3 x surface of a ball', source: 'geometry; the share over a ball by the paper bag formula, Robin 2004, from memory', work: filmArea }),
    defineQuantity({ name: 'lost-per-day', of: 'bag', measure: 'fraction', meaning: 'Share of a full bag of hydrogen that creeps out through its film in a day; air creeps in meanwhile.', formula: 'permeability x film x air pressure / thickness', source: 'permeabilities from memory, within a factor of two', work: q => lostByFilm(q) * DAY / gasMoles(q.num('volume'), ROOM, airPressureOf(q)) }),
    defineQuantity({ name: 'volume-hot', of: 'bag', measure: 'volume', meaning: 'Volume that the gas takes at the hottest of the site, filled at 20 °C to where the stack is stopped; moisture not counted.', formula: 'filled volume x T / 293 K', source: 'ideal gas', work: q => filledTo(q) * (q.the('site')?.num('hottest') ?? NaN) / ROOM }),
    defineQuantity({ name: 'stored-energy', of: ['bag', 'gasometer'], measure: 'energy', unit: 'kJ', meaning: 'Energy of the gas when full, lower heating value.', formula: 'moles x 241.8 kJ/mol', source: 'CODATA Key Values', work: q => gasMoles(q.num('volume'), ROOM, airPressureOf(q)) * LOWER_HEATING_VALUE }),
];
