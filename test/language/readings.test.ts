/** Readings against what the stack should have given: each number once more by hand. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

const FARADAY = 96485.33212;
const rig = (readings: string, stack = '') => `rig "R", running
supply { sort: bench   voltage: 30 V   current-limit: 20 A }
lye { solute: KOH   strength: 30 wt% }
stack { cells: 12   wetted: 110 x 130 mm   temperature: 55 °C   ${stack} }
path current: supply -> stack
${readings}
`;
const asked = (text: string) => {
    const { workings, findings } = analyseText(text, { today: '2026-06-15' });
    return { told: findings.map(f => f.rule), of: (part: string, name: string) => workings.viewOf(part)!.result(name)! };
};

describe('gas that was read', () => {
    const at = (amperes: number, more = '') => asked(rig(`reading one { date: 2026-05-01   stack.current: ${amperes} A   stack.temperature: 55 °C   ${more} }`));
    it('is expected as the stack makes it where the reading has the working current', () => {
        const { of } = at(20);
        expect(of('one', 'hydrogen-expected').value / of('stack', 'hydrogen-rate').value).toBeCloseTo(1, 4);
        expect(of('one', 'oxygen-expected').value * 2).toBeCloseTo(of('one', 'hydrogen-expected').value, 12);
    });
    it('is less than in proportion at a lower current: the bypass stays', () => {
        expect(at(5).of('one', 'hydrogen-expected').value).toBeLessThan(0.95 * at(20).of('one', 'hydrogen-expected').value / 4);
    });
    it('at most is what Faraday gives', () => {
        expect(at(20).of('one', 'hydrogen-most').value).toBeCloseTo(20 * 12 / (2 * FARADAY), 12);
    });
    it('is off by its share, ± that of meter, ammeter and bypass as squares', () => {
        const { of } = at(20, 'stack.hydrogen-rate: 80 NL/h ± 4 NL/h');
        const off = of('one', 'hydrogen-off');
        const expected = of('one', 'hydrogen-expected');
        expect(off.value).toBeCloseTo(80 / 3600 / 22.413969 / expected.value - 1, 6);
        const own = (expected.high - expected.low) / 2 / expected.value;
        expect((off.high - off.low) / 2 / (1 + off.value) / Math.hypot(0.05, own)).toBeCloseTo(1, 1);
    });
    it('is told beyond that, and not within', () => {
        expect(at(20, 'stack.oxygen-rate: 38 NL/h ± 8 NL/h').told).not.toContain('reading-disagrees');
        expect(at(20, 'stack.oxygen-rate: 38 NL/h ± 1 NL/h').told).toContain('reading-disagrees');
    });
    it('at a low current is not missed where it went past the cells', () => {
        const expected = at(4).of('one', 'hydrogen-expected').value * 22.413969 * 3600;
        expect(expected).toBeLessThan(0.8 * 4 * 12 / (2 * FARADAY) * 22.413969 * 3600);
        expect(at(4, `stack.hydrogen-rate: ${expected.toFixed(2)} NL/h ± 0.2 NL/h`).told).not.toContain('low-faraday-efficiency');
    });
});
describe('water that was used', () => {
    it('is what is split, and vapour from none to all of it', () => {
        const { of } = asked(rig('reading one { date: 2026-05-01   stack.current: 20 A   stack.temperature: 55 °C }'));
        const water = of('one', 'water-expected');
        const split = of('one', 'hydrogen-expected').value * 18.01528e-3;
        const vapour = of('stack', 'vapour-loss').value;
        expect(water.value).toBeCloseTo(split + vapour / 2, 8);
        expect(water.low).toBeLessThan(split);
        expect(water.high).toBeGreaterThan(split + vapour);
    });
});
describe('volts that were read before', () => {
    const two = (warm: number, volts: number) => asked(rig(`reading first { date: 2026-01-10   stack.current: 20 A   stack.voltage: 24 V   stack.temperature: 50 °C }
reading now { date: 2026-05-01   stack.current: 20 A   stack.voltage: ${volts} V   stack.temperature: ${warm} °C }`));
    it('come again where nothing changed', () => {
        expect(two(50, 24).of('now', 'volts-before').value).toBeCloseTo(24, 9);
        expect(two(50, 24.6).of('now', 'volts-gained').value).toBeCloseTo(0.025, 6);
    });
    it('are more where it is colder, by 2 to 8 mV/K for each cell', () => {
        const each = (two(40, 24).of('now', 'volts-before').value - 24) / 12 / 10;
        expect(each).toBeGreaterThan(2e-3);
        expect(each).toBeLessThan(8e-3);
    });
    it('are held against the oldest of the same current, not more than 15 K apart', () => {
        expect(two(30, 24).of('now', 'volts-before').value).toBeNaN();
        expect(two(50, 27.2).told).toContain('cells-drift');
        expect(two(50, 26).told).not.toContain('cells-drift');
    });
});
describe('a stopped stack and an engine that carries it', () => {
    it('holds the volts of its cells, 1.2 to 1.5 V each', () => {
        const held = asked(rig('')).of('stack', 'held-voltage');
        expect(held.low / 12).toBeCloseTo(1.2334, 2);
        expect(held.high / 12).toBeGreaterThan(1.5);
        expect(held.high / 12).toBeLessThan(1.55);
    });
    it('takes more from the shaft than its gas holds', () => {
        const { of } = asked(rig('engine motor { output: 40 kW   on-board: yes }\npath hydrogen: stack -> motor'));
        expect(of('motor', 'shaft-power').value).toBeCloseTo(of('stack', 'power').value / 0.6, 6);
        expect(of('motor', 'made-fuel-power').value).toBeCloseTo(of('stack', 'hydrogen-rate').value * 241826, -1);
        expect(of('motor', 'shaft-power').low).toBeGreaterThan(of('motor', 'made-fuel-power').high);
    });
});
