/** What goes while a rig stands for three days: against sums that can be done by hand, and in the table of corners. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { cornersOf } from '../../language/what-if/corners.js';

const NORMAL = 22.413969e-3; // m³/mol at 0 °C and 1 atm
const rig = (more: string, path = 'stack -> h2-column -> bag') => `rig "R", drawn
site { place: outdoors   coldest: 5 °C   hottest: 30 °C }
supply { sort: bench   voltage: 30 V   current-limit: 12 A }
lye { solute: KOH   strength: 30 wt% }
stack { cells: 12   wetted: 100 x 120 mm   gap: 2 mm   temperature: 60 °C }
column h2-column { bore: 80 mm   height: 400 mm   level: 240 mm }
path hydrogen: ${path}
${more}
`;
const asked = (text: string) => {
    const { workings } = analyseText(text, { today: '2026-06-15' });
    return { workings, of: (name: string) => workings.quantity(workings.rig.parts.get(name.slice(0, name.lastIndexOf('.')))!, name.slice(name.lastIndexOf('.') + 1))!.value };
};

describe('hydrogen through walls', () => {
    // 1 m² of natural rubber (49 barrer) of 50 µm lets 2.68 L/h through at 1 atm, polymer handbooks, from memory; the table has 50 barrer.
    const area = 1.3 * (36 * Math.PI) ** (1 / 3) * 0.05 ** (2 / 3);
    it('of a bag: as through so much sheet', () => {
        const lost = asked(rig('bag { volume: 50 L   material: latex   thickness: 1 mm }')).of('bag.lost-idle');
        expect(lost * NORMAL * 1e3 / (72 * 2.68 * 50 / 49 * area * 0.05)).toBeCloseTo(1, 2);
    });
    it('of a bag whose sides are told: through both layers of it', () => {
        const { of } = asked(rig('bag { volume: 50 L   size: 500 x 1000 mm   material: latex   thickness: 1 mm }'));
        expect(of('bag.lost-idle') * NORMAL * 1e3 / (72 * 2.68 * 50 / 49 * 0.05)).toBeCloseTo(1, 2);
    });
    it('of a bag: what a day takes is a third of what three days take', () => {
        const { of } = asked(rig('bag { volume: 50 L   material: latex   thickness: 1 mm }'));
        const full = 0.05 * 101325 / (8.314462618 * 293.15);
        expect(of('bag.lost-per-day') * full * 3 / of('bag.lost-idle')).toBeCloseTo(1, 9);
    });
    it('of a bag: the film told for it reaches from a ball to a cushion of two sheets, four to one', () => {
        const { workings } = asked(rig('bag { volume: 50 L }'));
        const film = workings.viewOf('bag')!.result('film-area')!;
        const ball = (36 * Math.PI) ** (1 / 3) * 0.05 ** (2 / 3);
        // Paper bag formula, Robin, Mathematics Today 40 (2004) 104, from memory: w³(h/πw − 0.142(1 − 10^(−h/w))).
        const cushion = (long: number) => { const side = (0.05 / (long / Math.PI - 0.142 * (1 - 10 ** -long))) ** (1 / 3); return 2 * side * side * long; };
        expect(film.low / ball).toBeCloseTo(1, 2);
        expect(film.value / ball).toBeGreaterThan(cushion(1) / ball);
        expect(film.high).toBeGreaterThan(cushion(4));
        expect(film.high).toBeLessThan(1.1 * cushion(4));
    });
    it('of a bag: never more than is in it', () => {
        const lost = asked(rig('bag { volume: 50 L   material: silicone   thickness: 0.1 mm }')).of('bag.lost-idle');
        expect(lost * 8.314462618 * 293.15 / 101325).toBeCloseTo(0.05, 6);
    });
    it('of a hose of silicone, 6 mm in 9 mm, 2 m: by its own logarithm', () => {
        const { of } = asked(rig('bag { volume: 50 L }\ntube hose { size: 9x1.5 mm   length: 2 m   material: silicone }', 'stack -> h2-column -> hose -> bag'));
        // 650 barrer of 3.3464e-16 mol/(m·s·Pa).
        const expected = 259200 * 2 * Math.PI * 2 * 650 * 3.3464e-16 * 101325 / Math.log(9 / 6);
        expect(of('hose.lost-idle') / expected).toBeCloseTo(1, 2);
        // The material of the bag is not told: the sum holds what is known.
        expect(of('bag.lost-idle')).toBeNaN();
        expect(of('stack.lost-idle')).toBeCloseTo(of('hose.lost-idle'), 12);
    });
    it('is not told of the oxygen side', () => {
        expect(asked(`${rig('bag { volume: 50 L }\ntube hose { size: 9x1.5 mm   length: 2 m   material: silicone }')}path oxygen: stack -> hose -> outdoors\n`).of('hose.lost-idle')).toBeNaN();
    });
});
describe('a cylinder that leaks as its test says', () => {
    const tested = (gas: string) => asked(rig(`bag { volume: 50 L }\ncompressor { displacement: 8 cm3 }\ncylinder { volume: 20 L   rating: 20 bar }\nswitch cut-off { senses: cylinder.pressure   breaks: above 10 bar   makes: below 8 bar }\ntest tight { date: 2026-05-02   covers: cylinder   with: ${gas}   pressure: 10 bar   lasted: 24 h   drop: 0.1 bar   result: passed }`, 'stack -> h2-column -> bag -> compressor -> cylinder'));
    it('with hydrogen: three times what a day takes', () => {
        const { of } = tested('hydrogen');
        expect(of('cylinder.lost-idle') / of('cylinder.stored-gas')).toBeCloseTo(1 - Math.exp(-3 * 0.1 / 11.01325), 6);
    });
    it('with nitrogen: hydrogen goes 3.73 times as fast', () => {
        const { of } = tested('nitrogen');
        expect(of('cylinder.lost-idle') / of('cylinder.stored-gas')).toBeCloseTo(1 - Math.exp(-3 * 3.7278 * 0.1 / 11.01325), 5);
    });
    it('is not known without a test', () => expect(asked(rig('bag { volume: 50 L }\ncylinder { volume: 20 L   rating: 20 bar }')).of('cylinder.lost-idle')).toBeNaN());
});
describe('gas that shrinks', () => {
    it('draws air in where nothing stands between the column and the open air', () => {
        const { of } = asked(rig('', 'stack -> h2-column -> outdoors'));
        // Dry hydrogen of six cells at 60 °C over 30 wt% KOH fills 0.5791 L for 0.5100 L dry (Dalton; Balej 1985); at 5 °C 0.6 % of it is water.
        const share = 1 - 278.15 / 333.15 * (0.5100 / 0.5791) / (1 - 0.0055);
        expect(of('h2-column.shrinks-idle') / (Math.PI / 4 * 0.08 ** 2 * 0.16)).toBeCloseTo(share, 2);
        expect(of('h2-column.oxygen-idle')).toBeCloseTo(0.2095 * share, 2);
    });
    it('draws gas back from a bag, and water from a bubbler', () => {
        expect(asked(rig('bag { volume: 50 L }')).of('h2-column.oxygen-idle')).toBeNaN();
        expect(asked(rig('bubbler { immersion: 40 mm }', 'stack -> h2-column -> bubbler -> outdoors')).of('h2-column.oxygen-idle')).toBeNaN();
    });
});
describe('a battery that stands', () => {
    it.each([['lead-acid', 0.005], ['LFP', 0.0025], ['NiMH', 0.03]])('%s loses a tenth of a month', (sort, lost) => {
        expect(asked(rig(`battery { sort: ${sort}   voltage: 12 V   capacity: 100 Ah   charge: 80 % }`)).of('battery.charge-idle')).toBeCloseTo(0.8 - lost, 9);
    });
});
describe('the corner after three idle days', () => {
    it('tells it, and there alone', () => {
        const text = rig('bag { volume: 50 L   material: latex   thickness: 1 mm }\nbattery { sort: NiMH   voltage: 12 V   capacity: 100 Ah   charge: 80 % }');
        const { workings, of } = asked(text);
        const { corners, lines } = cornersOf(workings, { today: '2026-06-15' });
        const idle = corners.findIndex(c => c.name === 'three idle days');
        for (const [name, quantity] of [['lost through walls', 'stack.lost-idle'], ['gas shrinks', 'h2-column.shrinks-idle'], ['battery left', 'battery.charge-idle']]) {
            const line = lines.find(l => l.name === name)!;
            expect(line.results.map((r, i) => (i === idle ? r?.value : r))).toEqual(corners.map((_, i) => (i === idle ? of(quantity) : undefined)));
        }
        expect(lines.some(l => l.name === 'oxygen drawn in' || l.name === 'lost by the cylinder')).toBe(false);
    });
});
