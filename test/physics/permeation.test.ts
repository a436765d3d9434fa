import { describe, expect, it } from 'vitest';
import { fromBarrer, permeationFlow, permeationThroughTube, permeationWarmth } from '../../language/physics/permeation.js';
import { materials } from '../../language/vocabulary/materials.js';
import { celsius, nearly } from './near.js';

describe('permeation', () => {
    it('one barrer is the same in the table of materials (650 of silicone: Robb 1968, from memory)', () => nearly(materials.get('silicone')!.hydrogenPermeability!, fromBarrer(650), 1e-12));
    it('is as at its own temperature there', () => nearly(permeationWarmth(celsius(30), celsius(30)), 1, 1e-12));
    it('consistency, no outside number: twice the area, half the film and half the pressure give twice the flow; none uphill of nothing', () => {
        nearly(permeationFlow(1e-15, 2, 50e-6, 5e4), 2 * permeationFlow(1e-15, 1, 100e-6, 1e5), 1e-12);
        expect(permeationFlow(1e-15, 1, 1e-4, 0)).toBe(0);
        expect(permeationFlow(1e-15, 1, 1e-4, -1e5)).toBeLessThan(0);
    });
    it('a thin tube is a flat film; a thick one lets through what thin shells one in the other do', () => {
        nearly(permeationThroughTube(1e-15, 2, 0.1, 0.1002, 1e5), permeationFlow(1e-15, 2 * Math.PI * 0.1001, 1e-4, 1e5), 1e-5);
        const shells = 2000;
        let resistance = 0;
        for (let i = 0; i < shells; i++) resistance += 1 / permeationFlow(1e-15, 2 * Math.PI * (6e-3 + (i + 0.5) * 6e-3 / shells), 3e-3 / shells, 1);
        nearly(permeationThroughTube(1e-15, 2, 6e-3, 12e-3, 1e5), 1e5 / resistance, 1e-6);
    });
});
