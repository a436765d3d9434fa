/**
 * Thin facts about gases near room conditions: viscosity, heat capacity ratio, air as a coolant.
 */
import { ATMOSPHERE, GAS_CONSTANT, MOLAR_MASS } from './constants.js';

/** Gases that flow in a rig. */
export type Gas = 'hydrogen' | 'oxygen' | 'nitrogen' | 'air';

/** Bounds of {@link gasViscosity}. */
export const gasRange = { temperature: [250, 500] } as const;

const SUTHERLAND = {
    hydrogen: [8.90e-6, 298.15, 72],
    oxygen: [20.55e-6, 298.15, 127],
    nitrogen: [17.81e-6, 300.55, 111],
    air: [18.27e-6, 291.15, 120],
} as const satisfies Record<Gas, readonly [number, number, number]>;

/**
 * Viscosity of a dry gas.
 *
 * @param gas          which
 * @param temperature  K, 250 .. 500
 * @returns Pa·s, within 2 %; pressure does not matter below 50 bar. Source: [sutherland], constants from memory
 */
export function gasViscosity(gas: Gas, temperature: number): number {
    const [at, reference, constant] = SUTHERLAND[gas];
    return at * (reference + constant) / (temperature + constant) * (temperature / reference) ** 1.5;
}

/** Ratio of heat capacities at room temperature; hydrogen's varies, see hydrogen.ts. Textbook values. */
export const heatCapacityRatio = {
    hydrogen: 1.405, oxygen: 1.395, nitrogen: 1.400, air: 1.400,
} as const satisfies Record<Gas, number>;

/**
 * Density of an ideal gas.
 *
 * @param molarMass    kg/mol
 * @param temperature  K
 * @param pressure     Pa absolute
 * @returns kg/m³
 */
export function idealGasDensity(molarMass: number, temperature: number, pressure: number): number {
    return pressure * molarMass / (GAS_CONSTANT * temperature);
}

/** Density of dry air, kg/m³, at K and Pa. */
export function airDensity(temperature: number, pressure: number = ATMOSPHERE): number {
    return idealGasDensity(MOLAR_MASS.air, temperature, pressure);
}

/** Thermal conductivity of air, W/(m·K), at K, 200 .. 600, within 1 %. Source: [us-atmosphere-1976]. */
export function airThermalConductivity(temperature: number): number {
    return 2.64638e-3 * temperature ** 1.5 / (temperature + 245.4 * 10 ** (-12 / temperature));
}

/** Heat capacity of air, J/(kg·K), constant within 0.3 % from 250 to 350 K. Textbook value. */
export const AIR_HEAT_CAPACITY = 1006;
