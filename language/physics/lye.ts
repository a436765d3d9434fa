/**
 * Potassium and sodium hydroxide in water: what the lye conducts, weighs, holds and boils at.
 *
 * Strength is everywhere the mass fraction of pure hydroxide in the lye (0.30 for 30 wt%), temperature is in kelvin.
 * Three measures of strength are kept apart: mass fraction, molality (mol per kg of water) and molarity (mol per m³ of lye).
 */
import { MOLAR_MASS, ZERO_CELSIUS } from './constants.js';
import { interpolate, interpolateSmooth, smoothSlopes } from './interpolate.js';
import { findCrest, findRoot } from './root.js';
import { waterDensity, waterHeatCapacity, waterSurfaceTension } from './water.js';

/** The two hydroxides that makers use. */
export type Solute = 'KOH' | 'NaOH';

// ---------------------------------------------------------------------------------------------- measures of strength

/**
 * Moles of hydroxide per kilogram of water.
 *
 * @param solute    KOH or NaOH
 * @param strength  mass fraction, 0 .. below 1
 * @returns mol/kg of water (not of lye: the two differ by 1/(1 - strength)). Exact
 */
export function molality(solute: Solute, strength: number): number {
    return strength / ((1 - strength) * MOLAR_MASS[solute]);
}

/**
 * Mass fraction from moles of hydroxide per kilogram of water.
 *
 * @param solute    KOH or NaOH
 * @param molality  mol/kg of water
 * @returns mass fraction. Exact
 */
export function strengthFromMolality(solute: Solute, molality: number): number {
    const mass = molality * MOLAR_MASS[solute];
    return mass / (1 + mass);
}

/**
 * Moles of hydroxide per cubic metre of lye.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction
 * @param temperature  K
 * @returns mol/m³ (a thousandth of it is mol/L), as good as {@link lyeDensity}
 */
export function molarity(solute: Solute, strength: number, temperature: number): number {
    return strength * lyeDensity(solute, strength, temperature) / MOLAR_MASS[solute];
}

/**
 * Mass fraction from moles of hydroxide per cubic metre of lye.
 *
 * @param solute       KOH or NaOH
 * @param concentration  mol/m³
 * @param temperature  K at which the lye was measured out
 * @returns mass fraction; NaN for more than 60 wt%
 */
export function strengthFromMolarity(solute: Solute, concentration: number, temperature: number): number {
    return findRoot(w => molarity(solute, w, temperature) - concentration, 0, 0.6, 1e-9);
}

/**
 * Mass fraction from what was weighed out.
 *
 * @param soluteMass  kg of the goods as bought
 * @param waterMass   kg of water
 * @param assay       mass fraction of pure hydroxide in the goods, 0 .. 1 (flakes of KOH often hold a tenth of water)
 * @returns mass fraction of the lye. Exact
 */
export function strengthFromMasses(soluteMass: number, waterMass: number, assay = 1): number {
    return soluteMass * assay / (soluteMass + waterMass);
}

// ------------------------------------------------------------------------------------------------------------ density

/** Bounds of {@link lyeDensity}. */
export const densityRange = {
    KOH: { strength: [0, 0.5], temperature: [273.15, 373.15] },
    NaOH: { strength: [0, 0.5], temperature: [277.15, 393.15] },
} as const;

/** One solute's apparent density and viscosity, constants of [laliberte-2009]. */
interface Mixing { readonly c: readonly number[]; readonly v: readonly number[]; readonly a: readonly number[] }

const mixing: Record<Solute, Mixing> = {
    KOH: {
        c: [821.119043254761, 1043.20173374381, 0.112873330222752, 0.00124023636407386, 539.630388368877],
        v: [57.4198157197363, 3.80481406171296, 2.62270093659636, 0.0103144776487057, 5202.71048053244, 10.9425874221815],
        a: [-0.612709529812129, -0.0454225316920391, 1.87598005977999, -5.62731016809735, 2.42547035549534, 1.24500822569176],
    },
    NaOH: {
        c: [319.020509469838, 528.592358475315, -0.102197896602724, 0.000350420706415566, 765.970470238438],
        v: [448.457566713375, 0.00871452408983102, -431.97212334697, 0.0160144202049452, 104.011738670148, 4.64493684488816],
        a: [-0.922780764834469, -0.0412353462450485, 1.8722524604359, -5.94223565147303, 3.13007617842649, 0.141040805508813],
    },
};

/**
 * Density of lye.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction, 0 .. 0.5
 * @param temperature  K, 273 .. 373 (NaOH 277 .. 393)
 * @returns kg/m³
 *
 * Accuracy: 0.5 %. For KOH two published correlations differ by 0.3 % at 25 °C and 0.9 % at 80 °C (30 wt%) and handbook
 * tables lie on both sides, so the middle of the two is taken up to 35 wt%, sliding to the first alone at 50 wt%
 * where the second runs off (own choice). Beyond the range the formulas still run, without warranty.
 * Source: [laliberte-2009]; for KOH also [lebideau-2019].
 */
export function lyeDensity(solute: Solute, strength: number, temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    const c = mixing[solute].c;
    const water = waterDensity(temperature);
    let density = water;
    if (strength > 1e-9) {
        const grown = t + c[4]!;
        const apparent = (c[0]! * strength + c[1]!) * Math.exp(1e-6 * grown * grown) / (strength + c[2]! + c[3]! * t);
        density = 1 / ((1 - strength) / water + strength / apparent);
    } else if (strength !== strength) return NaN;
    if (solute === 'NaOH') return density;
    const exponential = (1001.53 - t * (0.08343 + t * (0.004 - t * (5.51232e-6 - t * 8.20994e-10)))) * Math.exp(0.86 * strength);
    const share = strength <= 0.35 ? 0.5 : strength >= 0.5 ? 0 : (0.5 - strength) / 0.3;
    return density + share * (exponential - density);
}

// ------------------------------------------------------------------------------------------------------- conductivity

/** Bounds of {@link lyeConductivity}. */
export const conductivityRange = {
    KOH: { strength: [0, 0.48], temperature: [273.15, 373.15] },
    NaOH: { strength: [0, 0.42], temperature: [283.15, 373.15] },
} as const;

/** Bounds of {@link conductivitySeeWhite}; below 15 wt% the formula returns nonsense. */
export const seeWhiteRange = { strength: [0.15, 0.45], temperature: [258.15, 373.15] } as const;

/**
 * Conductivity of potassium lye from its molarity.
 *
 * @param molarity     mol/m³, 0 .. 12000
 * @param temperature  K, 273 .. 373
 * @returns S/m, not below 0
 *
 * Accuracy: 5 %; up to 8 % high near room temperature and below 3 mol/L. Source: [gilliam-2007].
 */
export function conductivityGilliam(molarity: number, temperature: number): number {
    const m = molarity / 1000;
    const perCentimetre = m * (-2.041 + m * (-0.0028 + m * (0.001043 - 3e-7 * temperature * temperature / m))
        + 0.005332 * temperature + 207.2 / temperature);
    if (m === 0) return 0;
    return perCentimetre < 0 ? 0 : 100 * perCentimetre;
}

/**
 * Conductivity of potassium lye, a second and independent correlation: for cross-checks.
 *
 * @param strength     mass fraction, 0.15 .. 0.45
 * @param temperature  K, 258 .. 373
 * @returns S/m; NaN below 15 or above 45 wt%, where the formula must not be used
 *
 * Accuracy: 3 %. Source: [seewhite-1997].
 */
export function conductivitySeeWhite(strength: number, temperature: number): number {
    if (!(strength >= 0.15 && strength <= 0.45)) return NaN;
    const x = 100 * strength;
    const t = temperature;
    return 100 * (0.279844803 * x - 0.009241294 * t - 1.49660371e-4 * t * t - 9.05209551e-4 * t * x
        + 1.14933252e-4 * t * t * x ** 0.1765 + 0.0696648518 * t / x - 28.9815658 * x / t);
}

// Sodium lye at 18 °C: conductivity S/m and its relative growth per kelvin [kohlrausch-holborn-1916]; the weak end from
// the 20 °C handbook line [crc-conductivity].
const SODIUM_STRENGTHS = [0, 0.005, 0.01, 0.02, 0.025, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.42];
const SODIUM_CONDUCTIVITIES = [0, 2.39, 4.68, 8.96, 10.87, 19.69, 31.24, 34.63, 32.70, 27.17, 20.22, 15.07, 11.64, 10.65];
const SODIUM_GROWTHS = [
    0.0194, 0.0194, 0.0194, 0.0194, 0.0194, 0.0201, 0.0217, 0.0249, 0.0299, 0.0368, 0.045, 0.0551, 0.0648, 0.0691,
];
const SODIUM_SLOPES = smoothSlopes(SODIUM_STRENGTHS, SODIUM_CONDUCTIVITIES);
const SODIUM_GROWTH_SLOPES = smoothSlopes(SODIUM_STRENGTHS, SODIUM_GROWTHS);

// Weak potassium lye at 18 °C: molar conductivity, 1e-4 S·m²/mol, over the square root of mol/L, along which it falls almost straight
// [kohlrausch-holborn-1916]; and how the conductivity grows for each kelvin, by strength.
const POTASSIUM_ROOTS = [0, 0.01, 0.1, 0.3162, 0.7071, 1, 1.4142, 1.7321, 2.2361];
const POTASSIUM_MOLAR = [238, 237, 228, 213, 197, 184, 160.8, 140.6, 105.8];
const POTASSIUM_MOLAR_SLOPES = smoothSlopes(POTASSIUM_ROOTS, POTASSIUM_MOLAR);
const POTASSIUM_STRENGTHS = [0, 0.084, 0.126, 0.168, 0.21, 0.252];
const POTASSIUM_GROWTHS = [0.0187, 0.0186, 0.0188, 0.0193, 0.0199, 0.0209];
const POTASSIUM_GROWTH_SLOPES = smoothSlopes(POTASSIUM_STRENGTHS, POTASSIUM_GROWTHS);
/** Strengths between which the table of weak potassium lye gives way to the correlation. Own choice: there the two come together. */
const WEAK = 0.12;
const STRONG = 0.25;

/** A table at 18 °C carried to another temperature. */
function fromTable(at18: number, growth: number, strength: number, temperature: number): number {
    // Glass-like (Vogel) growth: `a` is 291.15 K less the temperature of vanishing mobility, from the lye's viscosity.
    const a = 138 - 130 * strength;
    const above = temperature - 291.15;
    return at18 * Math.exp(growth * above * a / (a + above));
}
function conductivitySodium(strength: number, temperature: number): number {
    return fromTable(
        interpolateSmooth(SODIUM_STRENGTHS, SODIUM_CONDUCTIVITIES, SODIUM_SLOPES, strength),
        interpolateSmooth(SODIUM_STRENGTHS, SODIUM_GROWTHS, SODIUM_GROWTH_SLOPES, strength), strength, temperature,
    );
}
function conductivityPotassium(strength: number, temperature: number): number {
    const correlation = strength > WEAK || !(strength >= 0) ? conductivityGilliam(molarity('KOH', strength, temperature), temperature) : 0;
    if (!(strength < STRONG)) return correlation;
    // mol/L at 18 °C, where the table holds.
    const concentration = molarity('KOH', strength, 291.15) / 1000;
    const table = fromTable(
        0.1 * concentration * interpolateSmooth(POTASSIUM_ROOTS, POTASSIUM_MOLAR, POTASSIUM_MOLAR_SLOPES, Math.sqrt(concentration)),
        interpolateSmooth(POTASSIUM_STRENGTHS, POTASSIUM_GROWTHS, POTASSIUM_GROWTH_SLOPES, strength), strength, temperature,
    );
    if (strength <= WEAK) return table;
    const x = (strength - WEAK) / (STRONG - WEAK);
    return table + x * x * (3 - 2 * x) * (correlation - table);
}

/**
 * Conductivity of clear lye without gas in it.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction, 0 .. 0.48 (NaOH 0 .. 0.42)
 * @param temperature  K, 273 .. 373 (NaOH 283 .. 373)
 * @returns S/m; beyond the strengths of the table the value of its end (NaOH)
 *
 * Accuracy: KOH 5 % (up to 9 % low from 30 wt% on below 20 °C), 3 % up to 12 wt% near room temperature. NaOH 5 % near room
 * temperature, some 12 % at 80 °C: no published correlation could be read, so the room-temperature table is carried upwards along the
 * lye's viscosity (own choice; beyond 30 wt% and 60 °C it climbs on with the strength and is too high by more than that; at the weak end it comes out where the ions of sodium hydroxide were measured at 100 °C).
 * Source: KOH molar conductivities of [kohlrausch-holborn-1916] up to 12 wt%, sliding to [gilliam-2007] at 25 wt% over [lebideau-2019]'s and [laliberte-2009]'s
 * density; NaOH [kohlrausch-holborn-1916].
 */
export function lyeConductivity(solute: Solute, strength: number, temperature: number): number {
    return solute === 'KOH' ? conductivityPotassium(strength, temperature) : conductivitySodium(strength, temperature);
}

/**
 * Strength at which lye conducts best.
 *
 * @param solute       KOH or NaOH
 * @param temperature  K, 283 .. 373
 * @returns mass fraction, to 0.1 wt% of the correlation (the crest is flat: 3 wt% beside it cost under 1 %); NaN where there is no crest up
 *     to {@link CRESTS}
 */
export function bestConductingStrength(solute: Solute, temperature: number): number {
    const crest = findCrest(w => lyeConductivity(solute, w, temperature), 0.08, CRESTS[solute], 1e-4);
    return crest < CRESTS[solute] - 0.002 ? crest : NaN;
}
/** Strongest lye, mass fraction, among which the crest is looked for. Stronger and hot, the law of sodium lye climbs on, which no table bears out. */
const CRESTS: Readonly<Record<Solute, number>> = { KOH: 0.45, NaOH: 0.3 };

// ---------------------------------------------------------------------------------- viscosity, heat capacity, warmth

/** Bounds of {@link lyeViscosity}. */
export const viscosityRange = {
    KOH: { strength: [0, 0.5], temperature: [259, 313.15] },
    NaOH: { strength: [0, 0.5], temperature: [285, 343.15] },
} as const;

/**
 * Viscosity of lye.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction, 0 .. 0.5
 * @param temperature  K, data reach 40 °C (KOH) and 70 °C (NaOH); smooth beyond up to 100 °C
 * @returns Pa·s
 *
 * Accuracy: 8 % inside the data, 15 % up to 90 °C. Source: [laliberte-2009].
 */
export function lyeViscosity(solute: Solute, strength: number, temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    const water = 1e-3 * (t + 246) / ((0.05594 * t + 5.2842) * t + 137.37);
    if (strength === 0) return water;
    const v = mixing[solute].v;
    // Logarithm of the solute's own viscosity, mPa·s brought to Pa·s.
    const own = (v[0]! * strength ** v[1]! + v[2]!) / (v[3]! * t + 1) - Math.log(v[4]! * strength ** v[5]! + 1) - Math.log(1000);
    return Math.exp((1 - strength) * Math.log(water) + strength * own);
}

/** Bounds of {@link lyeHeatCapacity}. */
export const heatCapacityRange = {
    KOH: { strength: [0, 0.465], temperature: [277.15, 393.15] },
    NaOH: { strength: [0, 0.303], temperature: [277.15, 393.15] },
} as const;

/**
 * Heat capacity of lye.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction, 0 .. 0.46 (NaOH 0 .. 0.30, smooth beyond)
 * @param temperature  K, 277 .. 393
 * @returns J/(kg·K), within 2 % inside the data. Source: [laliberte-2009]
 */
export function lyeHeatCapacity(solute: Solute, strength: number, temperature: number): number {
    const water = waterHeatCapacity(temperature);
    if (strength === 0) return water;
    const t = temperature - ZERO_CELSIUS;
    const a = mixing[solute].a;
    const own = a[0]! * Math.exp(a[1]! * t + a[2]! * Math.exp(0.01 * t) + a[3]! * strength) + a[4]! * strength ** a[5]!;
    return (1 - strength) * water + 1000 * strength * own;
}

/**
 * Thermal conductivity of potassium lye (used for sodium lye too: the two differ by a few per cent).
 *
 * @param strength     mass fraction, 0 .. 0.5
 * @param temperature  K, 273 .. 373
 * @returns W/(m·K), within 5 %. Source: [lebideau-2019]
 */
export function lyeThermalConductivity(strength: number, temperature: number): number {
    const t = temperature - ZERO_CELSIUS;
    return (0.5545 + 2.46e-3 * t - 1.184e-5 * t * t) * (1 - 0.128 * strength);
}

/**
 * Surface tension of lye: water's, raised by the dissolved hydroxide.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction, 0 .. 0.4
 * @param temperature  K, 283 .. 363
 * @returns N/m, within 5 %: about +1.8 mN/m (KOH) or +1.9 mN/m (NaOH) per mol/kg of water. Source: [ict-surface], from memory
 */
export function lyeSurfaceTension(solute: Solute, strength: number, temperature: number): number {
    return waterSurfaceTension(temperature) + (solute === 'KOH' ? 1.8e-3 : 1.9e-3) * molality(solute, strength);
}

// ------------------------------------------------------------------------------------------------ vapour, boiling, ice

/** Bounds of {@link lyeVapourPressure}. */
export const vapourRange = {
    KOH: { molality: [0, 18], temperature: [273.15, 573.15] },
    NaOH: { molality: [0, 25], temperature: [273.15, 573.15] },
} as const;

/** Base-ten logarithm of the vapour pressure of pure water in bar, in the form that belongs to Balej's lye formulas. */
function logWater(temperature: number): number {
    return 35.4462 - 3343.93 / temperature - 10.9 * Math.log10(temperature) + 0.0041645 * temperature;
}

function logLye(solute: Solute, m: number, water: number): number {
    return solute === 'KOH'
        ? m * (-0.01508 + m * (-0.0016788 + m * 2.25887e-5)) + (1 + m * (-0.0012062 + m * (5.6024e-4 - m * 7.8228e-6))) * water
        : m * (-0.010986 + m * (-1.461e-3 + m * 2.03528e-5)) + (1 + m * (-1.34141e-3 + m * (7.07241e-4 - m * 9.5362e-6))) * water;
}

/**
 * Pressure of water vapour over lye.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction; up to 50 wt% (18 mol/kg KOH, 25 mol/kg NaOH)
 * @param temperature  K, 273 .. 573
 * @returns Pa; for 30 wt% KOH only 0.6 of that over water
 *
 * Accuracy: 3 %. Source: [balej-1985].
 */
export function lyeVapourPressure(solute: Solute, strength: number, temperature: number): number {
    return 1e5 * 10 ** logLye(solute, molality(solute, strength), logWater(temperature));
}

/**
 * Activity of water in lye: its vapour pressure by that of pure water.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction
 * @param temperature  K
 * @returns 1, between 0 and 1; 3 %
 */
export function waterActivity(solute: Solute, strength: number, temperature: number): number {
    const water = logWater(temperature);
    return 10 ** (logLye(solute, molality(solute, strength), water) - water);
}

/**
 * Temperature at which lye boils.
 *
 * @param solute    KOH or NaOH
 * @param strength  mass fraction
 * @param pressure  Pa absolute, 2e3 .. 2e6
 * @returns K, within 2 K up to 35 wt%; 7 K too high at 50 wt% NaOH, the edge of the vapour formula; NaN outside the
 *          pressures named
 */
export function lyeBoilingPoint(solute: Solute, strength: number, pressure: number): number {
    const wanted = Math.log10(pressure / 1e5);
    const m = molality(solute, strength);
    return findRoot(t => logLye(solute, m, logWater(t)) - wanted, 273.15, 573.15, 1e-4);
}

// Weak ends [crc-concentrative]; the rest producers' handbooks, from memory.
const FREEZING = {
    KOH: {
        strengths: [0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07, 0.1, 0.15, 0.2, 0.25, 0.28, 0.308, 0.35, 0.4, 0.438, 0.45, 0.5],
        depressions: [0, 0.61, 1.24, 1.89, 2.57, 3.36, 4.14, 4.92, 7.8, 14, 23.6, 38, 50, 65, 47, 37, 33, 29, -7],
    },
    NaOH: {
        strengths: [0, 0.01, 0.02, 0.04, 0.06, 0.08, 0.1, 0.12, 0.14, 0.19, 0.2, 0.22, 0.25, 0.28, 0.3, 0.32, 0.35, 0.388, 0.42,
            0.455, 0.48, 0.5, 0.52],
        depressions: [0, 0.86, 1.74, 3.59, 5.6, 7.87, 10.47, 13.42, 16.76, 28, 26, 21.5, 15, 5, -1, -6, -12, -15.6, -13, -5, -8,
            -12, -22],
    },
} as const;

/** Bounds of {@link lyeFreezingPoint}. */
export const freezingRange = { KOH: { strength: [0, 0.5] }, NaOH: { strength: [0, 0.52] } } as const;

/**
 * Temperature at which the first solid (ice, or a hydrate of the hydroxide) appears on cooling.
 *
 * @param solute    KOH or NaOH
 * @param strength  mass fraction, 0 .. 0.5
 * @returns K; ± 3 K above 10 wt%: good for warnings only. 30 wt% NaOH freezes in a cold shed, 30 wt% KOH does not
 *
 * Source: [crc-concentrative] up to 7 wt% KOH and 14 wt% NaOH, beyond it [caustic-handbooks].
 */
export function lyeFreezingPoint(solute: Solute, strength: number): number {
    return ZERO_CELSIUS - interpolate(FREEZING[solute].strengths, FREEZING[solute].depressions, strength);
}

// g of hydroxide per 100 g of water against °C.
const SOLUBILITY = {
    KOH: { temperatures: [0, 10, 20, 30, 50, 100], grams: [97, 103, 112, 126, 140, 178] },
    NaOH: { temperatures: [0, 20, 25, 30, 40, 50, 60], grams: [41.8, 108.7, 113, 118, 129, 146, 177] },
} as const;

/**
 * Strength at which water holds no more hydroxide.
 *
 * @param solute       KOH or NaOH
 * @param temperature  K, 273 .. 373 (NaOH to 333)
 * @returns mass fraction, ± 3 %; beyond the table its end value. Source: NaOH [solubility-stolfi], KOH [caustic-handbooks]
 */
export function saturationStrength(solute: Solute, temperature: number): number {
    const grams = interpolate(SOLUBILITY[solute].temperatures, SOLUBILITY[solute].grams, temperature - ZERO_CELSIUS);
    return grams / (100 + grams);
}

// Heat given off, kJ per mole of solid hydroxide, against moles of water per mole of hydroxide.
const SOLUTION_HEAT = {
    KOH: {
        waters: [1, 2, 3, 4, 5, 7, 10, 20, 50, 200, 1000],
        heats: [20, 33, 42, 46.5, 49.3, 52, 53.9, 54.9, 55.6, 56.2, 57],
    },
    NaOH: {
        waters: [1, 2, 3, 4, 5, 7, 10, 20, 50, 200, 1000],
        heats: [10, 21, 28.9, 34.4, 37.7, 40.9, 42.5, 42.8, 42.9, 43, 43.5],
    },
} as const;

/**
 * Heat given off when solid hydroxide is dissolved in water.
 *
 * @param solute    KOH or NaOH
 * @param strength  mass fraction of the lye that results, 0 .. 0.5
 * @returns J per kg of pure hydroxide, ± 8 %; strong lye gives less per kilogram than weak lye. For dry hydroxide: flakes
 *          that already hold water give less. Source: [nbs-tables], from memory
 */
export function heatOfSolution(solute: Solute, strength: number): number {
    if (strength !== strength) return NaN;
    const waters = strength > 0 ? (1 - strength) / MOLAR_MASS.water / (strength / MOLAR_MASS[solute]) : 1000;
    const table = SOLUTION_HEAT[solute];
    return 1e3 * interpolate(table.waters, table.heats, waters) / MOLAR_MASS[solute];
}

/**
 * How much warmer lye gets when it is mixed quickly, no heat lost.
 *
 * @param solute       KOH or NaOH
 * @param strength     mass fraction of the lye that results
 * @param temperature  K, of water and hydroxide before
 * @returns K, ± 10 %; above about 75 K the mixture boils and spits before it gets there
 */
export function mixingRise(solute: Solute, strength: number, temperature: number): number {
    return strength * heatOfSolution(solute, strength) / lyeHeatCapacity(solute, strength, Math.min(temperature + 35, 373));
}
