import { describe, expect, it } from 'vitest';
import { clearSky, clearSkyOnFace, sunHeightSine, sunOnFace } from '../../language/physics/sun.js';
import { near, nearly } from './near.js';

const rad = (degrees: number) => degrees * Math.PI / 180;

describe('the sun', () => {
    it('on a tilted face: Duffie & Beckman, example 1.6.1 (from memory): 43° north, 13 February, 10:30, 45° up, 15° west of south: 35°', () => {
        near(Math.acos(sunOnFace(rad(43), rad(-14), rad(-22.5), rad(45), rad(15))) * 180 / Math.PI, 35, 0.5);
    });
    it('stands at 90° less the latitude at noon of an equinox, and sets at six', () => {
        near(Math.asin(sunHeightSine(rad(52), 0, 0)) * 180 / Math.PI, 38, 1e-9);
        near(sunHeightSine(rad(52), 0, rad(90)), 0, 1e-12);
        expect(clearSky(sunHeightSine(rad(52), 0, rad(120)))).toBe(0);
    });
    it('gives 846 W/m² straight through an air mass of 1.5 (Meinel 1976 with its own figures)', () => {
        // Kasten & Young 1989: an air mass of 1.5 lies at a height of 41.7°.
        nearly(clearSky(Math.sin(rad(41.74))), 1353 * 0.7 ** (1.5 ** 0.678), 3e-3);
        // Upright sun: 0.7 of 1353.
        nearly(clearSky(1), 947, 2e-3);
    });
    it('a face that looks at the sun gets most, one that looks away only the sky', () => {
        const noon = (tilt: number, azimuth: number) => clearSkyOnFace(rad(48), 0, 0, rad(tilt), rad(azimuth));
        expect(noon(48, 0)).toBeGreaterThan(noon(20, 0));
        expect(noon(48, 0)).toBeGreaterThan(noon(48, 60));
        expect(noon(80, 180)).toBeLessThan(0.1 * noon(48, 0));
    });
});
