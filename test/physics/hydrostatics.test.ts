import { describe, expect, it } from 'vitest';
import { columnHeight, columnPressure, levelShift, pushTime } from '../../language/physics/hydrostatics.js';
import { nearly } from './near.js';

describe('columns', () => {
    it('pressure and height are each other\'s inverse; 100 mm of water is 0.981 kPa', () => {
        nearly(columnPressure(1000, 0.1), 980.665, 1e-9);
        nearly(columnHeight(1280, columnPressure(1280, 0.25)), 0.25, 1e-12);
    });
    it('a pressure shared by two columns: equal ones move half each', () => {
        nearly(levelShift(1255, 1280, 50e-4, 50e-4), 0.05, 2e-3);
        // A wide column hardly moves against a narrow one.
        nearly(levelShift(1000, 1000, 99e-4, 1e-4), columnHeight(1000, 1000) / 100, 1e-12);
    });
    it('one gas outlet blocked: levels part in a minute (U-tube and Boyle)', () => {
        // Two columns of 50.27 cm², 1280 kg/m³, 0.7 L of gas above, 54.8 L/h. 5 %.
        for (const [depth, kilopascal, seconds] of [[0.05, 1.255, 17], [0.14, 3.52, 49], [0.25, 6.28, 91]] as const) {
            nearly(columnPressure(1280, 2 * depth) / 1e3, kilopascal, 5e-3);
            nearly(pushTime(54.8e-3 / 3600, 0.7e-3, depth, 1280, 50.27e-4, 50.27e-4, 101325), seconds, 0.05);
            nearly(pushTime(109.6e-3 / 3600, 0.7e-3, depth, 1280, 50.27e-4, 50.27e-4, 101325), seconds / 2, 0.05);
        }
        expect(pushTime(1e-5, 1e-3, 0, 1280, 50e-4, 50e-4, 101325)).toBe(0);
    });
});
