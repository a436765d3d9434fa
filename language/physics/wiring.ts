/**
 * Cables, bars and plates that carry the current.
 */

/** Resistivity of annealed copper at 20 °C, Ω·m, and its growth per kelvin [iec-60028]. */
export const COPPER = { resistivity: 1 / 58e6, growth: 0.00393 } as const;

/** Resistivities at 20 °C, Ω·m. Stainless steels scatter by 6 %; data sheets. */
export const RESISTIVITY = {
    copper: COPPER.resistivity,
    aluminium: 2.82e-8,
    nickel: 7.0e-8,
    'mild-steel': 1.5e-7,
    'stainless-304': 7.2e-7,
    'stainless-316': 7.4e-7,
} as const;

// mm², Ω/km at 20 °C: the most that a conductor may have [iec-60228].
const SIZES = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];
const CLASS_2 = [36, 24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387, 0.268, 0.193];
const CLASS_5 = [39, 26, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206];

/**
 * Most that a copper conductor of a standard size may have.
 *
 * @param area   m², one of the standard sizes 0.5 .. 95 mm²
 * @param kind   'stranded' (class 2) or 'flexible' (class 5), plain copper
 * @returns Ω/m at 20 °C; NaN for a size that is not in the table. Source: [iec-60228]
 */
export function standardResistance(area: number, kind: 'stranded' | 'flexible'): number {
    const size = area * 1e6;
    for (let i = 0; i < SIZES.length; i++) {
        if (Math.abs(SIZES[i]! - size) < 1e-6) return (kind === 'stranded' ? CLASS_2 : CLASS_5)[i]! / 1000;
    }
    return NaN;
}

/** Standard conductor sizes, m², rising [iec-60228]. */
export const standardAreas: readonly number[] = SIZES.map(size => size / 1e6);

/**
 * Resistivity of copper.
 *
 * @param temperature  K, 230 .. 430
 * @returns Ω·m
 */
export function copperResistivity(temperature: number): number {
    return COPPER.resistivity * (1 + COPPER.growth * (temperature - 293.15));
}

/**
 * Resistance of a copper conductor.
 *
 * @param area         m²
 * @param length       m, there and back counted by the caller
 * @param temperature  K
 * @returns Ω; the tabled largest value for standard sizes is up to 10 % above it
 */
export function copperResistance(area: number, length: number, temperature: number): number {
    return copperResistivity(temperature) * length / area;
}

/**
 * Cross-section of an American wire gauge.
 *
 * @param gauge  AWG number; 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0
 * @returns m². Exact by definition
 */
export function gaugeArea(gauge: number): number {
    const diameter = 0.127e-3 * 92 ** ((36 - gauge) / 39);
    return Math.PI * diameter * diameter / 4;
}

/**
 * Rough steady current of a PVC-covered copper conductor: for warnings only, never to size a cable by.
 *
 * @param area  m², 0.5e-6 .. 50e-6
 * @returns A, ± 25 %: 5 A/mm² up to 2.5 mm², sinking to 2.5 A/mm² at 35 mm². Source: [iec-60364-5-52], from memory
 */
export function roughAmpacity(area: number): number {
    const size = area * 1e6;
    const share = Math.log(Math.max(size, 2.5) / 2.5) / Math.log(35 / 2.5);
    return size * Math.max(2.5, 5 - 2.5 * share);
}

/**
 * What a short circuit may let through before the insulation is lost.
 *
 * @param area    m²
 * @param factor  A·√s/mm²: 115 for PVC, 143 for rubber and cross-linked polyethylene, on copper
 * @returns A²·s. Source: [iec-60364-4-43]
 */
export function withstand(area: number, factor: number): number {
    const size = area * 1e6;
    return factor * factor * size * size;
}

/**
 * Resistance of a square of sheet, whatever its size, current along it.
 *
 * @param resistivity  Ω·m
 * @param thickness    m
 * @returns Ω
 */
export function sheetResistance(resistivity: number, thickness: number): number {
    return resistivity / thickness;
}

/**
 * Drop along an end plate fed at one edge, current taken off evenly on the way.
 *
 * @param current      A
 * @param resistivity  Ω·m
 * @param length       m, from the feed
 * @param width        m
 * @param thickness    m
 * @returns V
 */
export function endPlateDrop(current: number, resistivity: number, length: number, width: number, thickness: number): number {
    return 0.5 * current * resistivity * length / (width * thickness);
}

/**
 * Extra drop where the current spreads out from a stud in a plate.
 *
 * @param current      A
 * @param resistivity  Ω·m
 * @param thickness    m
 * @param stud         m, diameter of the contact
 * @param reach        m, diameter to which it spreads: about the width of the plate
 * @returns V (current flowing outwards all round)
 */
export function studDrop(current: number, resistivity: number, thickness: number, stud: number, reach: number): number {
    return reach <= stud ? 0 : current * resistivity / (2 * Math.PI * thickness) * Math.log(reach / stud);
}

/**
 * Share of a current that each of two parallel stacks takes, both straight lines with the same rest voltage.
 *
 * @param resistance       Ω, of this one with its leads
 * @param otherResistance  Ω, of the other
 * @returns 1
 */
export function parallelShare(resistance: number, otherResistance: number): number {
    return otherResistance / (resistance + otherResistance);
}

/**
 * How long a fuse for cables bears a current.
 *
 * @param ratio  current by its rating, 0 .. 20
 * @returns s; Infinity up to its conventional fusing current of 1.6 times the rating, at which it acts within an hour. A straight line in
 *   logarithms from there to five times the rating, where it takes about a second; single fuses differ by a factor of three.
 *   IEC 60269-1, gG, from memory
 */
export function fuseTime(ratio: number): number {
    return ratio <= 1.6 ? Infinity : 3600 * (ratio / 1.6) ** -FUSE_STEEP;
}
const FUSE_STEEP = Math.log(3600) / Math.log(5 / 1.6);
