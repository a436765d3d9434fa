/**
 * The operating point of the stack: current, volts, bypass, heat and temperature depend on each other and are solved
 * together. The source meets the stack at a current; the current through ports and channels is the exact ladder; the heat
 * that stays behind and the losses to the room (and the cooler) settle the temperature; and the temperature moves the rest.
 */
import { solveLadder, passageResistance, type Channel, type Ladder, type PlateLaw } from '../physics/bypass-ladder.js';
import { ATMOSPHERE, FARADAY } from '../physics/constants.js';
import { counterflowHeat, surfaceLoss } from '../physics/heat.js';
import { lyeConductivity, lyeVapourPressure, waterActivity, type Solute } from '../physics/lye.js';
import {
    gasFractionInGap, gasResistanceFactor, layerResistance, nickelKinetics, overvoltage, plateSlope, plateVoltage, pressedExtra, restVoltage,
    separators, surfaces, type CellMake, type SurfaceName,
} from '../physics/polarisation.js';
import { findRoot } from '../physics/root.js';
import { thermoneutralVoltageWithVapour } from '../physics/water-splitting.js';
import { defineModel } from './define.js';
import { sourceModel, type Source } from './source.js';
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
    /** Ω·m² of the separator at 25 °C reference, or 0 with the MacMullin number used instead. */
    readonly separatorResistance: number;
    readonly separatorNumber: number;
    readonly separatorThickness: number;
    /** Half widths of the separator's number as factors. */
    readonly separatorLow: number;
    readonly separatorHigh: number;
    readonly solute: Solute;
    readonly strength: number;
    readonly ports: number;
    readonly portBore: number;
    readonly portLength: number;
    readonly manifoldBore: number;
    /** m², outer faces that lose heat, and their height. */
    readonly outside: number;
    readonly outsideHeight: number;
    /** W/K of extra insulation or measured loss; NaN = computed. */
    readonly conductance: number;
    readonly offset: number;
    readonly pressure: number;
    readonly cooler?: Cooler;
}
export interface Cooler {
    readonly conductance: number;
    /** W/K */
    readonly lyeFlow: number;
    readonly waterFlow: number;
    readonly waterTemperature: number;
    /** K: cooling begins here and is full a little above; -Infinity if it always runs. */
    readonly startsAt: number;
}

export interface OperatingPoint {
    readonly current: number;
    readonly groupCurrent: number;
    readonly voltage: number;
    readonly supplyVoltage: number;
    readonly cellVoltage: number;
    readonly temperature: number;
    readonly room: number;
    readonly bypassEfficiency: number;
    readonly bypass: number;
    readonly worstCell: number;
    readonly reversed: number;
    readonly heat: number;
    readonly loss: number;
    readonly cooling: number;
    readonly conductivity: number;
    readonly rest: number;
    readonly anode: number;
    readonly cathode: number;
    readonly ohmic: number;
    readonly bubbles: number;
    readonly portResistance: number;
    readonly voidFraction: number;
    readonly limitedBy: 'current limit' | 'volts' | 'too few volts';
    readonly formFactor: number;
    /** No steady temperature below boiling was found. */
    readonly runsAway: boolean;
    readonly ladder: Ladder;
    readonly cell: CellMake;
}

/** Share of the hydraulic height over which a port lets lye (and gas) in: two channels below with lye, two above with gas. */
const OUTLET_GAS = 0.3;
/** Above this the lye of a rig open to the air would soon boil; no steady state is looked for beyond it. K. */
const HOTTEST = 378.15;

/** Solves one make on one source. `temperature` fixes the temperature (cold start, stated); otherwise the heat balance decides. */
export function solveStack(make: StackMake, source: Source, room: number, temperature?: number, fixedCurrent?: number): OperatingPoint {
    let start: Float64Array | undefined;
    let near = 0;
    const at = (T: number) => {
        const cell = cellAt(make, T);
        const conductivity = lyeConductivity(make.solute, make.strength, T);
        const inlet = passageResistance(make.portLength, make.ports * Math.PI / 4 * make.portBore ** 2, conductivity);
        const segment = passageResistance(make.pitch, Math.PI / 4 * make.manifoldBore ** 2, conductivity);
        const gas = (1 - OUTLET_GAS) ** -1.5;
        const channels: Channel[] = [{ port: inlet, segment }, { port: inlet, segment }, { port: inlet * gas, segment: segment * gas }, { port: inlet * gas, segment: segment * gas }];
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
            const most = Number.isFinite(source.limit) ? source.limit : Math.min(20000 * make.area * make.groups, source.resistance > 0 ? source.open / source.resistance : Infinity);
            const least = Math.min(1e-3, most / 1000);
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
        const vapour = Math.min(0.9 * ATMOSPHERE, lyeVapourPressure(make.solute, make.strength, T));
        return p.volts * p.current - 2 * FARADAY * moles * thermoneutralVoltageWithVapour(T, vapour, make.pressure);
    };
    const lossOf = (T: number) => make.conductance === make.conductance ? make.conductance * (T - room) : surfaceLoss(T, room, make.outside, make.outsideHeight, 0.9);
    const coolingOf = (T: number) => {
        const c = make.cooler;
        if (!c || T <= c.waterTemperature) return 0;
        // A thermostat switches; over hours the mean lies on a ramp of a few kelvin above its point.
        const share = Math.min(1, Math.max(0, (T - c.startsAt) / 4));
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
        portResistance: p.port, voidFraction: voidIn(make, j, T), limitedBy: p.limitedBy,
        formFactor: source.formFactor(p.volts), runsAway, ladder: p.ladder, cell: p.cell,
    };
}

function cellAt(make: StackMake, T: number): CellMake {
    const conductivity = lyeConductivity(make.solute, make.strength, T);
    const vapour = lyeVapourPressure(make.solute, make.strength, T);
    const separator = make.separatorResistance > 0
        // A stated resistance is a sheet at 25 °C in strong lye: it falls as the lye conducts better.
        ? make.separatorResistance * lyeConductivity('KOH', 0.3, 298.15) / conductivity
        : layerResistance(make.separatorThickness, conductivity, make.separatorNumber);
    const pressed = make.gap === 0 ? pressedExtra.usual : 0;
    return {
        temperature: T, rest: restVoltage(T, make.pressure, vapour, waterActivity(make.solute, make.strength, T)),
        anode: nickelKinetics.anode, cathode: nickelKinetics.cathode,
        areaResistance: 2 * layerResistance(make.gap, conductivity) + separator + pressed, offset: surfaces[make.surface].offset + make.offset,
    };
}
function voidIn(make: StackMake, j: number, T: number): number {
    if (make.gap <= 0) return 0;
    const gasPressure = make.pressure - lyeVapourPressure(make.solute, make.strength, T);
    return Math.min(0.6, gasFractionInGap(j, T, gasPressure, 1 / (2 * FARADAY), make.gap, make.height, 0.02));
}
function withBubbles(make: StackMake, cell: CellMake, j: number, conductivity: number): CellMake {
    if (make.gap <= 0 || !(j > 0)) return cell;
    const gasPressure = make.pressure - lyeVapourPressure(make.solute, make.strength, cell.temperature);
    const fraction = (perCharge: number) => Math.min(0.6, gasFractionInGap(j, cell.temperature, gasPressure, perCharge, make.gap, make.height, 0.02));
    const clear = layerResistance(make.gap, conductivity);
    const extra = clear * (gasResistanceFactor(fraction(1 / (2 * FARADAY))) + gasResistanceFactor(fraction(1 / (4 * FARADAY))) - 2);
    return { ...cell, areaResistance: cell.areaResistance + extra };
}

// ---- from the text ---------------------------------------------------------------------------------------------------

const separatorMakes: Readonly<Record<string, keyof typeof separators>> = {
    composite: 'zirconia-polysulfone', 'PP-woven': 'polypropylene-cloth', 'PP-felt': 'polypropylene-felt', PPS: 'polypropylene-cloth',
};

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
        const thickness = plate?.[2] ?? 1e-3;
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
        const sheet = separator?.maybe('thickness', make.thickness || 0.5e-3) ?? 0;
        const pitch = thickness + 2 * gap + sheet;
        const face = plate ? [plate[0], plate[1]] : [wetted[0] + 0.04, wetted[1] + 0.05];
        const length = cells * groups * pitch + 0.04;
        const stackOutside = 2 * face[0] * face[1] + 2 * (face[0] + face[1]) * length;
        const columns = q.all('column');
        // Vessels and hoses lose more than the stack itself: 2.4 times its faces on a measured small unit [dieguez-2008].
        const vessels = columns.length ? 1.2 * columns.reduce((sum, c) => sum + Math.PI * c.maybe('bore', 0.08) * c.maybe('height', 0.4), 0) : 2.38 * stackOutside;
        return {
            cells, groups, area: wetted[0] * wetted[1], height: wetted[1], gap, pitch, surface: surfaceOf(q),
            separatorResistance: separator?.maybe('area-resistance', 0) ?? 0, separatorNumber: make.macMullin, separatorThickness: sheet,
            separatorLow: make.low, separatorHigh: make.high, solute, strength,
            ports: q.maybe('port.count', 1), portBore: q.num('port.bore'), portLength: q.num('port.length'), manifoldBore: q.num('manifold.bore'),
            outside: stackOutside + vessels, outsideHeight: Math.max(face[1], 0.2), conductance: q.maybe('heat-loss'), offset: 0,
            pressure: q.the('site')?.q('air-pressure') ?? ATMOSPHERE, cooler: coolerOf(q, strength),
        };
    },
});

function coolerOf(q: View, strength: number): Cooler | undefined {
    const coolers = q.all('cooler').filter(c => c.word('sort') !== 'none');
    if (!coolers.length) return undefined;
    let conductance = 0;
    let water = 0;
    let temperature = NaN;
    for (const c of coolers) {
        conductance += c.maybe('coefficient', 120) * Math.PI * c.maybe('bore', 8e-3) * c.maybe('length', 1);
        water = Math.max(water, c.maybe('water.flow', 1 / 60000));
        temperature = c.maybe('water.temperature', 288.15);
    }
    const watched = q.all('switch').filter(s => q.controls.sensed(s) === `${q.name}.temperature`);
    const point = watched.length && q.all('valve').some(v => v.names('open-while').length > 0) ? watched[0].maybe('breaks.value', watched[0].maybe('makes.value')) : NaN;
    return {
        // Gas lift moves a few tenths of a litre a minute through each side of a small rig.
        conductance, lyeFlow: coolers.length * 0.4 / 60000 * 1270 * (3900 - 3000 * strength), waterFlow: water * 998 * 4182, waterTemperature: temperature,
        startsAt: point === point ? point : -Infinity,
    };
}

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
export function usable(make: StackMake | undefined, source: Source | undefined): make is StackMake {
    return !!make && !!source && [make.cells, make.groups, make.area, make.gap, make.strength, make.portBore, make.portLength, make.manifoldBore].every(n => n === n && n >= 0)
        && make.cells >= 1 && make.groups >= 1 && make.area > 0 && make.portBore > 0 && make.manifoldBore > 0 && make.strength > 0 && make.strength < 0.5 && source.open > 0 && make.cells <= 5000;
}

/** The room in which things are looked at unless said otherwise: 20 °C, kept within the site's own range. */
export function usualRoom(q: View): number {
    const site = q.the('site');
    const low = site?.maybe('coldest') ?? NaN;
    const high = site?.maybe('hottest') ?? NaN;
    return Math.min(high === high ? high : 293.15, Math.max(low === low ? low : 293.15, 293.15));
}

export const operatingPoint = defineModel<OperatingPoint | undefined>({
    name: 'operating-point', of: 'stack', meaning: 'Current, volts, bypass and temperature in a room of 20 °C, after hours, solved together.',
    solve(q) {
        const make = q.model(stackMake);
        const source = q.model(sourceModel);
        if (!usable(make, source)) return undefined;
        const stated = q.says('temperature') === 'stated' ? q.num('temperature') : undefined;
        return remembered(make, source!, usualRoom(q), stated);
    },
});
export const hottestPoint = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-hottest', of: 'stack', meaning: 'The same on the hottest day of the site.',
    solve(q) {
        const make = q.model(stackMake);
        const source = q.model(sourceModel);
        const room = q.the('site')?.num('hottest') ?? 313.15;
        return usable(make, source) ? remembered(make, source!, room) : undefined;
    },
});
export const coldStart = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-cold', of: 'stack', meaning: 'The first minutes of a start on the coldest day of the site.',
    solve(q) {
        const make = q.model(stackMake);
        const source = q.model(sourceModel);
        const room = q.the('site')?.num('coldest') ?? 278.15;
        return usable(make, source) ? remembered(make, source!, room, room) : undefined;
    },
});
/** At the lowest current that the controls allow, still warm. */
export const lowLoad = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-low', of: 'stack', meaning: 'At the lowest current allowed, warm.',
    solve(q) {
        const make = q.model(stackMake);
        const source = q.model(sourceModel);
        const normal = q.model(operatingPoint);
        const lowest = q.the('routine')?.maybe('lowest-current') ?? NaN;
        if (!usable(make, source) || !normal || !(normal.current > 0)) return undefined;
        return remembered(make, source!, normal.room, normal.temperature, lowest === lowest ? lowest : 0.25 * normal.current);
    },
});
