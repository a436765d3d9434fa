/**
 * Moles of gas and the volumes people quote for them. A gas volume without its state is not a number:
 * "normal" and room litres differ by 9 %.
 */
import { ATMOSPHERE, GAS_CONSTANT, ZERO_CELSIUS } from './constants.js';

/** A state to which gas volumes are referred. */
export interface GasState {
    /** K */
    readonly temperature: number;
    /** Pa absolute */
    readonly pressure: number;
}

/** States of reference, each with its bearer. Dry gas throughout. */
export const gasStates = {
    /** 0 °C, 101.325 kPa: "normal" [din-1343]. All our own normal volumes mean this one. */
    normal: { temperature: ZERO_CELSIUS, pressure: ATMOSPHERE },
    /** 0 °C, 1 bar: the "STP" of chemistry since 1982 [iupac-gold]. */
    chemistry: { temperature: ZERO_CELSIUS, pressure: 1e5 },
    /** 15 °C, 101.325 kPa: "standard" of the gas trade [iso-13443]. */
    standard: { temperature: ZERO_CELSIUS + 15, pressure: ATMOSPHERE },
    /** 20 °C, 101.325 kPa: flow meters and makers' sheets. */
    room20: { temperature: ZERO_CELSIUS + 20, pressure: ATMOSPHERE },
    /** 25 °C, 101.325 kPa: laboratory. */
    room25: { temperature: ZERO_CELSIUS + 25, pressure: ATMOSPHERE },
    /** 60 °F, 14.696 psia: "standard cubic feet" of compressors and gas bottles. */
    standardCubicFoot: { temperature: (60 + 459.67) / 1.8, pressure: 101325 },
} as const satisfies Record<string, GasState>;

/**
 * Volume of a mole of ideal gas.
 *
 * @param temperature  K
 * @param pressure     Pa absolute, above 0
 * @returns m³/mol; hydrogen is within 0.1 % of it below 1.5 bar
 */
export function molarVolume(temperature: number, pressure: number): number {
    return GAS_CONSTANT * temperature / pressure;
}

/**
 * Volume of dry gas, ideal.
 *
 * @param moles        mol, or mol/s for a flow
 * @param temperature  K
 * @param pressure     Pa absolute
 * @returns m³, or m³/s
 */
export function gasVolume(moles: number, temperature: number, pressure: number): number {
    return moles * GAS_CONSTANT * temperature / pressure;
}

/**
 * Moles in a volume of dry gas, ideal.
 *
 * @param volume       m³, or m³/s
 * @param temperature  K
 * @param pressure     Pa absolute
 * @returns mol, or mol/s
 */
export function gasMoles(volume: number, temperature: number, pressure: number): number {
    return volume * pressure / (GAS_CONSTANT * temperature);
}

/**
 * Volume of moist gas that holds a given amount of dry gas.
 *
 * @param dryMoles        mol of the dry gas, or mol/s
 * @param temperature     K
 * @param pressure        Pa absolute, of the moist gas
 * @param vapourPressure  Pa, of the water in it
 * @returns m³, or m³/s; NaN where the vapour would fill all (vapour pressure not below pressure)
 */
export function wetGasVolume(dryMoles: number, temperature: number, pressure: number, vapourPressure: number): number {
    if (!(vapourPressure < pressure)) return NaN;
    return dryMoles * GAS_CONSTANT * temperature / (pressure - vapourPressure);
}

/**
 * What is left of a moist gas volume after cooling (or grows on heating), pressure kept, water condensing as it must.
 *
 * @param hotTemperature      K
 * @param hotVapourPressure   Pa, of the water in the hot gas
 * @param coldTemperature     K
 * @param coldVapourPressure  Pa, saturation at the cold end (pass the hot one if nothing condenses)
 * @param pressure            Pa absolute
 * @returns 1, cold volume by hot volume
 */
export function contraction(
    hotTemperature: number, hotVapourPressure: number, coldTemperature: number, coldVapourPressure: number, pressure: number,
): number {
    const vapour = Math.min(hotVapourPressure, coldVapourPressure);
    if (!(hotVapourPressure < pressure)) return NaN;
    return coldTemperature / hotTemperature * (pressure - hotVapourPressure) / (pressure - vapour);
}
