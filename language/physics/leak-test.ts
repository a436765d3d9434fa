/**
 * Tightness tests by pressure drop.
 */

/**
 * Leak that a test by pressure drop cannot tell from none, or shows.
 *
 * @param volume       m³ of closed gas space
 * @param pressure     Pa gauge at the start
 * @param drop         Pa, seen or allowed
 * @param drift        K, change of the gas temperature that may hide in it, 0 or more
 * @param temperature  K
 * @param time         s that it was held
 * @param air          Pa absolute, of the air outside
 * @returns m³/s as a volume at the air's pressure and that temperature. Ideal gas, rigid walls: a bag or a long hose gives way
 *          and shows less.
 */
export function gasLost(volume: number, pressure: number, drop: number, drift: number, temperature: number, time: number, air: number): number {
    return volume * (drop + (pressure + air) * drift / temperature) / (air * time);
}
