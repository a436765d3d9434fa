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
    it('no depth to push takes no time', () => expect(pushTime(1e-5, 1e-3, 0, 1280, 50e-4, 50e-4, 101325)).toBe(0));
});
