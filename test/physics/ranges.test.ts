import { describe, expect, it } from 'vitest';
import { solubility, solubilityRange } from '../../language/physics/crossover.js';
import { frictionFactor, frictionRange } from '../../language/physics/flow.js';
import { gasRange, gasViscosity } from '../../language/physics/gases.js';
import { freeConvectionRange, nusseltTurbulentTube, nusseltUpright, turbulentTubeRange } from '../../language/physics/heat.js';
import { compressibility, hydrogenRange } from '../../language/physics/hydrogen.js';
import {
    conductivityRange, conductivitySeeWhite, densityRange, freezingRange, heatCapacityRange, lyeConductivity, lyeDensity,
        lyeFreezingPoint,
    lyeHeatCapacity, lyeVapourPressure, lyeViscosity, seeWhiteRange, strengthFromMolality, vapourRange, viscosityRange,
} from '../../language/physics/lye.js';
import { bubbleCoverage, bubbleRange } from '../../language/physics/polarisation.js';
import type { Range } from '../../language/physics/range.js';
import { outside } from '../../language/physics/range.js';
import { molecularSieveLoading, molecularSieveRange, silicaGelLoading, silicaGelRange } from '../../language/physics/vapour.js';
import { latentHeat, liquidRange, saturationPressure, saturationRange, waterDensity,
    waterViscosity } from '../../language/physics/water.js';
import { reversibleVoltage, voltageRange } from '../../language/physics/water-splitting.js';

/** A law by its range: called with the inputs in the order of the range's names. */
const laws: readonly (readonly [name: string, range: Range, law: (...inputs: number[]) => number])[] = [
    ['reversible voltage', voltageRange, reversibleVoltage],
    ['saturation', { temperature: saturationRange.temperature }, saturationPressure],
    ['water density', liquidRange, waterDensity],
    ['water viscosity', liquidRange, waterViscosity],
    ['latent heat', liquidRange, latentHeat],
    ['density of KOH', densityRange.KOH, (w, t) => lyeDensity('KOH', w!, t!)],
    ['density of NaOH', densityRange.NaOH, (w, t) => lyeDensity('NaOH', w!, t!)],
    ['conductivity of KOH', conductivityRange.KOH, (w, t) => lyeConductivity('KOH', Math.max(w!, 1e-4), t!)],
    ['conductivity of NaOH', conductivityRange.NaOH, (w, t) => lyeConductivity('NaOH', Math.max(w!, 1e-4), t!)],
    ['See & White', seeWhiteRange, conductivitySeeWhite],
    ['viscosity of KOH', viscosityRange.KOH, (w, t) => lyeViscosity('KOH', w!, t!)],
    ['viscosity of NaOH', viscosityRange.NaOH, (w, t) => lyeViscosity('NaOH', w!, t!)],
    ['heat capacity of KOH', heatCapacityRange.KOH, (w, t) => lyeHeatCapacity('KOH', w!, t!)],
    ['heat capacity of NaOH', heatCapacityRange.NaOH, (w, t) => lyeHeatCapacity('NaOH', w!, t!)],
    ['vapour over KOH', vapourRange.KOH, (m, t) => lyeVapourPressure('KOH', strengthFromMolality('KOH', m!), t!)],
    ['vapour over NaOH', vapourRange.NaOH, (m, t) => lyeVapourPressure('NaOH', strengthFromMolality('NaOH', m!), t!)],
    ['freezing of KOH', freezingRange.KOH, w => lyeFreezingPoint('KOH', w!)],
    ['freezing of NaOH', freezingRange.NaOH, w => lyeFreezingPoint('NaOH', w!)],
    ['molecular sieve', molecularSieveRange, molecularSieveLoading],
    ['silica gel', silicaGelRange, (t, rh) => silicaGelLoading(rh!, t!)],
    ['compressibility', { temperature: hydrogenRange.temperature, pressure: [1, hydrogenRange.pressure[1]] }, compressibility],
    ['friction', { reynolds: [1, frictionRange.reynolds[1]] }, re => frictionFactor(re!) * re! * re!],
    ['gas viscosity', gasRange, t => gasViscosity('hydrogen', t!)],
    ['upright face', { rayleigh: freeConvectionRange.rayleigh }, ra => nusseltUpright(ra!, 0.7)],
    ['turbulent tube', turbulentTubeRange, (re, pr) => nusseltTurbulentTube(re!, pr!, true)],
    ['coverage', bubbleRange, bubbleCoverage],
    ['solubility', solubilityRange, (t, w) => solubility('hydrogen', 'KOH', w!, t!)],
];

describe.each(laws)('%s', (_name, range, law) => {
    const names = Object.keys(range);
    it('gives a plain positive number at every corner of its range', () => {
        for (let corner = 0; corner < 1 << names.length; corner++) {
            const inputs = names.map((name, i) => range[name]![(corner >> i) & 1]!);
            const value = law(...inputs);
            expect(Number.isFinite(value), `${inputs} gives ${value}`).toBe(true);
            expect(value, `${inputs}`).toBeGreaterThan(0);
            expect(outside(range, Object.fromEntries(names.map((name, i) => [name, inputs[i]])))).toEqual([]);
        }
    });
    it('just beyond either end is told by name', () => {
        for (const name of names) {
            const [low, high] = range[name]!;
            const by = (high - low) * 1e-6;
            expect(outside(range, { [name]: low - by }).map(b => b.what)).toEqual([name]);
            expect(outside(range, { [name]: high + by }).map(b => b.what)).toEqual([name]);
        }
    });
    it('runs without a jump across its range', () => {
        for (const name of names) {
            const [low, high] = range[name]!;
            const middle = names.map(other => (range[other]![0] + range[other]![1]) / 2);
            const at = (x: number): number => law(...names.map((other, i) => other === name ? Math.min(x, high) : middle[i]!));
            const n = 400;
            // What spans decades is walked by equal factors.
            const point = (k: number): number => low > 0 && high > 100 * low ? low * (high / low) ** (k / n) : low + (high - low) * k / n;
            let largest = 0;
            let span = 0;
            for (let k = 1; k <= n; k++) {
                const step = Math.abs(at(point(k)) - at(point(k - 1)));
                largest = Math.max(largest, step);
                span += step;
            }
            // No single step of 400 takes more than a quarter of the whole way.
            expect(largest, name).toBeLessThanOrEqual(0.25 * span);
        }
    });
});
