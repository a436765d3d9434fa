import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import type { Channel, PlateLaw } from '../../language/physics/bypass-ladder.js';
import { leakPastPlate, solveLadder } from '../../language/physics/bypass-ladder.js';
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
    it('a bent law settles, no plate in reverse', () => {
        const ladder = solveLadder(6, 5, bent, [{ port: 15, segment: 1 }]);
        expect(ladder.settled).toBe(true);
        expect(ladder.reversed).toBe(0);
    });
    it('at very low load plates reverse, and it says so', () => {
        const ladder = solveLadder(6, 0.2, bent, [{ port: 15, segment: 1 }]);
        near(ladder.efficiency, 0.090, 1e-3);
        expect(ladder.reversed).toBe(3);
        expect(ladder.settled).toBe(true);
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
    it('a bent law balances too, and no way no leak', () => {
        const leak = leakPastPlate(3, bent, 2);
        nearly(bent.volts(3 - leak), 2 * leak, 1e-9);
        expect(leakPastPlate(3, bent, Infinity)).toBe(0);
    });
});
