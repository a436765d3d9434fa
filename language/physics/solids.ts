/**
 * Boards, gaskets, bolts and shells under load.
 */
import { interpolate } from './interpolate.js';

/**
 * Force of a pressure on a face.
 *
 * @param pressure  Pa, difference
 * @param area      m²
 * @returns N
 */
export function faceForce(pressure: number, area: number): number {
    return pressure * area;
}

/**
 * Stress around a thin shell under inner pressure.
 *
 * @param outerDiameter  m
 * @param thickness      m, of the wall (take off what has rusted)
 * @param pressure       Pa, difference
 * @returns Pa, with the mean diameter. Never a permission to raise a stamped pressure
 */
export function hoopStress(outerDiameter: number, thickness: number, pressure: number): number {
    return pressure * (outerDiameter - thickness) / (2 * thickness);
}

const SIDES = [1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 3, 4, 5];
const BOWS = [
    0.00406, 0.00485, 0.00564, 0.00638, 0.00705, 0.00772, 0.00830, 0.00883, 0.00931, 0.00974, 0.01013, 0.01223, 0.01282, 0.01297,
];
const MOMENTS = [0.0479, 0.0554, 0.0627, 0.0694, 0.0755, 0.0812, 0.0862, 0.0908, 0.0948, 0.0985, 0.1017, 0.1189, 0.1235, 0.1246];

/**
 * How far a board bows that rests on its four edges (the tie rods) under an even load.
 *
 * @param force         N, on the whole board
 * @param shortSide     m, span between supports
 * @param longSide      m
 * @param thickness     m
 * @param modulus       Pa, Young's; halve it for plastics under load for months
 * @param poisson       1, 0.3 metals, 0.38 plastics
 * @returns m at the middle; small bows only. Source: [timoshenko-plates]
 */
export function boardBow(
    force: number, shortSide: number, longSide: number, thickness: number, modulus: number, poisson = 0.3,
): number {
    const stiffness = modulus * thickness ** 3 / (12 * (1 - poisson * poisson));
    const load = force / (shortSide * longSide);
    return interpolate(SIDES, BOWS, longSide / shortSide) * load * shortSide ** 4 / stiffness;
}

/**
 * Largest bending stress in such a board.
 *
 * @returns Pa; parameters as in {@link boardBow}. Source: [timoshenko-plates], for poisson 0.3
 */
export function boardStress(force: number, shortSide: number, longSide: number, thickness: number): number {
    const moment = interpolate(SIDES, MOMENTS, longSide / shortSide) * force / (shortSide * longSide) * shortSide * shortSide;
    return 6 * moment / (thickness * thickness);
}

/**
 * Pull of a bolt from the torque on its nut.
 *
 * @param torque    N·m
 * @param diameter  m, nominal
 * @param factor    1: 0.2 dry, 0.15 oiled; ± 30 % (common practice)
 * @returns N
 */
export function boltForce(torque: number, diameter: number, factor = 0.2): number {
    return torque / (factor * diameter);
}

/**
 * Part of its thickness by which a gasket is squeezed.
 *
 * @param free     m, thickness before
 * @param clamped  m, thickness under load
 * @returns 1
 */
export function gasketSqueeze(free: number, clamped: number): number {
    return 1 - clamped / free;
}

/**
 * Stress left on a gasket while gas pushes the boards apart.
 *
 * @param clampForce  N, all bolts
 * @param pressure    Pa, inside
 * @param wettedArea  m², that the pressure acts on
 * @param gasketArea  m², in contact
 * @returns Pa, not below 0; should stay at twice the pressure or more (common practice, no source)
 */
export function gasketStress(clampForce: number, pressure: number, wettedArea: number, gasketArea: number): number {
    const stress = (clampForce - pressure * wettedArea) / gasketArea;
    return stress < 0 ? 0 : stress;
}

/**
 * Stiffness of rubber from its hardness.
 *
 * @param hardness  Shore A, 30 .. 90
 * @returns Pa, Young's modulus, ± 20 % (relation of Gent, from memory)
 */
export function rubberModulus(hardness: number): number {
    return 1e6 * 0.0981 * (56 + 7.62336 * hardness) / (0.137505 * (254 - 2.54 * hardness));
}

/**
 * Squeeze of a flat rubber gasket under a stress.
 *
 * @param stress    Pa
 * @param modulus   Pa, Young's
 * @param width     m, of the gasket's ring
 * @param free      m, thickness
 * @returns 1, 0 .. 0.6; wide thin rubber is far stiffer than narrow thick rubber (shape factor squared), ± 30 %
 */
export function squeezeUnderStress(stress: number, modulus: number, width: number, free: number): number {
    const shape = width / (2 * free);
    return Math.min(0.6, stress / (modulus * (1 + 2 * shape * shape)));
}
