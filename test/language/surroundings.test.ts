/** The air around a rig: thin high up, so that the same moles fill more litres and take more water along; and how it gets in. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { near, nearly } from '../physics/near.js';

const rig = (site: string) => `rig "On the pass", drawn
site { place: shed   volume: 20 m3   ${site} }
supply { voltage: 26 V   current-limit: 9 A }
lye { solute: KOH   strength: 28 wt% }
separator { material: composite }
stack { cells: 12   wetted: 80 x 100 mm   temperature: 55 °C }
bag { volume: 50 L   dead-volume: 1 L }
path hydrogen: stack -> bag
path oxygen: stack -> outdoors
`;
const numbers = (site: string) => {
    const { workings } = analyseText(rig(site), { today: '2026-06-15' });
    const number = (part: string, name: string) => workings.quantity(workings.rig.parts.get(part)!, name)!.value;
    return { air: number('site', 'air-pressure'), rate: number('stack', 'hydrogen-rate'), fill: number('bag', 'fill-time'), energy: number('bag', 'stored-energy'), clock: number('site', 'room-clock'), wet: number('stack', 'hydrogen-rate-wet'), vapour: number('lye', 'vapour-pressure'), water: number('stack', 'vapour-loss') };
};
const high = numbers('altitude: 1500 m');

describe('at 1500 m (US Standard Atmosphere 1976: 84 556 Pa)', () => {
    // A mole at 20 °C and 84 556 Pa: 8.314462618 x 293.15 / 84 556 = 28.826 L (ideal gas).
    const mole = 28.826e-3;
    it('air', () => near(high.air, 84556, 10));
    it('a bag of 49 L that can be used is full sooner, and holds less', () => {
        nearly(high.fill, 49e-3 / (high.rate * mole), 1e-3);
        // 50 L are 1.7346 mol, 241.826 kJ each (CODATA).
        nearly(high.energy, 1.7346 * 241826, 1e-3);
    });
    it('the room reaches 1 % sooner: 20 m³ x ln(1/0.99) over the gas', () => {
        nearly(high.clock, 20 * 0.0100503 / (high.rate * mole), 1e-3);
    });
    it('the gas over the lye is moister (Dalton)', () => {
        const dry = 84556 - high.vapour;
        nearly(high.wet, high.rate * 8.314462618 * 328.15 / dry, 1e-3);
        nearly(high.water, 1.5 * high.rate * high.vapour / dry * 18.01528e-3, 1e-3);
    });
    it('is the standard atmosphere where no height is said', () => {
        expect(numbers('').air).toBe(101325);
    });
});

describe('openings that all lie at one height', () => {
    const flow = (openings: string) => {
        const { workings } = analyseText(rig(`openings: ${openings}`), { today: '2026-06-15' });
        return workings.quantity(workings.rig.parts.get('site')!, 'passive-flow')!.value;
    };
    it('pass no more than the textbook form for one opening, and what their grilles leave free', () => {
        // A third of 0.6 x area x √(g h ΔT/T): 0.1 m², 0.3 m high, 2 K at 293 K (from memory).
        const textbook = 0.6 / 3 * 0.1 * Math.sqrt(9.80665 * 0.3 * 2 / 293.15);
        const open = flow('0.05 m2 at 2 m free 100 %, 0.05 m2 at 2 m free 100 %');
        expect(open).toBeLessThanOrEqual(textbook);
        expect(open).toBeGreaterThan(0.7 * textbook);
        nearly(flow('0.05 m2 at 2 m free 40 %, 0.05 m2 at 2 m free 40 %'), 0.4 * open, 1e-9);
    });
});

describe('a relief valve behind a compressor', () => {
    const inflow = (site: string) => {
        const { workings } = analyseText(`rig "Press", drawn
site { place: shed   ${site} }
stack { cells: 12   wetted: 80 x 100 mm }
bag { volume: 50 L }
compressor { displacement: 8 cm3   speed: 2900 rpm }
cylinder { volume: 20 L   rating: 16 bar }
relief-valve { set: 14 bar   capacity: 8 m3/h hydrogen }
path hydrogen: stack -> bag -> compressor -> cylinder -> relief-valve -> outdoors
path oxygen: stack -> outdoors
`, { today: '2026-06-15' });
        return workings.quantity(workings.rig.parts.get('relief-valve')!, 'worst-inflow')!.value;
    };
    it('must bear what the coldest day brings: 8 cm³ at 2900 rpm are 23.2 L/min, 1.0743 mol a minute at -10 °C and 1 atm (ideal gas)', () => {
        nearly(inflow('coldest: -10 °C   hottest: 30 °C') * 60, 1.0743, 1e-3);
        // Not less than at 20 °C: 0.9645 mol a minute.
        nearly(inflow('coldest: 25 °C   hottest: 30 °C') * 60, 0.9645, 1e-3);
    });
});
