/**
 * Hydrogen as a real gas: density, heat capacities, ratio of heat capacities, speed of sound.
 */
import { GAS_CONSTANT, MOLAR_MASS } from './constants.js';

/** Bounds of the density equation. */
export const hydrogenRange = { temperature: [220, 1000], pressure: [0, 70e6] } as const;

const A = [
    0.05888460, -0.06136111, -0.002650473, 0.002731125, 0.001802374, -0.001150707, 0.9588528e-4, -0.1109040e-6, 0.1264403e-9,
];
const B = [1.325, 1.87, 2.5, 2.8, 2.938, 3.14, 3.37, 3.75, 4.0];
const C = [1, 1, 2, 2, 2.42, 2.63, 3, 4, 5];
/** Which of the powers that differ each of them is. */
const POWER = C.map(c => [...new Set(C)].indexOf(c));

/**
 * How much more room hydrogen takes than an ideal gas.
 *
 * @param temperature  K, 150 .. 1000
 * @param pressure     Pa absolute, 0 .. 200e6
 * @returns 1 (compressibility factor); 1.006 at 10 bar, 1.06 at 100 bar, 25 °C
 *
 * Accuracy: 0.01 % from 220 K and up to 70 MPa, worse outside. Source: [lemmon-2008] eq. 3
 */
export function compressibility(temperature: number, pressure: number): number {
    if (pressure === 0) return temperature === temperature ? 1 : NaN;
    if (temperature !== warmth.temperature) setWarmth(temperature);
    const p = pressure / 1e6;
    const log = Math.log(p);
    const c = warmth.terms;
    return 1 + p * (c[0]! + p * (c[1]! + p * (c[4]! + p * (c[5]! + p * c[6]!)))) + c[2]! * Math.exp(2.42 * log) + c[3]! * Math.exp(2.63 * log);
}
/** What hangs on the temperature alone, summed for each power of the pressure, and kept: one temperature is asked about many times in a row. */
const warmth = { temperature: NaN, terms: new Float64Array(7) };
function setWarmth(temperature: number): void {
    const hundred = Math.log(100 / temperature);
    warmth.terms.fill(0);
    for (let i = 0; i < 9; i++) warmth.terms[POWER[i]!]! += A[i]! * Math.exp(B[i]! * hundred);
    warmth.temperature = temperature;
}

/**
 * Density of hydrogen.
 *
 * @param temperature  K, 220 .. 1000
 * @param pressure     Pa absolute, 0 .. 70e6
 * @returns kg/m³, within 0.04 %
 */
export function hydrogenDensity(temperature: number, pressure: number): number {
    return pressure * MOLAR_MASS.hydrogen / (compressibility(temperature, pressure) * GAS_CONSTANT * temperature);
}

/**
 * Moles of hydrogen in a vessel.
 *
 * @param volume       m³
 * @param temperature  K
 * @param pressure     Pa absolute
 * @returns mol
 */
export function hydrogenMoles(volume: number, temperature: number, pressure: number): number {
    return volume * pressure / (compressibility(temperature, pressure) * GAS_CONSTANT * temperature);
}

/**
 * Pressure of hydrogen in a vessel.
 *
 * @param volume       m³
 * @param temperature  K
 * @param moles        mol
 * @returns Pa absolute; to 1e-9
 */
export function hydrogenPressure(volume: number, temperature: number, moles: number): number {
    const ideal = moles * GAS_CONSTANT * temperature / volume;
    let pressure = ideal;
    for (let step = 0; step < 100; step++) {
        const next = ideal * compressibility(temperature, pressure);
        const change = Math.abs(next - pressure);
        pressure = next;
        if (!(change > 1e-10 * pressure)) break;
    }
    return pressure;
}

const U = [1.616, -0.4117, -0.792, 0.758, 1.217];
const V = [531, 751, 1989, 2484, 6859];

/**
 * Heat capacity of thin (ideal) normal hydrogen at constant pressure.
 *
 * @param temperature  K, 200 .. 1000
 * @returns J/(mol·K), within 0.1 %. Source: [leachman-2009]
 */
export function idealHeatCapacity(temperature: number): number {
    let sum = 2.5;
    for (let i = 0; i < 5; i++) {
        const x = V[i]! / temperature;
        const e = Math.exp(x);
        sum += U[i]! * x * x * e / ((e - 1) * (e - 1));
    }
    return GAS_CONSTANT * sum;
}

/** Volume and its two first slopes, written here by {@link volumeSlopes} so that no object is made. */
let volumeByTemperature = 0;
let volumeByPressure = 0;
let heatCapacityLoss = 0;

function volumeSlopes(temperature: number, pressure: number): void {
    const hundred = Math.log(100 / temperature);
    const p = Math.log(pressure / 1e6);
    let z = 0;
    let byT = 0;
    let byP = 0;
    let loss = 0;
    for (let i = 0; i < 9; i++) {
        const term = A[i]! * Math.exp(B[i]! * hundred + C[i]! * p);
        z += term;
        byT += term * (1 - B[i]!);
        byP += term * (C[i]! - 1);
        loss += term * B[i]! * (B[i]! - 1) / C[i]!;
    }
    volumeByTemperature = GAS_CONSTANT / pressure * (1 + byT);
    volumeByPressure = GAS_CONSTANT * temperature / (pressure * pressure) * (byP - 1);
    heatCapacityLoss = GAS_CONSTANT * loss;
}

/**
 * Heat capacity of hydrogen at constant pressure.
 *
 * @param temperature  K, 220 .. 1000
 * @param pressure     Pa absolute, above 0 .. 35e6
 * @returns J/(mol·K), within 1 % (own derivation from the density equation and the ideal heat capacity)
 */
export function hydrogenHeatCapacity(temperature: number, pressure: number): number {
    volumeSlopes(temperature, pressure);
    return idealHeatCapacity(temperature) - heatCapacityLoss;
}

/**
 * Ratio of the heat capacities of hydrogen.
 *
 * @param temperature  K, 220 .. 1000
 * @param pressure     Pa absolute, above 0 .. 35e6
 * @returns 1; the common 1.41 belongs to 0 °C, 1.405 to room, 1.400 to 80 °C. Within 0.5 %
 */
export function hydrogenHeatRatio(temperature: number, pressure: number): number {
    const atPressure = hydrogenHeatCapacity(temperature, pressure);
    const atVolume = atPressure + temperature * volumeByTemperature * volumeByTemperature / volumeByPressure;
    return atPressure / atVolume;
}

/**
 * Speed of sound in hydrogen.
 *
 * @param temperature  K, 220 .. 1000
 * @param pressure     Pa absolute, above 0 .. 35e6
 * @returns m/s, within 0.5 %
 */
export function hydrogenSoundSpeed(temperature: number, pressure: number): number {
    const ratio = hydrogenHeatRatio(temperature, pressure);
    const volume = compressibility(temperature, pressure) * GAS_CONSTANT * temperature / pressure;
    return volume * Math.sqrt(-ratio / (volumeByPressure * MOLAR_MASS.hydrogen));
}

/**
 * How hydrogen warms when it is throttled (Joule-Thomson coefficient).
 *
 * @param temperature  K, 220 .. 500
 * @param pressure     Pa absolute, above 0 .. 35e6
 * @returns K/Pa; negative: hydrogen warms on release, by about 0.03 K per bar; not enough to light it
 */
export function jouleThomson(temperature: number, pressure: number): number {
    const heat = hydrogenHeatCapacity(temperature, pressure);
    const volume = compressibility(temperature, pressure) * GAS_CONSTANT * temperature / pressure;
    return (temperature * volumeByTemperature - volume) / heat;
}

/** Thermal conductivity of hydrogen, W/(m·K), at K, 250 .. 400, within 3 %. Straight line through textbook values. */
export function hydrogenThermalConductivity(temperature: number): number {
    return 0.1805 + 4.9e-4 * (temperature - 293.15);
}
