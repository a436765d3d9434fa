/**
 * Lift.
 */
import { ATMOSPHERE, GAS_CONSTANT, MOLAR_MASS } from './constants.js';
import { airDensity } from './gases.js';
import { hydrogenDensity } from './hydrogen.js';

/**
 * Volume of a ball.
 *
 * @param diameter  m
 * @returns m³
 */
export function ballVolume(diameter: number): number {
    return Math.PI * diameter ** 3 / 6;
}

/**
 * Mass that a volume of hydrogen carries in dry air, its envelope not yet taken off.
 *
 * @param volume          m³
 * @param temperature     K, of gas and air
 * @param pressure        Pa absolute
 * @param purity          1, volume fraction of hydrogen in the dry gas; the rest is taken as air
 * @param vapourPressure  Pa, of water in the gas
 * @returns kg, within 0.2 % (slack envelope: gas at the pressure of the air)
 */
export function grossLift(
    volume: number, temperature: number, pressure: number = ATMOSPHERE, purity = 1, vapourPressure = 0,
): number {
    const dry = pressure - vapourPressure;
    const air = airDensity(temperature, pressure);
    const gas = purity * hydrogenDensity(temperature, dry) + (1 - purity) * airDensity(temperature, dry)
        + vapourPressure * MOLAR_MASS.water / (GAS_CONSTANT * temperature);
    return volume * (air - gas);
}

/**
 * Pressure of the air at a height.
 *
 * @param height  m above the sea, -400 .. 11 000
 * @returns Pa, standard atmosphere; weather moves it by 3 %. Source: [us-atmosphere-1976]
 */
export function airPressureAt(height: number): number {
    return ATMOSPHERE * (1 - 2.25577e-5 * height) ** 5.25588;
}
