/**
 * Pure water at atmospheric pressure.
 */
import { ZERO_CELSIUS } from './constants.js';

/** Bounds of the vapour line (triple point to critical point). */
export const saturationRange = { temperature: [273.15, 647.096], pressure: [611.213, 22.064e6] } as const;

/** Bounds of the liquid properties below, at 1 atm. */
export const liquidRange = { temperature: [273.15, 383.15] } as const;

// Region 4 of the industrial formulation 1997.
const N1 = 0.11670521452767e4;
const N2 = -0.72421316703206e6;
const N3 = -0.17073846940092e2;
const N4 = 0.12020824702470e5;
const N5 = -0.32325550322333e7;
const N6 = 0.14915108613530e2;
const N7 = -0.48232657361591e4;
const N8 = 0.40511340542057e6;
const N9 = -0.23855557567849;
const N10 = 0.65017534844798e3;

/**
 * Saturation pressure over pure liquid water.
 *
 * @param temperature  K, 273.15 .. 647.096
 * @returns Pa; NaN above the critical point; below 273.15 K the curve of supercooled water, not of ice
 *
 * Accuracy: 0.02 %. Source: [iapws-if97] region 4.
 */
export function saturationPressure(temperature: number): number {
    if (!(temperature <= saturationRange.temperature[1])) return NaN;
    const theta = temperature + N9 / (temperature - N10);
    const a = (theta + N1) * theta + N2;
    const b = (N3 * theta + N4) * theta + N5;
    const c = (N6 * theta + N7) * theta + N8;
    const root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    const square = root * root;
    return 1e6 * square * square;
}

/**
 * Temperature at which pure water boils at a pressure; also the dew point of a gas with that vapour pressure.
 *
 * @param pressure  Pa, 611 .. 22.064e6
 * @returns K; NaN for a pressure that is not positive or above the critical one
 *
 * Accuracy: the exact inverse of {@link saturationPressure} to 1e-7 K. Source: [iapws-if97] region 4, backward equation.
 */
export function saturationTemperature(pressure: number): number {
    if (!(pressure > 0 && pressure <= 22.0641e6)) return NaN;
    const beta = Math.sqrt(Math.sqrt(pressure / 1e6));
    const e = (beta + N3) * beta + N6;
    const f = (N1 * beta + N4) * beta + N7;
    const g = (N2 * beta + N5) * beta + N8;
    const d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    const sum = N10 + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
}

/**
 * Density of water at 1 atm.
 *
 * @param temperature  K, 273.15 .. 423
 * @returns kg/m³, within 0.01 %. Source: [kell-1975].
 */
export function waterDensity(temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    return (((((-2.8054253e-10 * t + 1.0556302e-7) * t - 4.6170461e-5) * t - 0.0079870401) * t + 16.945176) * t + 999.83952)
        / (1 + 0.01687985 * t);
}

/**
 * Viscosity of water at 1 atm.
 *
 * @param temperature  K, 253 .. 383
 * @returns Pa·s, within 1 %. Source: [iapws-sr6].
 */
export function waterViscosity(temperature: number): number {
    const x = temperature / 300;
    return 1e-6 * (280.68 * x ** -1.9 + 511.45 * x ** -7.7 + 61.131 * x ** -19.6 + 0.45903 * x ** -40);
}

/**
 * Thermal conductivity of water at 1 atm.
 *
 * @param temperature  K, 273 .. 383
 * @returns W/(m·K), within 1.5 %. Source: [iapws-sr6].
 */
export function waterThermalConductivity(temperature: number): number {
    const x = temperature / 300;
    return 1.6630 * x ** -1.15 - 1.7781 * x ** -3.4 + 1.1567 * x ** -6 - 0.432115 * x ** -7.6;
}

/**
 * Heat capacity of water at 1 atm.
 *
 * @param temperature  K, 273 .. 373
 * @returns J/(kg·K), within 0.1 %. Own fit of a quartic to [iapws-95].
 */
export function waterHeatCapacity(temperature: number): number {
    const t = (temperature - ZERO_CELSIUS) / 100;
    return 4218.165 + t * (-287.652 + t * (719.669 + t * (-730.879 + t * 297.887)));
}

/**
 * Surface tension of water against air or its own vapour.
 *
 * @param temperature  K, 248 .. 647
 * @returns N/m, within 0.5 %; 0 above the critical point. Source: [iapws-surface-tension].
 */
export function waterSurfaceTension(temperature: number): number {
    const tau = 1 - temperature / 647.096;
    if (tau <= 0) return 0;
    return 0.2358 * tau ** 1.256 * (1 - 0.625 * tau);
}

/**
 * Heat that evaporates water.
 *
 * @param temperature  K, 273 .. 393
 * @returns J/kg, within 0.1 %. Own fit of a cubic to [iapws-95].
 */
export function latentHeat(temperature: number): number {
    const t = (temperature - ZERO_CELSIUS) / 100;
    return 1e3 * (2500.925 + t * (-237.709 + t * (5.864 - t * 12.696)));
}
