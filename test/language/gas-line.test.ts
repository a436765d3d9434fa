/** What happens to the gas on its way, read from the text and worked out anew by hand from tables. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { nearly } from '../physics/near.js';

const rig = (text: string) => {
    const { workings } = analyseText(`rig "Gas on its way", drawn
site   { place: outdoors   air-pressure: 101.325 kPa   coldest: 5 °C }
supply { sort: bench   voltage: 30 V   current-limit: 12 A   isolated: yes }
lye    { solute: KOH   strength: 28 wt% }
stack  { cells: 12   wetted: 80 x 100 mm   temperature: 50 °C }
${text}`, { today: '2026-06-15' });
    return (part: string, name: string) => workings.quantity(workings.rig.parts.get(part)!, name)!.value;
};
/** Pa: saturation of water at 5, 20 and 50 °C, steam tables (IAPWS-IF97). */
const SATURATED = { 5: 872.6, 20: 2339.2, 50: 12352 } as const;
const AIR = 101325;

describe('water that drops out of the gas', () => {
    const of = rig(`column h2-column { }
bubbler first { }
bubbler second { }
path hydrogen: stack -> h2-column -> first -> second -> outdoors`);
    it('is what the vapour over the lye has more than gas saturated at 20 °C', () => {
        const vapour = of('lye', 'vapour-pressure');
        const kept = SATURATED[20] / (AIR - SATURATED[20]);
        nearly(of('first', 'water-caught'), of('stack', 'hydrogen-rate') * 0.018015 * (vapour / (AIR - vapour) - kept), 2e-3);
    });
    it('has dropped by the second vessel', () => expect(of('second', 'water-caught')).toBe(0));
});

describe('liquid that is drawn back', () => {
    const column = 'column h2-column { bore: 100 mm   height: 500 mm   level: 250 mm }\nbubbler bottle { }\n';
    it('is as much as the dry gas of the column shrinks by, its moles kept', () => {
        const of = rig(`${column}path hydrogen: stack -> h2-column -> bottle -> outdoors`);
        const vapour = of('lye', 'vapour-pressure');
        const space = Math.PI / 4 * 0.1 ** 2 * 0.25;
        const shrunk = space * (AIR - vapour) / 323.15 * 278.15 / (AIR - vapour / SATURATED[50] * SATURATED[5]);
        nearly(of('bottle', 'sucked-back'), space - shrunk, 2e-3);
    });
    it('is none behind a check valve', () => {
        const of = rig(`${column}check-valve holds { }\npath hydrogen: stack -> h2-column -> holds -> bottle -> outdoors`);
        expect(of('bottle', 'sucked-back')).toBe(0);
    });
});

describe('hydrogen through the wall of a hose', () => {
    it('650 barrer of silicone (Robb 1968, from memory), 2 m of 12 x 2 mm: the flow in the units of that table', () => {
        const of = rig('tube hose { size: 12x2 mm   length: 2 m   material: silicone }\npath hydrogen: stack -> hose -> outdoors');
        const wall = 0.2;
        const face = 2 * Math.PI * 200 * wall / Math.log(12 / 8);
        const perHour = 650e-10 * face * 76 / wall * 3600 * 293.15 / 273.15;
        nearly(of('hose', 'seepage') * 1e6 * 3600, perHour, 2e-3);
    });
    it('is not known where the wall is not told', () => {
        expect(rig('tube hose { bore: 8 mm   material: silicone }\npath hydrogen: stack -> hose -> outdoors')('hose', 'seepage')).toBeNaN();
    });
});

describe('a catalyst in the hydrogen', () => {
    it('is warmed by 483.6 kJ for each mole of oxygen over 29 J/(mol K) of hydrogen (CODATA; tables, 400 K)', () => {
        const of = rig('separator { material: composite }\nrecombiner bed { }\npath hydrogen: stack -> bed -> outdoors');
        nearly(of('bed', 'rise'), of('stack', 'oxygen-in-hydrogen-low') * 483600 / 29.2, 0.02);
    });
});
