import { describe, expect, it } from 'vitest';
import { ATMOSPHERE } from '../../language/physics/constants.js';
import {
    bestConductingStrength, conductivityGilliam, conductivitySeeWhite, heatOfSolution, lyeBoilingPoint, lyeConductivity,
    lyeDensity, lyeFreezingPoint, lyeHeatCapacity, lyeSurfaceTension, lyeVapourPressure, lyeViscosity, mixingRise,
    molality, molarity, saturationStrength, strengthFromMasses, strengthFromMolality, strengthFromMolarity,
} from '../../language/physics/lye.js';
import { saturationPressure, waterDensity, waterHeatCapacity, waterViscosity } from '../../language/physics/water.js';
import { celsius, near, nearly } from './near.js';

describe('measures of strength', () => {
    it('molality and back', () => {
        for (const w of [0.05, 0.1, 0.2, 0.3]) {
            for (const solute of ['KOH', 'NaOH'] as const) nearly(strengthFromMolality(solute, molality(solute, w)), w, 1e-12);
        }
    });
    it('molarity and back', () => {
        near(strengthFromMolarity('KOH', molarity('KOH', 0.27, 310), 310), 0.27, 1e-7);
        near(strengthFromMolarity('NaOH', molarity('NaOH', 0.4, 310), 310), 0.4, 1e-7);
    });
    it('from what was weighed out, with the water that flakes hold', () => {
        nearly(strengthFromMasses(0.3, 0.7), 0.3, 1e-12);
        nearly(strengthFromMasses(1, 2, 0.9), 0.3, 1e-12);
    });
});

describe('density', () => {
    it('starts at pure water and rises with strength, falls with warmth', () => {
        nearly(lyeDensity('NaOH', 0, 320), waterDensity(320), 1e-12);
        nearly(lyeDensity('KOH', 0, 320), waterDensity(320), 1e-3);
        for (const solute of ['KOH', 'NaOH'] as const) {
            for (let w = 0.02; w <= 0.5; w += 0.02) {
                expect(lyeDensity(solute, w, 330)).toBeGreaterThan(lyeDensity(solute, w - 0.02, 330));
                expect(lyeDensity(solute, w, 330)).toBeLessThan(lyeDensity(solute, w, 310));
            }
        }
    });
});

describe('conductivity', () => {
    it('pure water does not conduct', () => expect(conductivityGilliam(0, 300)).toBe(0));
    it('KOH: See & White returns nonsense under 15 wt% and is refused there', () => {
        expect(conductivitySeeWhite(0.05, celsius(25))).toBeNaN();
        expect(conductivitySeeWhite(0.149, celsius(25))).toBeNaN();
        expect(conductivitySeeWhite(0.46, celsius(25))).toBeNaN();
        expect(conductivitySeeWhite(0.15, celsius(25))).toBeGreaterThan(0);
        expect(conductivitySeeWhite(0.45, celsius(25))).toBeGreaterThan(0);
    });
    it('NaOH: its crest moves to stronger lye when warm', () => {
        expect(bestConductingStrength('NaOH', celsius(20))).toBeGreaterThan(0.13);
        expect(bestConductingStrength('NaOH', celsius(20))).toBeLessThan(0.18);
        expect(bestConductingStrength('NaOH', celsius(80))).toBeGreaterThan(bestConductingStrength('NaOH', celsius(20)) + 0.04);
        // Never at the strong end, where the law climbs on: it is no strength to offer.
        for (let t = 20; t <= 100; t += 5) expect(bestConductingStrength('NaOH', celsius(t))).not.toBeGreaterThan(0.29);
        expect(bestConductingStrength('NaOH', celsius(100))).toBeNaN();
    });
    it('KOH conducts best near 27 wt% when cold and stronger when warm (Gilliam et al. 2007)', () => {
        near(bestConductingStrength('KOH', celsius(25)), 0.27, 0.015);
        expect(bestConductingStrength('KOH', celsius(80))).toBeGreaterThan(bestConductingStrength('KOH', celsius(25)));
    });
    it('grows with warmth everywhere', () => {
        for (const solute of ['KOH', 'NaOH'] as const) {
            for (let w = 0.01; w <= 0.42; w += 0.02) {
                for (let t = 10; t < 95; t += 5) {
                    expect(lyeConductivity(solute, w, celsius(t + 5)),
                        `${solute} ${w} ${t}`).toBeGreaterThan(lyeConductivity(solute, w, celsius(t)));
                }
            }
        }
    });
});

describe('viscosity, heat capacity, thermal conductivity, skin', () => {
    it('no solute has the viscosity of water', () => {
        nearly(lyeViscosity('KOH', 0, celsius(40)), waterViscosity(celsius(40)), 0.01);
        nearly(lyeViscosity('NaOH', 1e-6, celsius(40)), waterViscosity(celsius(40)), 0.01);
    });
    it('no solute has the heat capacity of water', () => expect(lyeHeatCapacity('KOH', 0, 320)).toBe(waterHeatCapacity(320)));
    it('the skin of lye is stronger than water\'s', () => {
        for (const solute of ['KOH', 'NaOH'] as const) {
            expect(lyeSurfaceTension(solute, 0.3, celsius(25))).toBeGreaterThan(0.08);
            expect(lyeSurfaceTension(solute, 0.3, celsius(25))).toBeLessThan(0.10);
        }
    });
});

describe('vapour, boiling, freezing', () => {
    it('no strength gives the pressure over water; strength lowers it throughout', () => {
        for (const solute of ['KOH', 'NaOH'] as const) {
            nearly(lyeVapourPressure(solute, 0, celsius(60)), saturationPressure(celsius(60)), 0.01);
            for (let w = 0.02; w <= 0.5; w += 0.02) {
                expect(lyeVapourPressure(solute, w, 330)).toBeLessThan(lyeVapourPressure(solute, w - 0.02, 330));
            }
        }
    });
    it('boils where its vapour has the pressure of the air', () => {
        const boiling = lyeBoilingPoint('KOH', 0.3, ATMOSPHERE);
        nearly(lyeVapourPressure('KOH', 0.3, boiling), ATMOSPHERE, 1e-4);
        expect(lyeBoilingPoint('KOH', 0.3, 1)).toBeNaN();
    });
    it('strong NaOH freezes where KOH does not', () => {
        expect(lyeFreezingPoint('NaOH', 0.3)).toBeGreaterThan(lyeFreezingPoint('KOH', 0.3) + 30);
    });
    it('KOH dissolves about as far as NaOH at 20 °C (from memory)', () => near(saturationStrength('KOH', celsius(20)), 0.528, 0.02));
});

describe('mixing', () => {
    it('strong lye gives less heat per kilogram and still gets hotter', () => {
        for (const solute of ['KOH', 'NaOH'] as const) {
            expect(heatOfSolution(solute, 0.5)).toBeLessThan(heatOfSolution(solute, 0.2));
            expect(mixingRise(solute, 0.3, 293.15)).toBeGreaterThan(mixingRise(solute, 0.1, 293.15));
        }
    });
});
