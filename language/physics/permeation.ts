/**
 * Gas that creeps through films and hose walls.
 */

/**
 * Gas through a film.
 *
 * @param permeability  mol/(m·s·Pa)
 * @param area          m²
 * @param thickness     m
 * @param difference    Pa, of the gas's own partial pressure across the film
 * @returns mol/s
 */
export function permeationFlow(permeability: number, area: number, thickness: number, difference: number): number {
    return permeability * area * difference / thickness;
}

/**
 * How much more passes when it is warmer.
 *
 * @param temperature  K
 * @param reference    K, at which the permeability is stated
 * @returns 1; a factor of 2.3 from 30 to 80 °C in polyethylene (a simulation, Polymers 16 (2024) 953; ± 30 %)
 */
export function permeationWarmth(temperature: number, reference: number): number {
    // 2.29 = exp(E/R (1/303.15 - 1/353.15)) makes E/R 1774 K.
    return Math.exp(1774 * (1 / reference - 1 / temperature));
}

/**
 * Permeability in mol/(m·s·Pa) from the unit of older tables.
 *
 * @param barrer  1e-10 cm³(STP)·cm/(cm²·s·cmHg)
 */
export function fromBarrer(barrer: number): number {
    return barrer * 3.3464e-16;
}
