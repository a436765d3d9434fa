/**
 * Liquids standing in columns, seals and bubblers.
 */
import { GRAVITY } from './constants.js';

/**
 * Pressure under a column of liquid.
 *
 * @param density  kg/m³
 * @param height   m
 * @returns Pa; a water seal relieves at this difference, a bubbler holds it back
 */
export function columnPressure(density: number, height: number): number {
    return density * GRAVITY * height;
}

/**
 * Height of liquid that holds a pressure.
 *
 * @param density   kg/m³
 * @param pressure  Pa
 * @returns m
 */
export function columnHeight(density: number, pressure: number): number {
    return pressure / (density * GRAVITY);
}

/**
 * How far the level falls on the side with more pressure, two columns linked below.
 *
 * @param difference  Pa, pressure over this column less that over the other
 * @param density     kg/m³
 * @param area        m², of this column
 * @param otherArea   m², of the other
 * @returns m, down on this side (the other rises by area/otherArea of it)
 */
export function levelShift(difference: number, density: number, area: number, otherArea: number): number {
    return columnHeight(density, difference) * otherArea / (area + otherArea);
}

/**
 * Time in which a gas flow into a closed headspace pushes its level down by a distance.
 *
 * @param gasFlow    m³/s at ambient pressure
 * @param headspace  m³ at first
 * @param distance   m, the level falls on this side
 * @param density    kg/m³, of the liquid
 * @param area       m², of this column
 * @param otherArea  m², of the other column, open to the air
 * @param ambient    Pa absolute
 * @returns s, constant temperature (Boyle)
 */
export function pushTime(
    gasFlow: number, headspace: number, distance: number, density: number, area: number, otherArea: number, ambient: number,
): number {
    const rise = columnPressure(density, distance * (1 + area / otherArea));
    const volume = headspace + area * distance;
    return ((ambient + rise) * volume - ambient * headspace) / (ambient * gasFlow);
}
