/** What stack and compressor do over temperature and pressure: the laws at rest, worked out at some points and read between them. */
import { interpolateSmooth, smoothSlopes } from '../physics/interpolate.js';
import { against } from '../quantities/of/compressor.js';
import { operatingPoint, remembered, tunedMake, usable } from '../quantities/operating-point.js';
import { sourceModel, type Source } from '../quantities/source.js';
import { HOTTEST, type OperatingPoint, type StackMake } from '../quantities/stack-solver.js';
import { ROOM } from '../quantities/surroundings.js';
import type { View } from '../quantities/view.js';

/** Why a rig cannot be run through: told to the maker as it stands. */
export class CannotRun extends Error {}

/** K between the points at which the stack is solved; each costs one solution. */
const WARMTH_STEP = 7;
/** Points at which the compressor is worked out, from an empty store to its highest pressure. */
const PRESSURE_POINTS = 24;
/** Pressure over the rating up to which a cylinder is followed. */
const FOLLOWED_TO = 1.6;
/** A law between points, one abscissa after the other. */
export class Curve {
    private readonly slopes: Float64Array;
    constructor(private readonly xs: readonly number[], private readonly ys: readonly number[]) {
        this.slopes = smoothSlopes(xs, ys);
    }
    at(x: number): number {
        return interpolateSmooth(this.xs, this.ys, this.slopes, x);
    }
}
const spaced = (from: number, to: number, count: number) => Array.from({ length: count }, (_, i) => from + (to - from) * i / (count - 1));


/** Over the temperature of the lye, K: A, V, mol/s, W and W. */
export interface StackLaws {
    readonly make: StackMake;
    /** K, the room in which it was worked out. */
    readonly room: number;
    readonly current: Curve;
    readonly volts: Curve;
    readonly hydrogen: Curve;
    readonly heat: Curve;
    readonly cooling: Curve;
}
function solvableStack(stack: View, source: Source | undefined) {
    const make = stack.model(tunedMake);
    const rest = stack.model(operatingPoint);
    if (!usable(make, source) || !rest || !(rest.current > 0)) throw new CannotRun('The stack makes nothing as it is described, or too little of it is known: rigwright show tells what is missing.');
    const coldest = Math.min(ROOM, stack.the('site')?.maybe('coldest', ROOM) ?? ROOM) - 2 * WARMTH_STEP;
    const warmth = spaced(coldest, HOTTEST, Math.ceil((HOTTEST - coldest) / WARMTH_STEP) + 1);
    // The valve of the cooling is followed as the text says, not as the ramp that stands for it at rest.
    const always = make.cooler ? { ...make, cooler: { ...make.cooler, startsAt: -Infinity } } : make;
    return { make, rest, warmth, solved: (T: number) => remembered(always, source!, rest.room, T) };
}
/** Solves the stack at one temperature after the other, with a pause after each; what asks for its laws next finds them solved. */
export function* solveStackInSteps(stack: View): Generator<void, void> {
    const { warmth, solved } = solvableStack(stack, stack.model(sourceModel));
    for (const T of warmth) {
        solved(T);
        yield;
    }
}
/**
 * @param source  what feeds it then, if that is not what the text describes
 * @throws CannotRun where the stack makes nothing, or too little of it is known
 */
export function lawsOfStack(stack: View, source = stack.model(sourceModel)): StackLaws {
    const { make, rest, warmth, solved } = solvableStack(stack, source);
    const points = warmth.map(solved);
    const flowing = (p: OperatingPoint) => p.current * (p.bypassEfficiency === p.bypassEfficiency ? Math.max(0, p.bypassEfficiency) : 0);
    // Crossover is kept as it is at rest: a percent or so of what is made.
    const each = stack.q('hydrogen-rate') / flowing(rest);
    if (!(each > 0)) throw new CannotRun('How much hydrogen is made is not known: rigwright show tells what is missing.');
    const over = (value: (p: OperatingPoint) => number) => new Curve(warmth, points.map(value));
    return { make, room: rest.room, current: over(p => p.current), volts: over(p => p.voltage), hydrogen: over(p => each * flowing(p)), heat: over(p => p.heat), cooling: over(p => p.cooling) };
}
/** Over the pressure in the store, Pa above vacuum: mol/s delivered, and K of what leaves, where that is known. */
export interface CompressorLaws {
    readonly flow: Curve;
    readonly discharge: Curve | undefined;
}
/**
 * @param air      Pa above vacuum
 * @param highest  Pa gauge, rating or cut-off of the store, whichever is more
 * @returns undefined where what it delivers is not known
 */
export function lawsOfCompressor(compressor: View, air: number, highest: number, room: number): CompressorLaws | undefined {
    const pressures = spaced(air, air + FOLLOWED_TO * highest, PRESSURE_POINTS);
    const done = pressures.map(p => against(compressor, p, room)).filter(d => d && d.flow === d.flow);
    if (done.length < pressures.length) return undefined;
    return { flow: new Curve(pressures, done.map(d => d!.flow)), discharge: done.every(d => d!.discharge === d!.discharge) ? new Curve(pressures, done.map(d => d!.discharge)) : undefined };
}
