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
 * @returns mol/s, steady; the first hours let less through. Tables of permeability scatter by a factor of two
 */
export function permeationFlow(permeability: number, area: number, thickness: number, difference: number): number {
    return permeability * area * difference / thickness;
}

/**
 * Gas through the wall of a tube.
 *
 * @param permeability  mol/(m·s·Pa)
 * @param length        m
 * @param bore          m, inner width
 * @param outside       m, above the bore
 * @param difference    Pa, of the gas's own partial pressure, inside less outside
 * @returns mol/s, steady. Source: diffusion through a hollow cylinder, textbook (Crank, The mathematics of diffusion, section 5.2), from memory
 */
export function permeationThroughTube(permeability: number, length: number, bore: number, outside: number, difference: number): number {
    return 2 * Math.PI * length * permeability * difference / Math.log(outside / bore);
}

/** K, activation energy over the gas constant: 129 % more from 303.15 to 353.15 K (the same simulation). */
const ACTIVATION = 1774;

/**
 * How much more passes when it is warmer.
 *
 * @param temperature  K
 * @param reference    K, at which the permeability is stated
 * @returns 1; a factor of 2.3 from 30 to 80 °C in polyethylene (a simulation, Polymers 16 (2024) 953). Take it as the least:
 *          other gases were measured to grow five to ten times there (35 .. 45 kJ/mol, polymer handbooks, from memory)
 */
export function permeationWarmth(temperature: number, reference: number): number {
    return Math.exp(ACTIVATION * (1 / reference - 1 / temperature));
}

/** mol/(m·s·Pa) in one barrer: 1e-10 cm³ of ideal gas at 0 °C and 1 atm, times cm, per cm², s and cmHg. Arithmetic. */
const BARRER = 3.3464e-16;

/**
 * Permeability in mol/(m·s·Pa) from the unit of older tables.
 *
 * @param barrer  1e-10 cm³(STP)·cm/(cm²·s·cmHg)
 * @returns mol/(m·s·Pa)
 */
export function fromBarrer(barrer: number): number {
    return barrer * BARRER;
}
