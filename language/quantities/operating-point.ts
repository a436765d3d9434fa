/**
 * The operating point of the stack: current, volts, bypass, heat and temperature depend on each other and are solved
 * together. The source meets the stack at a current; the current through ports and channels is the exact ladder; the heat
 * that stays behind and the losses to the room (and the cooler) settle the temperature; and the temperature moves the rest.
 */
import { solveLadder, passageResistance, type Channel, type Ladder, type PlateLaw } from '../physics/bypass-ladder.js';
import { FARADAY } from '../physics/constants.js';
import { counterflowHeat, firstSteady, steadyMargin, surfaceLoss } from '../physics/heat.js';
import { interpolate } from '../physics/interpolate.js';
import { lyeConductivity, lyeDensity, lyeHeatCapacity, lyeVapourPressure, waterActivity, type Solute } from '../physics/lye.js';
import {
    afterOneReading, gasFractionInGap, gasResistanceFactor, layerResistance, nickelKinetics, overvoltage, plateSlope, plateVoltage, pressedExtra, restVoltage,
    separators, surfaces, type CellMake, type SurfaceName,
} from '../physics/polarisation.js';
import { findRoot } from '../physics/root.js';
import { thermoneutralVoltageWithVapour } from '../physics/water-splitting.js';
import { defineModel, type Model } from './define.js';
import { bubbleDoubt, conductivityDoubt, instrumentDoubts, liftDoubt, lossDoubt, outletDoubt, pressedDoubt, readingDoubt, separatorDoubt, surfaceDoubt, toleranceDoubt, type Read } from './doubts.js';
import { circulation, readLoop, sidesOf, type Loop, type LoopStack, type Side } from './lye-loop.js';
import { sourceModel, type Source } from './source.js';
import { airPressureOf, ROOM, WATER_DENSITY } from './surroundings.js';
import type { Fact } from '../values/match.js';
import type { View } from './view.js';

/** Everything that the solution rests on, as plain numbers: equal numbers have one solution. */
export interface StackMake extends LoopStack {
    readonly surface: SurfaceName;
    /** Ω·m² of the separator as stated (25 °C, 30 wt% KOH); 0 where it is reckoned from its MacMullin number and thickness, m. */
    readonly separatorResistance: number;
    readonly separatorNumber: number;
    readonly separatorThickness: number;
    /** What the laws leave open, as it is taken: factors on the resistance of the separator, on the conductivity of the lye, on what bubbles
     *  add and on the heat that surfaces lose (1 as expected); Ω·m² of pressed electrodes; gas in the outlet channels. */
    readonly separatorFactor: number;
    readonly conductivityFactor: number;
    readonly bubbleFactor: number;
    readonly lossFactor: number;
    readonly pressed: number;
    readonly outletGas: number;
    /** m², outer faces that lose heat, and their height, m. */
    readonly outside: number;
    readonly outsideHeight: number;
    /** W/K to the room, as stated; NaN where it is reckoned from the faces. */
    readonly conductance: number;
    /** V, what a bench reading, the first point of a stated curve, or a surface better or worse than usual adds to the offset of the surface. */
    readonly offset: number;
    /** What the stack's own curve adds to that: V of a cell over A/m² of its plates, rising; its end values beyond. */
    readonly curve?: { readonly density: readonly number[]; readonly extra: readonly number[] };
    readonly cooler?: Cooler;
    /** How the lye goes round on either side. */
    readonly loops: Readonly<Record<Side, Loop>>;
}
/** All coolers as one counterflow exchanger. */
export interface Cooler {
    /** W/K, over all their tubes. */
    readonly conductance: number;
    /** Sides whose lye passes through. */
    readonly sides: readonly Side[];
    /** W/K, heat capacity flow of the water. */
    readonly waterFlow: number;
    /** K, where the water comes in. */
    readonly waterTemperature: number;
    /** K: cooling begins here and is full a little above; -Infinity if it always runs. */
    readonly startsAt: number;
}

/** The solution. SI units; what does not exist without current is NaN then. */
export interface OperatingPoint {
    /** A, all groups together, and of one group. */
    readonly current: number;
    readonly groupCurrent: number;
    /** V at the ends of the stack, at the source's own terminals, and of one cell in the mean. */
    readonly voltage: number;
    readonly supplyVoltage: number;
    readonly cellVoltage: number;
    /** K, of the lye, and of the room it stands in. */
    readonly temperature: number;
    readonly room: number;
    /** Part of the current that makes gas (1), the rest of it (A), the least plate current (A), plates in reverse (count). */
    readonly bypassEfficiency: number;
    readonly bypass: number;
    readonly worstCell: number;
    readonly reversed: number;
    /** W: left in the stack, lost by its surfaces, taken by the coolers. */
    readonly heat: number;
    readonly loss: number;
    readonly cooling: number;
    /** m³/s of lye that goes round on either side; 0 where nothing moves it. */
    readonly lyeFlow: Readonly<Record<Side, number>>;
    /** S/m, clear lye. */
    readonly conductivity: number;
    /** V of one cell: rest voltage, the two overvoltages of smooth nickel, clear lye and separator, bubbles; the surface's offset is left. */
    readonly rest: number;
    readonly anode: number;
    readonly cathode: number;
    readonly ohmic: number;
    readonly bubbles: number;
    /** Ω, from a cell to one lower channel. */
    readonly portResistance: number;
    /** Gas in the hydrogen gap, volume fraction. */
    readonly voidFraction: number;
    readonly limitedBy: 'current limit' | 'volts' | 'too few volts';
    /** RMS over mean of the current. */
    readonly formFactor: number;
    /** No steady temperature below boiling was found. */
    readonly runsAway: boolean;
    /** 1 where the heat does not grow with the temperature, 0 where it grows as fast as what is lost; NaN where the temperature was given. */
    readonly margin: () => number;
    readonly ladder: Ladder;
    readonly cell: CellMake;
    /** How what the source has left over and the heat that is not led away change with current and temperature. */
    readonly tangents: () => Tangents;
}
/** Of what the source has left over (V, or A) and of the heat gained (W): by the current (A) and by the temperature (K). */
interface Tangents {
    readonly left: { readonly current: number; readonly temperature: number };
    readonly gain: { readonly current: number; readonly temperature: number };
}
/** What the stack takes at a current and a temperature. */
interface Taken {
    readonly T: number;
    readonly current: number;
    readonly ladder: Ladder;
    readonly cell: CellMake;
    readonly volts: number;
    /** V per A at the ends. */
    readonly slope: number;
    readonly conductivity: number;
    readonly port: number;
}
interface Settled extends Taken {
    readonly limitedBy: OperatingPoint['limitedBy'];
}

/**
 * Gas in the lye of the two upper channels, by which lye and gas leave; the two lower ones are full of clear lye. Volume fraction;
 * own choice, no source. More gas would let less current bypass.
 */
const OUTLET_GAS = 0.3;
/** m/s, lye that rises in the gaps with its bubbles, no pump. Own choice, no source; it washes a third of the clinging bubbles off. */
const STIRRED = 0.02;
/** Most gas in a gap; above it the lye foams and no law of ours holds. Own choice. */
const FOAM = 0.6;
/** K, above this the lye of a rig open to the air would soon boil; no steady state is looked for beyond it. */
export const HOTTEST = 378.15;
/** K, steps from the cold side in which the steady temperature is looked for. Own choice. */
const SEARCH_STEP = 14;
/** Vapour as a share of the pressure in the gas space that is counted at most: beyond, the lye boils and the balance has no end. */
const MOST_VAPOUR = 0.9;
/** Emissivity of plastic, paint and oxidised steel, handbook values; bright stainless steel radiates a third. */
export const EMISSIVITY = 0.9;
/** A/m², more than any stack bears: where nothing limits the current, the crossing is looked for below it. */
const MOST_CURRENT_DENSITY = 20000;
/** A, below this a source with too few volts is taken to send nothing. */
const LEAST_CURRENT = 1e-3;
/** K, how close a steady temperature is found: far closer than it is known, so that small differences can be told. */
const CLOSE = 0.005;
/** K, how far beside a temperature it is looked how heat and loss grow with it. */
const BESIDE_K = 0.25;
/** K, ramp of a thermostat: it switches, and over hours the mean lies a few kelvin above its point. Common practice, no source. */
const THERMOSTAT_RAMP = 4;

/**
 * Solves one make on one source.
 *
 * @param make          the stack, usable as {@link usable} tells
 * @param source        what feeds it
 * @param room          K
 * @param temperature   K, where it is fixed (cold start, stated); otherwise the heat balance decides, to {@link CLOSE}
 * @param fixedCurrent  A, where the current is fixed; otherwise source and stack agree on it, to 1e-5 of the most that can flow
 * @param near          the solution of a make that differs by a little: followed along its tangents from there, so that at most {@link LEFT} of
 *                      what differs is left over; solved afresh where they do not lead there
 * @returns the solution; `runsAway` where even at {@link HOTTEST} more heat is made than led away
 *
 * Volts carry the surface's ± (0.08 .. 0.2 V a cell), the warming ± 30 %. Laws and sources: those of the physics it calls.
 */
export function solveStack(make: StackMake, source: Source, room: number, temperature?: number, fixedCurrent?: number, near?: OperatingPoint): OperatingPoint {
    let start: Float64Array | undefined = near?.ladder.plates.length === make.cells - 1 ? near.ladder.plates : undefined;
    let startedAt = near?.current ?? 0;
    const capacity = lyeDensity(make.solute, make.strength, IN_COOLER) * lyeHeatCapacity(make.solute, make.strength, IN_COOLER);
    const most = Number.isFinite(source.limit) ? source.limit : Math.min(MOST_CURRENT_DENSITY * make.area * make.groups, source.resistance > 0 ? source.open / source.resistance : Infinity);
    const least = Math.min(LEAST_CURRENT, most / 1000);
    /** The stack at one temperature, ready to be asked what it takes at any current. */
    const stackIn = (T: number) => {
        const cell = cellAt(make, T);
        const conductivity = conductivityOf(make, T);
        const port = passageResistance(make.portLength, make.ports * Math.PI / 4 * make.portBore ** 2, conductivity);
        const segment = passageResistance(make.pitch, Math.PI / 4 * make.manifoldBore ** 2, conductivity);
        const gas = gasResistanceFactor(make.outletGas);
        const lower: Channel = { port, segment };
        const upper: Channel = { port: port * gas, segment: segment * gas };
        const channels = [lower, lower, upper, upper];
        let last: Taken | undefined;
        return (current: number): Taken => {
            if (last?.current === current) return last;
            const each = current / make.groups;
            // Bubbles follow the current: their share is taken at the current that is tried.
            const c = withBubbles(make, cell, each / make.area, conductivity);
            const law: PlateLaw = make.curve ? bentLaw(c, make.area, make.curve)
                : { volts: i => plateVoltage(c, i / make.area), slope: i => plateSlope(c, i / make.area) / make.area };
            const ladder = solveLadder(make.cells, each, law, channels, start, startedAt > 0 ? current / startedAt : 1);
            if (ladder.settled) {
                start = ladder.plates;
                startedAt = current;
            }
            return (last = { T, current, ladder, cell: c, volts: ladder.volts + law.volts(each), slope: (ladder.slope + law.slope(each)) / make.groups, conductivity, port });
        };
    };
    let latest: { T: number; take: (current: number) => Taken } | undefined;
    const take = (T: number, current: number) => (latest?.T === T ? latest : (latest = { T, take: stackIn(T) })).take(current);
    /** What the source has left over at that current (V), or sends more (A). */
    const leftOver = ({ volts, current }: Taken) => (source.currentAt ? source.currentAt(volts) - current : source.open - (source.resistance + source.leads) * current - source.diodes - volts);
    /** How that falls with the current. */
    const leftSlope = ({ volts, slope }: Taken) => (source.currentAt ? (source.currentAt(volts * (1 + BESIDE)) - source.currentAt(volts)) / (volts * BESIDE) * slope - 1 : -source.resistance - source.leads - slope);
    let crossing = NaN;
    const settle = (T: number): Settled => {
        if (fixedCurrent !== undefined) return { ...take(T, fixedCurrent), limitedBy: 'current limit' };
        const excess = (current: number) => leftOver(take(T, current));
        const along = (from: number) => tangents(excess, current => leftSlope(take(T, current)), from, least, most);
        // The crossing moves little from one temperature to the next: it is looked for near the last one first.
        let found = crossing === crossing ? along(crossing) : NaN;
        if (!(found === found)) {
            // The stack takes more volts the more current flows, so what is left over at the limit settles most cases at once.
            if (excess(most) >= 0) return { ...take(T, most), limitedBy: 'current limit' };
            found = along(withoutBypass(make, source, T, least, most));
        }
        if (!(found === found)) {
            if (!(excess(least) > 0)) return { ...take(T, 0), limitedBy: 'too few volts' };
            found = findRoot(excess, least, most, most * CURRENT_CLOSE);
        }
        return { ...take(T, (crossing = found)), limitedBy: 'volts' };
    };
    const hydrogenOf = (p: Taken) => p.current * make.cells * (p.ladder.efficiency === p.ladder.efficiency ? Math.max(0, p.ladder.efficiency) : 1) / (2 * FARADAY);
    const heatOf = (p: Taken) => {
        if (!(p.current > 0)) return 0;
        const moles = hydrogenOf(p);
        const vapour = Math.min(MOST_VAPOUR * make.pressure, lyeVapourPressure(make.solute, make.strength, p.T));
        return p.volts * p.current - 2 * FARADAY * moles * thermoneutralVoltageWithVapour(p.T, vapour, make.pressure);
    };
    const lossOf = (T: number) => make.lossFactor * (make.conductance === make.conductance ? make.conductance * (T - room) : surfaceLoss(T, room, make.outside, make.outsideHeight, EMISSIVITY));
    const lyeFlowOf = (p: Taken): Record<Side, number> => {
        const moles = hydrogenOf(p);
        return { hydrogen: circulation(make.loops.hydrogen, make, p.T, moles), oxygen: circulation(make.loops.oxygen, make, p.T, moles / 2) };
    };
    const coolingOf = (p: Taken) => {
        const c = make.cooler;
        if (!c || p.T <= c.waterTemperature || p.T <= c.startsAt) return 0;
        const share = Math.min(1, (p.T - c.startsAt) / THERMOSTAT_RAMP);
        const flow = lyeFlowOf(p);
        return share * counterflowHeat(c.conductance, c.sides.reduce((sum, side) => sum + flow[side], 0) * capacity, c.waterFlow, p.T, c.waterTemperature);
    };
    const gained = (p: Taken) => heatOf(p) - lossOf(p.T) - coolingOf(p);

    /** From the solution of a make that differs by a little, along its tangents; undefined where those do not lead there. */
    const alongside = (): Settled | undefined => {
        if (!near || near.runsAway || near.limitedBy === 'too few volts' || (fixedCurrent !== undefined && temperature !== undefined)) return undefined;
        const { limitedBy } = near;
        const free = { current: fixedCurrent === undefined && limitedBy === 'volts', temperature: temperature === undefined };
        let current = free.current ? near.current : fixedCurrent ?? most;
        let T = temperature ?? near.temperature;
        if (free.temperature && !(T > room)) return undefined;
        const by = near.tangents();
        const from = { current, T };
        for (let step = 0; step <= MOST_TANGENTS; step++) {
            const p = take(T, current);
            const left = leftOver(p);
            if (!free.current && fixedCurrent === undefined && !(left >= 0)) return undefined;
            const gain = free.temperature ? gained(p) : 0;
            const [dCurrent, dT] = free.current && free.temperature ? solveTwo(by.left.current, by.left.temperature, by.gain.current, by.gain.temperature, -left, -gain)
                : free.current ? [-left / by.left.current, 0] : [0, free.temperature ? -gain / by.gain.temperature : 0];
            if (Math.abs(dCurrent) <= Math.max(most * CURRENT_CLOSE, LEFT * Math.abs(current - from.current)) && Math.abs(dT) <= Math.max(CLOSE, LEFT * Math.abs(T - from.T))) return { ...p, limitedBy };
            current += dCurrent;
            T += dT;
            if (!(current > least && (current < most || !free.current) && T < HOTTEST && (T > room || !free.temperature))) return undefined;
        }
        return undefined;
    };
    const soon = alongside();
    let T = temperature ?? NaN;
    let runsAway = false;
    if (soon) T = soon.T;
    else if (temperature === undefined) {
        const low = room + 0.01;
        const steady = firstSteady(t => gained(settle(t)), low, HOTTEST, SEARCH_STEP, CLOSE);
        runsAway = steady === Infinity;
        T = runsAway ? HOTTEST : steady > low ? steady : room;
    }
    const p = soon ?? settle(T);
    /** Begins at the solution again, so that nothing hangs on what was asked before. */
    const again = () => {
        start = p.ladder.plates;
        startedAt = p.current;
        crossing = p.limitedBy === 'volts' ? p.current : NaN;
        latest = undefined;
    };
    let sides: { readonly made: number; readonly lost: number }[] | undefined;
    /** Heat made and led away a little below and a little above. */
    const beside = () => {
        if (sides) return sides;
        again();
        return (sides = [T - BESIDE_K, T + BESIDE_K].map(t => {
            const q = settle(t);
            return { made: heatOf(q), lost: lossOf(t) + coolingOf(q) };
        }));
    };
    let slopes: Tangents | undefined;
    const ownTangents = (): Tangents => {
        if (slopes) return slopes;
        again();
        const [warmer, more] = [take(T + BESIDE_K, p.current), take(T, p.current * (1 + BESIDE))];
        const gain = gained(p);
        return (slopes = {
            left: { current: leftSlope(p), temperature: (leftOver(warmer) - leftOver(p)) / BESIDE_K },
            gain: { current: (gained(more) - gain) / (p.current * BESIDE), temperature: (gained(warmer) - gain) / BESIDE_K },
        });
    };
    const each = p.current / make.groups;
    const j = each / make.area;
    const heat = heatOf(p);
    const anode = overvoltage(p.cell.anode, j, T);
    const cathode = overvoltage(p.cell.cathode, j, T);
    const clear = cellAt(make, T).areaResistance;
    return {
        current: p.current, groupCurrent: each, voltage: p.volts, supplyVoltage: source.open - source.resistance * p.current,
        cellVoltage: p.volts / make.cells, temperature: T, room, bypassEfficiency: p.current > 0 ? p.ladder.efficiency : NaN,
        bypass: p.ladder.bypass, worstCell: p.ladder.least, reversed: p.ladder.reversed, heat, loss: lossOf(T), cooling: coolingOf(p), lyeFlow: lyeFlowOf(p),
        conductivity: p.conductivity, rest: p.cell.rest, anode, cathode, ohmic: j * clear, bubbles: j * (p.cell.areaResistance - clear),
        portResistance: p.port, voidFraction: gasInGap(make, j, T, 1 / (2 * FARADAY)), limitedBy: p.limitedBy,
        formFactor: source.formFactor(p.volts), runsAway, ladder: p.ladder, cell: p.cell,
        tangents: ownTangents,
        margin: () => {
            if (temperature !== undefined || runsAway) return runsAway ? 0 : NaN;
            if (p.limitedBy !== 'volts' || !(T > room)) return 1;
            const [cool, warm] = beside();
            return steadyMargin(warm.made - cool.made, warm.lost - cool.lost);
        },
    };
}

/** Steps along tangents that are tried. */
const MOST_TANGENTS = 6;
/** How far beside a place it is looked how things change, as a share. */
const BESIDE = 1e-3;
/** How close a current is found, as a share of the most that can flow. */
const CURRENT_CLOSE = 1e-5;
/** Part of a change that may be left over where a solution is followed to one nearby. */
const LEFT = 0.05;
/** Where a falling function crosses zero, by tangents from a place nearby; NaN if they do not settle between the ends. */
function tangents(f: (x: number) => number, slopeAt: (x: number) => number, from: number, low: number, high: number): number {
    let x = from;
    for (let step = 0; step <= MOST_TANGENTS && x < Infinity; step++) {
        const value = f(x);
        const slope = slopeAt(x);
        const next = x - value / slope;
        if (Math.abs(next - x) <= high * CURRENT_CLOSE) return x;
        if (!(slope < 0 && next > low && next < high)) return NaN;
        x = next;
    }
    return NaN;
}
/** A, where source and stack would meet if nothing bypassed the cells: a place to begin. */
function withoutBypass(make: StackMake, source: Source, T: number, least: number, most: number): number {
    const cell = cellAt(make, T);
    const volts = (current: number) => make.cells * plateVoltage(cell, current / make.groups / make.area);
    const excess = (current: number) => (source.currentAt ? source.currentAt(volts(current)) - current : source.open - source.diodes - (source.resistance + source.leads) * current - volts(current));
    // Bubbles and channels ask a little more than this: where it finds nothing below the limit, the two meet just there.
    const met = findRoot(excess, least, most, most * BESIDE);
    return met === met ? met : most;
}
/** Two straight lines: a x + b y = e and c x + d y = f. */
function solveTwo(a: number, b: number, c: number, d: number, e: number, f: number): [number, number] {
    const whole = a * d - b * c;
    return [(e * d - b * f) / whole, (a * f - e * c) / whole];
}
/** S/m, clear lye. */
function conductivityOf(make: StackMake, T: number): number {
    return make.conductivityFactor * lyeConductivity(make.solute, make.strength, T);
}
/** One cell at a temperature, without the bubbles that its current will make. */
function cellAt(make: StackMake, T: number): CellMake {
    const conductivity = conductivityOf(make, T);
    const vapour = lyeVapourPressure(make.solute, make.strength, T);
    const separator = make.separatorFactor * (make.separatorResistance > 0
        // A stated resistance is a sheet at 25 °C in strong lye: it falls as the lye conducts better.
        ? make.separatorResistance * lyeConductivity('KOH', TEST_LYE.strength, TEST_LYE.temperature) / conductivity
        : layerResistance(make.separatorThickness, conductivity, make.separatorNumber));
    const pressed = make.gap === 0 ? make.pressed : 0;
    return {
        temperature: T, rest: restVoltage(T, make.pressure, vapour, waterActivity(make.solute, make.strength, T)),
        anode: nickelKinetics.anode, cathode: nickelKinetics.cathode,
        areaResistance: 2 * layerResistance(make.gap, conductivity) + separator + pressed, offset: surfaces[make.surface].offset + make.offset,
    };
}
/** Gas in the lye of one gap, volume fraction; `molesPerCharge` is 1/2F on the hydrogen side, 1/4F on the oxygen side. */
function gasInGap(make: StackMake, j: number, T: number, molesPerCharge: number): number {
    if (make.gap <= 0) return 0;
    const gasPressure = make.pressure - lyeVapourPressure(make.solute, make.strength, T);
    return Math.min(FOAM, gasFractionInGap(j, T, gasPressure, molesPerCharge, make.gap, make.height, STIRRED));
}
/** The cell with the resistance that its bubbles add at a current density. */
function withBubbles(make: StackMake, cell: CellMake, j: number, conductivity: number): CellMake {
    if (make.gap <= 0 || !(j > 0)) return cell;
    const factor = (molesPerCharge: number) => gasResistanceFactor(gasInGap(make, j, cell.temperature, molesPerCharge));
    const extra = make.bubbleFactor * layerResistance(make.gap, conductivity) * (factor(1 / (2 * FARADAY)) + factor(1 / (4 * FARADAY)) - 2);
    return { ...cell, areaResistance: cell.areaResistance + extra };
}

/** The law of a plate with what its own curve adds; beyond the last point that stays. The volts never fall with current. */
function bentLaw(cell: CellMake, area: number, curve: NonNullable<StackMake['curve']>): PlateLaw {
    const { density, extra } = curve;
    return {
        volts: i => plateVoltage(cell, i / area) + Math.sign(i) * interpolate(density, extra, Math.abs(i) / area),
        slope: i => {
            const j = Math.abs(i) / area;
            const at = density.findIndex(d => d > j);
            const bend = at > 0 ? (extra[at] - extra[at - 1]) / (density[at] - density[at - 1]) : 0;
            return Math.max(LEAST_SLOPE, plateSlope(cell, j) + bend) / area;
        },
    };
}
/** V for each A/m²: a measured curve may run flat for a stretch, but never so that the current is undecided. Own choice. */
const LEAST_SLOPE = 1e-7;

/** The lye in which makers state what a sheet resists: 30 wt% KOH at 25 °C, from memory. */
const TEST_LYE = { strength: 0.3, temperature: 298.15 } as const;

// ---- from the text ---------------------------------------------------------------------------------------------------

const separatorMakes: Readonly<Record<string, keyof typeof separators>> = {
    composite: 'zirconia-polysulfone', 'PP-woven': 'polypropylene-cloth', 'PP-felt': 'polypropylene-felt', PPS: 'polypropylene-cloth',
};

/** m, a plate and a sheet whose thickness is not stated. Common practice, no source. */
const USUAL_PLATE = 1e-3;
const USUAL_SHEET = 0.5e-3;
/** m, what gaskets and ports add to the width and the height of the wetted face where no plate size is stated, and what the end boards add
 *  to the length. Common practice, no source. */
const RIM = { width: 0.04, height: 0.05, ends: 0.04 } as const;
/** Faces of pipes, lids and feet over those of the columns' shells. Own choice, no source. */
const BESIDE_COLUMNS = 1.2;
/** Faces of vessels and hoses over those of the stack where no column is described: one measured small unit [dieguez-2008], second-hand. */
const VESSELS_TO_STACK = 2.38;
/** m, a column that does not say its size. Common practice, no source. */
const USUAL_COLUMN = { bore: 0.08, height: 0.4 } as const;
/** m, least height that counts for the film of air at an upright face. */
const LEAST_FACE = 0.2;
/** A tube in a bath of lye that water runs through: W/(m²·K), m, m, m³/s, K. From memory, ± 40 %. */
const USUAL_COOLER = { coefficient: 120, bore: 8e-3, length: 1, flow: 1 / 60000, water: 288.15 } as const;
/** K, lye and water in a cooler, at which their heat capacities are taken: they move by 1 % over 20 K. */
const IN_COOLER = 323.15;
/** J/(kg·K) of water from 10 to 40 °C [iapws-95]. */
const WATER_HEAT = 4182;

/** Which surface a description means. */
function surfaceOf(stack: View): SurfaceName {
    const electrode = stack.word('electrode') ?? 'plain';
    const plate = stack.word('plate.material') ?? 'nickel';
    const anode = stack.word('anode-material') ?? plate;
    const cathode = stack.word('cathode-material') ?? plate;
    if (electrode === 'highly-activated') return 'highly-activated';
    if (electrode === 'activated') return 'activated';
    if (electrode === 'nickel-plated') return 'nickel-plated-steel';
    const steel = (m: string) => /^stainless/.test(m);
    if (steel(anode) && steel(cathode)) return 'stainless';
    if (steel(anode)) return 'stainless-anode-new';
    if (steel(cathode)) return 'stainless-cathode';
    if (electrode === 'mesh' && stack.num('gap') === 0) return 'nickel-pressed-mesh';
    return 'nickel-plain';
}

/** What the text says of a stack, its lye and what stands around it, with the make of its separators: before what the laws leave open. */
interface StatedStack {
    readonly make: Omit<StackMake, keyof LeftOpen>;
    readonly sheets: typeof separators[keyof typeof separators] | undefined;
}
type LeftOpen = Pick<StackMake, 'separatorFactor' | 'conductivityFactor' | 'bubbleFactor' | 'lossFactor' | 'liftFactor' | 'pressed' | 'outletGas' | 'offset'>;
const statedStack = defineModel<StatedStack | undefined>({
    name: 'stack-stated', of: 'stack', meaning: 'The stack, its lye and its separators as the text has them.',
    solve(q) {
        const lye = q.the('lye');
        const separator = q.the('separator');
        const wetted = q.sizes('wetted');
        const cells = q.num('cells');
        const groups = q.maybe('groups', 1);
        if (!lye || !wetted || wetted.length < 2) {
            q.num('wetted');
            return undefined;
        }
        q.workingsNote('wetted', wetted[0] * wetted[1]);
        const gap = q.num('gap');
        const plate = q.sizes('plate.size');
        const thickness = plate?.[2] ?? q.maybe('plate.thickness', USUAL_PLATE);
        const strength = lye.q('mass-fraction');
        const word = lye.word('solute');
        if (word !== 'NaOH' && word !== 'KOH') {
            // The laws hold for hydroxides; for another solute everything of the stack is unknown.
            lye.num('solute');
            return undefined;
        }
        const solute: Solute = word;
        const material = separator?.word('material') ?? 'none';
        const sheets = separators[separatorMakes[material] ?? (separator ? 'polypropylene-cloth' : 'none')];
        const sheet = separator?.maybe('thickness', sheets.thickness || USUAL_SHEET) ?? 0;
        const pitch = thickness + 2 * gap + sheet;
        const face = plate ? [plate[0], plate[1]] : [wetted[0] + RIM.width, wetted[1] + RIM.height];
        const length = cells * groups * pitch + RIM.ends;
        const stackOutside = 2 * face[0] * face[1] + 2 * (face[0] + face[1]) * length;
        const columns = q.all('column');
        // Vessels and hoses lose more than the stack itself.
        const shell = (c: View) => Math.PI * c.maybe('bore', USUAL_COLUMN.bore) * c.maybe('height', USUAL_COLUMN.height);
        const vessels = columns.length ? BESIDE_COLUMNS * columns.reduce((sum, c) => sum + shell(c), 0) : VESSELS_TO_STACK * stackOutside;
        return {
            sheets: separator && sheets,
            make: {
                cells, groups, area: wetted[0] * wetted[1], height: wetted[1], gap, pitch, surface: surfaceOf(q),
                separatorResistance: separator?.maybe('area-resistance', 0) ?? 0, separatorNumber: sheets.macMullin, separatorThickness: sheet, solute, strength,
                ports: q.maybe('port.count', 1), portBore: q.num('port.bore'), portLength: q.num('port.length'), manifoldBore: q.num('manifold.bore'),
                outside: stackOutside + vessels, outsideHeight: Math.max(face[1], LEAST_FACE), conductance: q.maybe('heat-loss'),
                pressure: airPressureOf(q), ...q.model(lyeWays),
            },
        };
    },
});
export const stackMake = defineModel<StackMake | undefined>({
    name: 'stack-make', of: 'stack', meaning: 'The stack, its lye and its separators as numbers.', same: sameNumbers,
    solve(q) {
        const stated = q.model(statedStack);
        if (!stated) return undefined;
        const { make, sheets } = stated;
        const separatorOff = sheets ? q.doubt(separatorDoubt, 1, `${percent(sheets.low)} to ${percent(sheets.high)}`) : 0;
        const pressedOff = make.gap === 0 ? q.doubt(pressedDoubt) : 0;
        return {
            ...make,
            separatorFactor: !sheets ? 1 : separatorOff < 0 ? 1 + separatorOff * (1 - sheets.low) : 1 + separatorOff * (sheets.high - 1),
            conductivityFactor: 1 + q.the('lye')!.doubt(conductivityDoubt), bubbleFactor: 1 + q.doubt(bubbleDoubt), lossFactor: 1 + q.doubt(lossDoubt), liftFactor: Math.exp(q.doubt(liftDoubt)),
            pressed: pressedExtra.usual + pressedOff * (pressedOff < 0 ? pressedExtra.usual - pressedExtra.low : pressedExtra.high - pressedExtra.usual),
            outletGas: OUTLET_GAS + q.doubt(outletDoubt), offset: q.doubt(surfaceDoubt, surfaces[make.surface].plusMinus),
        };
    },
});
/** Whether two makes have one solution. */
function sameNumbers(a: StackMake | undefined, b: StackMake | undefined): boolean {
    return a !== undefined && b !== undefined && keyOf(a) === keyOf(b);
}

/** '+15 %' for a factor of 1.15. */
const percent = (factor: number) => `${factor < 1 ? '-' : '+'}${Math.round(100 * Math.abs(factor - 1))} %`;

const lyeWays = defineModel<Pick<StackMake, 'cooler' | 'loops'>>({
    name: 'lye-ways', of: 'stack', meaning: 'All coolers of a stack as one, where there are any, and how the lye goes round.', solve: coolersOf,
});
/** Several coolers in a row count by their tubes together. */
function coolersOf(q: View): Pick<StackMake, 'cooler' | 'loops'> {
    const coolers = q.all('cooler').filter(c => c.word('sort') !== 'none');
    let conductance = 0;
    let water = 0;
    let temperature = NaN;
    const sides: Side[] = [];
    const tubes: Record<Side, { bore: number; length: number }[]> = { hydrogen: [], oxygen: [] };
    for (const c of coolers) {
        const tube = { bore: c.maybe('bore', USUAL_COOLER.bore), length: c.maybe('length', USUAL_COOLER.length) };
        conductance += c.maybe('coefficient', USUAL_COOLER.coefficient) * Math.PI * tube.bore * tube.length;
        water = Math.max(water, c.maybe('water.flow', USUAL_COOLER.flow));
        temperature = c.maybe('water.temperature', USUAL_COOLER.water);
        const passed = sidesOf(q, c);
        // Where the text does not tell: the side with less gas, and so with less lye.
        for (const side of passed.length ? passed : ['oxygen'] as const) {
            sides.push(side);
            // A coil hangs in the lye of its column and does not narrow the way.
            if (c.word('sort') !== 'coil-in-column') tubes[side].push(tube);
        }
    }
    const loops = { hydrogen: readLoop(q, 'hydrogen', tubes.hydrogen), oxygen: readLoop(q, 'oxygen', tubes.oxygen) };
    if (!coolers.length) return { loops };
    const watched = q.all('switch').filter(s => q.controls.sensed(s) === `${q.name}.temperature`);
    const point = watched.length && q.all('valve').some(v => v.names('open-while').length > 0) ? watched[0].maybe('breaks.value', watched[0].maybe('makes.value')) : NaN;
    return {
        // Several coolers of one side stand one after the other: the same lye passes them.
        cooler: { conductance, sides: [...new Set(sides)], waterFlow: water * WATER_DENSITY * WATER_HEAT, waterTemperature: temperature, startsAt: point === point ? point : -Infinity },
        loops,
    };
}

/** More cells than anybody stacks: taken for a slip of the pen. */
const MOST_CELLS = 5000;

/** Solutions kept: those of a few edits back and forth, each with what its bounds need. */
const MOST_KEPT = 400;
const solved = new Map<string, OperatingPoint>();
/** What each of them was solved for. */
const keys = new WeakMap<OperatingPoint, string>();
const inWords = new WeakMap<StackMake | Source, string>();
/** Everything that a make or a source says. Both are read-only, and most are asked for again and again. */
function keyOf(x: StackMake | Source): string {
    let key = inWords.get(x);
    if (key === undefined) {
        key = JSON.stringify(x);
        // Amperes over volts say themselves at two places.
        if ('currentAt' in x && x.currentAt) key += ` ${x.currentAt(0)} ${x.currentAt(0.8 * x.open)}`;
        inWords.set(x, key);
    }
    return key;
}
/** Equal inputs have one solution: an edit elsewhere in the text costs nothing here. */
export function remembered(make: StackMake, source: Source, room: number, temperature?: number, current?: number, near?: OperatingPoint): OperatingPoint {
    const key = `${keyOf(make)} ${keyOf(source)} ${room} ${temperature} ${current}`;
    const from = near && keys.get(near);
    if (from === key) return near!;
    // What was begun from another solution differs from it within the tolerance: nothing may hang on what was looked at before.
    const whole = from === undefined ? key : `${key} from ${from}`;
    let p = solved.get(whole);
    if (!p) {
        p = solveStack(make, source, room, temperature, current, near);
        if (near && from === undefined) return p;
        if (solved.size > MOST_KEPT) solved.clear();
        solved.set(whole, p);
        if (!near) keys.set(p, key);
    }
    return p;
}
/** Whether a stack and a source are known well enough to be solved: sizes above 0, lye below 50 wt%, a source with volts and no limit below 0. */
export function usable(make: StackMake | undefined, source: Source | undefined): make is StackMake {
    return !!make && !!source && [make.cells, make.groups, make.area, make.gap, make.strength, make.portBore, make.portLength, make.manifoldBore].every(n => n === n && n >= 0)
        && make.cells >= 1 && make.groups >= 1 && make.area > 0 && make.portBore > 0 && make.manifoldBore > 0 && make.strength > 0 && make.strength < 0.5 && source.open > 0 && !(source.limit < 0) && make.cells <= MOST_CELLS;
}

/** K, hottest and coldest air where no site is described; a site has its own assumption. Common practice, no source. */
export const HOT_DAY = 313.15;
const COLD_DAY = 278.15;
/** Current over the usual one at which low load is looked at where no lowest current is stated. Common practice, no source. */
const LOW_LOAD = 0.25;

/** K, the room in which things are looked at unless said otherwise: 20 °C, kept within the site's own range. */
export function usualRoom(q: View): number {
    const site = q.the('site');
    const low = site?.maybe('coldest') ?? NaN;
    const high = site?.maybe('hottest') ?? NaN;
    return Math.min(high === high ? high : ROOM, Math.max(low === low ? low : ROOM, ROOM));
}

/** V for one cell: further off than this no surface explains a reading, and it is told instead of taken. Common practice, no source. */
export const UNLIKELY = 0.25;
/** A/m²: a reading below it says little of the rest of the curve. Own choice, no source. */
const LEAST_READ = 100;

/** K of a curve that does not tell its temperature: 50 °C. Common practice, no source. */
export const CURVE_AT = 323.15;
interface CurvePoint {
    /** V of the whole stack, A, K. */
    readonly volts: number;
    readonly current: number;
    readonly temperature: number;
    /** The ± of each as it stands in the text, and which point of the text it is, from 1. */
    readonly half: Readonly<Record<Read, number>>;
    readonly at: number;
}
/** The points of the stack's own curve, rising currents; undefined where none is stated that can be used. */
export function ownCurve(q: View): readonly CurvePoint[] | undefined {
    const half = (f: Fact | undefined) => (f ? Math.max(0, f.high - f.number, f.number - f.low) : 0);
    const given = q.rows('curve').map((r, i) => {
        const [y, x, told] = ['y', 'x', 'temperature'].map(slot => r.get(slot));
        return { volts: y?.number ?? NaN, current: x?.number ?? NaN, told: told?.number ?? NaN, half: { volts: half(y), amperes: half(x), temperature: half(told) }, at: i + 1 };
    });
    let temperature = given.find(p => p.told === p.told)?.told ?? CURVE_AT;
    const points = given.map(({ told, ...point }) => ({ ...point, temperature: (temperature = told === told ? told : temperature) }))
        .filter(p => p.volts > 0 && p.current > 0 && p.temperature > 273.15 && p.temperature < HOTTEST).sort((a, b) => a.current - b.current);
    const rises = points.every((p, i) => i === 0 || (p.current > points[i - 1].current && (p.volts > points[i - 1].volts || p.temperature > points[i - 1].temperature)));
    return points.length && rises ? points : undefined;
}
/**
 * What was read, off by what its ± leaves open: that of the text, else that of a usual instrument.
 *
 * @param of     the part that tells it
 * @param half   the ± of the text, V, A or K; 0 where it tells none
 * @param at     which of several points: each has its own ± in the text, and all of them one instrument
 */
function offInstrument(of: View, what: Read, value: number, half: number, at?: number): number {
    if (half > 0) return value + of.doubt(toleranceDoubt(what, at), half);
    const usual = instrumentDoubts[what];
    return usual.unit ? value + of.doubt(usual) : value * (1 + of.doubt(usual));
}
const offPoint = (q: View, p: CurvePoint): CurvePoint => ({
    ...p, volts: offInstrument(q, 'volts', p.volts, p.half.volts, p.at), current: offInstrument(q, 'amperes', p.current, p.half.amperes, p.at),
    temperature: offInstrument(q, 'temperature', p.temperature, p.half.temperature, p.at),
});
/** The stack as described, with its own curve in place of what kinetics and lye would give; their dependence on temperature stays. */
export const curvedMake = defineModel<StackMake | undefined>({
    name: 'stack-curved', of: 'stack', meaning: 'The stack as numbers, its own measured curve in place of the laws where one is stated.', same: sameNumbers,
    solve(q) {
        const make = q.model(stackMake);
        const source = q.model(sourceModel);
        const points = ownCurve(q)?.map(p => offPoint(q, p));
        if (!points || !usable(make, source)) return make;
        const at = (m: StackMake, p: typeof points[number]) => remembered(m, source!, p.temperature, p.temperature, p.current);
        const miss = (m: StackMake, p: typeof points[number]) => p.volts / m.cells - at(m, p).cellVoltage;
        // The first point moves the Tafel lines, so that the curve still ends at the rest voltage; the others add what is then left, at
        // the current that the plates carry in the mean. A second round takes in that this current moves with them.
        const first: StackMake = { ...make, offset: make.offset + miss(make, points[0]) + q.doubt(readingDoubt, AFTER_CURVE) };
        const density = points.map(p => Math.max(LEAST_EFFICIENT, at(first, p).bypassEfficiency) * p.current / make.groups / make.area);
        if (density.some((d, i) => i > 0 && d <= density[i - 1])) return first;
        const extra = points.map((p, i) => (i ? miss(first, p) : 0));
        const bent: StackMake = { ...first, curve: { density, extra } };
        return { ...bent, curve: { density, extra: points.map((p, i) => extra[i] + miss(bent, p)) } };
    },
});
/** V for one cell, half width along a curve of several points: how far seven measured stacks stray from the laws once shifted is the most of it. */
const AFTER_CURVE = 0.03;
/** Least share of the current that plates are taken to carry, where a stated curve is laid over them. Own choice. */
const LEAST_EFFICIENT = 0.1;

export interface BenchReading {
    readonly part: View;
    /** V for one cell: read less worked out, at the same current and temperature. */
    readonly shift: number;
    /** V for one cell, as read and as worked out without it. */
    readonly read: number;
    readonly expected: number;
    /** A */
    readonly current: number;
    /** Whether the curve is shifted by it. */
    readonly taken: boolean;
    /** Whether lye or gap were other ones then: it is held against those, and says a little less of today's. */
    readonly otherThen: boolean;
}
/** Mass fraction and share of the gap from which it counts as another one: closer than that nobody tells two fillings or two gaskets apart. Common practice, no source. */
const OTHER_STRENGTH = 0.01;
const OTHER_GAP = 0.05;
/** The stack as it was at a reading: lye and gap as a line or a condition of the reading tells them. */
function makeThen(q: View, make: StackMake, reading: View): { readonly then: StackMake; readonly other: boolean } {
    const lye = q.the('lye')?.name ?? 'lye';
    const conditions = new Map(reading.rows('conditions').map(r => [r.get('what')?.names?.join('.'), r.get('value')?.number ?? NaN]));
    const told = (key: string, otherwise: number) => [reading.seen(key), conditions.get(key) ?? NaN].find(n => n > 0) ?? otherwise;
    const word = reading.seenWord(`${lye}.solute`);
    const solute = word === 'KOH' || word === 'NaOH' ? word : make.solute;
    const strength = told(`${lye}.strength`, make.strength);
    const gap = told(`${q.name}.gap`, make.gap);
    const other = solute !== make.solute || Math.abs(strength - make.strength) > OTHER_STRENGTH || Math.abs(gap - make.gap) > OTHER_GAP * make.gap;
    return { then: { ...make, solute, strength, gap }, other };
}
/** The newest reading that says volts, amperes and temperature of a stack; undefined where there is none. */
export function benchReading(q: View): BenchReading | undefined {
    const make = q.model(curvedMake);
    const source = q.model(sourceModel);
    if (!usable(make, source)) return undefined;
    const seen = (r: View, name: string) => r.seen(`${q.name}.${name}`);
    // Dates are written so that they sort as they stand; of one day the later line counts.
    let part: View | undefined;
    for (const r of q.all('reading')) {
        if (!['voltage', 'current', 'temperature'].every(name => seen(r, name) > 0)) continue;
        if (!part || (r.word('date') ?? '') >= (part.word('date') ?? '')) part = r;
    }
    if (!part) return undefined;
    const read = part;
    const as = (name: string, what: Read) => offInstrument(read, what, seen(read, name), read.seenHalf(`${q.name}.${name}`));
    const [volts, current, temperature] = [as('voltage', 'volts'), as('current', 'amperes'), as('temperature', 'temperature')];
    const { then, other } = makeThen(q, make, part);
    if (!(temperature > 273.15 && temperature < HOTTEST) || !usable(then, source)) return undefined;
    const each = volts / make.cells;
    const expected = remembered(then, source!, temperature, temperature, current).cellVoltage;
    const shift = each - expected;
    return { part, shift, read: each, expected, current, otherThen: other, taken: !make.curve && current / make.groups / make.area >= LEAST_READ && Math.abs(shift) <= UNLIKELY };
}
/** The stack as described: by its own curve, else by the laws shifted by the newest reading at the bench, else by the laws alone. */
export const tunedMake = defineModel<StackMake | undefined>({
    name: 'stack-tuned', of: 'stack', meaning: 'The stack as numbers, by its own curve, or its curve shifted by the newest reading at the bench.', same: sameNumbers,
    solve(q) {
        const make = q.model(curvedMake);
        const reading = benchReading(q);
        return make && reading?.taken ? { ...make, offset: make.offset + reading.shift + q.doubt(readingDoubt, reading.otherThen ? afterOneReading.otherLyeOrGap : afterOneReading.sameLye) } : make;
    },
});

export const operatingPoint: Model<OperatingPoint | undefined> = defineModel<OperatingPoint | undefined>({
    name: 'operating-point', of: 'stack', meaning: 'Current, volts, bypass and temperature in a room of 20 °C, after hours, solved together.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        if (!usable(make, source)) return undefined;
        const stated = q.says('temperature') === 'stated' ? q.num('temperature') : undefined;
        return remembered(make, source!, usualRoom(q), stated, undefined, q.nearby(operatingPoint));
    },
});
export const hottestPoint: Model<OperatingPoint | undefined> = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-hottest', of: 'stack', meaning: 'The same on the hottest day of the site.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const room = q.the('site')?.num('hottest') ?? HOT_DAY;
        return usable(make, source) ? remembered(make, source!, room, undefined, undefined, q.nearby(hottestPoint)) : undefined;
    },
});
export const coldStart: Model<OperatingPoint | undefined> = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-cold', of: 'stack', meaning: 'The first minutes of a start on the coldest day of the site.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const room = q.the('site')?.num('coldest') ?? COLD_DAY;
        return usable(make, source) ? remembered(make, source!, room, room, undefined, q.nearby(coldStart)) : undefined;
    },
});
/** At the lowest current that the controls allow, still warm. */
export const lowLoad: Model<OperatingPoint | undefined> = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-low', of: 'stack', meaning: 'At the lowest current allowed, warm.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const normal = q.model(operatingPoint);
        const lowest = q.the('routine')?.maybe('lowest-current') ?? NaN;
        if (!usable(make, source) || !normal || !(normal.current > 0)) return undefined;
        return remembered(make, source!, normal.room, normal.temperature, lowest === lowest ? lowest : LOW_LOAD * normal.current, q.nearby(lowLoad));
    },
});
/** Current beyond an end of the stated curve from which it is told, as a share. Own choice. */
const AT_THE_END = 0.02;
/** Whether the stack works below or above its own curve; undefined within it, and where none is stated. */
export function beyondCurve(q: View): 'below' | 'above' | undefined {
    const points = ownCurve(q);
    const p = q.model(operatingPoint);
    if (!points || !p || !(p.current > 0)) return undefined;
    return p.current < (1 - AT_THE_END) * points[0].current ? 'below' : p.current > (1 + AT_THE_END) * points.at(-1)!.current ? 'above' : undefined;
}
