/**
 * Lye that goes round: lifted by its own gas, or by warmth, held back by friction.
 */
import { GRAVITY } from './constants.js';
import { frictionFactor, tubeDrop } from './flow.js';
import { findRoot } from './root.js';

/**
 * Gas fraction of a rising mixture (drift balance).
 *
 * @param gasSpeed      m/s, gas volume flow over the whole cross-section
 * @param liquidSpeed   m/s, the same for the liquid, upwards positive
 * @param distribution  1, 1.2 for round tubes, 1 for evenly spread bubbles
 * @param drift         m/s, of a bubble against the mixture: {@link bubbleDrift} or {@link slugDrift}
 * @returns 1, 0 .. 1; 1 where the balance has no answer (liquid falling faster than the gas rises). Source: [zuber-findlay-1965]
 */
export function gasFraction(gasSpeed: number, liquidSpeed: number, distribution: number, drift: number): number {
    if (gasSpeed <= 0) return gasSpeed === gasSpeed ? 0 : NaN;
    const fraction = gasSpeed / (distribution * (gasSpeed + liquidSpeed) + drift);
    return fraction > 1 || fraction < 0 ? 1 : fraction;
}

/**
 * Rise of a bubble so small that it behaves like a rigid ball: of lye, up to about a quarter of a millimetre.
 *
 * @param diameter   m
 * @param density    kg/m³, of the liquid
 * @param viscosity  Pa·s
 * @returns m/s. Source: [stokes-1851]
 */
export function fineBubbleRise(diameter: number, density: number, viscosity: number): number {
    return density * GRAVITY * diameter * diameter / (18 * viscosity);
}

/** Factor of the rise of a bubble in a swarm [harmathy-1960]. */
const HARMATHY = 1.53;
/** Factor of the rise of a bubble that fills an upright tube [zuber-findlay-1965]. */
const LONG_BUBBLE = 0.35;

/**
 * Drift of millimetre bubbles in a swarm.
 *
 * @param surfaceTension  N/m
 * @param density         kg/m³, of the liquid
 * @param gasDensity      kg/m³
 * @returns m/s, 20 %; bubbles in lye are smaller and slower: use 0.02 .. 0.1 m/s there (common practice, no source).
 *          Source: [harmathy-1960]
 */
export function bubbleDrift(surfaceTension: number, density: number, gasDensity = 0): number {
    return HARMATHY * (GRAVITY * surfaceTension * (density - gasDensity) / (density * density)) ** 0.25;
}

/**
 * Drift of long bubbles that fill a tube.
 *
 * @param bore  m, 0.01 .. 0.1
 * @returns m/s, 10 % in thin liquids. Source: [zuber-findlay-1965] form with 0.35
 */
export function slugDrift(bore: number): number {
    return LONG_BUBBLE * Math.sqrt(GRAVITY * bore);
}

/**
 * Pressure that lightened lye gives to its circuit.
 *
 * @param fraction  1, mean gas fraction over the height
 * @param height    m
 * @param density   kg/m³, of the lye
 * @returns Pa
 */
export function liftPressure(fraction: number, height: number, density: number): number {
    return fraction * height * density * GRAVITY;
}

/** One stretch of a lye circuit. */
export interface Passage {
    /** m */
    readonly bore: number;
    /** m */
    readonly length: number;
    /** How many of them side by side. */
    readonly parallel: number;
    /** Sum of loss factors of one. */
    readonly fittings: number;
}

/**
 * Pressure that a flow loses on its way through passages one after the other.
 *
 * @param flow       m³/s, in total
 * @param passages   in order
 * @param density    kg/m³
 * @param viscosity  Pa·s
 * @returns Pa
 */
export function circuitDrop(flow: number, passages: readonly Passage[], density: number, viscosity: number): number {
    let sum = 0;
    for (const passage of passages) {
        sum += tubeDrop(flow / passage.parallel, passage.bore, passage.length, density, viscosity, passage.fittings);
    }
    return sum;
}

/**
 * Flow at which a drive and a circuit balance.
 *
 * @param drive     Pa at a flow in m³/s; must not rise with it
 * @param drop      Pa at a flow; must rise with it
 * @param greatest  m³/s, more than ever flows
 * @returns m³/s; 0 where nothing drives; the greatest where even that is carried
 */
export function circuitFlow(drive: (flow: number) => number, drop: (flow: number) => number, greatest: number): number {
    const excess = (flow: number): number => drive(flow) - drop(flow);
    const atRest = excess(0);
    if (atRest !== atRest) return NaN;
    if (atRest <= 0) return 0;
    return excess(greatest) >= 0 ? greatest : findRoot(excess, 0, greatest, 1e-7 * greatest);
}

/** Distribution of gas over a round tube in the drift balance [zuber-findlay-1965]. */
const ROUND_TUBE = 1.2;
/** m/s, faster than gas lifts liquid in any tube of ours: the crossing is looked for below it. */
const FASTEST = 5;

/** A riser with gas in it. */
export interface Riser {
    /** m */
    readonly bore: number;
    /** m, from gas entry to outlet */
    readonly height: number;
    /** m, how high still lye would stand in it (from the gas entry); less than the height for an air lift */
    readonly submergence: number;
    /** kg/m³ */
    readonly density: number;
    /** Pa·s */
    readonly viscosity: number;
    /** m/s, drift of the bubbles */
    readonly drift: number;
    /** Sum of loss factors on the liquid's way in: 0.5 for a sharp entry, about 1 for each bend. */
    readonly fittings: number;
}

/**
 * Pressure left to drive the rest of the circuit at a flow (negative: the riser wants help).
 *
 * @param riser       the riser
 * @param gasFlow     m³/s of gas at the mean pressure in the riser
 * @param liquidFlow  m³/s
 * @returns Pa. Friction: Griffith & Wallis's as [stenning-martin-1968] takes it, from memory
 */
export function riserDrive(riser: Riser, gasFlow: number, liquidFlow: number): number {
    const area = Math.PI * riser.bore * riser.bore / 4;
    const gas = gasFlow / area;
    const liquid = liquidFlow / area;
    const fraction = gasFraction(gas, liquid, ROUND_TUBE, riser.drift);
    const weight = riser.density * GRAVITY * (riser.submergence - (1 - fraction) * riser.height);
    if (!(liquid > 0)) return weight;
    // Friction of the liquid on the wall, which the gas between drives along, as air lifts are worked out; the liquid's speeding up to its
    // share of the cross-section, losses at the entry.
    const friction = frictionFactor(riser.density * liquid * riser.bore / riser.viscosity) * riser.height / riser.bore
        * riser.density * liquid * (liquid + gas) / 2;
    const acceleration = riser.density * liquid * liquid / (1 - fraction);
    return weight - friction - acceleration - riser.fittings * riser.density * liquid * liquid / 2;
}

/**
 * Liquid that gas lifts through an open riser.
 *
 * @param riser    the riser
 * @param gasFlow  m³/s of gas at the mean pressure in the riser
 * @returns m³/s; 0 under the threshold, where the mixture does not reach the outlet. Against four measured air lifts
 *          -20 .. +50 % on the rising part and on the plateaus of long risers, up to +55 % on that of a short one
 */
export function liftedFlow(riser: Riser, gasFlow: number): number {
    const area = Math.PI * riser.bore * riser.bore / 4;
    return circuitFlow(flow => riserDrive(riser, gasFlow, flow), () => 0, area * FASTEST);
}

/** m/s, rise of the fine bubbles of an electrode against the lye around them, 0.02 .. 0.1: common practice, no source. */
const ELECTRODE_BUBBLES = 0.05;

/** One side of a stack with its way round: cells, outlets, riser, vessel, return. */
export interface LyeLoop {
    /** From the top of the cells to where lye and gas enter the vessel. */
    readonly riser: Riser;
    /** m², cross-section in which lye rises in all half cells of this side, and m, their height. */
    readonly cellArea: number;
    readonly cellHeight: number;
    /** What clear lye passes, and what lye and gas pass together before the riser. */
    readonly clear: readonly Passage[];
    readonly mixed: readonly Passage[];
}

/**
 * Lye that the gas of one side sends round.
 *
 * @param loop     the side
 * @param gasFlow  m³/s of gas, moist and warm, that this side makes
 * @returns m³/s; 0 where the gas does not lift lye over the mouth of the riser, or nothing is made. -30 .. +50 % as the lift of
 *          {@link liftedFlow}, which it is where cells and passages cost and give nothing
 *
 * Lift in the cells by the drift balance at half of the gas, that of the mean height [zuber-findlay-1965]; gas and lye in the
 * outlets counted as one fluid.
 */
export function loopFlow(loop: LyeLoop, gasFlow: number): number {
    if (gasFlow <= 0) return 0;
    const { riser, cellArea, cellHeight } = loop;
    const drive = (flow: number): number => riserDrive(riser, gasFlow, flow) + (cellHeight > 0
        ? liftPressure(gasFraction(gasFlow / 2 / cellArea, flow / cellArea, 1, ELECTRODE_BUBBLES), cellHeight, riser.density) : 0);
    const drop = (flow: number): number => flow > 0
        ? circuitDrop(flow, loop.clear, riser.density, riser.viscosity)
            + circuitDrop(flow + gasFlow, loop.mixed, riser.density * flow / (flow + gasFlow), riser.viscosity)
        : 0;
    return circuitFlow(drive, drop, Math.PI / 4 * riser.bore * riser.bore * FASTEST);
}
