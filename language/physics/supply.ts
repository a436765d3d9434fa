/**
 * Sources of current and where they meet a stack: straight-line supplies, limits, transformers with rectifiers,
 * batteries, solar modules.
 */
import { THERMAL_VOLTAGE_PER_KELVIN } from './constants.js';
import { interpolate } from './interpolate.js';
import { findRoot } from './root.js';

// ---------------------------------------------------------------------------------------------- lines and their limits

/**
 * Inner resistance of a source from two points of its line.
 *
 * @param firstVolts    V at the first current
 * @param firstCurrent  A
 * @param secondVolts   V at the second current
 * @param secondCurrent A, different from the first
 * @returns Ω; negative if the volts rise with current (then one of the readings is wrong)
 */
export function droop(firstVolts: number, firstCurrent: number, secondVolts: number, secondCurrent: number): number {
    return (firstVolts - secondVolts) / (secondCurrent - firstCurrent);
}

/**
 * Volts of a straight-line source under load.
 *
 * @param noLoad      V
 * @param resistance  Ω, of the source and the leads
 * @param current     A
 * @returns V
 */
export function loadedVolts(noLoad: number, resistance: number, current: number): number {
    return noLoad - resistance * current;
}

/**
 * Current at which a source and a stack agree.
 *
 * @param supplyVolts   volts of the source at a current; must not rise with it
 * @param stackVolts    volts of the stack and its leads at a current; must not fall with it
 * @param currentLimit  A, above 0: what the source gives at most (a bench supply's knob, a fuse, the end of a table)
 * @returns A: 0 where the source is below the stack's rest voltage; the limit where it bites; NaN for unknown inputs
 *
 * Accuracy: 1e-9 of the limit.
 */
export function operatingCurrent(
    supplyVolts: (current: number) => number, stackVolts: (current: number) => number, currentLimit: number,
): number {
    const excess = (current: number): number => supplyVolts(current) - stackVolts(current);
    const atRest = excess(0);
    if (atRest !== atRest || !(currentLimit > 0)) return NaN;
    if (atRest <= 0) return 0;
    if (currentLimit === Infinity) {
        let high = 1;
        while (excess(high) > 0 && high < 1e7) high *= 4;
        return findRoot(excess, 0, high, 1e-9 * high);
    }
    return excess(currentLimit) >= 0 ? currentLimit : findRoot(excess, 0, currentLimit, 1e-9 * currentLimit);
}

// ------------------------------------------------------------------------------------------- transformer and rectifier

/** Ways to turn alternating into direct current. */
export type RectifierCircuit = 'half-wave' | 'centre-tap' | 'bridge' | 'three-phase-bridge';

/** Mean of the rectified voltage over the RMS voltage it is made from, no smoothing, ideal diodes [textbook-rectifier]. */
export const rectifiedMean = {
    'half-wave': Math.SQRT2 / Math.PI,
    'centre-tap': 2 * Math.SQRT2 / Math.PI,
    bridge: 2 * Math.SQRT2 / Math.PI,
    'three-phase-bridge': 3 * Math.SQRT2 / Math.PI,
} as const satisfies Record<RectifierCircuit, number>;

/** Diodes in the way of the current at any moment. */
export const diodesInPath = {
    'half-wave': 1, 'centre-tap': 1, bridge: 2, 'three-phase-bridge': 2,
} as const satisfies Record<RectifierCircuit, number>;

/** RMS over mean of the unsmoothed rectified wave into a resistor (form factor) [textbook-rectifier]. */
export const formFactors = {
    'half-wave': Math.PI / 2,
    'centre-tap': Math.PI / (2 * Math.SQRT2),
    bridge: Math.PI / (2 * Math.SQRT2),
    'three-phase-bridge': 1.0009,
} as const satisfies Record<RectifierCircuit, number>;

/**
 * Mean direct voltage behind a rectifier without smoothing.
 *
 * @param circuit     the circuit
 * @param rms         V RMS: of the winding (half winding for a centre tap, line to line for three phases)
 * @param diodeDrop   V across one conducting diode, 0 for none
 * @returns V, not below 0; the drop is taken off the mean, which is right while the wave is far above it
 */
export function rectifiedVolts(circuit: RectifierCircuit, rms: number, diodeDrop: number): number {
    const mean = rectifiedMean[circuit] * rms - diodesInPath[circuit] * diodeDrop;
    return mean < 0 ? 0 : mean;
}

/**
 * Crest of the rectified wave: what an unloaded smoothing capacitor charges to.
 *
 * @param circuit    the circuit
 * @param rms        V RMS, as in {@link rectifiedVolts}
 * @param diodeDrop  V across one diode; at no load nearly none
 * @returns V, not below 0
 */
export function crestVolts(circuit: RectifierCircuit, rms: number, diodeDrop: number): number {
    const crest = Math.SQRT2 * rms - diodesInPath[circuit] * diodeDrop;
    return crest < 0 ? 0 : crest;
}

/**
 * Ripple of the unsmoothed wave: RMS of its alternating part over its mean.
 *
 * @param formFactor  1, at least 1
 * @returns 1; 0.483 for a single-phase bridge
 */
export function rippleFactor(formFactor: number): number {
    return Math.sqrt(formFactor * formFactor - 1);
}

/**
 * Peak-to-peak ripple on a smoothing capacitor by the straight-line rule.
 *
 * @param current      A, drawn steadily
 * @param frequency    Hz, of the mains (full-wave: the capacitor is filled twice per period)
 * @param capacitance  F
 * @returns V; always more than the real ripple, by a quarter at 4 V on 26 V
 */
export function capacitorRipple(current: number, frequency: number, capacitance: number): number {
    return current / (2 * frequency * capacitance);
}

/**
 * Winding current that a direct current asks for: DC over RMS, by what follows the rectifier [rectifier-guide].
 * An electrolyser clamps the voltage, so "bare" stands between a capacitor and a resistor (common practice, no source).
 */
export const windingFactors = {
    'bridge-capacitor': 0.62, 'bridge-bare': 0.75, 'bridge-resistive': 0.90, 'bridge-choke': 0.94, 'centre-tap-capacitor': 1.0,
} as const;

/** RMS current in the smoothing capacitor, A, from the winding's RMS current and the direct current, A. */
export function capacitorCurrent(windingRms: number, direct: number): number {
    const square = windingRms * windingRms - direct * direct;
    return square > 0 ? Math.sqrt(square) : square === square ? 0 : NaN;
}

/** What a rectified sine pushes through a resistance into a stack that holds its voltage. */
export interface PulsedCurrent {
    /** A */
    readonly mean: number;
    /** A */
    readonly rms: number;
    /** Part of the time that current flows, 0 .. 1. */
    readonly conducting: number;
}

/**
 * Full-wave rectified sine into a clamp (a stack without smoothing).
 *
 * @param crest       V, of the wave after the diodes
 * @param clamp       V, the stack's voltage; steady
 * @param resistance  Ω, of winding, leads and the ohmic part of the stack
 * @returns mean and RMS current; nothing flows where the crest is below the clamp. Closed form, exact
 */
export function pulsedCurrent(crest: number, clamp: number, resistance: number): PulsedCurrent {
    if (!(crest === crest && clamp === clamp && resistance === resistance)) return { mean: NaN, rms: NaN, conducting: NaN };
    if (crest <= clamp) return { mean: 0, rms: 0, conducting: 0 };
    const start = Math.asin(Math.max(clamp, 0) / crest);
    const span = Math.PI - 2 * start;
    const mean = (2 * crest * Math.cos(start) - clamp * span) / (Math.PI * resistance);
    const square = (crest * crest / 2 * (span + Math.sin(2 * start)) - 4 * crest * clamp * Math.cos(start) + clamp * clamp * span)
        / (Math.PI * resistance * resistance);
    return { mean, rms: Math.sqrt(square), conducting: span / Math.PI };
}

/** Steps in which half a period is followed, and half periods after which it must repeat itself. */
const WAVE_STEPS = 400;
const MOST_WAVES = 200;

/** Volts on a smoothing capacitor, once each period is like the one before. */
export interface Smoothed {
    /** V */
    readonly most: number;
    readonly least: number;
    readonly mean: number;
    /** A, RMS, in the winding: short pulses. */
    readonly winding: number;
}

/**
 * A rectified sine that fills a capacitor through a resistance while a steady current is drawn, step by step through the period.
 *
 * @param rms          V RMS without load, of the winding (half winding for a centre tap)
 * @param frequency    Hz
 * @param capacitance  F
 * @param current      A, drawn steadily, 0 or more
 * @param drop         V across the diodes in the way
 * @param resistance   Ω of winding and diodes, above 0
 * @param fillings     how often a period fills it: 2, or 1 for a single diode
 * @returns volts and winding current; implicit steps of a 400th of half a period, good to 0.1 % of the crest
 */
export function smoothedWave(
    rms: number, frequency: number, capacitance: number, current: number, drop: number, resistance: number, fillings: 1 | 2 = 2,
): Smoothed {
    const crest = Math.SQRT2 * rms;
    const step = 1 / (2 * frequency * WAVE_STEPS);
    const store = capacitance / step;
    let volts = resistance === resistance ? Math.max(0, crest - drop) : NaN;
    for (let wave = 0; ; wave++) {
        const start = volts;
        let most = -Infinity;
        let least = Infinity;
        let sum = 0;
        let square = 0;
        for (let n = 1; n <= WAVE_STEPS * (2 / fillings); n++) {
            const open = n > WAVE_STEPS ? -Infinity : crest * Math.sin(Math.PI * n / WAVE_STEPS) - drop;
            const filled = (store * volts + open / resistance - current) / (store + 1 / resistance);
            const filling = open > filled;
            volts = filling ? filled : Math.max(0, volts - current / store);
            const amperes = filling ? (open - volts) / resistance : 0;
            most = Math.max(most, volts);
            least = Math.min(least, volts);
            sum += volts;
            square += amperes * amperes;
        }
        const settled = Math.abs(volts - start) <= 1e-6 * crest;
        if (settled || wave >= MOST_WAVES || volts !== volts) {
            const count = WAVE_STEPS * (2 / fillings);
            return volts === volts ? { most, least, mean: sum / count, winding: Math.sqrt(square / count) } : { most: NaN, least: NaN, mean: NaN, winding: NaN };
        }
    }
}

/**
 * Volts per turn on an iron core.
 *
 * @param frequency  Hz
 * @param flux       T, crest of the flux density, up to about 1.5 for stacked iron
 * @param area       m², of iron
 * @returns V RMS per turn. Exact for a sine
 */
export function voltsPerTurn(frequency: number, flux: number, area: number): number {
    return Math.SQRT2 * Math.PI * frequency * flux * area;
}

/**
 * Steady current that heats a winding as much as a short duty does.
 *
 * @param rated  A, at the rated duty
 * @param duty   1, on-time share of the rating, 0 .. 1
 * @returns A
 */
export function continuousCurrent(rated: number, duty: number): number {
    return rated * Math.sqrt(duty);
}

// ------------------------------------------------------------------------------------------------------------- battery

const CHARGES = [0, 0.25, 0.5, 0.75, 1];
const REST_VOLTS = [11.89, 12.06, 12.24, 12.45, 12.65];

/**
 * Rest voltage of a flooded lead-acid battery at 27 °C.
 *
 * @param charge  1, state of charge 0 .. 1
 * @param cells   count, 6 for "12 V"
 * @returns V after hours of rest, ± 0.05 V per six cells; under load it is lower, on charge higher. Source: [battery-table]
 */
export function leadAcidRestVolts(charge: number, cells = 6): number {
    return interpolate(CHARGES, REST_VOLTS, charge) * cells / 6;
}

const IRON_CHARGES = [0, 0.1, 0.2, 0.5, 0.8, 0.95, 1];
const IRON_REST_VOLTS = [2.8, 3.2, 3.25, 3.29, 3.33, 3.34, 3.4];

/**
 * Rest voltage of a lithium iron phosphate battery: nearly flat, so that volts hardly tell the charge.
 *
 * @param charge  1, 0 empty .. 1 full
 * @param cells   count, 16 for "51.2 V"
 * @returns V after an hour of rest, ± 0.03 V a cell. Makers' sheets, from memory
 */
export function ironPhosphateRestVolts(charge: number, cells: number): number {
    return interpolate(IRON_CHARGES, IRON_REST_VOLTS, charge) * cells;
}

/**
 * Time for which a lead-acid battery gives a current.
 *
 * @param capacity  C (As), as rated over twenty hours
 * @param charge    1, state of charge at the start
 * @param current   A, above 0
 * @param exponent  1: 1.1 (sealed) .. 1.3 (flooded, aged); 1.2 usual, from memory
 * @returns s; less than charge over current at more than the twenty-hour current, never more. Source: [peukert-1897]
 */
export function leadAcidTime(capacity: number, charge: number, current: number, exponent = 1.2): number {
    const rated = capacity / TWENTY_HOURS;
    return charge * capacity / current * Math.min(1, (rated / current) ** (exponent - 1));
}
/** s, over which lead-acid batteries are rated. */
const TWENTY_HOURS = 72000;

// --------------------------------------------------------------------------------------------------------------- solar

/** A solar module as its data sheet has it, at 1000 W/m² and 25 °C cells. */
export interface SolarModule {
    /** A */
    readonly shortCircuit: number;
    /** V */
    readonly openCircuit: number;
    /** A at best power */
    readonly bestCurrent: number;
    /** V at best power */
    readonly bestVolts: number;
    /** Growth of the short-circuit current, 1/K (about 0.0005). */
    readonly currentGrowth: number;
    /** Growth of the open-circuit voltage, 1/K (about -0.0031). */
    readonly voltsGrowth: number;
}

/**
 * Current of a module at a voltage, from the four points of its data sheet.
 *
 * @param module       the module
 * @param volts        V
 * @param irradiance   W/m², 50 .. 1200, of the light that it gets
 * @param temperature  K, of its cells (in full sun some 25 K above the air)
 * @returns A, negative above its open-circuit voltage; 0 without light
 *
 * Accuracy: 2.5 % of the short-circuit current at full sun. One diode and a series resistance, both fixed by the four points
 * and the best power lying where it is stated. Source: [townsend-1989] form.
 */
export function solarCurrent(module: SolarModule, volts: number, irradiance: number, temperature: number): number {
    if (irradiance <= 0) return 0;
    const { shortCircuit, openCircuit, bestCurrent, bestVolts } = module;
    const spare = shortCircuit - bestCurrent;
    const bend = (2 * bestVolts - openCircuit) / (Math.log(spare / shortCircuit) + bestCurrent / spare);
    const series = Math.max(0, bestVolts / bestCurrent - bend / spare);
    const warmer = temperature - 298.15;
    const warmBend = bend * temperature / 298.15;
    const short = shortCircuit * (1 + module.currentGrowth * warmer);
    const saturation = short * Math.exp(-openCircuit * (1 + module.voltsGrowth * warmer) / warmBend);
    return diodeCurrent(volts, short * irradiance / 1000, saturation, warmBend, series, Infinity);
}

function diodeCurrent(
    volts: number, photo: number, saturation: number, bend: number, series: number, shunt: number,
): number {
    let current = Math.min(photo, (bend * Math.log(1 + photo / saturation) - volts) / Math.max(series, 1e-3));
    for (let step = 0; step < 100; step++) {
        const inner = volts + current * series;
        const diode = saturation * Math.exp(inner / bend);
        const miss = photo - (diode - saturation) - inner / shunt - current;
        const change = miss / (-diode * series / bend - series / shunt - 1);
        current -= change;
        if (!(Math.abs(change) > 1e-13 * (1 + Math.abs(current)))) break;
    }
    return current;
}

/**
 * Current of a module from five fitted constants (one diode, two resistances).
 *
 * @param volts        V
 * @param photo        A, current that the light makes
 * @param saturation   A, of the diode
 * @param ideality     1, of the diode, times the count of cells in series
 * @param series       Ω
 * @param shunt        Ω
 * @param temperature  K, of the cells
 * @returns A, exact root of the implicit equation. Source: [easwarakhanthan-1986] form
 */
export function singleDiodeCurrent(
    volts: number, photo: number, saturation: number, ideality: number, series: number, shunt: number, temperature: number,
): number {
    return diodeCurrent(volts, photo, saturation, ideality * THERMAL_VOLTAGE_PER_KELVIN * temperature, series, shunt);
}

/**
 * Current of a source known by a measured curve.
 *
 * @param curveVolts     V, rising
 * @param curveCurrents  A, at these volts
 * @param volts          V
 * @returns A, straight lines between the points; the end values beyond
 */
export function curveCurrent(curveVolts: ArrayLike<number>, curveCurrents: ArrayLike<number>, volts: number): number {
    return interpolate(curveVolts, curveCurrents, volts);
}

/**
 * Current where a source known as current over volts (a solar module) meets a stack known as volts over current.
 *
 * @param sourceCurrent  A of the source at a voltage; must not rise with it
 * @param stackVolts     V of the stack at a current
 * @param mostCurrent    A, the source at no volts
 * @returns A, 0 where the source cannot reach the stack's rest voltage
 */
export function currentSourceMeetsStack(
    sourceCurrent: (volts: number) => number, stackVolts: (current: number) => number, mostCurrent: number,
): number {
    if (!(mostCurrent > 0)) return mostCurrent === mostCurrent ? 0 : NaN;
    const excess = (current: number): number => sourceCurrent(stackVolts(current)) - current;
    if (excess(0) <= 0) return 0;
    if (excess(mostCurrent) >= 0) return mostCurrent;
    return findRoot(excess, 0, mostCurrent, 1e-10 * mostCurrent);
}
