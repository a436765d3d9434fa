/**
 * Water that a gas carries along, and where it drops it.
 */
import { GAS_CONSTANT, MOLAR_MASS } from './constants.js';
import { saturationPressure, saturationTemperature } from './water.js';

/**
 * Moles of water vapour with each mole of dry gas.
 *
 * @param vapourPressure  Pa, of the water in the gas
 * @param totalPressure   Pa absolute
 * @returns mol/mol; NaN where the vapour pressure is not below the total (the liquid boils)
 */
export function vapourPerDryGas(vapourPressure: number, totalPressure: number): number {
    if (!(vapourPressure < totalPressure)) return NaN;
    return vapourPressure / (totalPressure - vapourPressure);
}

/**
 * Water vapour that a flow of dry gas carries.
 *
 * @param dryGas          mol/s
 * @param vapourPressure  Pa
 * @param totalPressure   Pa absolute
 * @returns kg/s
 */
export function vapourFlow(dryGas: number, vapourPressure: number, totalPressure: number): number {
    return dryGas * vapourPerDryGas(vapourPressure, totalPressure) * MOLAR_MASS.water;
}

/**
 * Temperature down to which a moist gas may be cooled before it wets the wall.
 *
 * @param vapourPressure  Pa, of the water in the gas, 611 .. 22e6
 * @returns K (dew point over water, ± 0.02 K; below 0 °C the point over supercooled water, not the frost point)
 */
export function dewPoint(vapourPressure: number): number {
    return saturationTemperature(vapourPressure);
}

/**
 * Water dropped when gas goes from one place to a colder (or more compressed) one.
 *
 * @param dryGas          mol/s
 * @param vapourPressure  Pa, of the water in the gas where it comes from
 * @param totalPressure   Pa absolute, where it comes from
 * @param coldTemperature K, where it goes to; saturated over pure water there
 * @param coldPressure    Pa absolute, where it goes to (compression raises what the gas must drop)
 * @returns kg/s, never below 0
 */
export function condensate(
    dryGas: number, vapourPressure: number, totalPressure: number, coldTemperature: number, coldPressure = totalPressure,
): number {
    const carried = vapourPerDryGas(vapourPressure, totalPressure);
    const saturated = saturationPressure(coldTemperature);
    if (saturated >= coldPressure) return 0;
    const kept = saturated / (coldPressure - saturated);
    const dropped = carried - kept;
    return dropped > 0 ? dryGas * dropped * MOLAR_MASS.water : dropped === dropped ? 0 : NaN;
}

/**
 * Vapour pressure in gas after compression or expansion at one temperature, as long as nothing condenses.
 *
 * @param vapourPressure  Pa, before
 * @param before          Pa absolute, before
 * @param after           Pa absolute, after
 * @returns Pa
 */
export function vapourPressureAfter(vapourPressure: number, before: number, after: number): number {
    return vapourPressure * after / before;
}

/**
 * Mass of water in a volume of moist gas.
 *
 * @param vapourPressure  Pa
 * @param temperature     K
 * @returns kg/m³ of the moist gas, ideal
 */
export function vapourDensity(vapourPressure: number, temperature: number): number {
    return vapourPressure * MOLAR_MASS.water / (GAS_CONSTANT * temperature);
}

/** Bounds of {@link molecularSieveLoading}. */
export const molecularSieveRange = { vapourPressure: [10, 1830], temperature: [273.15, 373.15] } as const;

/**
 * Water that molecular sieve 13X holds in balance with a gas.
 *
 * @param vapourPressure  Pa, 10 .. 1830
 * @param temperature     K, 273 .. 373
 * @returns kg/kg of dry sieve; 3 % to the data, a bed in use ± 25 % (age, channels, heat). Source: [wang-levan-2009]
 */
export function molecularSieveLoading(vapourPressure: number, temperature: number): number {
    const bp = 2.408e-10 * Math.exp(6852 / temperature) * vapourPressure;
    const n = 0.3974 - 4.199 / temperature;
    return 0.27188 * bp / (1 + bp ** n) ** (1 / n);
}

/** Bounds of {@link silicaGelLoading}. */
export const silicaGelRange = { temperature: [303.15, 419.15], relativeHumidity: [0.02, 0.52] } as const;

/**
 * Water that silica gel (pellets) holds in balance with a gas.
 *
 * @param relativeHumidity  1, 0.02 .. 0.5; above it the formula runs past its data
 * @param temperature       K, 303 .. 419
 * @returns kg/kg of dry gel; 15 % to the data. Source: [sapienza-2017]
 */
export function silicaGelLoading(relativeHumidity: number, temperature: number): number {
    if (relativeHumidity <= 0) return 0;
    const potential = relativeHumidity >= 1 ? 0 : -GAS_CONSTANT * temperature * Math.log(relativeHumidity);
    return 0.380 * Math.exp(-((potential / 3962.2) ** 1.1));
}
