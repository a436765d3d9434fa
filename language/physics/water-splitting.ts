/**
 * What the splitting of water needs and gives: least voltages, heat, gas, water.
 *
 * Three voltages go by the name "thermoneutral". They differ, and only near 25 °C are they alike:
 * the reaction alone ({@link thermoneutralVoltage}, falls with temperature), water fed cold and gases
 * leaving hot ({@link higherHeatingVoltage}, rises), and the same with the vapour that the gases carry
 * away ({@link thermoneutralVoltageWithVapour}, rises steeply above 60 °C).
 */
import { BAR, FARADAY, GAS_CONSTANT, HIGHER_HEATING_VALUE, LOWER_HEATING_VALUE, MOLAR_MASS, ZERO_CELSIUS } from './constants.js';

/** Bounds of the voltages below: the source works from 25 to 250 °C; down to 0 °C the polynomial stays within 1 mV. */
export const voltageRange = { temperature: [273.15, 523.15] } as const;

/**
 * Reversible cell voltage for liquid water, both gases at 1 bar.
 *
 * @param temperature  K, 298 .. 523 (used down to 273)
 * @returns V; below it no gas appears
 *
 * Accuracy: 0.3 mV above the value from tabled entropies over 25 .. 100 °C.
 * Source: [leroy-1980] eq. 58.
 */
export function reversibleVoltage(temperature: number): number {
    return 1.5184 - 1.5421e-3 * temperature + 9.523e-5 * temperature * Math.log(temperature)
        + 9.84e-8 * temperature * temperature;
}

/**
 * Enthalpy voltage of the reaction alone, liquid water to dry gases, all at one temperature.
 *
 * @param temperature  K, 298 .. 523
 * @returns V, falling with temperature: 1.481 at 25 °C, 1.472 at 80 °C. At this voltage the cell neither warms nor cools
 *          itself, if it carries no vapour away
 *
 * Accuracy: 0.3 mV against tabled heat capacities. Source: [leroy-1980].
 */
export function thermoneutralVoltage(temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    return 1.4850 - 1.490e-4 * t - 9.84e-8 * t * t;
}

/**
 * Enthalpy voltage when water is fed at 25 °C and dry gases leave at the cell's temperature.
 *
 * @param temperature  K, 298 .. 523 (the polynomial itself runs in °C)
 * @returns V, rising with temperature: 1.481 at 25 °C, 1.494 at 80 °C
 *
 * Accuracy: 0.1 mV to the printed polynomial. Source: [leroy-1980].
 */
export function higherHeatingVoltage(temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    return 1.4756 + 2.252e-4 * t + 1.52e-8 * t * t;
}

/**
 * Heat that turns water fed at 25 °C into vapour at the cell's temperature.
 *
 * @param temperature  K, 298 .. 393
 * @returns J/mol; within 0.2 % of steam tables. Source: [leroy-1980].
 */
export function vapourEnthalpyFromFeed(temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    return 42960 + 40.762 * t - 0.06682 * t * t;
}

/**
 * Enthalpy voltage with the water vapour that both gases carry away.
 *
 * @param temperature      K, 298 .. 393
 * @param vapourPressure   Pa, of water over the lye (over lye it is far below that over water)
 * @param totalPressure    Pa absolute, in the gas space; must exceed the vapour pressure
 * @returns V; NaN where the lye would boil (vapour pressure not below total pressure)
 *
 * Accuracy: 3 mV. Source: [leroy-1980].
 */
export function thermoneutralVoltageWithVapour(temperature: number, vapourPressure: number, totalPressure: number): number {
    if (!(vapourPressure < totalPressure)) return NaN;
    const carried = 1.5 * vapourPressure / (totalPressure - vapourPressure);
    return higherHeatingVoltage(temperature) + carried * vapourEnthalpyFromFeed(temperature) / (2 * FARADAY);
}

/**
 * What gas pressure and weak water add to the reversible voltage (Nernst).
 *
 * @param temperature       K
 * @param hydrogenPressure  Pa, partial pressure (total less vapour)
 * @param oxygenPressure    Pa, partial pressure
 * @param waterActivity     1, vapour pressure over lye by that over water; 1 for pure water
 * @returns V, to add; negative below 1 bar. NaN for a pressure or activity that is not positive
 *
 * Accuracy: arithmetic, ideal gas. Measured stacks show between none and all of it, since smaller bubbles under pressure
 * give part of it back [degroot-2022].
 */
export function pressureVoltage(
    temperature: number, hydrogenPressure: number, oxygenPressure: number, waterActivity: number,
): number {
    if (!(hydrogenPressure > 0 && oxygenPressure > 0 && waterActivity > 0)) return NaN;
    return GAS_CONSTANT * temperature / (2 * FARADAY)
        * (Math.log(hydrogenPressure / BAR) + 0.5 * Math.log(oxygenPressure / BAR) - Math.log(waterActivity));
}

/**
 * Hydrogen made by a current.
 *
 * @param current            A, through each cell
 * @param cells              count of cells that the current passes, all groups
 * @param faradayEfficiency  1, 0 .. 1: what part of the current makes gas that arrives
 * @returns mol/s, dry. Exact [codata-2018]
 */
export function hydrogenRate(current: number, cells: number, faradayEfficiency: number): number {
    return current * cells * faradayEfficiency / (2 * FARADAY);
}

/**
 * Oxygen made by a current: half of the hydrogen.
 *
 * @param current            A, through each cell
 * @param cells              count
 * @param faradayEfficiency  1, 0 .. 1
 * @returns mol/s, dry
 */
export function oxygenRate(current: number, cells: number, faradayEfficiency: number): number {
    return current * cells * faradayEfficiency / (4 * FARADAY);
}

/**
 * Water that a hydrogen rate uses up by splitting (vapour carried away comes on top).
 *
 * @param hydrogen  mol/s
 * @returns kg/s: one mole of water per mole of hydrogen
 */
export function waterSplit(hydrogen: number): number {
    return hydrogen * MOLAR_MASS.water;
}

/**
 * Electrical energy behind each mole of hydrogen.
 *
 * @param cellVoltage        V
 * @param faradayEfficiency  1, above 0
 * @returns J/mol; infinite when nothing arrives
 */
export function energyPerMole(cellVoltage: number, faradayEfficiency: number): number {
    return 2 * FARADAY * cellVoltage / faradayEfficiency;
}

/**
 * Share of the electrical energy found again in the gas.
 *
 * @param cellVoltage        V, above 0
 * @param faradayEfficiency  1
 * @param basis              'higher' counts the heat of condensing the burnt water, 'lower' does not
 * @returns 1; always to be shown with its basis (the two differ by 18 %)
 */
export function energyEfficiency(cellVoltage: number, faradayEfficiency: number, basis: 'higher' | 'lower'): number {
    return (basis === 'higher' ? HIGHER_HEATING_VALUE : LOWER_HEATING_VALUE) / energyPerMole(cellVoltage, faradayEfficiency);
}

/**
 * Heat left in a row of cells.
 *
 * @param cells              count
 * @param current            A, through each cell
 * @param cellVoltage        V
 * @param enthalpyVoltage    V, one of the three voltages above (which one decides where the vapour is counted)
 * @param faradayEfficiency  1; current that passes by the cells or is lost by mixing comes back as heat
 * @returns W; negative when the cells take heat in
 */
export function cellHeat(
    cells: number, current: number, cellVoltage: number, enthalpyVoltage: number, faradayEfficiency = 1,
): number {
    return cells * current * (cellVoltage - enthalpyVoltage * faradayEfficiency);
}

/**
 * Faraday efficiency of one measured stack (26 kW, 7 bar), kept for comparison only: it describes that stack's own ports.
 *
 * @param currentDensity  A/m², above 0
 * @returns 1
 *
 * The printed constant is 250 mA²/cm⁴, that is 25 000 A²/m⁴. Source: [ulleberg-2003].
 */
export function faradayEfficiencyUlleberg(currentDensity: number): number {
    const square = currentDensity * currentDensity;
    return 0.96 * square / (25000 + square);
}

/**
 * Faraday efficiency of another measured stack (12 cells, 15 kW), kept for comparison only.
 *
 * @param currentDensity  A/m², 1500 .. 5000: below, the paper's own two fits part by 0.06
 * @param temperature     K, 328 .. 348
 * @returns 1; falls with temperature. Source: [sanchez-2018], four constants
 */
export function faradayEfficiencySanchez(currentDensity: number, temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    const square = currentDensity * currentDensity;
    return square / (478645.74 - 2953.15 * t + square) * (1.03960 - 0.00104 * t);
}
