/**
 * The operating point of the stack: current, volts, bypass, heat and temperature depend on each other and are solved
 * together. The source meets the stack at a current; the current through ports and channels is the exact ladder; the heat
 * that stays behind and the losses to the room (and the cooler) settle the temperature; and the temperature moves the rest.
 */
import { solveLadder, passageResistance, type Channel, type Ladder, type PlateLaw } from '../physics/bypass-ladder.js';
import { FARADAY } from '../physics/constants.js';
import { counterflowHeat, firstSteady, steadyMargin, surfaceLoss } from '../physics/heat.js';
import { interpolate } from '../physics/interpolate.js';
import { lyeConductivity, lyeDensity, lyeHeatCapacity, lyeVapourPressure, waterActivity } from '../physics/lye.js';
import {
    gasFractionInGap, gasResistanceFactor, kineticsOf, layerResistance, overvoltage, plateSlope, plateVoltage, restVoltage, surfaces, type CellMake,
    type SurfaceName,
} from '../physics/polarisation.js';
import { findRoot } from '../physics/root.js';
import { thermoneutralVoltageWithVapour } from '../physics/water-splitting.js';
import { circulation, type Loop, type LoopStack, type Side } from './lye-loop.js';
import type { Source } from './source.js';

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
    /** V of one cell: rest voltage, the two overvoltages of its lines, clear lye and separator, bubbles; the surface's offset is left. */
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
export const OUTLET_GAS = 0.3;
/** m/s, lye that rises in the gaps with its bubbles, at least. Own choice, no source; it washes a third of the clinging bubbles off. */
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
/** K, lye and water in a cooler, at which their heat capacities are taken: they move by 1 % over 20 K. */
const IN_COOLER = 323.15;
/** K, ramp of a thermostat: it switches, and over hours the mean lies a few kelvin above its point. Common practice, no source. */
const THERMOSTAT_RAMP = 4;

/** W that stack, vessels and hoses lose to a room, both in K. */
export function stackLoss(make: StackMake, T: number, room: number): number {
    return make.lossFactor * (make.conductance === make.conductance ? make.conductance * (T - room) : surfaceLoss(T, room, make.outside, make.outsideHeight, EMISSIVITY));
}

/**
 * Solves one make on one source.
 *
 * @param make          the stack, usable as {@link usable} tells
 * @param source        what feeds it
 * @param room          K
 * @param temperature   K, where it is fixed (cold start, stated); otherwise the heat balance decides, to {@link CLOSE}
 * @param fixedCurrent  A, where the current is fixed; otherwise source and stack agree on it, to 1e-5 of itself
 * @param near          the solution of a make that differs by a little: followed along its tangents from there, so that at most {@link LEFT} of
 *                      what differs is left over; solved afresh where they do not lead there
 * @returns the solution; `runsAway` where even at {@link HOTTEST} more heat is made than led away
 *
 * Volts carry the surface's ± (0.08 .. 0.2 V a cell), the warming ± 30 %. Laws and sources: those of the physics it calls.
 */
export function solveStack(make: StackMake, source: Source, room: number, temperature?: number, fixedCurrent?: number, near?: OperatingPoint): OperatingPoint {
    let start: Float64Array | undefined = near?.ladder.plates.length === make.cells - 1 ? near.ladder.plates : undefined;
    let startedAt = near?.current ?? 0;
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
        if (fixedCurrent !== undefined) return { limitedBy: 'current limit', ...take(T, fixedCurrent) };
        const excess = (current: number) => leftOver(take(T, current));
        const along = (from: number) => tangents(excess, current => leftSlope(take(T, current)), from, least, most);
        // The crossing moves little from one temperature to the next: it is looked for near the last one first.
        let found = crossing === crossing ? along(crossing) : NaN;
        if (!(found === found)) {
            // The stack takes more volts the more current flows, so what is left over at the limit settles most cases at once.
            if (excess(most) >= 0) return { limitedBy: 'current limit', ...take(T, most) };
            found = along(withoutBypass(make, source, T, least, most));
        }
        if (!(found === found)) {
            if (!(excess(least) > 0)) return { limitedBy: 'too few volts', ...take(T, 0) };
            found = findRoot(excess, least, most, closeTo(least));
        }
        return { limitedBy: 'volts', ...take(T, (crossing = found)) };
    };
    const gained = (p: Taken) => heatOf(make, p) - stackLoss(make, p.T, room) - coolingOf(make, p);

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
            if (Math.abs(dCurrent) <= Math.max(closeTo(current), LEFT * Math.abs(current - from.current)) && Math.abs(dT) <= Math.max(CLOSE, LEFT * Math.abs(T - from.T))) return { limitedBy, ...p };
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
            return { made: heatOf(make, q), lost: stackLoss(make, t, room) + coolingOf(make, q) };
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
    const margin = () => {
        if (temperature !== undefined || runsAway) return runsAway ? 0 : NaN;
        if (p.limitedBy !== 'volts' || !(T > room)) return 1;
        const [cool, warm] = beside();
        return steadyMargin(warm.made - cool.made, warm.lost - cool.lost);
    };
    return new Solution(make, source, room, p, runsAway, ownTangents, margin);
}

/** What was found. Most of it is asked of few solutions, and worked out when it is. */
class Solution implements OperatingPoint {
    readonly current: number;
    readonly groupCurrent: number;
    readonly voltage: number;
    readonly temperature: number;
    readonly bypassEfficiency: number;
    readonly limitedBy: OperatingPoint['limitedBy'];
    readonly ladder: Ladder;
    readonly cell: CellMake;
    private flow: OperatingPoint['lyeFlow'] | undefined;

    constructor(
        private readonly make: StackMake, private readonly source: Source, readonly room: number, private readonly p: Settled, readonly runsAway: boolean,
        readonly tangents: () => Tangents, readonly margin: () => number,
    ) {
        this.current = p.current;
        this.groupCurrent = p.current / make.groups;
        this.voltage = p.volts;
        this.temperature = p.T;
        this.bypassEfficiency = p.current > 0 ? p.ladder.efficiency : NaN;
        this.limitedBy = p.limitedBy;
        this.ladder = p.ladder;
        this.cell = p.cell;
    }
    /** A/m² */
    private get density(): number {
        return this.groupCurrent / this.make.area;
    }
    /** Ω·m², without bubbles. */
    private get clear(): number {
        return cellAt(this.make, this.temperature).areaResistance;
    }
    get supplyVoltage(): number {
        return this.source.open - this.source.resistance * this.current;
    }
    get cellVoltage(): number {
        return this.voltage / this.make.cells;
    }
    get bypass(): number {
        return this.ladder.bypass;
    }
    get worstCell(): number {
        return this.ladder.least;
    }
    get reversed(): number {
        return this.ladder.reversed;
    }
    get heat(): number {
        return heatOf(this.make, this.p);
    }
    get loss(): number {
        return stackLoss(this.make, this.temperature, this.room);
    }
    get cooling(): number {
        return coolingOf(this.make, this.p);
    }
    get lyeFlow(): OperatingPoint['lyeFlow'] {
        return (this.flow ??= lyeFlowOf(this.make, this.p));
    }
    get conductivity(): number {
        return this.p.conductivity;
    }
    get rest(): number {
        return this.cell.rest;
    }
    get anode(): number {
        return overvoltage(this.cell.anode, this.density, this.temperature);
    }
    get cathode(): number {
        return overvoltage(this.cell.cathode, this.density, this.temperature);
    }
    get ohmic(): number {
        return this.density * this.clear;
    }
    get bubbles(): number {
        return this.density * (this.cell.areaResistance - this.clear);
    }
    get portResistance(): number {
        return this.p.port;
    }
    get voidFraction(): number {
        return gasInGap(this.make, this.density, this.temperature, 'hydrogen');
    }
    get formFactor(): number {
        return this.source.formFactor(this.voltage);
    }
}

/** mol/s of hydrogen that the plates make. */
function hydrogenOf(make: StackMake, p: Taken): number {
    return p.current * make.cells * (p.ladder.efficiency === p.ladder.efficiency ? Math.max(0, p.ladder.efficiency) : 1) / (2 * FARADAY);
}
function heatOf(make: StackMake, p: Taken): number {
    if (!(p.current > 0)) return 0;
    const moles = hydrogenOf(make, p);
    const vapour = Math.min(MOST_VAPOUR * make.pressure, lyeVapourPressure(make.solute, make.strength, p.T));
    return p.volts * p.current - 2 * FARADAY * moles * thermoneutralVoltageWithVapour(p.T, vapour, make.pressure);
}
function lyeFlowOf(make: StackMake, p: Taken): Record<Side, number> {
    const moles = hydrogenOf(make, p);
    return { hydrogen: circulation(make.loops.hydrogen, make, p.T, moles), oxygen: circulation(make.loops.oxygen, make, p.T, moles / 2) };
}
function coolingOf(make: StackMake, p: Taken): number {
    const c = make.cooler;
    if (!c || p.T <= c.waterTemperature || p.T <= c.startsAt) return 0;
    const share = Math.min(1, (p.T - c.startsAt) / THERMOSTAT_RAMP);
    const flow = lyeFlowOf(make, p);
    const capacity = lyeDensity(make.solute, make.strength, IN_COOLER) * lyeHeatCapacity(make.solute, make.strength, IN_COOLER);
    return share * counterflowHeat(c.conductance, c.sides.reduce((sum, side) => sum + flow[side], 0) * capacity, c.waterFlow, p.T, c.waterTemperature);
}

/** Steps along tangents that are tried. */
const MOST_TANGENTS = 6;
/** How far beside a place it is looked how things change, as a share. */
const BESIDE = 1e-3;
/** How close a current is found, as a share of itself, and the least that counts, A: a trickle warms a stack by little, and still steadily. */
const CURRENT_CLOSE = 1e-5;
const LEAST_CLOSE = 1e-7;
const closeTo = (current: number) => Math.max(LEAST_CLOSE, CURRENT_CLOSE * Math.abs(current));
/** Part of a change that may be left over where a solution is followed to one nearby. */
const LEFT = 0.05;
/** Where a falling function crosses zero, by tangents from a place nearby; NaN if they do not settle between the ends. */
function tangents(f: (x: number) => number, slopeAt: (x: number) => number, from: number, low: number, high: number): number {
    let x = from;
    for (let step = 0; step <= MOST_TANGENTS && x < Infinity; step++) {
        const value = f(x);
        const slope = slopeAt(x);
        const next = x - value / slope;
        if (Math.abs(next - x) <= closeTo(x)) return x;
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
        ...kineticsOf(make.surface, T),
        areaResistance: 2 * layerResistance(make.gap, conductivity) + separator + pressed, offset: surfaces[make.surface].offset + make.offset,
    };
}
/** mol/C of gas at either electrode. */
const MOLES_PER_CHARGE: Readonly<Record<Side, number>> = { hydrogen: 1 / (2 * FARADAY), oxygen: 1 / (4 * FARADAY) };
/** Gas in the lye of one gap, volume fraction. A pump sends its lye up through all gaps of its side. */
function gasInGap(make: StackMake, j: number, T: number, side: Side): number {
    if (make.gap <= 0) return 0;
    const gasPressure = make.pressure - lyeVapourPressure(make.solute, make.strength, T);
    const pumped = make.loops[side].pumped / (make.cells * make.groups * make.gap * make.area / make.height);
    return Math.min(FOAM, gasFractionInGap(j, T, gasPressure, MOLES_PER_CHARGE[side], make.gap, make.height, Math.max(STIRRED, pumped)));
}
/** The cell with the resistance that its bubbles add at a current density. */
function withBubbles(make: StackMake, cell: CellMake, j: number, conductivity: number): CellMake {
    if (make.gap <= 0 || !(j > 0)) return cell;
    const factor = (side: Side) => gasResistanceFactor(gasInGap(make, j, cell.temperature, side));
    const extra = make.bubbleFactor * layerResistance(make.gap, conductivity) * (factor('hydrogen') + factor('oxygen') - 2);
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
