/** What moves in a run: the states, and a moment of it. */
import type { ControlState } from './control-lines.js';

/** Each state by its name: what of it is too little to matter, in its own unit. */
const declared = {
    /** K, of stack and lye. */
    lye: 1e-3,
    /** mol of all gases in the bag, and of those oxygen and nitrogen. */
    bag: 1e-6, 'bag-oxygen': 1e-6, 'bag-nitrogen': 1e-6,
    /** The same of the store, and K of its gas and wall. */
    cylinder: 1e-6, 'cylinder-oxygen': 1e-6, 'cylinder-nitrogen': 1e-6, 'cylinder-warmth': 1e-3,
    /** mol of all gases between the compressor and its check valve, and of those oxygen and nitrogen. */
    line: 1e-6, 'line-oxygen': 1e-7, 'line-nitrogen': 1e-7,
    /** mol of hydrogen in the upper and in the lower air of the room; mol of oxygen more than the air outside has. */
    'room-above': 1e-8, 'room-below': 1e-8, 'room-oxygen': 1e-6,
    /** Pa, while a side has no way out. */
    'hydrogen-head': 0.1, 'oxygen-head': 0.1,
    /** kg of lye that has gone from the hydrogen side to the oxygen side, while no link levels them. */
    'lye-moved': 1e-6,
    /** C in the battery. */
    charge: 1,
    /** Share of what the fuse on the way of the current bears. */
    fuse: 1e-4,
    /** kg of water that the dryer has taken up. */
    dryer: 1e-9,
    // Counters: kg of water split and carried off, and what was added by hand.
    water: 1e-6, added: 1e-6,
    // mol of hydrogen.
    made: 1e-6, vented: 1e-6, escaped: 1e-6, relieved: 1e-6, used: 1e-6, trapped: 1e-6,
    // J and s.
    'stack-energy': 1, 'compressor-energy': 1, heat: 1, lost: 1, 'compressor-hours': 0.1,
} as const;
export type StateName = keyof typeof declared;
/** In their order. */
export const states = Object.keys(declared) as StateName[];
export const at = Object.fromEntries(states.map((s, i) => [s, i])) as Readonly<Record<StateName, number>>;
export const slight = Float64Array.from(Object.values(declared));

/** A moment of a run: s since the start, the states, and how the control lines stand. */
export interface Moment {
    t: number;
    x: Float64Array;
    readonly c: ControlState;
}
/** mol/mol of a gas; the rest is hydrogen. */
export interface Mixture {
    readonly oxygen: number;
    readonly nitrogen: number;
}
/** SI value of something sensed at a moment; undefined where nothing tells it. Pressures as gauge. */
export type Sensor = (m: Moment) => number | undefined;
/** What a run counts that may hurt or matters: below zero until it happens. */
export type WatchedOf = (m: Moment) => number;
