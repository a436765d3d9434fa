/**
 * The operating point of the stack: current, volts, bypass, heat and temperature depend on each other and are solved
 * together. The source meets the stack at a current; the current through ports and channels is the exact ladder; the heat
 * that stays behind and the losses to the room (and the cooler) settle the temperature; and the temperature moves the rest.
 */
import { solveLadder, passageResistance, type Channel, type Ladder, type PlateLaw } from '../physics/bypass-ladder.js';
import { FARADAY } from '../physics/constants.js';
import { counterflowHeat, surfaceLoss } from '../physics/heat.js';
import { lyeConductivity, lyeDensity, lyeHeatCapacity, lyeVapourPressure, waterActivity, type Solute } from '../physics/lye.js';
import {
    gasFractionInGap, gasResistanceFactor, layerResistance, nickelKinetics, overvoltage, plateSlope, plateVoltage, pressedExtra, restVoltage,
    separators, surfaces, type CellMake, type SurfaceName,
} from '../physics/polarisation.js';
import { findRoot } from '../physics/root.js';
import { thermoneutralVoltageWithVapour } from '../physics/water-splitting.js';
import { defineModel } from './define.js';
import { sourceModel, type Source } from './source.js';
import { airPressureOf, ROOM, WATER_DENSITY } from './surroundings.js';
import type { View } from './view.js';

/** Everything that the solution rests on, as plain numbers: equal numbers have one solution. */
export interface StackMake {
    readonly cells: number;
    readonly groups: number;
    /** m², wetted face of one plate. */
    readonly area: number;
    /** m, height of the wetted face. */
    readonly height: number;
    /** m, electrode to separator, each side. */
    readonly gap: number;
    /** m, one cell to the next. */
    readonly pitch: number;
    readonly surface: SurfaceName;
    /** Ω·m² of the separator as stated (25 °C, 30 wt% KOH); 0 where it is reckoned from its MacMullin number and thickness, m. */
    readonly separatorResistance: number;
    readonly separatorNumber: number;
    readonly separatorThickness: number;
    /** Half widths of the separator's number as factors. */
    readonly separatorLow: number;
    readonly separatorHigh: number;
    readonly solute: Solute;
    readonly strength: number;
    /** Ports side by side from a cell to one channel, with their bore and length, m; bore of a channel, m. */
    readonly ports: number;
    readonly portBore: number;
    readonly portLength: number;
    readonly manifoldBore: number;
    /** m², outer faces that lose heat, and their height, m. */
    readonly outside: number;
    readonly outsideHeight: number;
    /** W/K to the room, as stated; NaN where it is reckoned from the faces. */
    readonly conductance: number;
    /** V, what a bench reading adds to the offset of the surface. */
    readonly offset: number;
    /** Whether that comes from a reading. */
    readonly read?: boolean;
    /** Pa above vacuum, in both gas spaces. */
    readonly pressure: number;
    readonly cooler?: Cooler;
}
/** All coolers as one counterflow exchanger. */
export interface Cooler {
    /** W/K, over all their tubes. */
    readonly conductance: number;
    /** W/K, heat capacity flows of the two sides. */
    readonly lyeFlow: number;
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
    readonly ladder: Ladder;
    readonly cell: CellMake;
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
const HOTTEST = 378.15;
/** Vapour as a share of the pressure in the gas space that is counted at most: beyond, the lye boils and the balance has no end. */
const MOST_VAPOUR = 0.9;
/** Emissivity of plastic, paint and oxidised steel, handbook values; bright stainless steel radiates a third. */
const EMISSIVITY = 0.9;
/** A/m², more than any stack bears: where nothing limits the current, the crossing is looked for below it. */
const MOST_CURRENT_DENSITY = 20000;
/** A, below this a source with too few volts is taken to send nothing. */
const LEAST_CURRENT = 1e-3;
/** K, ramp of a thermostat: it switches, and over hours the mean lies a few kelvin above its point. Common practice, no source. */
const THERMOSTAT_RAMP = 4;

/**
 * Solves one make on one source.
 *
 * @param make          the stack, usable as {@link usable} tells
 * @param source        what feeds it
 * @param room          K
 * @param temperature   K, where it is fixed (cold start, stated); otherwise the heat balance decides, to 0.02 K
 * @param fixedCurrent  A, where the current is fixed; otherwise source and stack agree on it, to 1e-5 of the most that can flow
 * @returns the solution; `runsAway` where even at {@link HOTTEST} more heat is made than led away
 *
 * Volts carry the surface's ± (0.08 .. 0.2 V a cell), the warming ± 30 %. Laws and sources: those of the physics it calls.
 */
export function solveStack(make: StackMake, source: Source, room: number, temperature?: number, fixedCurrent?: number): OperatingPoint {
    let start: Float64Array | undefined;
    let near = 0;
    const at = (T: number) => {
        const cell = cellAt(make, T);
        const conductivity = lyeConductivity(make.solute, make.strength, T);
        const inlet = passageResistance(make.portLength, make.ports * Math.PI / 4 * make.portBore ** 2, conductivity);
        const segment = passageResistance(make.pitch, Math.PI / 4 * make.manifoldBore ** 2, conductivity);
        const gas = gasResistanceFactor(OUTLET_GAS);
        const lower: Channel = { port: inlet, segment };
        const upper: Channel = { port: inlet * gas, segment: segment * gas };
        const channels = [lower, lower, upper, upper];
        let last: { total: number; ladder: Ladder; cell: CellMake; volts: number } | undefined;
        const stackAt = (total: number) => {
            if (last?.total === total) return last;
            const each = total / make.groups;
            // Bubbles follow the current: their share is taken at the current that is tried.
            const c = withBubbles(make, cell, each / make.area, conductivity);
            const law: PlateLaw = { volts: i => plateVoltage(c, i / make.area), slope: i => plateSlope(c, i / make.area) / make.area };
            const ladder = solveLadder(make.cells, each, law, channels, start);
            start = ladder.plates;
            return (last = { total, ladder, cell: c, volts: ladder.volts + law.volts(each) });
        };
        const excess = (total: number) => {
            const stack = stackAt(total).volts;
            return source.currentAt ? source.currentAt(stack) - total : source.open - source.resistance * total - source.diodes - source.leads * total - stack;
        };
        let current: number;
        let limitedBy: OperatingPoint['limitedBy'];
        if (fixedCurrent !== undefined) {
            current = fixedCurrent;
            limitedBy = 'current limit';
        } else {
            const most = Number.isFinite(source.limit) ? source.limit : Math.min(MOST_CURRENT_DENSITY * make.area * make.groups, source.resistance > 0 ? source.open / source.resistance : Infinity);
            const least = Math.min(LEAST_CURRENT, most / 1000);
            // The stack takes more volts the more current flows, so what is left over at the limit settles most cases at once.
            if (excess(most) >= 0) {
                current = most;
                limitedBy = 'current limit';
            } else {
                // The crossing moves little from one temperature to the next: it is looked for near the last one first.
                const [low, high] = [0.93 * near, Math.min(most, 1.07 * near)];
                if (near > 0 && excess(low) > 0 && excess(high) < 0) {
                    current = near = findRoot(excess, low, high, most * 1e-5);
                    limitedBy = 'volts';
                } else if (!(excess(least) > 0)) {
                    current = 0;
                    limitedBy = 'too few volts';
                } else {
                    current = near = findRoot(excess, least, most, most * 1e-5);
                    limitedBy = 'volts';
                }
            }
        }
        const { ladder, cell: used, volts } = stackAt(current);
        return { current, limitedBy, ladder, cell: used, volts, conductivity, port: inlet };
    };
    const heatOf = (T: number, p: ReturnType<typeof at>) => {
        if (!(p.current > 0)) return 0;
        const moles = p.current * make.cells * (p.ladder.efficiency === p.ladder.efficiency ? Math.max(0, p.ladder.efficiency) : 1) / (2 * FARADAY);
        const vapour = Math.min(MOST_VAPOUR * make.pressure, lyeVapourPressure(make.solute, make.strength, T));
        return p.volts * p.current - 2 * FARADAY * moles * thermoneutralVoltageWithVapour(T, vapour, make.pressure);
    };
    const lossOf = (T: number) => make.conductance === make.conductance ? make.conductance * (T - room) : surfaceLoss(T, room, make.outside, make.outsideHeight, EMISSIVITY);
    const coolingOf = (T: number) => {
        const c = make.cooler;
        if (!c || T <= c.waterTemperature) return 0;
        const share = Math.min(1, Math.max(0, (T - c.startsAt) / THERMOSTAT_RAMP));
        return share * counterflowHeat(c.conductance, c.lyeFlow, c.waterFlow, T, c.waterTemperature);
    };
    let T = temperature ?? NaN;
    let runsAway = false;
    if (temperature === undefined) {
        const balance = (t: number) => heatOf(t, at(t)) - lossOf(t) - coolingOf(t);
        const low = room + 0.01;
        if (!(balance(low) > 0)) T = room;
        else if (balance(HOTTEST) > 0) {
            T = HOTTEST;
            runsAway = true;
        } else T = findRoot(balance, low, HOTTEST, 0.02);
    }
    const p = at(T);
    const each = p.current / make.groups;
    const j = each / make.area;
    const heat = heatOf(T, p);
    const anode = overvoltage(p.cell.anode, j, T);
    const cathode = overvoltage(p.cell.cathode, j, T);
    const clear = cellAt(make, T).areaResistance;
    return {
        current: p.current, groupCurrent: each, voltage: p.volts, supplyVoltage: source.open - source.resistance * p.current,
        cellVoltage: p.volts / make.cells, temperature: T, room, bypassEfficiency: p.current > 0 ? p.ladder.efficiency : NaN,
        bypass: p.ladder.bypass, worstCell: p.ladder.least, reversed: p.ladder.reversed, heat, loss: lossOf(T), cooling: coolingOf(T),
        conductivity: p.conductivity, rest: p.cell.rest, anode, cathode, ohmic: j * clear, bubbles: j * (p.cell.areaResistance - clear),
        portResistance: p.port, voidFraction: gasInGap(make, j, T, 1 / (2 * FARADAY)), limitedBy: p.limitedBy,
        formFactor: source.formFactor(p.volts), runsAway, ladder: p.ladder, cell: p.cell,
    };
}

/** One cell at a temperature, without the bubbles that its current will make. */
function cellAt(make: StackMake, T: number): CellMake {
    const conductivity = lyeConductivity(make.solute, make.strength, T);
    const vapour = lyeVapourPressure(make.solute, make.strength, T);
    const separator = make.separatorResistance > 0
        // A stated resistance is a sheet at 25 °C in strong lye: it falls as the lye conducts better.
        ? make.separatorResistance * lyeConductivity('KOH', TEST_LYE.strength, TEST_LYE.temperature) / conductivity
        : layerResistance(make.separatorThickness, conductivity, make.separatorNumber);
    const pressed = make.gap === 0 ? pressedExtra.usual : 0;
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
    const extra = layerResistance(make.gap, conductivity) * (factor(1 / (2 * FARADAY)) + factor(1 / (4 * FARADAY)) - 2);
    return { ...cell, areaResistance: cell.areaResistance + extra };
}

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
/** m³/s of lye that gas lifts past each cooler of a small rig, 0.4 L/min. Common practice, no source: a few tenths of a litre. */
const GAS_LIFT = 0.4 / 60000;
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

export const stackMake = defineModel<StackMake | undefined>({
    name: 'stack-make', of: 'stack', meaning: 'The stack, its lye and its separators as numbers.',
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
        const thickness = plate?.[2] ?? USUAL_PLATE;
        const strength = lye.q('mass-fraction');
        const word = lye.word('solute');
        if (word !== 'NaOH' && word !== 'KOH') {
            // The laws hold for hydroxides; for another solute everything of the stack is unknown.
            lye.num('solute');
            return undefined;
        }
        const solute: Solute = word;
        const material = separator?.word('material') ?? 'none';
        const make = separators[separatorMakes[material] ?? (separator ? 'polypropylene-cloth' : 'none')];
        const sheet = separator?.maybe('thickness', make.thickness || USUAL_SHEET) ?? 0;
        const pitch = thickness + 2 * gap + sheet;
        const face = plate ? [plate[0], plate[1]] : [wetted[0] + RIM.width, wetted[1] + RIM.height];
        const length = cells * groups * pitch + RIM.ends;
        const stackOutside = 2 * face[0] * face[1] + 2 * (face[0] + face[1]) * length;
        const columns = q.all('column');
        // Vessels and hoses lose more than the stack itself.
        const shell = (c: View) => Math.PI * c.maybe('bore', USUAL_COLUMN.bore) * c.maybe('height', USUAL_COLUMN.height);
        const vessels = columns.length ? BESIDE_COLUMNS * columns.reduce((sum, c) => sum + shell(c), 0) : VESSELS_TO_STACK * stackOutside;
        return {
            cells, groups, area: wetted[0] * wetted[1], height: wetted[1], gap, pitch, surface: surfaceOf(q),
            separatorResistance: separator?.maybe('area-resistance', 0) ?? 0, separatorNumber: make.macMullin, separatorThickness: sheet,
            separatorLow: make.low, separatorHigh: make.high, solute, strength,
            ports: q.maybe('port.count', 1), portBore: q.num('port.bore'), portLength: q.num('port.length'), manifoldBore: q.num('manifold.bore'),
            outside: stackOutside + vessels, outsideHeight: Math.max(face[1], LEAST_FACE), conductance: q.maybe('heat-loss'), offset: 0,
            pressure: airPressureOf(q), cooler: coolerOf(q, solute, strength),
        };
    },
});

/** All coolers of a stack as one; undefined where there is none. Several in a row count by their tubes together. */
function coolerOf(q: View, solute: Solute, strength: number): Cooler | undefined {
    const coolers = q.all('cooler').filter(c => c.word('sort') !== 'none');
    if (!coolers.length) return undefined;
    let conductance = 0;
    let water = 0;
    let temperature = NaN;
    for (const c of coolers) {
        conductance += c.maybe('coefficient', USUAL_COOLER.coefficient) * Math.PI * c.maybe('bore', USUAL_COOLER.bore) * c.maybe('length', USUAL_COOLER.length);
        water = Math.max(water, c.maybe('water.flow', USUAL_COOLER.flow));
        temperature = c.maybe('water.temperature', USUAL_COOLER.water);
    }
    const watched = q.all('switch').filter(s => q.controls.sensed(s) === `${q.name}.temperature`);
    const point = watched.length && q.all('valve').some(v => v.names('open-while').length > 0) ? watched[0].maybe('breaks.value', watched[0].maybe('makes.value')) : NaN;
    return {
        conductance, lyeFlow: coolers.length * GAS_LIFT * lyeDensity(solute, strength, IN_COOLER) * lyeHeatCapacity(solute, strength, IN_COOLER),
        waterFlow: water * WATER_DENSITY * WATER_HEAT, waterTemperature: temperature,
        startsAt: point === point ? point : -Infinity,
    };
}

/** More cells than anybody stacks: taken for a slip of the pen. */
const MOST_CELLS = 5000;

const solved = new Map<string, OperatingPoint>();
/** Equal inputs have one solution: an edit elsewhere in the text costs nothing here. */
export function remembered(make: StackMake, source: Source, room: number, temperature?: number, current?: number): OperatingPoint {
    const probe = source.currentAt ? [source.currentAt(0), source.currentAt(0.8 * source.open)] : [];
    const key = JSON.stringify([make, source.kind, source.open, source.limit, source.resistance, source.leads, source.diodes, probe, room, temperature, current]);
    let p = solved.get(key);
    if (!p) {
        if (solved.size > 200) solved.clear();
        solved.set(key, (p = solveStack(make, source, room, temperature, current)));
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

/** V for one cell, with about 95 % confidence, after one reading: how far seven measured stacks stray from a curve through one of their points. */
export const AFTER_READING = 0.05;
/** V for one cell: further off than this no surface explains a reading, and it is told instead of taken. Common practice, no source. */
export const UNLIKELY = 0.25;
/** A/m²: a reading below it says little of the rest of the curve. Own choice, no source. */
const LEAST_READ = 100;

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
}
/** The newest reading that says volts, amperes and temperature of a stack; undefined where there is none. */
export function benchReading(q: View): BenchReading | undefined {
    const make = q.model(stackMake);
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
    const [volts, current, temperature] = ['voltage', 'current', 'temperature'].map(name => seen(part, name));
    if (!(temperature > 273.15 && temperature < HOTTEST)) return undefined;
    const read = volts / make.cells;
    const expected = remembered(make, source!, temperature, temperature, current).cellVoltage;
    const shift = read - expected;
    return { part, shift, read, expected, current, taken: current / make.groups / make.area >= LEAST_READ && Math.abs(shift) <= UNLIKELY };
}
/** The stack as described, its curve shifted by the newest reading at the bench. */
export const tunedMake = defineModel<StackMake | undefined>({
    name: 'stack-tuned', of: 'stack', meaning: 'The stack as numbers, its curve shifted by the newest reading at the bench.',
    solve(q) {
        const make = q.model(stackMake);
        const reading = benchReading(q);
        return make && reading?.taken ? { ...make, offset: make.offset + reading.shift, read: true } : make;
    },
});

export const operatingPoint = defineModel<OperatingPoint | undefined>({
    name: 'operating-point', of: 'stack', meaning: 'Current, volts, bypass and temperature in a room of 20 °C, after hours, solved together.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        if (!usable(make, source)) return undefined;
        const stated = q.says('temperature') === 'stated' ? q.num('temperature') : undefined;
        return remembered(make, source!, usualRoom(q), stated);
    },
});
export const hottestPoint = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-hottest', of: 'stack', meaning: 'The same on the hottest day of the site.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const room = q.the('site')?.num('hottest') ?? HOT_DAY;
        return usable(make, source) ? remembered(make, source!, room) : undefined;
    },
});
export const coldStart = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-cold', of: 'stack', meaning: 'The first minutes of a start on the coldest day of the site.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const room = q.the('site')?.num('coldest') ?? COLD_DAY;
        return usable(make, source) ? remembered(make, source!, room, room) : undefined;
    },
});
/** At the lowest current that the controls allow, still warm. */
export const lowLoad = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-low', of: 'stack', meaning: 'At the lowest current allowed, warm.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const normal = q.model(operatingPoint);
        const lowest = q.the('routine')?.maybe('lowest-current') ?? NaN;
        if (!usable(make, source) || !normal || !(normal.current > 0)) return undefined;
        return remembered(make, source!, normal.room, normal.temperature, lowest === lowest ? lowest : LOW_LOAD * normal.current);
    },
});
