import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import {
    latentHeat, saturationPressure, saturationTemperature, waterDensity, waterHeatCapacity, waterSurfaceTension,
    waterThermalConductivity, waterViscosity,
} from '../../language/physics/water.js';
import { celsius, near, nearly } from './near.js';

describe('saturation', () => {
    it('live against the ASHRAE form of psychrolib', () => {
        psychrolib.SetUnitSystem(psychrolib.SI);
        // 0.05 %: two formulations, each good to 0.03 %.
        for (let t = 1; t <= 110; t += 3) nearly(saturationPressure(celsius(t)), psychrolib.GetSatVapPres(t), 5e-4, `${t} °C`);
    });
    it('backwards it gives the temperature again', () => {
        for (let t = 0.01; t < 370; t += 7) near(saturationTemperature(saturationPressure(celsius(t))), celsius(t), 1e-5);
        near(saturationTemperature(101325), 373.124, 1e-3, 'normal boiling point');
    });
    it('is unknown above the critical point and for no pressure', () => {
        expect(saturationPressure(650)).toBeNaN();
        expect(saturationTemperature(0)).toBeNaN();
        expect(saturationTemperature(3e7)).toBeNaN();
    });
});

describe('liquid water against IAPWS-95 at 1 atm', () => {
    // Columns: °C, kg/m³, Pa·s, J/kg/K, W/m/K, N/m, kJ/kg of evaporation.
    const table = [
        [5, 999.96663, 1.518173e-3, 4205.038, 0.567794, 0.07494171, 2489.042],
        [20, 998.20715, 1.001596e-3, 4184.051, 0.598012, 0.07273614, 2453.519],
        [25, 997.04764, 0.890022e-3, 4181.315, 0.606516, 0.07197221, 2441.676],
        [40, 992.21635, 0.652729e-3, 4179.415, 0.628486, 0.06959631, 2405.977],
        [60, 983.19582, 0.466035e-3, 4184.953, 0.651000, 0.06623826, 2357.655],
        [80, 971.79040, 0.354051e-3, 4196.753, 0.666994, 0.06267285, 2308.004],
        [95, 961.88792, 0.297085e-3, 4210.171, 0.675167, 0.05986977, 2269.525],
    ] as const;
    it.each(table)('%d °C', (t, density, viscosity, heat, conduction, tension, latent) => {
        nearly(waterDensity(celsius(t)), density, 1e-4);
        nearly(waterViscosity(celsius(t)), viscosity, 0.01);
        nearly(waterHeatCapacity(celsius(t)), heat, 1e-3);
        nearly(waterThermalConductivity(celsius(t)), conduction, 0.015);
        nearly(waterSurfaceTension(celsius(t)), tension, 5e-3);
        nearly(latentHeat(celsius(t)), latent * 1e3, 1e-3);
    });
    it('is densest near 4 °C and never has a negative skin', () => {
        expect(waterDensity(celsius(4))).toBeGreaterThan(waterDensity(celsius(2)));
        expect(waterDensity(celsius(4))).toBeGreaterThan(waterDensity(celsius(6)));
        expect(waterSurfaceTension(700)).toBe(0);
    });
});
