import { describe, expect, it } from 'vitest';
import {
    boardBow, boardStress, boltForce, faceForce, gasketSqueeze, gasketStress, rubberModulus, squeezeUnderStress,
} from '../../language/physics/solids.js';
import { near, nearly } from './near.js';

describe('shells and faces', () => {
    it('force on a face', () => {
        nearly(faceForce(5e4, 0.015), 750, 1e-12);
    });
});

describe('boards', () => {
    it('10 mm PVC under 4 kN over 160 mm bows 1.4 mm; 25 mm 0.09 mm (Timoshenko: 0.00406 for a square)', () => {
        near(boardBow(4000, 0.16, 0.16, 0.010, 3e9, 0.38) * 1e3, 1.4, 0.05);
        near(boardBow(4000, 0.16, 0.16, 0.025, 3e9, 0.38) * 1e3, 0.09, 0.005);
    });
    it('a long board bends like a beam strip (5/384)', () => {
        const q = 4000 / (0.1 * 0.5);
        const strip = 5 / 384 * q * 0.1 ** 4 / (3e9 * 0.01 ** 3 / (12 * (1 - 0.09)));
        nearly(boardBow(4000, 0.1, 0.5, 0.01, 3e9, 0.3), strip, 0.01);
        nearly(boardStress(4000, 0.1, 0.5, 0.01), 6 * q * 0.01 / 8 / 1e-4, 0.01);
    });
    it('falls with the cube of the thickness', () => {
        nearly(boardBow(1, 0.1, 0.15, 0.02, 1e9) * 8, boardBow(1, 0.1, 0.15, 0.01, 1e9), 1e-12);
    });
});

describe('bolts and gaskets', () => {
    it('10 N·m on M8 gives about 6 kN dry (common practice)', () => {
        nearly(boltForce(10, 0.008), 6250, 1e-9);
    });
    it('squeeze and the stress that is left under pressure', () => {
        nearly(gasketSqueeze(2e-3, 1.5e-3), 0.25, 1e-12);
        nearly(gasketStress(10000, 1e5, 0.02, 0.004), 2e6, 1e-12);
        expect(gasketStress(1000, 1e5, 0.02, 0.004)).toBe(0);
    });
    it('rubber of 60 Shore A is some 3.6 MPa (Gent, from memory); wide thin rings are stiff', () => {
        nearly(rubberModulus(60) / 1e6, 3.6, 0.03);
        expect(squeezeUnderStress(1e6, 3.6e6, 0.02, 0.001)).toBeLessThan(squeezeUnderStress(1e6, 3.6e6, 0.004, 0.002));
        expect(squeezeUnderStress(1e9, 3.6e6, 0.004, 0.002)).toBe(0.6);
    });
});
