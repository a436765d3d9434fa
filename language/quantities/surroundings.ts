/** The air and the temperatures at which quantities are counted where their meaning says no other. */
import { ATMOSPHERE } from '../physics/constants.js';
import type { View } from './view.js';

/** K, 20 °C: a room, a cylinder at rest, gas that has cooled on its way. */
export const ROOM = 293.15;
/** K, 25 °C: gas in the hoses of a running rig, still a little warm. Common practice, no source. */
export const IN_THE_HOSE = 298.15;
/** kg/m³ of water at 20 °C [kell-1975]. */
export const WATER_DENSITY = 998;

/** Whether a fan takes air out of the room: one of which nothing else is said does. */
export function extracts(fan: View): boolean {
    return (fan.word('sort') ?? 'extract') === 'extract';
}
/** Pa above vacuum, the air at the site, noted as an input; the standard atmosphere where no site is described. */
export function airPressureOf(q: View): number {
    return q.the('site')?.q('air-pressure') ?? ATMOSPHERE;
}
