/**
 * Squeezing gas into a vessel: work, heat, what a piston really delivers, what the vessel then holds.
 * Ideal gas unless said; pressures are absolute.
 */
import { GAS_CONSTANT } from './constants.js';
import { compressibility } from './hydrogen.js';
import { findRoot } from './root.js';

/**
 * Least work, at constant temperature.
 *
 * @param temperature  K
 * @param ratio        1, pressure after by before, above 0
 * @returns J/mol
 */
export function isothermalWork(temperature: number, ratio: number): number {
    return GAS_CONSTANT * temperature * Math.log(ratio);
}

/**
 * Least work at constant temperature with real hydrogen.
 *
 * @param temperature  K, 220 .. 500
 * @param from         Pa absolute
 * @param to           Pa absolute
 * @returns J/mol, within 0.1 %: the integral of volume over pressure, Simpson in the logarithm of pressure
 */
export function isothermalWorkOfHydrogen(temperature: number, from: number, to: number): number {
    const parts = 16;
    const step = Math.log(to / from) / parts;
    let sum = compressibility(temperature, from) + compressibility(temperature, to);
    for (let i = 1; i < parts; i++) sum += (i % 2 ? 4 : 2) * compressibility(temperature, from * Math.exp(i * step));
    return GAS_CONSTANT * temperature * sum * step / 3;
}

/**
 * Work of compression along p·Vⁿ constant.
 *
 * @param temperature  K, at suction
 * @param ratio        1, discharge by suction pressure
 * @param exponent     1: heat capacity ratio without any cooling (isentropic); 1.2 .. 1.35 with a cooled cylinder;
 *                     above the ratio for a leaking or hot-running machine
 * @returns J/mol; at exponent 1 the isothermal work
 */
export function polytropicWork(temperature: number, ratio: number, exponent: number): number {
    if (Math.abs(exponent - 1) < 1e-9) return isothermalWork(temperature, ratio);
    const power = (exponent - 1) / exponent;
    return GAS_CONSTANT * temperature / power * (ratio ** power - 1);
}

/**
 * Temperature after compression along p·Vⁿ constant.
 *
 * @param temperature  K, at suction
 * @param ratio        1
 * @param exponent     1, as in {@link polytropicWork}
 * @returns K
 */
export function dischargeTemperature(temperature: number, ratio: number, exponent: number): number {
    return temperature * ratio ** ((exponent - 1) / exponent);
}

/**
 * Ratio of each stage where all take the same: the least work, if the gas is cooled back in between [cengel-boles].
 *
 * @param ratio   1, discharge by suction pressure of all together
 * @param stages  count
 * @returns 1
 */
export function stageRatio(ratio: number, stages: number): number {
    return ratio ** (1 / stages);
}

/**
 * Temperatures at which stages of equal ratio draw.
 *
 * @param temperature  K, at the first suction
 * @param cooledTo     K, behind the cooler after each stage; Infinity where there is none. A cooler warms nothing
 * @param ratio        1, of one stage
 * @param stages       count, up to 100: nobody builds more
 * @param exponent     1, as in {@link polytropicWork}
 * @returns K, one for each stage; a single NaN beyond 100 stages
 */
export function stageSuctions(temperature: number, cooledTo: number, ratio: number, stages: number, exponent: number): number[] {
    if (!(stages <= 100)) return [NaN];
    const suctions = [temperature];
    while (suctions.length < stages) suctions.push(Math.min(cooledTo, dischargeTemperature(suctions.at(-1)!, ratio, exponent)));
    return suctions;
}

/**
 * Work of compression in stages of equal ratio, each along p·Vⁿ constant.
 *
 * @param temperature  K, at the first suction
 * @param cooledTo     K, behind the cooler after each stage; Infinity where there is none
 * @param ratio        1, of all together
 * @param stages       count
 * @param exponent     1, as in {@link polytropicWork}
 * @returns J/mol. Source: [cengel-boles], the sum of the stages
 */
export function stagedWork(temperature: number, cooledTo: number, ratio: number, stages: number, exponent: number): number {
    const each = stageRatio(ratio, stages);
    return stageSuctions(temperature, cooledTo, each, stages, exponent).reduce((sum, t) => sum + polytropicWork(t, each, exponent), 0);
}

/**
 * Pressures before machines that draw one from the other, nothing stored between: what one delivers the next must take.
 *
 * @param delivered  mol/s that each one moves from one pressure to another, Pa absolute: rising with the first, falling with the second
 * @param suction    Pa absolute, before the first
 * @param discharge  Pa absolute, after the last
 * @returns Pa absolute, one for each machine, to 1e-6 of the discharge. Never outside of the two ends: a machine that is too large draws
 *          through the valves of the one before it, one that is too small is blown through
 */
export function pressuresInSeries(delivered: readonly ((from: number, to: number) => number)[], suction: number, discharge: number): number[] {
    const before = (last: number, to: number): number => {
        if (last === 0) return suction;
        const surplus = (between: number) => delivered[last - 1]!(before(last - 1, between), between) - delivered[last]!(between, to);
        if (surplus(suction) <= 0) return suction;
        if (surplus(to) >= 0) return to;
        return findRoot(surplus, suction, to, 1e-6 * discharge);
    };
    const pressures: number[] = [];
    for (let i = delivered.length - 1, to = discharge; i >= 0; i--) pressures.unshift((to = before(i, to)));
    return pressures;
}

/**
 * Part of its stroke that a piston fills with fresh gas.
 *
 * @param clearance  1, dead volume over swept volume
 * @param ratio      1, discharge by suction pressure
 * @param exponent   1, of the re-expansion
 * @returns 1, 0 .. 1: clearance alone. 0 where the dead volume's gas fills the whole stroke (the compressor stalls)
 */
export function clearanceEfficiency(clearance: number, ratio: number, exponent: number): number {
    const share = 1 + clearance - clearance * ratio ** (1 / exponent);
    return share < 0 ? 0 : share;
}

/**
 * Pressure ratio at which a piston delivers nothing more.
 *
 * @param clearance  1
 * @param exponent   1
 * @returns 1
 */
export function stallRatio(clearance: number, exponent: number): number {
    return ((1 + clearance) / clearance) ** exponent;
}

/** Most that a small uncooled machine should be given before clearance: suction heating alone costs 18 % [ren-2022]. */
export const SUCTION_HEATING_FACTOR = 0.8;

/**
 * Gas that a compressor moves, at suction state.
 *
 * @param displacement  m³ per turn
 * @param speed         1/s, turns
 * @param efficiency    1, volumetric: clearance times suction heating and leakage; ± 20 % without a calibration [santos-2019]
 * @returns m³/s at suction pressure and temperature
 */
export function freeDelivery(displacement: number, speed: number, efficiency: number): number {
    return displacement * speed * efficiency;
}

/**
 * Temperature of gas in a vessel just after a quick fill, no heat lost.
 *
 * @param supplyTemperature  K, of the gas that comes in
 * @param startTemperature   K, of the gas that was in
 * @param startPressure      Pa absolute
 * @param endPressure        Pa absolute, not below the start
 * @param heatRatio          1
 * @returns K; an upper bound, since the vessel's wall takes most of the heat in minutes
 */
export function fillTemperature(
    supplyTemperature: number, startTemperature: number, startPressure: number, endPressure: number, heatRatio: number,
): number {
    const hot = heatRatio * supplyTemperature;
    return hot / (1 + startPressure / endPressure * (hot / startTemperature - 1));
}

/**
 * Work that gas under pressure can do when its vessel bursts (isentropic, down to the air's pressure).
 *
 * @param volume     m³
 * @param pressure   Pa absolute
 * @param ambient    Pa absolute
 * @param heatRatio  1
 * @returns J; burning comes on top
 */
export function burstEnergy(volume: number, pressure: number, ambient: number, heatRatio: number): number {
    if (pressure <= ambient) return 0;
    return pressure * volume / (heatRatio - 1) * (1 - (ambient / pressure) ** ((heatRatio - 1) / heatRatio));
}

/**
 * Pressure of a closed vessel at another temperature (ideal).
 *
 * @param pressure  Pa absolute
 * @param from      K
 * @param to        K
 * @returns Pa absolute
 */
export function pressureAtTemperature(pressure: number, from: number, to: number): number {
    return pressure * to / from;
}

/** Pressure difference over air, Pa, as absolute pressure, Pa; the other way round take it off. */
export function absolutePressure(gauge: number, ambient: number): number {
    return gauge + ambient;
}

/**
 * Foreign gas left after filling to a pressure and letting off again, several times.
 *
 * @param start   1, fraction at first
 * @param ratio   1, high by low absolute pressure
 * @param cycles  count
 * @returns 1, fraction left; ideal gas, well mixed each time, filled with pure gas
 */
export function afterPressureCycles(start: number, ratio: number, cycles: number): number {
    return start * ratio ** -cycles;
}

/**
 * Foreign gas left after sweeping a well-mixed volume.
 *
 * @param start    1, fraction at first
 * @param volumes  1, swept gas over swept volume; dead ends are not swept
 * @returns 1, fraction left
 */
export function afterSweep(start: number, volumes: number): number {
    return start * Math.exp(-volumes);
}
