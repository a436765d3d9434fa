/** What an independent integrator and a run both go through: rigs, what is done in them, and the laws at rest of each as tables. */
import { createHash } from 'node:crypto';
import { MOLAR_MASS } from '../../../language/physics/constants.js';
import { lawsOfCompressor, lawsOfStack } from '../../../language/run/laws.js';
import type { RunOptions } from '../../../language/run/run.js';
import type { Act, Scenario } from '../../../language/run/scenario.js';
import { stackLoss } from '../../../language/quantities/stack-solver.js';
import { textOf, workingsOf } from '../rigs.js';

export const HOURS = 8;
export interface Case {
    readonly name: string;
    readonly text: string;
    /** K of room and air. */
    readonly weather: number;
    readonly acts: readonly Act[];
    readonly begins: Readonly<Record<string, number>>;
    readonly already: NonNullable<RunOptions['already']>;
    /** What the Python side answers for. */
    readonly of: { readonly states: readonly string[]; readonly switches: readonly string[]; readonly hazards: readonly string[] };
}
const started: Act = { t: 0, part: 'start-button', what: 'pressed' };
const storeSwitches = ['bag-full', 'bag-empty', 'cut-off', 'bag-high', 'bag-draw', 'compressor', 'unloader', 'main'];
const storeStates = ['line', 'bag-oxygen', 'cylinder-oxygen', 'cylinder-warmth', 'lye', 'bag', 'cylinder', 'water', 'made', 'relieved', 'heat', 'lost', 'stack-energy', 'compressor-energy', 'compressor-hours'];

export const cases: readonly Case[] = [
    {
        name: 'cold start, bag and store by turns to the cut-off, then the bag to its trip', text: textOf(), weather: 293.15, acts: [started], begins: {}, already: [],
        of: { states: storeStates, switches: storeSwitches, hazards: [] },
    },
    {
        name: 'the empty switch sticks and nothing sees the suction: drawn under the air', text: textOf(), weather: 293.15,
        acts: [started, { t: 600, part: 'bag-empty', what: 'sticks made' }], begins: { 'stack.temperature': 308.15, 'store-bag.volume': 0.03, 'cylinder.pressure': 2e5 }, already: [{ part: 'suction-low', what: 'fails to trip' }],
        of: { states: storeStates, switches: ['bag-full', 'cut-off', 'bag-high', 'bag-draw', 'compressor', 'unloader', 'main'], hazards: ['drawn-empty', 'oxygen-in-hydrogen'] },
    },
    {
        name: 'the cut-off sticks and the second switch fails: a relief that lifts and shuts again', text: textOf(), weather: 293.15,
        acts: [started, { t: 600, part: 'cut-off', what: 'sticks made' }], begins: { 'stack.temperature': 308.15, 'cylinder.pressure': 9e5 }, already: [{ part: 'high-high', what: 'fails to trip' }],
        of: { states: storeStates, switches: ['bag-full', 'bag-empty', 'bag-high', 'bag-draw', 'compressor', 'unloader', 'main'], hazards: [] },
    },
    {
        name: 'an oxygen vent freezes on the way to warm: its level is pushed down to a trip', weather: 293.15,
        text: textOf([['trip high-high', 'trip o2-low { senses: o2-column.level   trips: below 240 mm   resets: by hand   if-wire-breaks: trips }\ntrip high-high'], ['stopped-by: emergency, ', 'stopped-by: emergency, o2-low, ']]),
        acts: [started, { t: 5400, part: 'o2-vent', what: 'blocked' }], begins: {}, already: [],
        of: { states: ['lye', 'bag', 'cylinder', 'water', 'made', 'oxygen-head', 'heat', 'lost'], switches: ['bag-full', 'bag-empty', 'compressor', 'o2-low', 'main'], hazards: [] },
    },
    {
        name: 'a store drawn from, then a hole in it, into a room with a fan', weather: 293.15,
        text: textOf([['volume: 22 L   rating: 16 bar', 'volume: 400 L   rating: 16 bar'], ['feed control', 'burner { flow: 400 L/h }\nfan { sort: extract   flow: 60 m3/h }\nfeed control']]),
        acts: [{ t: 600, part: 'burner', what: 'lit' }, { t: 7200, part: 'burner', what: 'draws 250 L/h' }, { t: 14400, part: 'cylinder', what: 'leaks' }], begins: { 'cylinder.pressure': 11e5 }, already: [],
        of: { states: ['lye', 'cylinder', 'cylinder-warmth', 'room-above', 'room-below', 'used', 'escaped'], switches: [], hazards: ['room-hydrogen', 'ceiling-hydrogen'] },
    },
];
export const scenarioOf = (c: Case, hours = HOURS): Scenario => ({ name: undefined, starts: 8 * 3600, lasts: hours * 3600, weather: () => c.weather, sun: () => 0, acts: c.acts, begins: new Map(Object.entries(c.begins)), notes: [] });
export const fingerprint = (c: Case) => createHash('sha256').update(JSON.stringify([c.text, c.weather, c.acts, c.begins, c.already])).digest('hex');

const spaced = (from: number, to: number, count: number) => Array.from({ length: count }, (_, i) => from + (to - from) * i / (count - 1));
/** K and Pa: so fine that reading between two of them makes no difference of its own. */
const WARMTHS = spaced(283.15, 338.15, 111);
const PRESSURES = spaced(0.6e5, 20e5, 195);

/** The laws at rest of a rig as a run looks them up, SI. */
export function lawsOf(c: Case) {
    const w = workingsOf([], c.text);
    return w.unnoted(() => {
        const [stack] = w.partsOf('stack');
        const [compressor] = w.partsOf('compressor');
        const [column] = w.partsOf('column');
        const laws = lawsOfStack(stack);
        const air = stack.airPressure();
        const over = (f: (T: number) => number) => WARMTHS.map(f);
        return {
            warmth: WARMTHS, current: over(T => laws.current.at(T)), volts: over(T => laws.volts.at(T)), hydrogen: over(T => laws.hydrogen.at(T)), heat: over(T => laws.heat.at(T)), loss: over(T => stackLoss(laws.make, T, c.weather)),
            pressure: PRESSURES, delivered: PRESSURES.map(p => lawsOfCompressor(compressor, air, 16e5, laws.room)!.flow.at(p)),
            capacity: stack.q('heat-capacity-total'), waterEach: (stack.q('water-use') + stack.q('vapour-loss')) / stack.q('hydrogen-rate'), fallEach: column.q('level-fall') / (stack.q('water-use') + stack.q('vapour-loss')),
            crosses: stack.q('oxygen-in-hydrogen') * stack.q('hydrogen-rate'), holds: stack.q('bubble-point'), hydrogenHead: stack.q('hydrogen-head'), density: stack.the('lye')!.q('density'), oxygenHead: stack.q('oxygen-head'), air, molarMass: MOLAR_MASS.hydrogen,
        };
    });
}
