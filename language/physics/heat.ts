/**
 * Heat: how a warm rig loses it to the room, how a cooler takes it away, how quickly things warm.
 */
import { ATMOSPHERE, GRAVITY, STEFAN_BOLTZMANN } from './constants.js';
import { AIR_HEAT_CAPACITY, airDensity, airThermalConductivity, gasViscosity } from './gases.js';
import { interpolate } from './interpolate.js';
import { findRoot } from './root.js';

// ------------------------------------------------------------------------------------------------- loss to still air

/** Bounds of the film formulas: Rayleigh number. */
export const freeConvectionRange = { rayleigh: [1e-1, 1e12], filmTemperature: [250, 400] } as const;

/**
 * Rayleigh number of still air at a warm face.
 *
 * @param surface   K
 * @param air       K
 * @param size      m: height of an upright face, diameter of a lying cylinder
 * @param pressure  Pa absolute
 * @returns 1, 0 or more (warm and cold faces alike)
 */
export function rayleighOfAir(surface: number, air: number, size: number, pressure: number = ATMOSPHERE): number {
    const film = (surface + air) / 2;
    const density = airDensity(film, pressure);
    const kinematic = gasViscosity('air', film) / density;
    const diffusivity = airThermalConductivity(film) / (density * AIR_HEAT_CAPACITY);
    return GRAVITY / film * Math.abs(surface - air) * size ** 3 / (kinematic * diffusivity);
}

/**
 * Nusselt number of an upright face, any Rayleigh number.
 *
 * @param rayleigh  0 .. 1e12
 * @param prandtl   1; air 0.71
 * @returns 1. Source: [churchill-chu-1975] eq. for all flow
 */
export function nusseltUpright(rayleigh: number, prandtl: number): number {
    const root = 0.825 + 0.387 * rayleigh ** (1 / 6) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27);
    return root * root;
}

/**
 * Nusselt number of an upright face in laminar flow (a few per cent better than the form above below 1e9).
 *
 * @param rayleigh  0 .. 1e9
 * @param prandtl   1
 * @returns 1. Source: [churchill-chu-1975]
 */
export function nusseltUprightLaminar(rayleigh: number, prandtl: number): number {
    return 0.68 + 0.670 * rayleigh ** 0.25 / (1 + (0.492 / prandtl) ** (9 / 16)) ** (4 / 9);
}

/**
 * Nusselt number of a long lying cylinder.
 *
 * @param rayleigh  1e-6 .. 1e12, with the diameter
 * @param prandtl   1
 * @returns 1. Source: [churchill-chu-cylinder-1975]
 */
export function nusseltCylinder(rayleigh: number, prandtl: number): number {
    const root = 0.60 + 0.387 * rayleigh ** (1 / 6) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27);
    return root * root;
}

/** Prandtl number of air, 250 .. 400 K within 3 %: textbook. */
const PRANDTL_AIR = 0.71;

/**
 * Film coefficient of still air at an upright face.
 *
 * @param surface   K
 * @param air       K
 * @param height    m
 * @param pressure  Pa absolute
 * @returns W/(m²·K), 20 %; about 5 for a hand-high face 40 K warm
 */
export function freeFilm(surface: number, air: number, height: number, pressure: number = ATMOSPHERE): number {
    const nusselt = nusseltUpright(rayleighOfAir(surface, air, height, pressure), PRANDTL_AIR);
    return nusselt * airThermalConductivity((surface + air) / 2) / height;
}

/**
 * Heat radiated from a face to its room.
 *
 * @param surface     K
 * @param room        K
 * @param emissivity  1: painted, plastic or oxidised 0.9; bright stainless steel 0.2 .. 0.4
 * @returns W/m²
 */
export function radiation(surface: number, room: number, emissivity: number): number {
    return emissivity * STEFAN_BOLTZMANN * (surface ** 4 - room ** 4);
}

/**
 * Heat that a face loses to still air and room.
 *
 * @param surface     K
 * @param air         K, of air and walls
 * @param area        m²
 * @param height      m
 * @param emissivity  1
 * @returns W, ± 30 % for a rig (draughts, hidden faces); negative when the room is warmer
 */
export function surfaceLoss(surface: number, air: number, area: number, height: number, emissivity: number): number {
    return area * (freeFilm(surface, air, height) * (surface - air) + radiation(surface, air, emissivity));
}

/** Short form of a free film at stacks and vessels, W/(m²·K): 1.32·(ΔT/d)^0.25 with K and m [dieguez-2008]. */
export function shortFilm(difference: number, diameter: number): number {
    return 1.32 * (Math.abs(difference) / diameter) ** 0.25;
}

/**
 * Temperature at which loss and heat balance.
 *
 * @param heat    W at a temperature of the rig
 * @param loss    W at a temperature of the rig; must grow with it
 * @param low     K, the room
 * @param high    K, hottest that makes sense
 * @returns K; the high end when even there more heat is made than lost; the low end when no heat is made
 */
export function steadyTemperature(
    heat: (temperature: number) => number, loss: (temperature: number) => number, low: number, high: number,
): number {
    const gain = (t: number): number => heat(t) - loss(t);
    const atLow = gain(low);
    if (atLow !== atLow) return NaN;
    if (atLow <= 0) return low;
    const atHigh = gain(high);
    if (atHigh !== atHigh) return NaN;
    if (atHigh >= 0) return high;
    return findRoot(gain, low, high, 1e-6);
}

/** More steps than any search of ours takes; a step that asks for more is a slip and gives unknown. */
const MOST_SEARCHED = 1000;

/**
 * Temperature at which a rig that starts cold comes to rest, where heat may outgrow loss again further up (a stiff supply
 * sends the more current the warmer the lye is): the lowest crossing of several.
 *
 * @param gain       W at a temperature: heat made less heat lost
 * @param low        K, the room
 * @param high       K, hottest that makes sense
 * @param step       K, crossings closer together than this count as one; a dip that touches nothing is looked into
 * @param tolerance  K
 * @returns K; the low end when nothing is gained there; Infinity when heat is gained all the way up: no steady temperature
 */
export function firstSteady(gain: (temperature: number) => number, low: number, high: number, step: number, tolerance: number): number {
    let before = NaN;
    let last = gain(low);
    const steps = Math.ceil((high - low) / step);
    if (last !== last || !(steps <= MOST_SEARCHED) || !(tolerance === tolerance)) return NaN;
    if (last <= 0) return low;
    for (let t = low, n = 0; n < steps; n++) {
        const next = Math.min(high, t + step);
        const here = gain(next);
        if (here !== here) return NaN;
        if (here <= 0) return rootFrom(gain, t, last, next, here, tolerance);
        // Rising again after it fell: between its neighbours the dip may reach below nothing.
        if (last < before && last < here) {
            const bottom = t + step / 2 * (before - here) / (before - 2 * last + here);
            const least = gain(bottom);
            if (least <= 0) return rootFrom(gain, t - step, before, bottom, least, tolerance);
        }
        before = last;
        last = here;
        t = next;
    }
    return Infinity;
}
/**
 * Where a steady temperature is lost as the room gets warmer: of the rooms in which each temperature would be steady, the
 * first warmest from the cold side.
 *
 * @param roomFor  K, room in which a temperature is steady
 * @param low      K
 * @param high     K
 * @param step     K, humps narrower than this are not seen
 * @returns temperature and room at that point, K, the crest by a parabola through three steps; NaN where the room rises all the
 *          way: warmer rooms give warmer rigs, and nothing is lost. Source: [semenov-1928] for the condition
 */
export function tippingPoint(roomFor: (temperature: number) => number, low: number, high: number, step: number): { readonly temperature: number; readonly room: number } {
    let before = NaN;
    let last = roomFor(low);
    const steps = Math.floor((high - low) / step);
    if (!(steps <= MOST_SEARCHED)) return { temperature: NaN, room: NaN };
    for (let t = low, n = 0; n < steps; n++, t += step) {
        const here = roomFor(t + step);
        if (here !== here) break;
        if (here < last) {
            // Already falling from the first step on: the crest lies at or below the low end.
            if (before !== before) return { temperature: t, room: last };
            const bend = before - 2 * last + here;
            const away = (before - here) / (2 * bend);
            return { temperature: t + away * step, room: last - (before - here) * away / 4 };
        }
        before = last;
        last = here;
    }
    return { temperature: NaN, room: NaN };
}
/** The crossing between two ends whose values are known already. */
function rootFrom(f: (x: number) => number, low: number, atLow: number, high: number, atHigh: number, tolerance: number): number {
    return findRoot(x => (x === low ? atLow : x === high ? atHigh : f(x)), low, high, tolerance);
}

/**
 * How far a steady temperature is from being lost.
 *
 * @param heatSlope  W/K, growth of the heat made with the temperature
 * @param lossSlope  W/K, growth of the heat lost, above 0
 * @returns 1 where heat does not grow with warmth, 0 where it grows as fast as the loss: there the steady temperature ends
 *          (tangency). Source: [semenov-1928] for the condition
 */
export function steadyMargin(heatSlope: number, lossSlope: number): number {
    return 1 - Math.max(0, heatSlope) / lossSlope;
}

/**
 * Time in which a difference shrinks to 37 %.
 *
 * @param heatCapacity  J/K
 * @param conductance   W/K, to the surroundings
 * @returns s
 */
export function timeConstant(heatCapacity: number, conductance: number): number {
    return heatCapacity / conductance;
}

/**
 * Temperature after a time, with steady heat and a loss in proportion to the difference.
 *
 * @param start         K
 * @param final         K, reached in the end
 * @param time          s
 * @param constant      s, {@link timeConstant}
 * @returns K
 */
export function temperatureAfter(start: number, final: number, time: number, constant: number): number {
    return final + (start - final) * Math.exp(-time / constant);
}

// ------------------------------------------------------------------------------------------------------------- coolers

/**
 * Mean temperature difference of a cooler (logarithmic).
 *
 * @param oneEnd    K, difference at one end
 * @param otherEnd  K, difference at the other end, same sign
 * @returns K; NaN when the differences have unlike signs (heat would have to flow uphill)
 */
export function meanDifference(oneEnd: number, otherEnd: number): number {
    if (oneEnd === otherEnd) return oneEnd;
    if (!(oneEnd * otherEnd > 0)) return oneEnd * otherEnd === 0 ? 0 : NaN;
    const ratio = oneEnd / otherEnd;
    // Near equality the formula loses digits; the mean is right to 1e-9 there.
    if (Math.abs(ratio - 1) < 1e-4) return (oneEnd + otherEnd) / 2 - (oneEnd - otherEnd) ** 2 / (12 * otherEnd);
    return (oneEnd - otherEnd) / Math.log(ratio);
}

/**
 * Share of the possible heat that a counterflow cooler moves.
 *
 * @param transferUnits  1, conductance over the smaller heat capacity flow
 * @param capacityRatio  1, smaller by larger heat capacity flow, 0 .. 1; 0 for a bath that does not warm
 * @returns 1, 0 .. 1. Source: [kays-london]
 */
export function counterflowEffectiveness(transferUnits: number, capacityRatio: number): number {
    if (capacityRatio > 0.999999) return transferUnits / (1 + transferUnits);
    const e = Math.exp(-transferUnits * (1 - capacityRatio));
    return (1 - e) / (1 - capacityRatio * e);
}

/**
 * Share of the possible heat that a parallel-flow cooler moves.
 *
 * @param transferUnits  1
 * @param capacityRatio  1, 0 .. 1
 * @returns 1. Source: [kays-london]
 */
export function parallelEffectiveness(transferUnits: number, capacityRatio: number): number {
    return (1 - Math.exp(-transferUnits * (1 + capacityRatio))) / (1 + capacityRatio);
}

/**
 * Heat that a counterflow cooler moves.
 *
 * @param conductance   W/K, over the whole of it
 * @param hotFlow       W/K, heat capacity flow of the warm side
 * @param coldFlow      W/K, of the cool side
 * @param hotIn         K
 * @param coldIn        K
 * @returns W, 0 or more
 */
export function counterflowHeat(conductance: number, hotFlow: number, coldFlow: number, hotIn: number, coldIn: number): number {
    const least = Math.min(hotFlow, coldFlow);
    const most = Math.max(hotFlow, coldFlow);
    if (least <= 0) return 0;
    const difference = hotIn - coldIn;
    return difference <= 0 ? 0 : counterflowEffectiveness(conductance / least, least / most) * least * difference;
}

/** Nusselt number of fully developed laminar flow in a round tube, by what the wall keeps constant. Textbook. */
export const nusseltLaminarTube = { constantTemperature: 3.66, constantHeat: 4.36 } as const;

const ANNULUS_RATIO = [0, 0.05, 0.1, 0.25, 0.5, 1];
const ANNULUS_INNER = [1000, 17.46, 11.56, 7.37, 5.74, 4.86];
const ANNULUS_OUTER = [3.66, 4.06, 4.11, 4.23, 4.43, 4.86];

/**
 * Nusselt number of laminar flow between two tubes, the inner wall warm and the outer one insulated.
 *
 * @param ratio  1, inner by outer diameter, 0.05 .. 1
 * @returns 1, with the difference of the diameters as size. Source: [kays-perkins]; beyond the table its ends
 */
export function nusseltAnnulusInner(ratio: number): number {
    return interpolate(ANNULUS_RATIO, ANNULUS_INNER, ratio < 0.05 ? 0.05 : ratio);
}

/** The same with the outer wall warm and the inner one insulated; ratio 0 .. 1. */
export function nusseltAnnulusOuter(ratio: number): number {
    return interpolate(ANNULUS_RATIO, ANNULUS_OUTER, ratio);
}

/** Reynolds number below which no turbulence is left: textbook. */
const LEAST_TURBULENT = 4000;

/** Bounds of {@link nusseltTurbulentTube}. */
export const turbulentTubeRange = { reynolds: [1e4, 1.2e5], prandtl: [0.7, 160] } as const;

/**
 * Nusselt number of turbulent flow in a tube.
 *
 * @param re       1e4 .. 1.2e5 (below 4000 it is nonsense: NaN)
 * @param prandtl  0.7 .. 160
 * @param warming  true when the fluid is warmed by the wall (exponent 0.4), false when cooled (0.3)
 * @returns 1, ± 25 %. Source: [dittus-boelter]
 */
export function nusseltTurbulentTube(re: number, prandtl: number, warming: boolean): number {
    return re >= LEAST_TURBULENT ? 0.023 * re ** 0.8 * prandtl ** (warming ? 0.4 : 0.3) : NaN;
}

/**
 * Conductance of a tube wall with films on both sides.
 *
 * @param innerFilm     W/(m²·K)
 * @param outerFilm     W/(m²·K)
 * @param innerDiameter m
 * @param outerDiameter m
 * @param conductivity  W/(m·K), of the wall
 * @param length        m
 * @returns W/K
 */
export function tubeConductance(
    innerFilm: number, outerFilm: number, innerDiameter: number, outerDiameter: number, conductivity: number, length: number,
): number {
    const resistance = 1 / (innerFilm * Math.PI * innerDiameter)
        + Math.log(outerDiameter / innerDiameter) / (2 * Math.PI * conductivity)
        + 1 / (outerFilm * Math.PI * outerDiameter);
    return length / resistance;
}
