/** What rules on bag and store decide by, each against its formula written out once more from a textbook. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

const text = `rig "Back into the bag", drawn
site { place: shed   coldest: -10 °C   hottest: 35 °C   air-pressure: 101.325 kPa }
bag { volume: 60 L   rating: 3 kPa   material: latex   thickness: 0.3 mm }
seal bag-seal { depth: 200 mm   pipe: 10 mm bore, 2 m long }
compressor { displacement: 8 cm3   oil: none }
unloader { orifice: 2 mm   if-unpowered: opens }
tee suction
tee discharge
check-valve keep { cracks-at: 2 kPa }
cylinder { volume: 20 L   rating: 16 bar   end-pressure: 0.5 bar }
relief-valve { set: 14 bar   capacity: 36 Nm3/h hydrogen   inlet: 8 mm bore, 1 m long }
switch cut-off { senses: cylinder.pressure   breaks: above 10 bar   makes: below 8 bar }
path hydrogen: bag -> suction -> compressor -> discharge -> keep -> cylinder
path hydrogen: bag -> bag-seal -> outdoors
path hydrogen: discharge -> unloader -> suction
path hydrogen: cylinder -> relief-valve -> outdoors
`;
const { workings } = analyseText(text, { today: '2026-06-15' });
const q = (part: string, name: string) => workings.quantity(workings.rig.parts.get(part)!, name)!.value;

const AIR = 101325;
const MOLAR = 2.01588e-3;
const GAS = 8.314462618;
const ROOM = 293.15;
describe('bag and store', () => {
    it('hydrogen comes back through the unloader at the speed of sound', () => {
        const k = 1.405;
        const upstream = 10e5 + AIR;
        const perArea = upstream * Math.sqrt(k / (GAS * ROOM * MOLAR)) * (2 / (k + 1)) ** ((k + 1) / (2 * (k - 1)));
        // Half a per cent: the ratio of heat capacities is rounded differently.
        expect(q('unloader', 'open-flow')).toBeCloseTo(0.8 * Math.PI / 4 * 0.002 ** 2 * perArea, 2);
        expect(q('unloader', 'open-flow') / (0.8 * Math.PI / 4 * 0.002 ** 2 * perArea)).toBeCloseTo(1, 2);
    });
    it('the seal carries off what takes the rest of the pressure in its pipe', () => {
        // Turbulent by Blasius, entry and exit 1.5: the drop of that flow is what the rating leaves above the depth.
        const flow = q('bag-seal', 'relieves') * GAS * ROOM / AIR;
        const density = AIR * MOLAR / (GAS * ROOM);
        const speed = flow / (Math.PI / 4 * 0.01 ** 2);
        const reynolds = speed * 0.01 * density / 8.8e-6;
        const drop = (0.3164 / reynolds ** 0.25 * 2 / 0.01 + 1.5) * density / 2 * speed ** 2;
        const left = 3000 - 998 * 9.80665 * 0.2;
        expect(reynolds).toBeGreaterThan(4000);
        // 3 %: the friction law itself.
        expect(Math.abs(drop / left - 1)).toBeLessThan(0.03);
    });
    it('a latex bag loses hydrogen by the permeability of rubber', () => {
        const barrer = 3.3464e-16;
        const surface = 1.3 * 4 * Math.PI * (0.06 * 3 / 4 / Math.PI) ** (2 / 3);
        const moles = AIR * 0.06 / (GAS * ROOM);
        expect(q('bag', 'lost-per-day')).toBeCloseTo(50 * barrer * surface * AIR / 0.0003 * 86400 / moles, 3);
    });
    it('gas presses with its temperature', () => {
        expect(q('cylinder', 'pressure-filled-cold')).toBeCloseTo((10e5 + AIR) * 294.26 / 263.15 - AIR, -1);
        expect(q('cylinder', 'pressure-empty-cold')).toBeCloseTo((0.5e5 + AIR) * 263.15 / 293.15 - AIR, -1);
    });
    it('the inlet of the relief valve loses pressure by friction at its own density', () => {
        const pressure = 14e5 + AIR;
        const density = pressure * MOLAR / (GAS * ROOM);
        const flow = 36 / 3600 / 0.022413969 * GAS * ROOM / pressure;
        const speed = flow / (Math.PI / 4 * 0.008 ** 2);
        const reynolds = speed * 0.008 * density / 8.8e-6;
        const drop = (0.3164 / reynolds ** 0.25 * 1 / 0.008 + 1.5) * density / 2 * speed ** 2;
        expect(Math.abs(q('relief-valve', 'inlet-loss') / drop - 1)).toBeLessThan(0.03);
    });
});
