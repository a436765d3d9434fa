/**
 * Constants of nature and of substances, SI units. Physics imports nothing of ours and knows no rig: numbers in, numbers out.
 *
 * What holds for every law in this folder: an unknown input (NaN) gives an unknown answer, and nothing throws. A doc comment
 * speaks of NaN only where known inputs have no answer. A range is what the source vouches for; beyond it the formula still
 * runs, without warranty, unless it is said to stop.
 */

/** Faraday constant, C/mol (exact product of two exact constants of the SI since 2019) [codata-2018]. */
export const FARADAY = 96485.33212;

/** Molar gas constant, J/(mol·K) [codata-2018]. */
export const GAS_CONSTANT = 8.314462618;

/** Standard gravity, m/s² (exact by convention). */
export const GRAVITY = 9.80665;

/** Stefan-Boltzmann constant, W/(m²·K⁴) [codata-2018]. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** Boltzmann constant over elementary charge, V/K: times the temperature it is the thermal voltage of a diode [codata-2018]. */
export const THERMAL_VOLTAGE_PER_KELVIN = 8.617333262e-5;

/** 0 °C in kelvin (exact). */
export const ZERO_CELSIUS = 273.15;

/** Standard atmosphere, Pa (exact). */
export const ATMOSPHERE = 101325;

/** One bar, Pa (exact). */
export const BAR = 1e5;

/** Molar masses, kg/mol [iupac-weights]. */
export const MOLAR_MASS = {
    hydrogen: 2.01588e-3,
    oxygen: 31.9988e-3,
    nitrogen: 28.0134e-3,
    water: 18.01528e-3,
    air: 28.9647e-3,
    KOH: 56.1056e-3,
    NaOH: 39.9971e-3,
} as const;

/** Heat of combustion of hydrogen to liquid water at 25 °C (higher heating value), J/mol [codata-key-values]. */
export const HIGHER_HEATING_VALUE = 285830;

/** Heat of combustion of hydrogen to water vapour at 25 °C (lower heating value), J/mol [codata-key-values]. */
export const LOWER_HEATING_VALUE = 241826;

/** Least electrical work that splits a mole of liquid water at 25 °C and 1 bar, J/mol [codata-key-values]. */
export const FREE_ENERGY_OF_WATER = 237140;

/** Oxygen in dry air, volume fraction [us-atmosphere-1976]. */
export const OXYGEN_IN_AIR = 0.2095;
