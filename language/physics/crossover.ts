/**
 * Gas that reaches the wrong side: dissolved and diffusing through the sheet, carried by lye that changes sides,
 * pressed through by a difference in pressure. It hardly depends on the current, so weak current means foul gas.
 */
import { FARADAY } from './constants.js';
import type { Solute } from './lye.js';
import { lyeViscosity, molarity } from './lye.js';
import { waterViscosity } from './water.js';

/** The two gases of the rig. */
export type CellGas = 'hydrogen' | 'oxygen';

/** Bounds of {@link solubility}. */
export const solubilityRange = { temperature: [283.15, 363.15], strength: [0, 0.4] } as const;

/** mol/(m³·Pa) in water at 25 °C, its growth with 1/T in K [henry-sander], and the salting out per mol/L of lye [sechenov]. */
const HENRY = {
    hydrogen: { at25: 7.8e-6, warmth: 530, salting: 0.14 },
    oxygen: { at25: 1.3e-5, warmth: 1500, salting: 0.18 },
} as const;

/**
 * Gas that lye dissolves.
 *
 * @param gas          which
 * @param solute       KOH or NaOH (taken alike)
 * @param strength     mass fraction, 0 .. 0.4
 * @param temperature  K, 283 .. 363
 * @returns mol/(m³·Pa), ± 40 % over lye; 30 wt% lye takes a tenth of what water takes
 *
 * Source: water [henry-sander], salting out [sechenov], both from memory.
 */
export function solubility(gas: CellGas, solute: Solute, strength: number, temperature: number): number {
    const law = HENRY[gas];
    const water = law.at25 * Math.exp(law.warmth * (1 / temperature - 1 / 298.15));
    return strength === 0 ? water : water * 10 ** (-law.salting * molarity(solute, strength, temperature) / 1000);
}

/** m²/s in water at 25 °C: textbook, from memory (tables 4.5 .. 5.1e-9 and 2.0 .. 2.4e-9). */
const DIFFUSIVITY_IN_WATER = { hydrogen: 4.8e-9, oxygen: 2.1e-9 } as const;

/**
 * How quickly a gas diffuses in lye.
 *
 * @param gas          which
 * @param solute       KOH or NaOH
 * @param strength     mass fraction, 0 .. 0.4
 * @param temperature  K
 * @returns m²/s, ± 30 %: the value in water at 25 °C (textbook, from memory), carried along with T over viscosity
 */
export function diffusivity(gas: CellGas, solute: Solute, strength: number, temperature: number): number {
    return DIFFUSIVITY_IN_WATER[gas] * temperature / 298.15 * waterViscosity(298.15) / lyeViscosity(solute, strength, temperature);
}

/** How much a porous sheet holds back a dissolved gas against free lye; ± 25 % [schalenbach-2016]. */
export const SHEET_OBSTRUCTION = 6;

/**
 * How much more gas lye holds next to a gassing electrode than in balance with the gas. Own choice: 5; findings run from
 * nearly 1 (electrodes away from the sheet) to over 20 (pressed on) [degroot-2022] [trinke-2018].
 */
export const SUPERSATURATION = { usual: 5, low: 1, high: 20 } as const;

/**
 * Gas that diffuses through the sheet.
 *
 * @param diffusivity     m²/s, in the lye
 * @param solubility      mol/(m³·Pa)
 * @param pressure        Pa, partial pressure of the gas on its own side
 * @param thickness       m, of the sheet
 * @param area            m², of all sheets
 * @param supersaturation 1
 * @param obstruction     1
 * @returns mol/s; factor 2 either way
 */
export function diffusionAcross(
    diffusivity: number, solubility: number, pressure: number, thickness: number, area: number,
    supersaturation: number = SUPERSATURATION.usual, obstruction: number = SHEET_OBSTRUCTION,
): number {
    return diffusivity / obstruction * solubility * pressure * supersaturation * area / thickness;
}

/**
 * Gas that mixed lye carries to the other side.
 *
 * @param lyeFlow     m³/s, into the receiving side
 * @param solubility  mol/(m³·Pa)
 * @param pressure    Pa, partial pressure of the gas on its own side
 * @param share       1, of saturation that the lye brings along: one half where both circuits meet in one vessel
 * @returns mol/s. In joined circuits up to nine tenths of all crossover [trinke-2018]
 */
export function mixingAcross(lyeFlow: number, solubility: number, pressure: number, share = 0.5): number {
    return share * lyeFlow * solubility * pressure;
}

/**
 * Gas that lye pressed through the sheet takes along, dissolved.
 *
 * @param seepage     m³/s, through all sheets, away from the gas's own side
 * @param solubility  mol/(m³·Pa)
 * @param pressure    Pa, partial pressure of the gas
 * @param supersaturation 1
 * @returns mol/s, 0 for flow the other way
 */
export function pressedAcross(
    seepage: number, solubility: number, pressure: number, supersaturation: number = SUPERSATURATION.usual,
): number {
    return seepage > 0 ? seepage * solubility * pressure * supersaturation : seepage === seepage ? 0 : NaN;
}

/**
 * Foreign gas as a fraction of dry product gas.
 *
 * @param foreign  mol/s that arrives on the wrong side
 * @param own      mol/s that is made there
 * @returns 1, 0 .. 1
 */
export function impurity(foreign: number, own: number): number {
    const sum = foreign + own;
    return sum > 0 ? foreign / sum : foreign === foreign && own === own ? 0 : NaN;
}

/**
 * Hydrogen in oxygen from a crossover per area.
 *
 * @param flux            mol/(m²·s) of hydrogen
 * @param currentDensity  A/m²
 * @returns 1: flux/(flux + j/4F)
 */
export function hydrogenInOxygen(flux: number, currentDensity: number): number {
    return impurity(flux, currentDensity / (4 * FARADAY));
}

/**
 * Least current density that keeps hydrogen in oxygen under a limit.
 *
 * @param flux   mol/(m²·s) of hydrogen
 * @param limit  1, above 0
 * @returns A/m²
 */
export function leastCurrentDensity(flux: number, limit: number): number {
    return 4 * FARADAY * flux * (1 - limit) / limit;
}

/**
 * Hydrogen in oxygen of one measured stack (12 cells, 15 kW), for comparison only.
 *
 * @param currentDensity  A/m², 1000 .. 5000
 * @param temperature     K, 328 .. 348
 * @param pressure        Pa absolute, 5e5 .. 9e5
 * @returns 1 (a fraction: the printed expression itself is one, though its figure is in per cent). Source: [sanchez-2018]
 */
export function hydrogenInOxygenSanchez(currentDensity: number, temperature: number, pressure: number): number {
    const t = temperature - 273.15;
    const p = pressure / 1e5;
    const i = currentDensity;
    return 0.09901 + t * (-0.00207 + t * 1.31064e-5)
        + (-0.08483 + t * (0.00179 - t * 1.13390e-5)) * Math.exp((1481.45 + t * (-23.60345 - t * 0.25774)) / i)
        + 3.71417 + p * (-0.93063 + p * 0.05817)
        + (-3.72068 + p * (0.93219 - p * 0.05826)) * Math.exp((-18.38215 + p * (5.87316 - p * 0.46425)) / i);
}
