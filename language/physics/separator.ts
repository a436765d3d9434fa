/**
 * What a wet separator holds back, and what passes when it does not.
 */

/**
 * Pressure at which gas breaks through the largest wet pore.
 *
 * @param surfaceTension  N/m
 * @param contactAngle    rad, of the liquid on the material, 0 = wets fully; at 90° and more it holds nothing
 * @param pore            m, diameter of the largest pore
 * @returns Pa, 0 for a material that does not wet. Young-Laplace, 4·γ·cosθ/d
 *
 * The printed formula of the membrane test standard gives 0.715 of this for the same pore ({@link poreByStandardTest}).
 */
export function bubblePoint(surfaceTension: number, contactAngle: number, pore: number): number {
    const wet = Math.cos(contactAngle);
    return wet > 0 ? 4 * surfaceTension * wet / pore : wet === wet ? 0 : NaN;
}

/**
 * Largest pore from a measured bubble point, Young-Laplace.
 *
 * @param surfaceTension  N/m
 * @param contactAngle    rad
 * @param pressure        Pa, measured
 * @returns m
 */
export function largestPore(surfaceTension: number, contactAngle: number, pressure: number): number {
    return 4 * surfaceTension * Math.max(0, Math.cos(contactAngle)) / pressure;
}

/**
 * Largest pore from a measured bubble point by the printed formula of the membrane test.
 *
 * @param surfaceTension  N/m
 * @param pressure        Pa, measured
 * @returns m: 2.86·γ/p. Source: [astm-f316]
 */
export function poreByStandardTest(surfaceTension: number, pressure: number): number {
    return 2.86 * surfaceTension / pressure;
}

/**
 * Bubble point that belongs to a pore stated after the printed formula of the membrane test.
 *
 * @param surfaceTension  N/m
 * @param pore            m
 * @returns Pa. Source: [astm-f316]
 */
export function bubblePointByStandardTest(surfaceTension: number, pore: number): number {
    return 2.86 * surfaceTension / pore;
}

/**
 * Width by which a sheet lies under its clamp on each side.
 *
 * @param sheet   m, of the sheet in one direction
 * @param window  m, of the opening in the same direction
 * @returns m; below 0 there is a slot and the gases meet, however fine the sheet
 */
export function clampedEdge(sheet: number, window: number): number {
    return (sheet - window) / 2;
}

/**
 * Permeability of a sheet with straight-through pores.
 *
 * @param porosity    1
 * @param pore        m, hydraulic diameter
 * @param tortuosity  1, at least 1
 * @returns m², as an order of magnitude (Hagen-Poiseuille in each pore). Source: [hagen-poiseuille]
 */
export function permeability(porosity: number, pore: number, tortuosity: number): number {
    return porosity * pore * pore / (32 * tortuosity);
}

/**
 * Lye pressed through a wet sheet.
 *
 * @param permeability  m²
 * @param area          m²
 * @param thickness     m
 * @param difference    Pa, across the sheet
 * @param viscosity     Pa·s, of the lye
 * @returns m³/s (Darcy)
 */
export function seepage(permeability: number, area: number, thickness: number, difference: number, viscosity: number): number {
    return permeability * area * difference / (viscosity * thickness);
}
