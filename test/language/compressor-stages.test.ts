/** Compressors of several stages, and several compressors one behind the other on the way of the gas. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

const rig = (path: string, more: string, cutOff = '10 bar') => `rig "R", drawn
site { place: outdoors   coldest: 0 °C   hottest: 35 °C }
supply { voltage: 30 V   current-limit: 12 A }
lye { solute: KOH   strength: 28 wt% }
stack { cells: 12   wetted: 100 x 120 mm   gap: 2 mm }
bag { volume: 100 L   rating: 3 kPa }
cylinder { volume: 20 L   rating: 200 bar }
switch cut-off { senses: cylinder.pressure   breaks: above ${cutOff}   makes: below 2 bar }
${more}
path hydrogen: stack -> bag -> ${path} -> cylinder
`;
function asked(text: string) {
    const { workings, findings } = analyseText(text);
    const of = (name: string) => {
        const [part, ...more] = name.split('.');
        return workings.quantity(workings.rig.parts.get(part)!, more.join('.'))?.value ?? NaN;
    };
    return { of, findings, result: (part: string, name: string) => workings.quantity(workings.rig.parts.get(part)!, name)! };
}
const one = (more = '', cutOff?: string) => asked(rig('press', `compressor press { displacement: 8 cm3   ${more} }`, cutOff));
const row = (first: string, second: string) => asked(rig('low -> high', `compressor low { displacement: ${first} }\ncompressor high { displacement: ${second} }`));

describe('stages of one compressor', () => {
    it('the second delivers more, cooler, with less work for the same gas', () => {
        const [single, two] = [one(), one('stages: 2')];
        expect(two.of('press.stage-ratio')).toBeCloseTo(Math.sqrt(single.of('press.pressure-ratio')), 9);
        expect(two.of('press.free-delivery')).toBeGreaterThan(1.2 * single.of('press.free-delivery'));
        expect(two.of('press.discharge-temperature-hot')).toBeLessThan(single.of('press.discharge-temperature-hot') - 30);
        expect(two.of('press.gas-power') / two.of('press.free-delivery')).toBeLessThan(0.85 * single.of('press.gas-power') / single.of('press.free-delivery'));
        expect(two.of('press.stall-pressure')).toBeGreaterThan(10 * single.of('press.stall-pressure'));
        expect(single.of('press.interstage-pressure')).toBeNaN();
    });
    it('a cooler that leaves the gas warm, or none, is felt by the second stage', () => {
        const hot = ['20 °C', '50 °C', 'none'].map(t => one(`stages: 2   cooled-to: ${t}`).of('press.discharge-temperature-adiabatic'));
        expect(hot[0]).toBeLessThan(hot[1]);
        expect(hot[1]).toBeLessThan(hot[2]);
        // Without a cooler it is as hot as after one stage of the whole ratio.
        expect(hot[2]).toBeCloseTo(one().of('press.discharge-temperature-adiabatic'), 6);
    });
    it('drops all the water that one stage does, most of it between', () => {
        const two = one('stages: 2');
        expect(two.of('press.water-dropped')).toBeCloseTo(one().of('press.water-dropped'), 12);
        // 2339 Pa of vapour at 20 °C (IAPWS): kept as p/(P - p) at each pressure.
        const kept = (pascal: number) => 2339 / (pascal - 2339);
        const ratio = two.of('press.stage-ratio');
        const expected = (kept(101325) - kept(101325 * ratio)) / (kept(101325) * (1 - 1 / ratio ** 2));
        expect(two.of('press.water-dropped-between') / two.of('press.water-dropped')).toBeCloseTo(expected, 2);
    });
    it('at the start of a filling the first stage presses all that is asked', () => {
        expect(one('stages: 2').of('press.free-delivery-start')).toBeCloseTo(one().of('press.free-delivery-start'), 12);
        expect(one('stages: 2').of('press.free-delivery')).toBeLessThan(one('stages: 2').of('press.free-delivery-start'));
    });
});

describe('compressors in a row', () => {
    it('the second draws at the pressure between, and both move the same gas', () => {
        const r = row('24 cm3', '8 cm3');
        expect(r.of('low.presses-to')).toBe(r.of('high.draws-at'));
        expect(r.of('low.pressure-ratio') * r.of('high.pressure-ratio')).toBeCloseTo(1 + 10e5 / 101325, 6);
        expect(r.of('high.free-delivery')).toBe(r.of('low.free-delivery'));
        // What the second takes: its own swept volume at the pressure between, by its own share.
        const taken = 8e-6 * 2900 / 60 * r.of('high.volumetric-efficiency') * (101325 + r.of('high.draws-at')) / 8.314462618 / 293.15;
        expect(taken / r.of('low.free-delivery')).toBeCloseTo(1, 4);
        expect(r.of('low.water-dropped') + r.of('high.water-dropped')).toBeCloseTo(one().of('press.water-dropped'), 7);
    });
    it('equal to one of two stages where the swept volumes fit', () => {
        const two = one('stages: 2   cooled-to: 20 °C');
        const r = asked(rig('low -> high', `compressor low { displacement: 8 cm3   cooled-to: 20 °C }\ncompressor high { displacement: ${8 / two.of('press.stage-ratio')} cm3 }`));
        expect(r.of('low.presses-to') / two.of('press.interstage-pressure')).toBeCloseTo(1, 3);
        expect(r.of('low.free-delivery') / two.of('press.free-delivery')).toBeCloseTo(1, 3);
        expect(r.of('high.discharge-temperature')).toBeCloseTo(two.of('press.discharge-temperature'), 1);
        expect(r.of('high.stall-pressure')).toBeCloseTo(two.of('press.stall-pressure'), -2);
        expect((r.of('low.gas-power') + r.of('high.gas-power')) / two.of('press.gas-power')).toBeCloseTo(1, 3);
    });
    it('the ± of the pressure between comes from both', () => {
        const labels = row('24 cm3 ± 5 %', '8 cm3 ± 5 %').result('high', 'draws-at').spread.shares.map(s => s.root.label);
        expect(labels).toContain('low.displacement');
        expect(labels).toContain('high.displacement');
    });
    it('where several press into one, the pressure between is not known', () => {
        const text = rig('low -> high', 'compressor low { displacement: 8 cm3 }\ncompressor other { displacement: 8 cm3 }\ncompressor high { displacement: 8 cm3 }') + 'path hydrogen: bag -> other -> high\n';
        expect(asked(text).of('high.draws-at')).toBeNaN();
        expect(asked(text).of('high.free-delivery')).toBeNaN();
    });
    it('behind a cylinder of its own it draws what is left in that', () => {
        const r = asked(rig('low -> buffer -> high', 'compressor low { displacement: 24 cm3 }\ncylinder buffer { volume: 10 L   rating: 10 bar   end-pressure: 2 bar }\nswitch buffer-full { senses: buffer.pressure   breaks: above 4 bar   makes: below 3 bar }\ncompressor high { displacement: 8 cm3 }'));
        expect(r.of('low.presses-to')).toBeCloseTo(4e5, 3);
        expect(r.of('high.draws-at')).toBeCloseTo(2e5, 3);
        expect(r.of('high.presses-to')).toBeCloseTo(10e5, 3);
    });
});
