/**
 * What hydrogen does when it burns. Thresholds to warn by, never to run by.
 */
import { GAS_CONSTANT, HIGHER_HEATING_VALUE, LOWER_HEATING_VALUE } from './constants.js';
import { interpolate } from './interpolate.js';

/** Volume fractions of hydrogen between which a mixture burns at room conditions. In air several pages agree; in oxygen from
 *  memory. Warm or compressed gas burns in a wider span. */
export const flammableRange = { air: [0.04, 0.75], oxygen: [0.04, 0.94] } as const;

/** Volume fractions of hydrogen in air that can detonate, from a combustion table read in a hydrogen textbook. */
export const detonableRange = { air: [0.183, 0.59] } as const;

/** Spark that lights the easiest mixture, J; a hand feels one a hundred times larger. */
export const LEAST_SPARK = 1.7e-5;

/** Auto-ignition in air, K; quenching gap, m; burning velocity, m/s; flame temperature in air, K; from the same table. Hot surfaces have
 *  lit hydrogen below its auto-ignition in a test vessel (IEC 60079-20-1 has 833 K, from memory): no limit to work by. */
export const FLAME = { autoIgnition: 858, quenchingGap: 0.64e-3, burningVelocity: 2.65, temperature: 2318 } as const;

/** Most hydrogen in nitrogen that cannot be lit when let into air, volume fraction (ISO 10156, as quoted). */
export const HARMLESS_IN_NITROGEN = 0.055;

/**
 * Energy of an amount of hydrogen.
 *
 * @param moles  mol
 * @param basis  'lower' for what a flame gives without condensing, 'higher' with
 * @returns J
 */
export function heatOfCombustion(moles: number, basis: 'higher' | 'lower'): number {
    return moles * (basis === 'higher' ? HIGHER_HEATING_VALUE : LOWER_HEATING_VALUE);
}

/** J/kg of TNT, exact by convention: 1000 kcal for each kilogram. */
const TNT = 4.184e6;

/**
 * Energy as mass of TNT: a measure of size, not a forecast of damage.
 *
 * @param energy  J
 * @returns kg, at 4.184 MJ/kg
 */
export function tntMass(energy: number): number {
    return energy / TNT;
}

/** Heat capacity of hydrogen over the gas constant in the middle of the warming, 400 K: 29.2 J/(mol·K) [leachman-2009]. */
const WARM_HYDROGEN = 3.51;

/**
 * How much a recombiner warms hydrogen that holds oxygen (no heat lost).
 *
 * @param oxygenFraction  1, of oxygen in hydrogen, 0 .. 0.03
 * @returns K, within 5 %: about 165 K for each per cent
 */
export function recombinerRise(oxygenFraction: number): number {
    return 2 * LOWER_HEATING_VALUE * oxygenFraction / (WARM_HYDROGEN * GAS_CONSTANT);
}

// Fractions of hydrogen, and pressure after over before at each of them.
const IN_AIR = [0.04, 0.1, 0.2, 0.296, 0.4, 0.6, 0.75];
const RATIO_AIR = [2.4, 4.5, 6.9, 8.0, 7.6, 5.5, 3.5];
const IN_OXYGEN = [0.04, 0.1, 0.3, 0.5, 0.667, 0.8, 0.9, 0.94];
const RATIO_OXYGEN = [2.4, 4.5, 7.7, 9.1, 9.6, 9.0, 6.8, 4.8];

/**
 * Pressure in a closed vessel after its mixture burnt, over that before.
 *
 * @param hydrogenFraction  1, of the mixture
 * @param oxidiser          air or oxygen
 * @returns 1, ± 10 % for slow flames (a detonation doubles it, reflections more); 1 outside the flammable range.
 *          Constant-volume equilibrium values, from memory
 */
export function closedVesselRatio(hydrogenFraction: number, oxidiser: 'air' | 'oxygen'): number {
    if (hydrogenFraction !== hydrogenFraction) return NaN;
    const [low, high] = flammableRange[oxidiser];
    if (hydrogenFraction < low || hydrogenFraction > high) return 1;
    return oxidiser === 'air'
        ? interpolate(IN_AIR, RATIO_AIR, hydrogenFraction)
        : interpolate(IN_OXYGEN, RATIO_OXYGEN, hydrogenFraction);
}

/**
 * Energy on a charged body.
 *
 * @param capacitance  F
 * @param volts        V
 * @returns J: compare with {@link LEAST_SPARK}
 */
export function chargeEnergy(capacitance: number, volts: number): number {
    return capacitance * volts * volts / 2;
}

/**
 * Time in which a charge bleeds through a resistor to a lower voltage.
 *
 * @param capacitance  F
 * @param resistance   Ω
 * @param from         V
 * @param to           V, above 0
 * @returns s, 0 if already below
 */
export function bleedTime(capacitance: number, resistance: number, from: number, to: number): number {
    return to >= from ? 0 : capacitance * resistance * Math.log(from / to);
}
