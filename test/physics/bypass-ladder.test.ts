import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import type { Channel, PlateLaw } from '../../language/physics/bypass-ladder.js';
import { holeResistance, leakPastPlate, passageResistance, solveLadder } from '../../language/physics/bypass-ladder.js';
import { near, nearly } from './near.js';

const straight = (volts: number, ohms: number): PlateLaw => ({ volts: i => volts + ohms * i, slope: () => ohms });
const bent: PlateLaw = {
    volts: i => 1.25 + 0.10 * Math.asinh(i / 0.02) + 0.01 * i,
    slope: i => 0.10 / Math.sqrt(i * i + 0.0004) + 0.01,
};

/** The same circuit by one dense matrix: every node its own row, plates as straight lines. Written apart from the solver. */
function dense(cells: number, current: number, volts: number, ohms: number, channels: readonly Channel[]): number[] {
    const size = cells * (1 + channels.length);
    const node = (channel: number, j: number): number => (channel + 1) * cells + j;
    const g = Matrix.zeros(size, size);
    const rhs = Matrix.zeros(size, 1);
    const join = (a: number, b: number, conductance: number): void => {
        g.set(a, a, g.get(a, a) + conductance);
        g.set(b, b, g.get(b, b) + conductance);
        g.set(a, b, g.get(a, b) - conductance);
        g.set(b, a, g.get(b, a) - conductance);
    };
    const feed = (at: number, amperes: number): void => { rhs.set(at, 0, rhs.get(at, 0) + amperes); };
    for (let j = 0; j < cells - 1; j++) {
        join(j, j + 1, 1 / ohms);
        feed(j, volts / ohms);
        feed(j + 1, -volts / ohms);
        channels.forEach((channel, k) => join(node(k, j), node(k, j + 1), 1 / channel.segment));
    }
    channels.forEach((channel, k) => { for (let j = 0; j < cells; j++) join(j, node(k, j), 1 / channel.port); });
    feed(0, current);
    for (let c = 0; c < size; c++) g.set(cells - 1, c, c === cells - 1 ? 1 : 0);
    rhs.set(cells - 1, 0, 0);
    const x = solve(g, rhs);
    return Array.from({ length: cells - 1 }, (_, j) => (x.get(j, 0) - x.get(j + 1, 0) - volts) / ohms);
}

describe('the ladder against circuits solved elsewhere (numpy, ngspice, closed form agree to 1e-9)', () => {
    // 1e-4 relative: print of the figures.
    it('five cells, one channel', () => {
        const ladder = solveLadder(5, 10, straight(1.70, 0.02), [{ port: 20, segment: 2 }]);
        [9.8480, 9.7757, 9.7757, 9.8480].forEach((amperes, j) => nearly(ladder.plates[j]!, amperes, 1e-4));
        [0.1520, 0.0723, 0, -0.0723, -0.1520].forEach((amperes, j) => near(ladder.ports[j]!, amperes, 1e-4));
        near(Math.max(...ladder.segments), 0.2243, 1e-4);
        nearly(ladder.efficiency, 0.98495, 1e-4);
        nearly(ladder.volts, 7.58495, 1e-5);
        // ngspice to more digits.
        nearly(ladder.plates[0]!, 9.848008797, 1e-9);
        nearly(ladder.plates[1]!, 9.775666482, 1e-9);
        nearly(ladder.volts, 7.584947021, 1e-7);
    });
    it('ten cells, two unlike channels', () => {
        const ladder = solveLadder(10, 20, straight(1.60, 0.01), [{ port: 10, segment: 0.5 }, { port: 25, segment: 1.5 }]);
        const half = [19.2305, 18.6713, 18.2921, 18.0725, 18.0006];
        half.forEach((amperes, j) => {
            nearly(ladder.plates[j]!, amperes, 1e-4);
            nearly(ladder.plates[8 - j]!, amperes, 1e-4);
        });
        nearly(Math.max(...ladder.segments.subarray(0, 9)), 1.4554, 1e-4);
        nearly(Math.max(...ladder.segments.subarray(9)), 0.5439, 2e-4);
        nearly(ladder.efficiency, 0.93267, 1e-4);
        nearly(ladder.volts, 16.0653, 1e-5);
    });
    it('twenty cells, one channel', () => {
        const ladder = solveLadder(20, 8, straight(1.55, 0.025), [{ port: 50, segment: 1 }]);
        nearly(ladder.plates[0]!, 7.7990, 1e-4);
        nearly(ladder.least, 7.0652, 1e-4);
        near(ladder.ports[0]!, 0.2010, 6e-5);
        nearly(Math.max(...ladder.segments), 0.9348, 1e-4);
        nearly(ladder.efficiency, 0.91985, 1e-4);
        nearly(ladder.volts, 32.9294, 1e-5);
    });
    it('six cells with a bent law (scipy fsolve and ngspice)', () => {
        const ladder = solveLadder(6, 5, bent, [{ port: 15, segment: 1 }]);
        [4.7412, 4.5927, 4.5443, 4.5927, 4.7412].forEach((amperes, j) => nearly(ladder.plates[j]!, amperes, 1e-4));
        nearly(ladder.efficiency, 0.94040, 1e-4);
        nearly(ladder.volts, 9.5522, 1e-4);
        expect(ladder.settled).toBe(true);
        expect(ladder.reversed).toBe(0);
    });
    it('the same at very low load: plates reverse, and it says so', () => {
        const ladder = solveLadder(6, 0.2, bent, [{ port: 15, segment: 1 }]);
        near(ladder.plates[1]!, -0.046, 1e-3);
        near(ladder.plates[2]!, -0.072, 1e-3);
        near(ladder.efficiency, 0.090, 1e-3);
        expect(ladder.reversed).toBe(3);
        expect(ladder.settled).toBe(true);
    });
    it('twelve cells, four channels (numpy)', () => {
        const law = straight(1.83, 0.0135);
        const area = (bore: number): number => Math.PI * bore * bore / 4;
        // Lye of 94.79 S/m; ports 50 mm of 5 mm bore, channel 15 mm bore, pitch 8 mm; outlets with 0.3 gas.
        const make = (bore: number, length: number): Channel[] => [0, 0, 0.3, 0.3].map(gas => ({
            port: passageResistance(length, area(bore), 94.79, gas), segment: passageResistance(0.008, area(0.015), 94.79, gas),
        }));
        const usual = make(0.005, 0.05);
        nearly(usual[0]!.port, 26.864, 1e-4);
        nearly(usual[2]!.port, 45.870, 1e-4);
        nearly(usual[0]!.segment, 0.4776, 2e-4);
        nearly(usual[2]!.segment, 0.8155, 1e-4);
        // 1e-3 relative: print of the figures.
        const at20 = solveLadder(12, 20, law, usual);
        nearly(at20.efficiency, 0.8846, 1e-3);
        nearly(at20.bypass, 2.31, 2e-3);
        nearly(at20.least, 16.55, 1e-3);
        nearly(solveLadder(12, 20, law, make(0.004, 0.05)).efficiency, 0.9198, 1e-3);
        nearly(solveLadder(12, 20, law, make(0.005, 0.1)).efficiency, 0.9352, 1e-3);
        nearly(solveLadder(6, 20, law, usual).efficiency, 0.9663, 1e-3);
        nearly(solveLadder(12, 10, law, usual).efficiency, 0.7841, 1e-3);
        const at5 = solveLadder(12, 5, law, usual);
        nearly(at5.efficiency, 0.5829, 1e-3);
        nearly(at5.bypass, 2.09, 5e-3);
    });
});

describe('the ladder against other methods, here', () => {
    it('a dense matrix solve', () => {
        const cases: [number, number, number, number, Channel[]][] = [
            [2, 10, 1.7, 0.02, [{ port: 20, segment: 2 }]],
            [7, 12, 1.6, 0.015, [{ port: 9, segment: 0.3 }, { port: 30, segment: 1.1 }, { port: 30, segment: 1.1 }]],
            [25, 40, 1.8, 0.004, [{ port: 6, segment: 0.2 }, { port: 11, segment: 0.5 }]],
        ];
        for (const [cells, current, volts, ohms, channels] of cases) {
            const expected = dense(cells, current, volts, ohms, channels);
            const ladder = solveLadder(cells, current, straight(volts, ohms), channels);
            expected.forEach((amperes, j) => nearly(ladder.plates[j]!, amperes, 1e-9));
        }
    });
    it('the closed form of the uniform ladder (parameters as in Haverkort\'s analytical treatment)', () => {
        for (const [n, current, v0, rc, rp, rm, lambda] of [
            [5, 10, 1.7, 0.02, 20, 2, 0.316483], [20, 8, 1.55, 0.025, 50, 1, 0.143056],
        ] as const) {
            const l = Math.acosh(1 + (rm + rc) / (2 * rp));
            near(l, lambda, 1e-6);
            const ladder = solveLadder(n, current, straight(v0, rc), [{ port: rp, segment: rm }]);
            for (let j = 1; j < n; j++) {
                const leak = (v0 + rc * current) / (rm + rc) * (1 - Math.cosh(l * (j - n / 2)) / Math.cosh(l * n / 2));
                near(ladder.segments[j - 1]!, leak, 1e-9);
                near(current - ladder.plates[j - 1]!, leak, 1e-9);
            }
        }
    });
    it('Kirchhoff holds at every cell, whatever the law', () => {
        const channels = [{ port: 15, segment: 1 }, { port: 40, segment: 3 }];
        for (const current of [0.05, 0.2, 1, 5, 50]) {
            const ladder = solveLadder(9, current, bent, channels);
            expect(ladder.settled, `${current} A`).toBe(true);
            for (let j = 0; j < 9; j++) {
                const before = j === 0 ? current : ladder.plates[j - 1]!;
                const after = j === 8 ? current : ladder.plates[j]!;
                near(before - after, ladder.ports[j]! + ladder.ports[9 + j]!, 1e-8 * Math.max(1, current));
            }
            // Round a mesh: plate, two ports, one piece of channel.
            for (let j = 0; j < 8; j++) {
                const plate = bent.volts(ladder.plates[j]!);
                const way = ladder.ports[j]! * 15 + ladder.segments[j]! * 1 - ladder.ports[j + 1]! * 15;
                near(plate, way, 1e-7);
            }
        }
    });
    it('settles for a law that jumps at no current', () => {
        const jump: PlateLaw = { volts: i => 1.3 * Math.tanh(i / 1e-4) + 0.02 * i,
            slope: i => 1.3e4 / Math.cosh(Math.min(Math.abs(i) / 1e-4, 300)) ** 2 + 0.02 };
        for (const current of [0.01, 0.3, 3, 30]) {
            const ladder = solveLadder(16, current, jump, [{ port: 8, segment: 0.4 }]);
            expect(ladder.settled, `${current} A`).toBe(true);
        }
    });
});

describe('limits and trends', () => {
    it('no channel, or one that resists without end, takes nothing', () => {
        for (const channels of [[], [{ port: Infinity, segment: 1 }], [{ port: 1, segment: Infinity }]]) {
            const ladder = solveLadder(8, 10, straight(1.7, 0.02), channels);
            expect(ladder.efficiency).toBe(1);
            expect([...ladder.plates]).toEqual(Array(7).fill(10));
            nearly(ladder.volts, 7 * 1.9, 1e-12);
            expect(ladder.channelHeat).toBe(0);
        }
        expect(solveLadder(1, 10, straight(1.7, 0.02), [{ port: 1, segment: 1 }]).efficiency).toBe(1);
    });
    it('two cells: one mesh', () => {
        const ladder = solveLadder(2, 10, straight(1.7, 0.02), [{ port: 20, segment: 2 }]);
        near(10 - ladder.plates[0]!, 0.045217, 1e-6);
        nearly(ladder.segments[0]!, (1.7 + 0.2) / (2 + 0.02 + 40), 1e-12);
    });
    it('leak largest in the middle, ports largest at the ends, mirror symmetry', () => {
        const ladder = solveLadder(11, 10, straight(1.7, 0.02), [{ port: 12, segment: 0.8 }]);
        for (let j = 0; j < 5; j++) {
            if (j < 4) expect(ladder.plates[j + 1]).toBeLessThan(ladder.plates[j]!);
            nearly(ladder.plates[9 - j]!, ladder.plates[j]!, 1e-9);
            expect(Math.abs(ladder.ports[j]!)).toBeGreaterThan(Math.abs(ladder.ports[j + 1]!));
            near(ladder.ports[10 - j]!, -ladder.ports[j]!, 1e-9);
        }
        near(ladder.ports[5]!, 0, 1e-9);
    });
    it('two equal channels are as one of half the resistance', () => {
        const two = solveLadder(8, 10, bent, [{ port: 20, segment: 2 }, { port: 20, segment: 2 }]);
        const one = solveLadder(8, 10, bent, [{ port: 10, segment: 1 }]);
        nearly(two.efficiency, one.efficiency, 1e-10);
        nearly(two.ports[0]!, one.ports[0]! / 2, 1e-8);
        nearly(two.channelHeat, one.channelHeat, 1e-8);
    });
    it('a start from a neighbouring case gives the same answer', () => {
        const channels = [{ port: 15, segment: 1 }];
        const near5 = solveLadder(12, 5, bent, channels);
        const cold = solveLadder(12, 5.2, bent, channels);
        const warm = solveLadder(12, 5.2, bent, channels, near5.plates);
        nearly(warm.efficiency, cold.efficiency, 1e-10);
        expect(warm.steps).toBeLessThanOrEqual(cold.steps);
    });
    it('energy: what the source gives, plates and channels take', () => {
        const ladder = solveLadder(10, 20, straight(1.6, 0.01), [{ port: 10, segment: 0.5 }]);
        let plates = 0;
        for (const i of ladder.plates) plates += i * (1.6 + 0.01 * i);
        nearly(plates + ladder.channelHeat, 20 * ladder.volts, 1e-9);
    });
    it('an unknown current gives unknown answers', () => {
        expect(solveLadder(5, NaN, bent, [{ port: 15, segment: 1 }]).efficiency).toBeNaN();
    });
    it('is quick enough for every keystroke', () => {
        const channels = [{ port: 26, segment: 0.5 }, { port: 26, segment: 0.5 }, { port: 46, segment: 0.8 }, { port: 46,
            segment: 0.8 }];
        for (let k = 0; k < 300; k++) solveLadder(12, 20, bent, channels);
        const before = performance.now();
        for (let k = 0; k < 200; k++) solveLadder(12, 20 + k / 100, bent, channels);
        // About 0.04 ms on a quiet machine; the bound only catches a change of order.
        expect((performance.now() - before) / 200).toBeLessThan(1);
    });
});

describe('leaks past single plates', () => {
    it('a 5 mm hole through a 1.5 mm plate in lye of 62.1 S/m (bore as a wire, mouths after Maxwell)', () => {
        const resistance = holeResistance(5e-3, 1.5e-3, 62.1);
        nearly(resistance, 4.4508, 1e-4);
        nearly(1 / (62.1 * 5e-3), 3.2206, 1e-4);
        const leak = leakPastPlate(10, straight(1.7, 0.02), resistance);
        nearly(leak, 0.4250, 2e-4);
        nearly(1 - leak / 10, 0.95750, 1e-4);
    });
    it('a bent law balances too, and no way no leak', () => {
        const leak = leakPastPlate(3, bent, 2);
        nearly(bent.volts(3 - leak), 2 * leak, 1e-9);
        expect(leakPastPlate(3, bent, Infinity)).toBe(0);
    });
});
