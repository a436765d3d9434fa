import { describe, expect, it } from 'vitest';
import { GAS_CONSTANT, MOLAR_MASS } from '../../language/physics/constants.js';
import {
    blowDownTime, frictionFactor, gasTubeDrop, holeFlow, reliefVolumeOfGas, reynolds, smallHoleDrop, smallHoleFlow, subcriticalFactor,
    tubeDrop, tubeFlow,
} from '../../language/physics/flow.js';
import { airDensity, idealGasDensity } from '../../language/physics/gases.js';
import { near, nearly } from './near.js';

const { hydrogen, oxygen, air } = MOLAR_MASS;

describe('tubes', () => {
    it('oxygen loses more than twice as much hydrogen in equal laminar tubes', () => {
        for (const bore of [3e-3, 4e-3, 6e-3]) {
            const h = tubeDrop(109.5e-3 / 3600, bore, 3, idealGasDensity(hydrogen, 298.15, 101325), 8.9e-6);
            expect(tubeDrop(54.8e-3 / 3600, bore, 3, idealGasDensity(oxygen, 298.15, 101325), 20.5e-6)).toBeGreaterThan(h);
        }
    });
    it('friction: laminar, turbulent, and a steady passage between', () => {
        expect(frictionFactor(1000)).toBe(0.064);
        // Textbook: 0.0316 at Re 1e4, 0.018 at 1e5.
        near(frictionFactor(1e4), 0.0316, 1e-4);
        near(frictionFactor(1e5), 0.0178, 1e-4);
        near(frictionFactor(2300), 64 / 2300, 1e-12);
        for (let re = 100; re < 2e4; re += 10) {
            // The drop itself (friction times square) rises throughout.
            expect(frictionFactor(re + 10) * (re + 10) ** 2).toBeGreaterThan(frictionFactor(re) * re ** 2);
        }
        expect(frictionFactor(0)).toBe(Infinity);
        nearly(reynolds(1e-4, 0.01, 1000, 1e-3), 12732, 1e-4);
    });
    it('flow and drop are each other\'s inverse, odd, and nothing at nothing', () => {
        for (const drop of [1e-2, 10, 1e3, 1e5]) {
            for (const fittings of [0, 1.5]) {
                const q = tubeFlow(drop, 0.008, 2, 1000, 1e-3, fittings);
                nearly(tubeDrop(q, 0.008, 2, 1000, 1e-3, fittings), drop, 1e-6);
                nearly(tubeDrop(-q, 0.008, 2, 1000, 1e-3, fittings), -drop, 1e-6);
            }
        }
        expect(tubeDrop(0, 0.01, 1, 1, 1e-5)).toBe(0);
        expect(tubeFlow(0, 0.01, 1, 1, 1e-5)).toBe(0);
    });
    it('a large gas drop: for a small one it is that of the plain formula, too much flow is unknown', () => {
        const gas = GAS_CONSTANT * 293.15 / hydrogen;
        const density = 1e6 / gas;
        const mass = 1e-4;
        nearly(gasTubeDrop(mass, 0.004, 5, 1e6, gas, 8.8e-6, 1), tubeDrop(mass / density, 0.004, 5, density, 8.8e-6, 1), 0.01);
        expect(gasTubeDrop(1, 0.004, 5, 1e6, gas, 8.8e-6, 1)).toBeNaN();
    });
});

describe('holes', () => {
    it('at small differences the nozzle is the plain orifice; it saturates at the critical ratio', () => {
        const density = airDensity(300, 101325);
        nearly(holeFlow(1e-6, 0.6, 101325 + 50, 101325, 300, air, 1.4), density * smallHoleFlow(1e-6, 0.6, 50, density), 1e-3);
        const choked = holeFlow(1e-6, 0.6, 5e5, 2e5, 300, air, 1.4);
        expect(holeFlow(1e-6, 0.6, 5e5, 1e5, 300, air, 1.4)).toBe(choked);
        expect(holeFlow(1e-6, 0.6, 5e5, 3e5, 300, air, 1.4)).toBeLessThan(choked);
        expect(holeFlow(1e-6, 0.6, 1e5, 1e5, 300, air, 1.4)).toBe(0);
    });
    it('a drop and what it drives lead back to each other; twice the flow needs four times the drop', () => {
        for (const drop of [1, 100, 2000]) nearly(smallHoleDrop(1e-6, 0.6, smallHoleFlow(1e-6, 0.6, drop, 1.2), 1.2), drop, 1e-12);
        nearly(smallHoleDrop(1e-6, 0.6, 2e-5, 1.2), 4 * smallHoleDrop(1e-6, 0.6, 1e-5, 1.2), 1e-12);
    });
});

describe('relief valves', () => {
    it('factor F2 ends at 1', () => near(subcriticalFactor(1.4, 0.999999), 1, 1e-4));
    it('F2 is that of the subcritical nozzle', () => {
        // ISO and API write the same nozzle in two ways.
        const ratio = 0.8;
        const k = 1.4;
        const nozzle = holeFlow(1, 1, 1e6, ratio * 1e6, 300, air, k);
        const byFactor = subcriticalFactor(k, ratio) * 1e6 * Math.sqrt(2 * (1 - ratio) * air / (GAS_CONSTANT * 300));
        nearly(nozzle, byFactor, 1e-12);
    });
    it('a valve rated in air passes a quarter of the mass of hydrogen', () => {
        near(reliefVolumeOfGas(1, 1.4, 1.405, air, hydrogen) * hydrogen / air, 0.264, 0.002);
    });
    it('emptying a vessel: exponential while choked', () => {
        const area = 1e-6;
        const rate = holeFlow(area, 0.8, 10e5, 1e5, 293.15, hydrogen, 1.405) * GAS_CONSTANT * 293.15 / (hydrogen * 10e5) / 0.001;
        nearly(blowDownTime(0.001, area, 0.8, 10e5, 4e5, 1e5, 293.15, hydrogen, 1.405), Math.log(2.5) / rate, 1e-3);
        expect(blowDownTime(0.001, area, 0.8, 2e5, 5e5, 1e5, 293.15, hydrogen, 1.405)).toBe(0);
        expect(blowDownTime(0.001, area, 0.8, 5e5, 1e5, 1e5, 293.15, hydrogen, 1.405)).toBe(Infinity);
    });
});
