/**
 * The stack as the text has it, as numbers; by its own curve or its readings where there are any; and its operating points: in
 * ordinary running, on the hottest day, at a cold start, at low load. Solved by stack-solver.ts.
 */
import type { Solute } from '../physics/lye.js';
import { afterOneReading, pressedExtra, separators, surfaces, type SurfaceName } from '../physics/polarisation.js';
import type { Fact } from '../values/match.js';
import { defineModel, type Model } from './define.js';
import { bubbleDoubt, conductivityDoubt, instrumentDoubts, liftDoubt, lossDoubt, outletDoubt, pressedDoubt, readingDoubt, separatorDoubt, surfaceDoubt, toleranceDoubt, type Read } from './doubts.js';
import { readLoop, sidesOf, type Side } from './lye-loop.js';
import { sourceModel, type Source } from './source.js';
import { HOTTEST, OUTLET_GAS, solveStack, type OperatingPoint, type StackMake } from './stack-solver.js';
import { airPressureOf, ROOM, WATER_DENSITY } from './surroundings.js';
import type { View } from './view.js';

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
            separatorFactor: !sheets ? 1 : separatorOff < 0 ? 1 + separatorOff * (1 - sheets.low) : 1 + separatorOff * (sheets.high - 1),
            conductivityFactor: 1 + q.the('lye')!.doubt(conductivityDoubt), bubbleFactor: 1 + q.doubt(bubbleDoubt), lossFactor: 1 + q.doubt(lossDoubt), liftFactor: Math.exp(q.doubt(liftDoubt)),
            pressed: pressedExtra.usual + pressedOff * (pressedOff < 0 ? pressedExtra.usual - pressedExtra.low : pressedExtra.high - pressedExtra.usual),
            outletGas: OUTLET_GAS + q.doubt(outletDoubt), offset: q.doubt(surfaceDoubt, surfaces[make.surface].plusMinus),
            // Copied in last: see DEVELOPERS.md, Speed.
            ...make,
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

/** Solutions kept: those of a few edits back and forth. */
const MOST_KEPT = 400;
const solved = new Map<string, OperatingPoint>();
/** What each of them was solved for. */
const solvedFor = new WeakMap<OperatingPoint, readonly [make: StackMake, source: number, ...given: (number | undefined)[]]>();
const numbered = new WeakMap<StackMake | Source, number>();
/** What was said so far, each with its number: a number is quicker to look up than all that is said. */
const numbers = new Map<string, number>();
/** Never used twice, so that what is forgotten is never taken for something else. */
let lastNumber = 0;
/** A number for everything that a make or a source says. Both are read-only, and most are asked for again and again. */
function keyOf(x: StackMake | Source): number {
    let key = numbered.get(x);
    if (key === undefined) {
        let words = JSON.stringify(x);
        // Amperes over volts say themselves at two places.
        if ('currentAt' in x && x.currentAt) words += ` ${x.currentAt(0)} ${x.currentAt(0.8 * x.open)}`;
        key = numbers.get(words);
        if (key === undefined) {
            if (numbers.size > MOST_KEPT) numbers.clear();
            numbers.set(words, (key = ++lastNumber));
        }
        numbered.set(x, key);
    }
    return key;
}
/** Equal inputs have one solution: an edit elsewhere in the text costs nothing here. */
export function remembered(make: StackMake, source: Source, room: number, temperature?: number, current?: number, near?: OperatingPoint): OperatingPoint {
    // What was begun from another solution differs from it within the tolerance, and is not kept: nothing may hang on what was looked at before.
    if (near) {
        const before = solvedFor.get(near);
        return before && saysTheSame(before, [make, keyOf(source), room, temperature, current]) ? near : solveStack(make, source, room, temperature, current, near);
    }
    const key = `${keyOf(make)} ${keyOf(source)} ${room} ${temperature} ${current}`;
    let p = solved.get(key);
    if (!p) {
        p = solveStack(make, source, room, temperature, current);
        if (solved.size > MOST_KEPT) solved.clear();
        solved.set(key, p);
        solvedFor.set(p, [make, keyOf(source), room, temperature, current]);
    }
    return p;
}
/** Whether two things say the same, however deep. */
function saysTheSame(a: unknown, b: unknown): boolean {
    if (Object.is(a, b) || typeof a !== 'object' || typeof b !== 'object' || !a || !b) return Object.is(a, b);
    for (const name in a) if (!saysTheSame(a[name as keyof typeof a], b[name as keyof typeof b])) return false;
    return Object.keys(a).length === Object.keys(b).length;
}
/** Whether a stack and a source are known well enough to be solved: sizes above 0, lye below 50 wt%, a source with volts and no limit below 0. */
export function usable(make: StackMake | undefined, source: Source | undefined): make is StackMake {
    return !!make && !!source && [make.cells, make.groups, make.area, make.gap, make.strength, make.portBore, make.portLength, make.manifoldBore].every(n => n === n && n >= 0)
        && make.cells >= 1 && make.groups >= 1 && make.area > 0 && make.portBore > 0 && make.manifoldBore > 0 && make.strength > 0 && make.strength < 0.5 && source.open > 0 && !(source.limit < 0) && make.cells <= MOST_CELLS;
}

/** What a stack takes at a fixed current and temperature hangs on no source: this one stands in for any. */
const anySource: Source = { part: '', kind: 'voltage', open: 1, crest: 1, limit: Infinity, limited: false, resistance: 0, leads: 0, diodes: 0, formFactor: () => 1, efficiency: 1 };
/** The stack at a current (A) and a temperature (K); undefined where it is not known well enough, or nothing is. */
export function takesAt(make: StackMake | undefined, temperature: number, current: number): OperatingPoint | undefined {
    return usable(make, anySource) && current > 0 && temperature > 273.15 && temperature < HOTTEST ? remembered(make, anySource, temperature, temperature, current) : undefined;
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
export function offInstrument(of: View, what: Read, value: number, half: number, at?: number): number {
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
