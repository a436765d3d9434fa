import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { airDensity, AIR_HEAT_CAPACITY, airThermalConductivity, gasViscosity } from '../../language/physics/gases.js';
import {
    counterflowEffectiveness, counterflowHeat, freeFilm, meanDifference, nusseltAnnulusInner, nusseltAnnulusOuter,
        nusseltCylinder,
    nusseltLaminarTube, nusseltTurbulentTube, nusseltUpright, nusseltUprightLaminar, parallelEffectiveness, radiation,
        rayleighOfAir,
    shortFilm, steadyTemperature, surfaceLoss, temperatureAfter, timeConstant, tubeConductance,
} from '../../language/physics/heat.js';
import { stackUlleberg } from '../../language/physics/polarisation.js';
import { celsius, near, nearly } from './near.js';

describe('still air', () => {
    it('upright plate: Serth, example 9.2 (147.16)', () => {
        nearly(nusseltUpright(2.63e9 * 0.69, 0.69), 147.162, 1e-4);
    });
    it('both forms of Churchill & Chu 1975 at Pr 0.707', () => {
        for (const [ra, all, laminar] of [[1e5, 9.208, 9.820], [1e7, 31.20, 29.58], [1e9, 122.78, 92.08]] as const) {
            nearly(nusseltUpright(ra, 0.707), all, 1e-3);
            nearly(nusseltUprightLaminar(ra, 0.707), laminar, 1e-3);
        }
    });
    it('lying cylinder: textbook example (Incropera 9.4: Ra 5.073e6, Pr 0.697, Nu 23.3, from memory)', () => {
        // 1.2 %: the book rounds on its way.
        nearly(nusseltCylinder(5.073e6, 0.697), 23.3, 0.012);
    });
    it('air at 40 °C (textbook table)', () => {
        // 1 %: Sutherland and standard atmosphere against the table.
        const density = airDensity(celsius(40));
        nearly(gasViscosity('air', celsius(40)) / density, 1.702e-5, 0.01);
        nearly(airThermalConductivity(celsius(40)), 0.02735, 0.01);
        nearly(airThermalConductivity(celsius(40)) / (density * AIR_HEAT_CAPACITY), 2.408e-5, 0.01);
    });
    it('plate 0.2 m, 60 °C in 20 °C air', () => {
        nearly(rayleighOfAir(celsius(60), celsius(20), 0.2), 2.445e7, 0.02);
        nearly(freeFilm(celsius(60), celsius(20), 0.2), 5.51, 0.01);
        const laminar = nusseltUprightLaminar(2.445e7, 0.707) * 0.02735 / 0.2;
        nearly(laminar, 5.04, 0.01);
    });
    it('radiation of a black face at 60 °C to 20 °C: 279 W/m² (Stefan-Boltzmann)', () => {
        nearly(radiation(celsius(60), celsius(20), 1), 5.670374e-8 * (333.15 ** 4 - 293.15 ** 4), 1e-6);
        near(radiation(celsius(60), celsius(20), 1), 279.8, 0.5);
        expect(radiation(300, 300, 0.9)).toBe(0);
    });
    it('loss is nothing at room temperature, odd around it, and grows', () => {
        near(surfaceLoss(293.15, 293.15, 1, 0.3, 0.9), 0, 1e-9);
        expect(surfaceLoss(283.15, 293.15, 1, 0.3, 0.9)).toBeLessThan(0);
        for (let t = 20; t < 90; t += 5) {
            expect(surfaceLoss(celsius(t + 5), 293.15, 1, 0.3, 0.9)).toBeGreaterThan(surfaceLoss(celsius(t), 293.15, 1, 0.3,
                0.9));
        }
    });
    it('short film form of a commercial unit (Diéguez et al. 2008) lies within a third of Churchill & Chu', () => {
        nearly(shortFilm(40, 0.2), freeFilm(celsius(60), celsius(20), 0.2), 0.35);
    });
});

describe('coolers', () => {
    it('mean difference (Incropera, example 11.1)', () => {
        near(meanDifference(100 - 40.2, 60 - 30), 43.200, 1e-3);
        near(meanDifference(100 - 30, 60 - 40.2), 39.753, 1e-3);
        expect(meanDifference(10, 10)).toBe(10);
        nearly(meanDifference(10, 10.0005), 10.00025, 1e-9);
        expect(meanDifference(10, -1)).toBeNaN();
        expect(meanDifference(10, 0)).toBe(0);
    });
    it('the oil cooler of Incropera, example 11.1', () => {
        const hot = 0.1 * 2131;
        const cold = 0.2 * 4178;
        const heat = hot * 40;
        nearly(heat, 8524, 2e-3);
        near(30 + heat / cold, 40.2, 0.01);
        const area = heat / (37.8 * meanDifference(100 - 40.2, 60 - 30));
        nearly(area, 5.223, 2e-3);
        nearly(area / (Math.PI * 0.025), 66.5, 2e-3);
        // The same cooler forwards.
        nearly(counterflowHeat(37.8 * area, hot, cold, 100, 30), heat, 1e-4);
    });
    it('effectiveness (Kays & London)', () => {
        for (const [units, ratio, share] of [
            [1, 0, 0.6321], [1, 0.5, 0.5647], [1, 1, 0.5000], [2, 0.5, 0.7746], [2, 1, 0.6667], [3, 0.75, 0.8171],
                [5, 0.7, 0.9207],
        ] as const) near(counterflowEffectiveness(units, ratio), share, 1e-4);
        near(parallelEffectiveness(50, 1), 0.5, 1e-6);
        expect(counterflowEffectiveness(0, 0.5)).toBe(0);
        near(counterflowEffectiveness(2, 0.9999989), counterflowEffectiveness(2, 1), 1e-5);
        expect(counterflowHeat(10, 10, 10, 290, 300)).toBe(0);
    });
    it('tube and annulus (Kays & Perkins, as in Incropera table 8.2)', () => {
        expect(nusseltLaminarTube.constantTemperature).toBe(3.66);
        expect(nusseltLaminarTube.constantHeat).toBe(4.36);
        for (const [ratio, inner, outer] of [[0.05, 17.46, 4.06], [0.1, 11.56, 4.11], [0.25, 7.37, 4.23], [0.5, 5.74, 4.43],
            [1, 4.86, 4.86]] as const) {
            nearly(nusseltAnnulusInner(ratio), inner, 5e-3);
            nearly(nusseltAnnulusOuter(ratio), outer, 5e-3);
        }
        // A worked example reads 5.63 at 0.56.
        near(nusseltAnnulusInner(0.56), 5.63, 0.01);
    });
    it('turbulent tube (Dittus & Boelter)', () => {
        for (const [re, pr, nu] of [[1e4, 0.7, 31.61], [1e4, 5, 69.39], [5e4, 3,
            205.0]] as const) nearly(nusseltTurbulentTube(re, pr, true), nu, 1e-3);
        expect(nusseltTurbulentTube(1e4, 5, false)).toBeLessThan(nusseltTurbulentTube(1e4, 5, true));
        expect(nusseltTurbulentTube(2000, 5, true)).toBeNaN();
    });
    it('films on both sides of a thin tube: 37.8 W/(m²·K) from 2250 and 38.4 (Incropera, example 11.1, from memory)', () => {
        nearly(tubeConductance(2250, 38.4, 0.025, 0.025, 400, 66.5) / (Math.PI * 0.025 * 66.5), 37.8, 2e-3);
    });
    it('the wall of a tube: 50 and 60 mm, 20 W/(m·K), loses 689 W a metre for 1 K (textbook, 2 π k / ln of the diameters)', () => {
        // Films that do not resist leave the wall alone: 2 π 20 / ln 1.2 = 125.664 / 0.182322.
        nearly(tubeConductance(1e12, 1e12, 0.05, 0.06, 20, 1), 689.2, 1e-4);
        // A thin wall is a flat one: conductivity x area / thickness, 1 mm on a mean diameter of 501 mm.
        nearly(tubeConductance(1e12, 1e12, 0.5, 0.502, 20, 1), 20 * Math.PI * 0.501 / 1e-3, 1e-5);
    });
});

describe('warming of a stack (lumped constants of Ulleberg 2003: 625 kJ/K, 0.167 K/W)', () => {
    const capacity = 625e3;
    const conductance = 1 / 0.167;
    it('time constant and loss', () => {
        nearly(timeConstant(capacity, conductance) / 3600, 28.99, 1e-3);
        nearly(60 * conductance, 359, 1e-3);
    });
    it('hours to 40, 60, 80 °C without cooling: against an ODE solver, and against the published figures', () => {
        for (const [current, hours] of [[250, [1.72, 5.13, 12.3]], [500, [0.58, 1.57, 2.92]],
            [750, [0.31, 0.81, 1.44]]] as const) {
            const warming = (t: number): number => (21 * current * (stackUlleberg(current / 0.25,
                celsius(t)) - 1.477) - (t - 20) * conductance) / capacity;
            // Simpson on the time per kelvin.
            const toReach = (goal: number): number => {
                const n = 2000;
                const h = (goal - 25) / n;
                let sum = 0;
                for (let k = 0; k <= n; k++) sum += (k === 0 || k === n ? 1 : k % 2 ? 4 : 2) / warming(25 + k * h);
                return sum * h / 3;
            };
            const solver = new Solver(1);
            solver.absoluteTolerance = solver.relativeTolerance = 1e-9;
            [40, 60, 80].forEach((goal, i) => {
                const time = toReach(goal);
                // 2 %: the figures come from 10 s steps.
                nearly(time / 3600, hours[i]!, 0.02, `${current} A to ${goal} °C`);
                const { y } = solver.solve((_x: number, state: number[]) => [warming(state[0]!)], 0, [25], time);
                near(y[0]!, goal, 1e-3);
            });
        }
    });
    it('steady heat: the exponential, against an ODE solver', () => {
        const solver = new Solver(1);
        solver.absoluteTolerance = solver.relativeTolerance = 1e-10;
        const heat = 500;
        const { y } = solver.solve((_x: number, state: number[]) => [(heat - (state[0]! - 20) * conductance) / capacity],
            0, [25], 36000);
        near(temperatureAfter(25, 20 + heat / conductance, 36000, timeConstant(capacity, conductance)), y[0]!, 1e-6);
    });
    it('steady temperature balances heat and loss', () => {
        const heat = (t: number): number => 150 - 0.5 * (t - 293.15);
        const loss = (t: number): number => surfaceLoss(t, 293.15, 0.6, 0.3, 0.9);
        const t = steadyTemperature(heat, loss, 293.15, 400);
        near(heat(t), loss(t), 1e-3);
        expect(steadyTemperature(() => 0, loss, 293.15, 400)).toBe(293.15);
        expect(steadyTemperature(() => 1e6, loss, 293.15, 400)).toBe(400);
        expect(steadyTemperature(() => NaN, loss, 293.15, 400)).toBeNaN();
    });
});
