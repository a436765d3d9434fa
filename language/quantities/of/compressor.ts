/** The compressor over its ratio: what it delivers, how hot, when it stalls; its stages, and several compressors one behind the other. */
import { ATMOSPHERE, GAS_CONSTANT, MOLAR_MASS } from '../../physics/constants.js';
import { holeFlow } from '../../physics/flow.js';
import { heatCapacityRatio } from '../../physics/gases.js';
import { gasMoles } from '../../physics/gas-volume.js';
import { clearanceEfficiency, dischargeTemperature, isothermalWork, polytropicWork, pressuresInSeries, stageRatio, stageSuctions, stallRatio, SUCTION_HEATING_FACTOR } from '../../physics/compression.js';
import { hydrogenHeatRatio } from '../../physics/hydrogen.js';
import { condensate, vapourFlow } from '../../physics/vapour.js';
import { saturationPressure } from '../../physics/water.js';
import { defineModel, defineQuantity } from '../define.js';
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

/** What can stand at a pressure of its own before or behind a compressor. */
const spaces = new Set(['compressor', 'cylinder', 'regulator', 'bag', 'gasometer', 'stack']);
const nearest = (q: View, names: readonly string[]) => names.map(n => q.other(n)).find(v => v && spaces.has(v.kind));
/** The compressors that a compressor presses its gas into, and that press into it, with no vessel between. */
function next(q: View): View | undefined {
    const v = nearest(q, q.paths.after(q.name, 'hydrogen'));
    return v?.kind === 'compressor' ? v : undefined;
}
const previous = (q: View) => q.all('compressor').filter(c => c.name !== q.name && next(c)?.name === q.name);

/** Compressors that draw one from the other, and where the line begins and ends. */
interface Line {
    /** In the order of the gas. */
    readonly machines: readonly View[];
    /** The cylinder that they fill; undefined where none is drawn. */
    readonly store: View | undefined;
    /** Pa above vacuum, where the first one draws. */
    readonly suction: number;
}
/** Undefined where several press into one, or they stand in a ring: then no pressure between can be told. */
function lineOf(q: View): Line | undefined {
    const machines = [q];
    for (let feeders = previous(q); feeders.length; feeders = previous(machines[0])) {
        if (feeders.length > 1 || machines.some(m => m.name === feeders[0].name)) return undefined;
        machines.unshift(feeders[0]);
    }
    for (let after = next(q); after; after = next(after)) {
        if (previous(after).length > 1 || machines.some(m => m.name === after!.name)) return undefined;
        machines.push(after);
    }
    const last = machines.at(-1)!;
    const store = last.paths.after(last.name, 'hydrogen').map(n => q.other(n)).find(v => v?.kind === 'cylinder') ?? q.the('cylinder');
    return { machines, store, suction: suctionOf(machines[0]) };
}
/** Pa above vacuum. A bag or bell stands at the air's pressure: their own few hundred pascal do not count. Of a cylinder, what is left in it last. */
function suctionOf(first: View): number {
    const from = nearest(first, first.paths.before(first.name, 'hydrogen'));
    const over = from?.kind === 'cylinder' ? from.num('end-pressure') : from?.kind === 'regulator' ? from.num('set') : 0;
    return airPressureOf(first) + over;
}
/** mol/s that a compressor, with those before it, delivers at most: all that the first one sweeps, at the highest pressure and the lowest temperature (K). */
export function mostDelivered(q: View, kelvin: number): number {
    const first = lineOf(q)?.machines[0] ?? q;
    const from = nearest(first, first.paths.before(first.name, 'hydrogen'));
    const over = from?.kind === 'cylinder' ? from.maybeQ('cut-off', from.num('rating')) : from?.kind === 'regulator' ? from.maybe('max-outlet', from.num('set')) : 0;
    return gasMoles(first.q('displacement-flow'), kelvin, airPressureOf(q) + over);
}
/** Part of the swept volume of its first stage that a machine delivers, by the ratio of that stage. */
function efficiency(q: View, ratio: number): number {
    const clearance = clearanceEfficiency(q.num('clearance'), ratio, q.num('polytropic'));
    return Math.max(0, (1 + q.doubt(deliveryDoubt)) * SUCTION_HEATING_FACTOR * clearance * (1 - q.num('leak-back')));
}
/** K before a machine: of the room, or what the one before it sends. */
function drawn(q: View, room: number, before: View | undefined): number {
    return before ? cooledTo(before, room) : room;
}
/** K behind the cooler after a stage, with no more heat than the gas has; Infinity where nothing cools it. */
function cooledTo(q: View, room: number): number {
    if (q.says('cooled-to') === 'none') return Infinity;
    const kelvin = q.num('cooled-to');
    // A cooler of which nothing is said stands in the room, and is as much warmer on a hot day as that is.
    return q.said('cooled-to') ? kelvin : kelvin + room - ROOM;
}
/** K, the most at which gas is counted between two compressors where nothing cools it: on its way it loses some. Own choice, no source. */
const MOST_BETWEEN = 353.15;
/** What stands before and behind each machine of a line, Pa above vacuum, by its name. */
type Pressures = Readonly<Record<string, readonly [from: number, to: number]>>;
/**
 * @param to      Pa above vacuum, behind the last one
 * @param sized   ratio for which the stages of each machine are sized: a lower one is taken by the first stage, whose gas then passes the
 *                others; undefined at the cut-off, for which they are sized
 */
function pressures(line: Line, to: number, sized?: (q: View) => number | undefined): Pressures {
    const { machines, suction } = line;
    // One alone needs no balance, and nothing of how well it fills.
    const before = machines.length === 1 ? [suction] : pressuresInSeries(machines.map((m, i) => {
        const kelvin = Math.min(drawn(m, ROOM, machines[i - 1]), MOST_BETWEEN);
        const swept = m.q('displacement-flow');
        return (from: number, behind: number) => gasMoles(swept * efficiency(m, firstRatio(m, behind / from, sized?.(m))), kelvin, from);
    }), suction, to);
    return Object.fromEntries(machines.map((m, i) => [m.name, [before[i], before[i + 1] ?? to] as const]));
}
/** Ratio of the first stage of a machine; `sized`: the whole ratio for which its stages are sized. */
function firstRatio(q: View, ratio: number, sized = ratio): number {
    const stages = q.num('stages');
    return stages > 1 ? Math.max(stageRatio(ratio, stages), Math.min(ratio, stageRatio(sized, stages))) : ratio;
}

/** A line as names and numbers: whoever reads it looks at the parts anew. */
interface Compression {
    readonly machines: readonly string[];
    readonly suction: number;
    readonly pressures: Pressures;
}
const same = (a: Compression | undefined, b: Compression | undefined) => JSON.stringify(a) === JSON.stringify(b);
const solved = (line: Line, pressures: Pressures): Compression => ({ machines: line.machines.map(m => m.name), suction: line.suction, pressures });
const full = defineModel<Compression | undefined>({
    name: 'compression', of: 'compressor', meaning: 'The pressures before, between and behind compressors that draw one from the other, at the cut-off.', same,
    solve(q) {
        const line = lineOf(q);
        return line && solved(line, pressures(line, (line.store?.q('cut-off') ?? NaN) + airPressureOf(q)));
    },
});
const start = defineModel<Compression | undefined>({
    name: 'compression-start', of: 'compressor', meaning: 'The same at the start of a filling.', same,
    solve(q) {
        const line = lineOf(q);
        return line && solved(line, pressures(line, Math.max(line.suction, NEARLY_EMPTY + airPressureOf(q)), ratioFull));
    },
});
function ratioIn(c: Compression | undefined, q: View): number {
    const [from, to] = c?.pressures[q.name] ?? [NaN, NaN];
    return to / from;
}
/** Ratio of a machine at the cut-off; one that has a single stage is sized for none. */
const ratioFull = (q: View) => (q.num('stages') > 1 ? ratioIn(q.model(full), q) : undefined);
/** mol/s of the whole line: what its first machine delivers. */
function delivery(q: View, model: typeof full): number {
    const c = q.model(model);
    const first = c && q.other(c.machines[0]);
    if (!first) return NaN;
    return gasMoles(first.q('displacement-flow') * efficiency(first, firstRatio(first, ratioIn(c, first), ratioFull(first))), ROOM, c.suction);
}
/** Exponent that gives the same warming as a share of that without heat exchange. */
const exponentOf = (cooling: number) => 1 / (1 - cooling * (heatRatio - 1) / heatRatio);
/** K at which each stage draws, the first machine in a room of so many K. */
function suctions(q: View, room: number, exponent: (m: View) => number, c = q.model(full)): readonly number[] {
    let kelvin = room;
    for (const m of c?.machines.map(n => q.other(n)!) ?? []) {
        const each = stageRatio(ratioIn(c, m), m.num('stages'));
        const cooled = m.num('stages') > 1 || m.name !== q.name ? cooledTo(m, room) : Infinity;
        const own = stageSuctions(kelvin, cooled, each, m.num('stages'), exponent(m));
        if (m.name === q.name) return own;
        kelvin = Math.min(cooled, dischargeTemperature(own.at(-1)!, each, exponent(m)));
    }
    return [];
}
/** K, of the stage that presses hottest. */
function hottestDischarge(q: View, room: number, exponent: (m: View) => number, c?: Compression): number {
    const each = c ? stageRatio(ratioIn(c, q), q.num('stages')) : q.q('stage-ratio');
    const all = suctions(q, room, exponent, c);
    return all.length ? dischargeTemperature(Math.max(...all), each, exponent(q)) : NaN;
}
const withCooling = (m: View) => exponentOf(m.num('cooling'));
const withoutCooling = () => heatRatio;
/**
 * What a compressor, with those in its line, does against a store that is not at its cut-off.
 *
 * @param to    Pa above vacuum, in the store
 * @param room  K
 * @returns mol/s that leave it, drawn at 20 °C, and K of the gas that leaves its hottest stage; undefined where the line cannot be told
 */
export function against(q: View, to: number, room: number): { readonly flow: number; readonly discharge: number } | undefined {
    const line = lineOf(q);
    if (!line) return undefined;
    const c = solved(line, pressures(line, Math.max(line.suction, to), ratioFull));
    const [first] = line.machines;
    const flow = gasMoles(first.q('displacement-flow') * efficiency(first, firstRatio(first, ratioIn(c, first), ratioFull(first))), ROOM, c.suction);
    return { flow, discharge: hottestDischarge(q, room, withCooling, c) };
}
const gauge = (q: View, end: 0 | 1) => (q.model(full)?.pressures[q.name]?.[end] ?? NaN) - airPressureOf(q);
/** Hydrogen that the stack makes, mol/s. */
const made = (q: View) => q.the('stack')?.q('hydrogen-rate') ?? NaN;

/** Share of the ideal flow that a small round hole passes, on the high side: what comes through it is a danger. Textbook, sharp edges pass 0.6. */
const HOLE_HIGH = 0.8;

export default [
    defineQuantity({ name: 'displacement-flow', of: 'compressor', measure: 'flow', unit: 'L/h', meaning: 'Volume swept by the piston, of the first stage where there are several.', formula: 'displacement x speed', source: 'nameplate', work: q => q.num('displacement') * q.num('speed') }),
    defineQuantity({ name: 'draws-at', of: 'compressor', measure: 'pressure', unit: 'bar', meaning: 'Pressure at which it draws with the store at the cut-off, above the air outside: that of the air, of a cylinder when nearly empty, as a regulator is set, or what settles behind the compressor before it.', formula: 'what the one before delivers = what this one takes', source: 'mass balance', work: q => gauge(q, 0) }),
    defineQuantity({ name: 'presses-to', of: 'compressor', measure: 'pressure', unit: 'bar', meaning: 'Pressure into which it presses at the cut-off: that of the store, or the one at which the compressor behind it draws.', formula: 'cut-off, or draws-at of the next', source: 'mass balance', work: q => gauge(q, 1) }),
    defineQuantity({ name: 'pressure-ratio', of: 'compressor', measure: 'number', meaning: 'Absolute pressure behind it at the cut-off over the pressure at suction, all of its stages together.', formula: '(cut-off + air) / air', source: 'definition', work: q => ratioIn(q.model(full), q) }),
    defineQuantity({ name: 'stage-ratio', of: 'compressor', measure: 'number', meaning: 'Ratio of each stage at the cut-off, all of them equal: so they need the least work if the gas is cooled between.', formula: 'r^(1/stages)', source: 'Çengel & Boles, 5th edition, eq. 7-59', work: q => stageRatio(q.q('pressure-ratio'), q.num('stages')) }),
    defineQuantity({ name: 'interstage-pressure', of: 'compressor', measure: 'pressure', unit: 'bar', meaning: 'Pressure behind its first stage at the cut-off, above the air outside.', formula: 'suction x r^(1/stages)', source: 'Çengel & Boles, 5th edition, eq. 7-59', shownAt: 'stages', shownAs: 'between', work: q => (q.num('stages') > 1 ? (q.q('draws-at') + airPressureOf(q)) * q.q('stage-ratio') - airPressureOf(q) : NaN) }),
    defineQuantity({ name: 'volumetric-efficiency', of: 'compressor', measure: 'fraction', meaning: 'Part of the swept volume that leaves as fresh gas at the cut-off, of the first stage where there are several.', formula: '0.8 x (1 + c - c r^(1/n)) x (1 - leak-back)', source: 'textbook clearance formula; suction heating after Ren 2022; ± 30 % unless measured', work: q => efficiency(q, q.q('stage-ratio')) }),
    defineQuantity({ name: 'free-delivery', of: 'compressor', measure: 'gas-flow', unit: 'NL/h', meaning: 'Hydrogen delivered at the cut-off pressure, drawn at 20 °C. Compressors that draw one from the other deliver what the first one does.', formula: 'swept volume x volumetric efficiency', source: 'as volumetric-efficiency', shownAt: 'displacement', shownAs: 'delivers', work: q => delivery(q, full) }),
    defineQuantity({ name: 'free-delivery-start', of: 'compressor', measure: 'gas-flow', unit: 'NL/h', meaning: 'Hydrogen delivered into an empty store.', formula: 'as free-delivery, at 0.5 bar above the air', source: 'as volumetric-efficiency', work: q => delivery(q, start) }),
    defineQuantity({ name: 'stall-pressure', of: 'compressor', measure: 'pressure', unit: 'bar', meaning: 'Pressure at which nothing more is delivered, by it and by those before it.', formula: 'ratio ((1 + c)/c)^n of each stage, multiplied', source: 'textbook clearance formula; leaks bring it down', work: q => {
        const line = lineOf(q);
        let pressure = line?.suction ?? NaN;
        for (const m of line?.machines ?? []) {
            pressure *= stallRatio(m.num('clearance'), m.num('polytropic')) ** m.num('stages');
            if (m.name === q.name) break;
        }
        return pressure - airPressureOf(q);
    } }),
    defineQuantity({ name: 'discharge-temperature', of: 'compressor', measure: 'temperature', meaning: 'Temperature of the gas that leaves its hottest stage at the cut-off pressure, first drawn at 20 °C, with the cooling of a small slow machine.', formula: 'T r^(φ (k-1)/k), r of one stage', source: 'isentropic exponent of hydrogen 1.405; φ by measurement or assumed', shownAt: 'speed', shownAs: 'discharge', work: q => hottestDischarge(q, ROOM, withCooling) }),
    defineQuantity({ name: 'discharge-temperature-hot', of: 'compressor', measure: 'temperature', meaning: 'The same on the hottest day of the site.', formula: 'as discharge-temperature', source: 'as discharge-temperature', work: q => hottestDischarge(q, q.the('site')?.num('hottest') ?? NaN, withCooling) }),
    defineQuantity({ name: 'discharge-temperature-adiabatic', of: 'compressor', measure: 'temperature', meaning: 'The same without any cooling but that between stages.', formula: 'T r^((k-1)/k)', source: 'textbook', work: q => hottestDischarge(q, ROOM, withoutCooling) }),
    defineQuantity({ name: 'ideal-power', of: 'compressor', measure: 'power', meaning: 'Least power that the gas made needs at the cut-off pressure.', formula: 'hydrogen x R T ln r', source: 'textbook', work: q => made(q) * isothermalWork(ROOM, q.q('pressure-ratio')) }),
    defineQuantity({ name: 'running-power-least', of: 'compressor', measure: 'power', meaning: 'Least power that pressing its delivery takes at the cut-off pressure, while it runs. Small machines draw two to five times as much.', formula: 'delivery x R T ln r', source: 'textbook', work: q => q.q('free-delivery') * isothermalWork(ROOM, q.q('pressure-ratio')) }),
    defineQuantity({ name: 'gas-cooling', of: 'compressor', measure: 'thermal-conductance', meaning: 'Heat that the hydrogen made carries off for each kelvin that it warms on its way through.', formula: 'hydrogen x k/(k-1) R', source: 'ideal gas', work: q => made(q) * heatRatio / (heatRatio - 1) * GAS_CONSTANT }),
    defineQuantity({ name: 'open-flow', of: 'unloader', measure: 'gas-flow', unit: 'Nm3/h', meaning: 'Hydrogen that comes back through it from a full store if the check valve behind it lets through.', formula: 'flow through a hole at the speed of sound, 0.8 of the ideal', source: 'textbook', work: q => {
        const bore = q.num('orifice');
        const air = airPressureOf(q);
        return holeFlow(Math.PI / 4 * bore * bore, HOLE_HIGH, (q.the('cylinder')?.q('cut-off') ?? NaN) + air, air, ROOM, MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen) / MOLAR_MASS.hydrogen;
    } }),
    defineQuantity({ name: 'gas-power', of: 'compressor', measure: 'power', meaning: 'Power that goes into the gas while it runs at the cut-off pressure, no heat lost during a stroke. The motor takes more.', formula: 'delivery x sum over the stages of k/(k-1) R T (r^((k-1)/k) - 1)', source: 'Çengel & Boles, 5th edition, eq. 7-58', work: q => q.q('free-delivery') * suctions(q, ROOM, withoutCooling).reduce((sum, t) => sum + polytropicWork(t, q.q('stage-ratio'), heatRatio), 0) }),
    defineQuantity({ name: 'duty', of: 'compressor', measure: 'fraction', meaning: 'Share of the time that it runs to move what the stack makes.', formula: 'hydrogen / mean delivery', source: 'mass balance', work: q => Math.min(1, made(q) / (0.5 * (q.q('free-delivery') + q.q('free-delivery-start')))) }),
    defineQuantity({ name: 'energy-per-volume', of: 'compressor', measure: 'energy-per-gas', unit: 'kWh/m3', meaning: 'Electrical energy of the compressor for each m³ of hydrogen (0 °C, dry).', formula: 'power x duty / hydrogen', source: 'mass balance', shownAt: 'power', shownAs: '', work: q => q.num('power') * q.q('duty') / (made(q) / MOLES_PER_NORMAL_CUBIC_METRE) }),
    defineQuantity({ name: 'starts', of: 'compressor', measure: 'frequency', unit: '/h', meaning: 'Starts in an hour, from the volume between the switches of the bag.', formula: 'as bag.starts-per-hour', source: 'mass balance', shownAt: 'displacement', shownAs: 'starts', work: q => (q.the('bag') ?? q.the('gasometer'))?.q('starts-per-hour') ?? NaN }),
    defineQuantity({ name: 'water-dropped', of: 'compressor', measure: 'mass-flow', unit: 'g/h', meaning: 'Water that turns liquid when gas saturated at 20 °C where it draws is pressed to the cut-off and cools again, between its stages and behind it.', formula: 'saturation at suction - saturation at the pressed', source: 'IAPWS; Dalton', work: q => vapourFlow(made(q), saturationPressure(ROOM), q.q('draws-at') + airPressureOf(q)) * (1 - 1 / q.q('pressure-ratio')) }),
    defineQuantity({ name: 'water-dropped-between', of: 'compressor', measure: 'mass-flow', unit: 'g/h', meaning: 'The part of it that turns liquid before the last stage, which would press it: a trap between must take it.', formula: 'saturation at suction, 20 °C - saturation behind the last cooler', source: 'IAPWS; Dalton', work: q => {
        const stages = q.num('stages');
        const from = q.q('draws-at') + airPressureOf(q);
        const cold = stages > 1 ? suctions(q, ROOM, withCooling).at(-1) ?? NaN : NaN;
        return condensate(made(q), saturationPressure(ROOM), from, cold, from * q.q('stage-ratio') ** (stages - 1));
    } }),
];
