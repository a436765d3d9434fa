/**
 * Gas that escapes into a room, and air that carries it off. All formulas take the room as well mixed; hydrogen gathers
 * under the ceiling first, where these fractions are passed long before.
 */
import { GRAVITY, MOLAR_MASS, OXYGEN_IN_AIR } from './constants.js';

/** Lower flammable limit of hydrogen in air, volume fraction (ISO/TR 15916, from memory); ventilation must hold a quarter of it. */
export const LOWER_LIMIT = 0.04;

/**
 * Fresh air that keeps an escape at a fraction.
 *
 * @param leak   m³/s of gas
 * @param limit  1, volume fraction, above 0
 * @returns m³/s of air
 */
export function airNeeded(leak: number, limit: number): number {
    return leak * (1 - limit) / limit;
}

/**
 * Fraction that an escape reaches in the end.
 *
 * @param leak  m³/s of gas
 * @param air   m³/s of fresh air
 * @returns 1
 */
export function steadyFraction(leak: number, air: number): number {
    return leak > 0 ? leak / (leak + air) : leak === leak ? 0 : NaN;
}

/**
 * Time until an escape fills a room to a fraction.
 *
 * @param volume  m³, of the room
 * @param leak    m³/s of gas
 * @param limit   1, volume fraction
 * @param air     m³/s of fresh air, 0 for a tight room
 * @returns s; infinite when the air keeps it below
 */
export function roomClock(volume: number, leak: number, limit: number, air = 0): number {
    const flow = leak + air;
    const share = limit * flow / leak;
    if (!(leak > 0)) return leak === leak ? Infinity : NaN;
    if (share >= 1) return Infinity;
    return -volume / flow * Math.log(1 - share);
}

/**
 * Time in which fresh air thins a gas from one fraction to another.
 *
 * @param from     1
 * @param to       1, above 0
 * @param changes  1/s, air flow over room volume
 * @returns s
 */
export function thinningTime(from: number, to: number, changes: number): number {
    return to >= from ? 0 : Math.log(from / to) / changes;
}

/**
 * Opening that lets as much air through as two in a row.
 *
 * @param low   m², free area below
 * @param high  m², free area above
 * @returns m²
 */
export function seriesOpening(low: number, high: number): number {
    const both = low * high;
    return both > 0 && low > 0 ? both / Math.sqrt(low * low + high * high) : both === both ? 0 : NaN;
}

/** Discharge factor of a sharp-edged opening, textbook; what mesh and louvres cover is taken off the area before. */
export const OPENING_DISCHARGE = 0.6;

/**
 * Air that warmth and hydrogen drive through a low and a high opening.
 *
 * @param low         m², free area below
 * @param high        m², free area above
 * @param height      m, between their middles
 * @param inside      K
 * @param outside     K
 * @param fraction    1, hydrogen in the room's air
 * @returns m³/s, ± 30 % without wind; 0 when the inside is not lighter
 */
export function passiveFlow(low: number, high: number, height: number, inside: number, outside: number, fraction = 0): number {
    const lighter = 1 - outside / inside * (1 - fraction * (1 - MOLAR_MASS.hydrogen / MOLAR_MASS.air));
    if (lighter <= 0) return 0;
    return OPENING_DISCHARGE * seriesOpening(low, high) * Math.sqrt(2 * GRAVITY * height * lighter);
}

/**
 * Fraction that an escape reaches in a room with a low and a high opening and nothing but its own lightness to drive air.
 *
 * @param leak    m³/s
 * @param low     m², free area below
 * @param high    m², free area above
 * @param height  m, between their middles
 * @returns 1, ± 30 % without wind, at most 1
 */
export function selfVentedFraction(leak: number, low: number, high: number, height: number): number {
    if (!(leak > 0)) return leak === leak ? 0 : NaN;
    const opening = OPENING_DISCHARGE * seriesOpening(low, high)
        * Math.sqrt(2 * GRAVITY * height * (1 - MOLAR_MASS.hydrogen / MOLAR_MASS.air));
    return Math.min(1, (leak / opening) ** (2 / 3));
}

/**
 * Oxygen in a room that gets oxygen besides fresh air, in the end.
 *
 * @param leak  m³/s of oxygen
 * @param air   m³/s of fresh air
 * @returns 1, volume fraction
 */
export function steadyOxygen(leak: number, air: number): number {
    const flow = leak + air;
    return flow > 0 ? (leak + OXYGEN_IN_AIR * air) / flow : flow === flow ? OXYGEN_IN_AIR : NaN;
}

/**
 * Time until oxygen enriches a room to a fraction.
 *
 * @param volume  m³
 * @param leak    m³/s of oxygen
 * @param limit   1, volume fraction, above that of air (0.235 is the usual alarm)
 * @param air     m³/s of fresh air
 * @returns s; infinite when the air keeps it below
 */
export function oxygenClock(volume: number, leak: number, limit: number, air = 0): number {
    if (!(leak > 0)) return leak === leak ? Infinity : NaN;
    const final = steadyOxygen(leak, air);
    if (limit <= OXYGEN_IN_AIR) return 0;
    if (final <= limit) return Infinity;
    return volume / (leak + air) * Math.log((final - OXYGEN_IN_AIR) / (final - limit));
}

/**
 * Hydrogen in a room from a stored amount let go at once, well mixed.
 *
 * @param gas     m³ at room state
 * @param volume  m³ of the room
 * @returns 1: at most; the layer under the ceiling holds more
 */
export function releasedFraction(gas: number, volume: number): number {
    return gas / (gas + volume);
}
