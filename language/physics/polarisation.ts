/**
 * Volts of one cell against its current density: reversible voltage, what the two electrodes ask, what lye, separator and
 * plates cost. The surface of an electrode cannot be known from a description: half a volt lies between plain and the best
 * activated nickel. So every surface has an offset with a wide ±, and one bench reading is worth more than all of it.
 *
 * Current density is in A/m² throughout (10 A/m² = 1 mA/cm²), resistance times area in Ω·m².
 */
import { GAS_CONSTANT, FARADAY } from './constants.js';
import { interpolate } from './interpolate.js';
import { findRoot } from './root.js';
import { pressureVoltage, reversibleVoltage } from './water-splitting.js';

/** Bounds of the voltage model. Below 5 wt% lye it is not covered (± 0.3 V). */
export const polarisationRange = {
    temperature: [283.15, 363.15], currentDensity: [50, 5000], strength: [0.1, 0.4],
} as const;

// ----------------------------------------------------------------------------------------------------------- kinetics

/** One straight stretch of a Tafel line. */
export interface TafelLine {
    /** Exchange current density at 80 °C, A/m². */
    readonly exchangeAt80: number;
    /** How it grows with temperature, J/mol. */
    readonly activation: number;
    /** V per decade, the part that does not depend on temperature. */
    readonly slope: number;
    /** V per decade and kelvin. */
    readonly slopePerKelvin: number;
}

/** An electrode: the larger overvoltage of its two stretches holds. */
export interface Kinetics { readonly low: TafelLine; readonly high: TafelLine }

/**
 * Smooth nickel in 30 wt% KOH, 25 .. 80 °C; ± 40 mV at 1000 A/m².
 * Source: anode [kibria-1996], cathode [kibria-1995], both rounded.
 */
export const nickelKinetics: { readonly anode: Kinetics; readonly cathode: Kinetics } = {
    anode: {
        low: { exchangeAt80: 0.099, activation: 23500, slope: 0.080, slopePerKelvin: 0 },
        high: { exchangeAt80: 10.9, activation: 32000, slope: 0, slopePerKelvin: 0.45e-3 },
    },
    cathode: {
        low: { exchangeAt80: 4.03, activation: 28600, slope: 0.080, slopePerKelvin: 0 },
        high: { exchangeAt80: 94, activation: 32000, slope: 0.165, slopePerKelvin: 0 },
    },
};

/**
 * An activated pair in the same form: one stretch each, from published constants at 25 .. 80 °C. With no offset it lands
 * within 60 mV on a measured zero-gap stack, where smooth nickel with an offset is 0.1 V off at a tenth of the current.
 *
 * @param temperature  K, 298 .. 353
 * @returns anode and cathode for this temperature only (their exchange currents are parabolas, not Arrhenius lines)
 *
 * Source: [hammoudi-2012]
 */
export function activatedKinetics(temperature: number): { readonly anode: Kinetics; readonly cathode: Kinetics } {
    const t = temperature;
    const line = (exchange: number, transfer: number): Kinetics => {
        // Two electrons in the printed slope. The form wants the value at 80 °C without activation.
        const one: TafelLine = {
            exchangeAt80: Math.max(exchange, 0) * 10, activation: 0, slope: tafelSlope(t, 2 * transfer), slopePerKelvin: 0,
        };
        return { low: one, high: one };
    };
    return {
        anode: line(30.4 - 0.206 * t + 0.00035 * t * t, 0.0675 + 0.00095 * t),
        cathode: line(13.72491 - 0.09055 * t + 0.0001555 * t * t, 0.1175 + 0.00095 * t),
    };
}

/**
 * Exchange current density of one Tafel stretch.
 *
 * @param line         the stretch
 * @param temperature  K
 * @returns A/m²
 */
export function exchangeCurrent(line: TafelLine, temperature: number): number {
    return line.exchangeAt80 * Math.exp(-line.activation / GAS_CONSTANT * (1 / temperature - 1 / 353.15));
}

/**
 * Volts per decade from a transfer coefficient.
 *
 * @param temperature          K
 * @param transferCoefficient  1, usually 0.3 .. 1
 * @returns V per decade
 */
export function tafelSlope(temperature: number, transferCoefficient: number): number {
    return Math.LN10 * GAS_CONSTANT * temperature / (transferCoefficient * FARADAY);
}

function lineOvervoltage(line: TafelLine, currentDensity: number, temperature: number): number {
    const slope = line.slope + line.slopePerKelvin * temperature;
    // asinh is the Tafel line at high current and goes straight through zero at low current.
    return slope / Math.LN10 * Math.asinh(currentDensity / (2 * exchangeCurrent(line, temperature)));
}

/**
 * Overvoltage of an electrode.
 *
 * @param kinetics        the electrode
 * @param currentDensity  A/m²; the sign carries over
 * @param temperature     K
 * @returns V
 */
export function overvoltage(kinetics: Kinetics, currentDensity: number, temperature: number): number {
    const low = lineOvervoltage(kinetics.low, currentDensity, temperature);
    const high = lineOvervoltage(kinetics.high, currentDensity, temperature);
    return currentDensity < 0 ? Math.min(low, high) : Math.max(low, high);
}

// ----------------------------------------------------------------------------------------------------------- surfaces

/** A surface, told by its offset from smooth nickel, or from an activated pair. */
export interface Surface {
    /** Whose Tafel lines it has; those of smooth nickel if left out. */
    readonly lines?: 'activated';
    /** V, added to the cell at working current (500 A/m² and more). */
    readonly offset: number;
    /** V, half width of a 95 % band at 500 .. 3000 A/m², 25 .. 80 °C, fresh lye, wetted: a judged range, not a statistic. */
    readonly plusMinus: number;
    /** What stands behind it. */
    readonly basis: string;
}

/**
 * Offsets of whole cells. Only the nickel lines rest on measured stacks; the stainless lines are judgement.
 * Chromium leaves a stainless anode into the lye as chromate: a better voltage after days is no reason to use one.
 */
export const surfaces = {
    'nickel-plain': {
        offset: 0.05, plusMinus: 0.15,
        basis: 'a laboratory cell +0.12, an open nickel cell +0.11, a 12-cell stack -0.05 V [jarvinen-2022] [gillespie-2015] '
            + '[sanchez-2018]',
    },
    'nickel-pressed-mesh': { offset: -0.08, plusMinus: 0.10, basis: 'a 12-cell and a plant stack [sanchez-2018] [sakas-2022]' },
    activated: { offset: -0.15, plusMinus: 0.08, basis: 'one stack at four temperatures [ulleberg-2003]' },
    // Over smooth nickel's lines the two stacks lie at -0.27 and -0.34 V and are missed by 0.1 V at a tenth of the current.
    'highly-activated': {
        lines: 'activated', offset: -0.05, plusMinus: 0.12,
        basis: 'two stacks, -0.00 and -0.11 V beside the lines of an activated pair [degroot-2022] [ursua-2012] [hammoudi-2012]',
    },
    'nickel-plated-steel': { offset: 0.05, plusMinus: 0.15, basis: 'as plain nickel while the coating is whole' },
    'stainless-cathode': { offset: 0.07, plusMinus: 0.18, basis: 'plain nickel + 0.02 ± 0.10 V, from memory [symes-2013]' },
    'stainless-anode-new': { offset: 0.10, plusMinus: 0.21, basis: 'plain nickel + 0.05 ± 0.15 V, from memory [wang-2023]' },
    'stainless-anode-aged': { offset: 0.00, plusMinus: 0.18, basis: 'plain nickel - 0.05 ± 0.10 V, from memory' },
    stainless: { offset: 0.08, plusMinus: 0.20, basis: 'both electrodes stainless, mixed age; judgement' },
} as const satisfies Record<string, Surface>;

/** Name of a surface in {@link surfaces}. */
export type SurfaceName = keyof typeof surfaces;

/** K, where the constants of the activated pair hold; beyond, those of the nearer end. */
const ACTIVATED_FROM = 298.15;
const ACTIVATED_TO = 353.15;
/**
 * Tafel lines of a surface.
 *
 * @param surface      its name in {@link surfaces}
 * @param temperature  K
 * @returns anode and cathode, to be taken at that temperature
 */
export function kineticsOf(surface: SurfaceName, temperature: number): { readonly anode: Kinetics; readonly cathode: Kinetics } {
    const lines: Surface['lines'] = (surfaces[surface] as Surface).lines;
    return lines === 'activated' ? activatedKinetics(Math.min(ACTIVATED_TO, Math.max(ACTIVATED_FROM, temperature))) : nickelKinetics;
}

/** What a calibrated model is good for, V: after one bench reading of volts, amperes and temperature. */
export const afterOneReading = { sameLye: 0.05, otherLyeOrGap: 0.07 } as const;

/** Most that a plain plate ages, V per 1000 h; standing in air between runs can cost 0.1 V at once. From memory. */
export const ageingPerThousandHours = 0.02;

// ---------------------------------------------------------------------------------------------------------- separator

/** A separator, told by how much more it resists than the lye that fills it. */
export interface SeparatorMake {
    /** Resistance over that of as thick a layer of lye (MacMullin number), 1. */
    readonly macMullin: number;
    /** Bounds of it as factors, 1. */
    readonly low: number;
    readonly high: number;
    /** Usual thickness, m. */
    readonly thickness: number;
    readonly basis: string;
}

/** Common separators in strong lye, well wetted and free of gas. */
export const separators = {
    none: { macMullin: 1, low: 1, high: 1, thickness: 0, basis: 'free lye' },
    'zirconia-polysulfone': { macMullin: 3.5, low: 0.85, high: 1.15, thickness: 0.5e-3, basis: 'measured [vermeiren-1998]' },
    'polypropylene-cloth': {
        macMullin: 2.8, low: 0.8, high: 2, thickness: 0.5e-3,
        basis: 'from 50 % open area; no measurement found, polypropylene wets badly and dry spots multiply it',
    },
    'polypropylene-felt': {
        macMullin: 1.4, low: 0.9, high: 2.5, thickness: 2e-3, basis: 'from 80 % open volume; trapped gas is the usual trouble',
    },
    'steel-wire-cloth': {
        macMullin: 1.7, low: 0.6, high: 1.8, thickness: 0.5e-3,
        basis: 'half of the composite sheet [gannon-2020]; gas tightness is its weak side',
    },
} as const satisfies Record<string, SeparatorMake>;

/** Extra resistance of electrodes pressed onto the separator, Ω·m²: 0.05 .. 0.15 Ω·cm² [haverkort-zero-gap]. */
export const pressedExtra = { usual: 0.08e-4, low: 0.05e-4, high: 0.15e-4 } as const;

/**
 * MacMullin number of an open body from its porosity (Bruggeman).
 *
 * @param porosity  1, above 0 .. 1
 * @returns 1: porosity to the power -1.5, at best ± 30 % for cloth and felt
 */
export function macMullinFromPorosity(porosity: number): number {
    return porosity > 0 ? porosity ** -1.5 : porosity === porosity ? Infinity : NaN;
}

/**
 * Resistance of a layer times its area.
 *
 * @param thickness     m
 * @param conductivity  S/m, of clear lye
 * @param macMullin     1
 * @returns Ω·m²
 */
export function layerResistance(thickness: number, conductivity: number, macMullin = 1): number {
    return thickness === 0 ? 0 : macMullin * thickness / conductivity;
}

// ------------------------------------------------------------------------------------------------------------ bubbles

/** Bounds of {@link bubbleCoverage}. */
export const bubbleRange = { currentDensity: [10, 10000] } as const;

/** Coverage at 1 A/m², and how it grows with current [vogt-balzer-2005], from memory. */
const COVERAGE_AT_ONE = 0.023;
const COVERAGE_POWER = 0.3;

/**
 * Part of an electrode hidden under clinging bubbles.
 *
 * @param currentDensity  A/m², 10 .. 10 000
 * @returns 1, 0 .. 1; at 1000 A/m² 0.18. Source: [vogt-balzer-2005], constants from memory
 */
export function bubbleCoverage(currentDensity: number): number {
    if (currentDensity <= 0) return 0;
    return Math.min(1, COVERAGE_AT_ONE * currentDensity ** COVERAGE_POWER);
}

/**
 * Of the coverage, what clings in the lye near a face whatever flows, and what flow washes off: two thirds together at rest. Half of
 * the second is gone at this speed, m/s. Own choice, no source: fitted by eye so that the trend of the gap studies comes out.
 */
const FIXED_SHARE = 0.2;
const WASHED_SHARE = 0.467;
const HALF_WASHED = 0.02;
/** m/s of slip for each metre of gap, and the most of it, m/s: bubbles of a quarter of a millimetre rise so fast in lye (Stokes). Own choice. */
const SLIP_PER_GAP = 5.5;
const MOST_SLIP = 0.03;
/** Distribution of gas over the cross-section in the drift balance [zuber-findlay-1965]. */
const ROUND_TUBE = 1.2;

/**
 * Mean gas fraction in the lye between an electrode and its neighbour.
 *
 * @param currentDensity  A/m²
 * @param temperature     K
 * @param gasPressure     Pa, total less vapour
 * @param molesPerCharge  mol/C: 1/(2 F) on the hydrogen side, 1/(4 F) on the oxygen side
 * @param gap             m, above 0
 * @param height          m, of the wetted face
 * @param lyeSpeed        m/s upwards in the gap, 0 = only what the bubbles stir
 * @returns 1, 0 .. 0.8; ± 50 % of itself
 *
 * Two thirds of the coverage cling near the face and are washed off by flow; what rises follows a drift balance whose slip
 * grows with the gap, chosen so that gaps under 3 mm without flow gain nothing, as gap studies find (own choice).
 * Source: [zuber-findlay-1965] form; [vogt-balzer-2005]; the trend [gap-2019] [nagai-2003].
 */
export function gasFractionInGap(
    currentDensity: number, temperature: number, gasPressure: number, molesPerCharge: number,
    gap: number, height: number, lyeSpeed = 0,
): number {
    if (currentDensity <= 0) return 0;
    const coverage = bubbleCoverage(currentDensity);
    const clinging = coverage * (FIXED_SHARE + WASHED_SHARE * HALF_WASHED / (HALF_WASHED + lyeSpeed));
    // Half way up, as the mean over the height.
    const gas = 0.5 * currentDensity * molesPerCharge * GAS_CONSTANT * temperature / gasPressure * height / gap;
    const slip = Math.min(SLIP_PER_GAP * gap, MOST_SLIP);
    const rising = gas / (ROUND_TUBE * (gas + lyeSpeed) + slip);
    return Math.max(clinging, rising);
}

/**
 * How much gas in the lye raises its resistance (Bruggeman).
 *
 * @param gasFraction  1, 0 .. below 1
 * @returns 1, at least 1
 */
export function gasResistanceFactor(gasFraction: number): number {
    return gasFraction < 1 ? (1 - gasFraction) ** -1.5 : gasFraction === gasFraction ? Infinity : NaN;
}

// --------------------------------------------------------------------------------------------------------- whole cell

/** A cell reduced to what its voltage depends on. */
export interface CellMake {
    /** K */
    readonly temperature: number;
    /** Reversible voltage with the gas pressures in it, V: {@link restVoltage}. */
    readonly rest: number;
    readonly anode: Kinetics;
    readonly cathode: Kinetics;
    /** Separator, gaps and plates, Ω·m², at working gas fraction. */
    readonly areaResistance: number;
    /** V: offset of the surface, or of a bench reading. */
    readonly offset: number;
}

/** How much of the pressure term above 1 bar a cell feels: measured stacks lie between 0 and 1 [degroot-2022]. Own choice. */
const PRESSURE_FELT = 0.6;

/**
 * Reversible voltage over lye.
 *
 * @param temperature     K
 * @param pressure        Pa absolute, in both gas spaces
 * @param vapourPressure  Pa, over the lye
 * @param waterActivity   1
 * @param share           1: how much of the pressure term above 1 bar is felt, 0 .. 1 ({@link PRESSURE_FELT} unless known)
 * @returns V; NaN where the lye boils
 */
export function restVoltage(
    temperature: number, pressure: number, vapourPressure: number, waterActivity: number, share = PRESSURE_FELT,
): number {
    const dry = pressure - vapourPressure;
    const term = pressureVoltage(temperature, dry, dry, waterActivity);
    return reversibleVoltage(temperature) + (term > 0 ? share * term : term);
}

// The cell in hand, made ready once: twice the exchange current (A/m²) and the slope (V per factor e) of the four stretches.
// Loops ask the same cell again and again; whoever changes a cell makes a new one, since it is read-only.
let ready: CellMake | undefined;
const twice = new Float64Array(4);
const slopes = new Float64Array(4);
// Which line decides at each electrode at the last current asked for: whoever asks for volts asks for the slope next.
const steeper = new Uint8Array(2);
let asked = NaN;

function makeReady(cell: CellMake): void {
    const t = cell.temperature;
    stretch(0, cell.anode.low, cell.offset, t);
    stretch(1, cell.anode.high, cell.offset, t);
    stretch(2, cell.cathode.low, cell.offset, t);
    stretch(3, cell.cathode.high, cell.offset, t);
    ready = cell;
    asked = NaN;
}

/** A surface that asks less is one with more exchange current: half of the offset at each electrode. */
function stretch(at: number, line: TafelLine, offset: number, temperature: number): void {
    const slope = (line.slope + line.slopePerKelvin * temperature) / Math.LN10;
    slopes[at] = slope;
    twice[at] = 2 * exchangeCurrent(line, temperature) * Math.exp(-offset / 2 / slope);
}

/**
 * Volts of one cell.
 *
 * @param cell            the cell
 * @param currentDensity  A/m²
 * @returns V; the rest voltage at no current. The offset of the surface shifts the Tafel lines by its whole value at working
 *          current and fades towards no current, since no surface takes volts off the rest voltage
 *
 * Accuracy: the surface's ±; after one bench reading ± 0.05 V (same lye) or ± 0.07 V (other lye or gap).
 */
export function cellVoltage(cell: CellMake, currentDensity: number): number {
    if (cell !== ready) makeReady(cell);
    const j = currentDensity;
    const size = Math.abs(j);
    let sum = 0;
    for (let at = 0; at < 4; at += 2) {
        const low = slopes[at]! * Math.asinh(size / twice[at]!);
        const high = slopes[at + 1]! * Math.asinh(size / twice[at + 1]!);
        steeper[at >> 1] = low >= high ? at : at + 1;
        sum += low >= high ? low : high;
    }
    asked = size;
    return cell.rest + j * cell.areaResistance + (j < 0 ? -sum : sum);
}

/**
 * How steeply the volts of a cell climb.
 *
 * @param cell            the cell
 * @param currentDensity  A/m²
 * @returns V per A/m²
 */
export function cellSlope(cell: CellMake, currentDensity: number): number {
    if (cell !== ready) makeReady(cell);
    const j = Math.abs(currentDensity);
    if (j !== asked) cellVoltage(cell, j);
    let sum = cell.areaResistance;
    for (let electrode = 0; electrode < 2; electrode++) {
        const k = steeper[electrode]!;
        sum += slopes[k]! / Math.sqrt(j * j + twice[k]! * twice[k]!);
    }
    return sum;
}

/** Slope of {@link overvoltage}, V per A/m². */
export function overvoltageSlope(kinetics: Kinetics, currentDensity: number, temperature: number): number {
    const low = lineOvervoltage(kinetics.low, currentDensity, temperature);
    const high = lineOvervoltage(kinetics.high, currentDensity, temperature);
    const line = (currentDensity < 0) === (low < high) ? kinetics.low : kinetics.high;
    const slope = line.slope + line.slopePerKelvin * temperature;
    const double = 2 * exchangeCurrent(line, temperature);
    return slope / Math.LN10 / Math.sqrt(currentDensity * currentDensity + double * double);
}

/**
 * Offset that makes a cell agree with one bench reading.
 *
 * @param cell            the cell; its own offset is ignored
 * @param currentDensity  A/m² of the reading, above 50
 * @param volts           V of the reading, one cell
 * @returns V, to use as the offset of the cell; NaN for a reading that no surface explains (more than 1 V off)
 */
export function offsetFromReading(cell: CellMake, currentDensity: number, volts: number): number {
    return findRoot(offset => cellVoltage({ ...cell, offset }, currentDensity) - volts, -1, 1, 1e-9);
}

/** A/m² below which a plate's voltage collapses: see {@link plateVoltage}. Own choice, in line with [sha-2023]. */
const COLLAPSE = 0.5;

/**
 * Volts across one plate among others in lye, at any current: like {@link cellVoltage}, but the rest voltage itself
 * builds up over the first A/m², since a plate without current holds no gas on its faces and so no voltage.
 * A stack with ports therefore sits far below its rest voltage at a few milliamperes, as measured [sha-2023].
 *
 * @param cell            the cell
 * @param currentDensity  A/m², either sign
 * @returns V, 0 at no current, rising throughout
 */
export function plateVoltage(cell: CellMake, currentDensity: number): number {
    const build = currentDensity / Math.sqrt(currentDensity * currentDensity + COLLAPSE * COLLAPSE);
    return cellVoltage(cell, currentDensity) + cell.rest * (build - 1);
}

/** Slope of {@link plateVoltage}, V per A/m². */
export function plateSlope(cell: CellMake, currentDensity: number): number {
    const square = currentDensity * currentDensity + COLLAPSE * COLLAPSE;
    return cellSlope(cell, currentDensity) + cell.rest * COLLAPSE * COLLAPSE / (square * Math.sqrt(square));
}

// ------------------------------------------------------------------- published stacks, for comparison, never a default

/**
 * Cell voltage of one measured stack (21 cells, activated electrodes, 7 bar), for comparison only.
 *
 * @param currentDensity  A/m², 0 .. 3000
 * @param temperature     K, 303 .. 353
 * @returns V; lies 5 .. 27 mV under its own measured points, most when cold
 *
 * The third constant is -0.1002: copies with +1.002 give 0.26 V too much. Source: [ulleberg-2003]
 */
export function stackUlleberg(currentDensity: number, temperature: number): number {
    const t = temperature - 273.15;
    return 1.229 + (8.05e-5 - 2.5e-7 * t) * currentDensity
        + 0.185 * Math.log10((-0.1002 + 8.424 / t + 247.3 / (t * t)) * currentDensity + 1);
}

/**
 * Cell voltage of another measured stack (12 cells, 1000 cm², 5 .. 9 bar), for comparison only.
 *
 * @param currentDensity  A/m², 0 .. 5000
 * @param temperature     K, 323 .. 353
 * @param pressure        Pa absolute, 5e5 .. 9e5
 * @returns V; lies about 45 mV under the same paper's figure. Source: [sanchez-2018]
 */
export function stackSanchez(currentDensity: number, temperature: number, pressure: number): number {
    const t = temperature - 273.15;
    const ohmic = 4.45153e-5 + 6.88874e-9 * t - 3.12996e-6 + 4.47137e-7 * pressure / 1e5;
    return reversibleVoltage(temperature) + ohmic * currentDensity
        + 0.33824 * Math.log10((-0.01539 + 2.00181 / t + 15.24178 / (t * t)) * currentDensity + 1);
}

const VERMEIREN_T = [292.15, 303.15, 312.15, 323.15, 332.15, 343.15, 353.15];
const VERMEIREN_R = [0.28e-4, 0.26e-4, 0.21e-4, 0.18e-4, 0.17e-4, 0.14e-4, 0.13e-4];

/**
 * Measured resistance of a 0.5 mm zirconia-polysulfone sheet in 30 wt% KOH, times area.
 *
 * @param temperature  K, 292 .. 353
 * @returns Ω·m², ± 0.015e-4; end values beyond. Source: [vermeiren-1998]
 */
export function compositeSheetResistance(temperature: number): number {
    return interpolate(VERMEIREN_T, VERMEIREN_R, temperature);
}
