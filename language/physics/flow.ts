/**
 * Gas and lye in tubes, through holes and relief valves.
 */
import { GAS_CONSTANT } from './constants.js';
import { findRoot } from './root.js';

// --------------------------------------------------------------------------------------------------------------- tubes

/** Bounds of {@link frictionFactor}. */
export const frictionRange = { reynolds: [0, 1e5] } as const;

/** Reynolds numbers at which laminar flow ends and turbulent flow is fully there: textbook. */
const LAMINAR_TO = 2300;
const TURBULENT_FROM = 4000;

/**
 * Reynolds number in a round tube.
 *
 * @param volumeFlow  m³/s
 * @param bore        m
 * @param density     kg/m³
 * @param viscosity   Pa·s
 * @returns 1, not below 0
 */
export function reynolds(volumeFlow: number, bore: number, density: number, viscosity: number): number {
    return 4 * density * Math.abs(volumeFlow) / (Math.PI * bore * viscosity);
}

/**
 * Darcy friction factor of a smooth round tube.
 *
 * @param re  Reynolds number, 0 .. 1e5
 * @returns 1 (Darcy, not Fanning): laminar below 2300, Blasius above 4000, between them a smooth passage (± 25 %)
 *
 * Accuracy: 3 %. Source: [hagen-poiseuille], [blasius-1913]
 */
export function frictionFactor(re: number): number {
    if (re <= 0) return Infinity;
    if (re < LAMINAR_TO) return 64 / re;
    const turbulent = 0.3164 / Math.sqrt(Math.sqrt(re));
    if (re >= TURBULENT_FROM) return turbulent;
    const share = (re - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO);
    return (1 - share) * 64 / re + share * turbulent;
}

/**
 * Pressure that a flow loses in a smooth round tube, entry and fittings included. For gases only while the loss is
 * under a tenth of the absolute pressure.
 *
 * @param volumeFlow  m³/s
 * @param bore        m
 * @param length      m
 * @param density     kg/m³
 * @param viscosity   Pa·s
 * @param fittings    1, sum of loss factors: 1.5 for one entry and one exit, about 1 per sharp bend
 * @returns Pa, same sign as the flow
 */
export function tubeDrop(
    volumeFlow: number, bore: number, length: number, density: number, viscosity: number, fittings = 0,
): number {
    if (volumeFlow === 0) return 0;
    const area = Math.PI * bore * bore / 4;
    const speed = Math.abs(volumeFlow) / area;
    const re = density * speed * bore / viscosity;
    return Math.sign(volumeFlow) * (frictionFactor(re) * length / bore + fittings) * density * speed * speed / 2;
}

/**
 * Flow that a pressure drives through a smooth round tube.
 *
 * @param drop       Pa, 0 or more
 * @param bore       m
 * @param length     m
 * @param density    kg/m³
 * @param viscosity  Pa·s
 * @param fittings   1
 * @returns m³/s; the inverse of {@link tubeDrop} (which rises with flow throughout)
 */
export function tubeFlow(
    drop: number, bore: number, length: number, density: number, viscosity: number, fittings = 0,
): number {
    if (!(drop > 0)) return drop === drop ? 0 : NaN;
    // Neither laminar flow nor loss-free outflow can be exceeded.
    const laminar = drop * Math.PI * bore ** 4 / (128 * viscosity * length);
    const free = Math.PI * bore * bore / 4 * Math.sqrt(2 * drop / density / Math.max(fittings, 0.01 * length / bore, 1e-6));
    const high = 1.0001 * Math.min(laminar, free);
    return findRoot(q => tubeDrop(q, bore, length, density, viscosity, fittings) - drop, 0, high, 1e-9 * high);
}

/**
 * Pressure that a gas loses in a long tube when the loss is not small (isothermal).
 *
 * @param massFlow   kg/s
 * @param bore       m
 * @param length     m
 * @param inlet      Pa absolute
 * @param gasFactor  J/kg: R·T·Z/M
 * @param viscosity  Pa·s
 * @param fittings   1
 * @returns Pa; NaN where the tube cannot carry the flow from that pressure
 */
export function gasTubeDrop(
    massFlow: number, bore: number, length: number, inlet: number, gasFactor: number, viscosity: number, fittings = 0,
): number {
    const area = Math.PI * bore * bore / 4;
    const re = 4 * Math.abs(massFlow) / (Math.PI * bore * viscosity);
    if (massFlow === 0) return 0;
    const loss = (frictionFactor(re) * length / bore + fittings) * (massFlow / area) ** 2 * gasFactor;
    const square = inlet * inlet - loss;
    return square > 0 ? inlet - Math.sqrt(square) : NaN;
}

// --------------------------------------------------------------------------------------------------------------- holes

/**
 * Pressure ratio (downstream by upstream) below which a hole runs at the speed of sound.
 *
 * @param heatRatio  1, above 1
 * @returns 1, about 0.53
 */
export function criticalPressureRatio(heatRatio: number): number {
    return (2 / (heatRatio + 1)) ** (heatRatio / (heatRatio - 1));
}

/**
 * Mass flow of a gas through a hole.
 *
 * @param area            m², of the hole
 * @param discharge       1, 0.6 sharp edge .. 0.98 rounded
 * @param upstream        Pa absolute
 * @param downstream      Pa absolute
 * @param temperature     K, upstream
 * @param molarMass       kg/mol
 * @param heatRatio       1
 * @param compressibility 1
 * @returns kg/s, 0 when downstream is not below upstream; at the speed of sound once the ratio is below the critical one
 *
 * Accuracy: that of the discharge factor. Ideal nozzle, textbook.
 */
export function holeFlow(
    area: number, discharge: number, upstream: number, downstream: number,
    temperature: number, molarMass: number, heatRatio: number, compressibility = 1,
): number {
    if (!(upstream > downstream)) return upstream === upstream && downstream === downstream ? 0 : NaN;
    const ratio = Math.max(downstream / upstream, criticalPressureRatio(heatRatio));
    const k = heatRatio;
    const flow = Math.sqrt(2 * k / (k - 1) * (ratio ** (2 / k) - ratio ** ((k + 1) / k)));
    return discharge * area * upstream * flow * Math.sqrt(molarMass / (compressibility * GAS_CONSTANT * temperature));
}

/**
 * Volume flow of an incompressible fluid (or gas at a small pressure difference) through a hole.
 *
 * @param area       m²
 * @param discharge  1
 * @param drop       Pa, 0 or more
 * @param density    kg/m³
 * @returns m³/s
 */
export function smallHoleFlow(area: number, discharge: number, drop: number, density: number): number {
    return drop > 0 ? discharge * area * Math.sqrt(2 * drop / density) : drop === drop ? 0 : NaN;
}
/**
 * The pressure difference at which a hole passes so much: {@link smallHoleFlow} turned round.
 *
 * @param area       m², above 0
 * @param discharge  1, above 0
 * @param flow       m³/s, 0 or more
 * @param density    kg/m³
 * @returns Pa
 */
export function smallHoleDrop(area: number, discharge: number, flow: number, density: number): number {
    return density / 2 * (flow / (discharge * area)) ** 2;
}

// -------------------------------------------------------------------------------------------------------------- relief

/** Pa in a pound per square inch (NIST SP 811). */
const PSI = 6894.757293;

/**
 * Pressure that a vessel may reach while its relief valves blow (no fire).
 *
 * @param rating  Pa gauge, stamped
 * @param valves  count: 1, or several that open one after the other
 * @returns Pa gauge: a tenth over the rating or 3 psi with one valve, 16 % or 4 psi with several, whichever is more.
 *          Source: [asme-viii]; other codes differ, and the stamp's own code holds
 */
export function accumulatedPressure(rating: number, valves = 1): number {
    if (valves > 1) return Math.max(1.16 * rating, rating + 4 * PSI);
    return valves === valves ? Math.max(1.10 * rating, rating + 3 * PSI) : NaN;
}

/** Brings the choked factor into the units of the standard (kg/h, mm², bar, K and kg/kmol) [iso-4126-1]. */
const ISO_UNITS = 3.948;

/**
 * The factor C of relief sizing, in units of ISO 4126: √(k·(2/(k+1))^((k+1)/(k-1)))·3.948.
 *
 * @param heatRatio  1
 * @returns 2.70 for hydrogen; a hundredth of it is the factor of API 520 in metric units. Source: [iso-4126-1], [api-520-1]
 */
export function reliefFactor(heatRatio: number): number {
    return ISO_UNITS * chokedFactor(heatRatio);
}

/** √(k (2/(k+1))^((k+1)/(k-1))): flow at the speed of sound over p·A·√(M/(R·T)). */
function chokedFactor(k: number): number {
    return Math.sqrt(k * (2 / (k + 1)) ** ((k + 1) / (k - 1)));
}

/**
 * Open area that relieves a mass flow of gas at the speed of sound.
 *
 * @param massFlow         kg/s
 * @param pressure         Pa absolute, while relieving (set pressure with its allowed rise, plus the air's)
 * @param temperature      K
 * @param molarMass        kg/mol
 * @param heatRatio        1
 * @param compressibility  1
 * @param discharge        1, certified by the maker; 0.975 to start with [api-520-1]
 * @returns m²; valid only while the back pressure is below the critical ratio
 */
export function reliefArea(
    massFlow: number, pressure: number, temperature: number, molarMass: number, heatRatio: number,
    compressibility = 1, discharge = 0.975,
): number {
    return massFlow / (discharge * pressure * chokedFactor(heatRatio))
        * Math.sqrt(compressibility * GAS_CONSTANT * temperature / molarMass);
}

/**
 * The factor F2 of relief sizing below the speed of sound.
 *
 * @param heatRatio  1
 * @param ratio      1, back pressure by relieving pressure, both absolute, critical .. 1
 * @returns 1. Source: [api-520-1]
 */
export function subcriticalFactor(heatRatio: number, ratio: number): number {
    const k = heatRatio;
    return Math.sqrt(k / (k - 1) * ratio ** (2 / k) * (1 - ratio ** ((k - 1) / k)) / (1 - ratio));
}

/**
 * Hydrogen that a relief valve passes if its plate states air.
 *
 * @param airVolumeFlow  m³/s of air at a state
 * @param airHeatRatio   1
 * @param gasHeatRatio   1, of the gas
 * @param airMolarMass   kg/mol
 * @param gasMolarMass   kg/mol
 * @returns m³/s of the gas at the same state (by volume 3.8 times as much for hydrogen; by mass only a quarter)
 */
export function reliefVolumeOfGas(
    airVolumeFlow: number, airHeatRatio: number, gasHeatRatio: number, airMolarMass: number, gasMolarMass: number,
): number {
    return airVolumeFlow * chokedFactor(gasHeatRatio) / chokedFactor(airHeatRatio) * Math.sqrt(airMolarMass / gasMolarMass);
}

/**
 * Time for a vessel to empty through a hole from one pressure to another (speed of sound until the critical ratio,
 * below it by steps; vessel at constant temperature).
 *
 * @param volume       m³
 * @param area         m², of the hole
 * @param discharge    1
 * @param from         Pa absolute
 * @param to           Pa absolute, above the ambient
 * @param ambient      Pa absolute
 * @param temperature  K
 * @param molarMass    kg/mol
 * @param heatRatio    1
 * @returns s, within 1 %
 */
export function blowDownTime(
    volume: number, area: number, discharge: number, from: number, to: number, ambient: number,
    temperature: number, molarMass: number, heatRatio: number,
): number {
    if (!(to < from)) return from === from && to === to ? 0 : NaN;
    if (to <= ambient) return Infinity;
    const gas = molarMass / (GAS_CONSTANT * temperature);
    const parts = 64;
    const step = Math.log(from / to) / parts;
    let time = 0;
    // Middle of each part: dm = V dp M/(R T), dp = p dln p.
    for (let i = 0; i < parts; i++) {
        const pressure = to * Math.exp((i + 0.5) * step);
        time += volume * gas * pressure * step
            / holeFlow(area, discharge, pressure, ambient, temperature, molarMass, heatRatio);
    }
    return time;
}
