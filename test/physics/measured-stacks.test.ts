import { describe, expect, it } from 'vitest';
import { solveLadder } from '../../language/physics/bypass-ladder.js';
import { lyeVapourPressure, waterActivity } from '../../language/physics/lye.js';
import type { CellMake, SurfaceName } from '../../language/physics/polarisation.js';
import {
    activatedKinetics, cellVoltage, nickelKinetics, offsetFromReading, plateSlope, plateVoltage, restVoltage, stackUlleberg,
        surfaces,
} from '../../language/physics/polarisation.js';
import { celsius, near } from './near.js';

/** One measured curve: mA/cm² against volts of a cell. */
interface Curve { readonly t: number; readonly bar: number; readonly points: readonly (readonly [number, number])[] }

const curves = {
    // Ulleberg 2003, points of its figure (digitised, ± 10 mV).
    ulleberg: [
        { t: 50, bar: 7, points: [[39, 1.618], [55, 1.652], [72, 1.689], [91, 1.723], [121, 1.758], [144, 1.794],
            [163, 1.809], [186, 1.831], [200, 1.855]] },
        { t: 70, bar: 7, points: [[42, 1.546], [57, 1.571], [71, 1.597], [83, 1.620], [105, 1.658], [124, 1.676],
            [142, 1.703], [167, 1.725]] },
        { t: 80, bar: 7, points: [[113, 1.618], [128, 1.635], [141, 1.652], [154, 1.668]] },
        { t: 30, bar: 7, points: [[122, 1.853], [126, 1.859]] },
    ],
    // Sánchez et al. 2018, 12 cells, 1000 cm² (digitised, ± 8 mV).
    twelveCells: [
        { t: 55, bar: 7, points: [[151, 1.855], [199, 1.916], [251, 1.975], [300, 2.025], [350, 2.069], [400, 2.111],
            [447, 2.149], [501, 2.187]] },
        { t: 65, bar: 7, points: [[151, 1.809], [200, 1.869], [250, 1.920], [301, 1.966], [350, 2.010], [400, 2.059],
            [450, 2.097], [500, 2.137]] },
        { t: 75, bar: 7, points: [[150, 1.777], [199, 1.825], [252, 1.869], [301, 1.914], [351, 1.962], [399, 2.002],
            [450, 2.050], [501, 2.086]] },
    ],
    // de Groot et al. 2022, zero gap, 10 bar (digitised, ± 8 mV).
    zeroGap: [
        { t: 50, bar: 10, points: [[95, 1.612], [146, 1.654], [207, 1.695], [348, 1.799], [468, 1.879], [594, 1.943],
            [721, 2.005]] },
        { t: 70, bar: 10, points: [[95, 1.580], [146, 1.620], [207, 1.656], [348, 1.733], [468, 1.811], [594, 1.868],
            [721, 1.929]] },
    ],
    // Sakas et al. 2022, 3 MW plant stack (± 15 mV).
    plant: [
        { t: 70, bar: 16, points: [[68, 1.605], [113, 1.681], [136, 1.728], [170, 1.768], [204, 1.805], [238, 1.837],
            [273, 1.866], [307, 1.886], [341, 1.917]] },
    ],
    // Gillespie 2015, open nickel cell with 2.5 mm gap and flow, no sheet.
    open: [{ t: 70, bar: 1.01325, points: [[51.9, 1.80], [242.9, 2.00]] }],
} as const satisfies Record<string, readonly Curve[]>;

function make(curve: Curve, offset: number, areaResistance: number): CellMake {
    const temperature = celsius(curve.t);
    const vapour = lyeVapourPressure('KOH', 0.3, temperature);
    return {
        temperature, offset, areaResistance, anode: nickelKinetics.anode, cathode: nickelKinetics.cathode,
        rest: restVoltage(temperature, curve.bar * 1e5, vapour, waterActivity('KOH', 0.3, temperature)),
    };
}

/** Offset from the middle point of the first curve; then the largest miss of all points of all curves. */
function worstAfterOneReading(
    set: readonly Curve[], areaResistance: (t: number) => number,
        kinetics: (temperature: number) => typeof nickelKinetics = () => nickelKinetics,
): number {
    const first = set[0]!;
    const [j, volts] = first.points[Math.floor(first.points.length / 2)]!;
    const offset = offsetFromReading({ ...make(first, 0, areaResistance(first.t)), ...kinetics(celsius(first.t)) }, j * 10,
        volts);
    let worst = 0;
    for (const curve of set) {
        for (const [density, measured] of curve.points) {
            const cell = { ...make(curve, offset, areaResistance(curve.t)), ...kinetics(celsius(curve.t)) };
            const miss = cellVoltage(cell, density * 10) - measured;
            if (Math.abs(miss) > Math.abs(worst)) worst = miss;
        }
    }
    return worst;
}

/** Largest miss with nothing fitted: the offset of the surface as told. */
function worstBlind(set: readonly Curve[], surface: SurfaceName, areaResistance: (t: number) => number): number {
    let worst = 0;
    for (const curve of set) {
        for (const [density, measured] of curve.points) {
            const miss = cellVoltage(make(curve, surfaces[surface].offset, areaResistance(curve.t)), density * 10) - measured;
            if (Math.abs(miss) > Math.abs(worst)) worst = miss;
        }
    }
    return worst;
}

// In series: sheet, gap and plates together, as the offsets of the surfaces were found with.
const series = (): number => 0.3e-4;
const openGap = (): number => 2.5e-3 / 124;

describe('after one bench reading the rest of the curve follows', () => {
    // Each band is twice the scatter of the set around its own offset (12 .. 34 mV) and the digitising of its points.
    it('Ulleberg, 30 to 80 °C: 25 mV and 10 mV digitising', () => {
        expect(Math.abs(worstAfterOneReading(curves.ulleberg, series))).toBeLessThan(0.035);
    });
    it('twelve cells, 55 to 75 °C: 45 mV', () => {
        expect(Math.abs(worstAfterOneReading(curves.twelveCells, series))).toBeLessThan(0.045);
    });
    it('plant stack, 70 °C: 45 mV and 15 mV digitising', () => {
        expect(Math.abs(worstAfterOneReading(curves.plant, series))).toBeLessThan(0.060);
    });
    it('open nickel cell, 70 °C: 15 mV', () => {
        expect(Math.abs(worstAfterOneReading(curves.open, openGap))).toBeLessThan(0.015);
    });
    it('zero gap, 50 and 70 °C: 60 mV from 0.2 A/cm² on with nickel\'s lines', () => {
        const strong = curves.zeroGap.map(curve => ({ ...curve, points: curve.points.filter(([j]) => j > 200) }));
        expect(Math.abs(worstAfterOneReading(strong, series))).toBeLessThan(0.060);
        // At weaker current nickel's lines are too steep for an activated pair: known, and shown.
        const all = Math.abs(worstAfterOneReading(curves.zeroGap, series));
        expect(all).toBeGreaterThan(0.060);
        expect(all).toBeLessThan(0.11);
    });
    it('zero gap with the lines of an activated pair (Hammoudi et al. 2012): 60 mV everywhere', () => {
        expect(Math.abs(worstAfterOneReading(curves.zeroGap, series, activatedKinetics))).toBeLessThan(0.060);
    });
});

describe('blind, told only the kind of electrode', () => {
    it('Ulleberg, activated: 0.12 V', () => expect(Math.abs(worstBlind(curves.ulleberg, 'activated',
        series))).toBeLessThan(0.12));
    it('twelve cells, plain nickel: 0.15 V', () => {
        // The set lies 0.05 V under smooth nickel while the middle of "plain nickel" is 0.05 V over it; its ± is 0.15 V.
        expect(Math.abs(worstBlind(curves.twelveCells, 'nickel-plain', series))).toBeLessThan(0.15);
    });
    it('zero gap, both highly activated: 0.15 V', () => {
        expect(Math.abs(worstBlind(curves.zeroGap, 'highly-activated', series))).toBeLessThan(0.15);
    });
    it('plant stack, pressed mesh: 0.18 V', () => {
        expect(Math.abs(worstBlind(curves.plant, 'nickel-pressed-mesh', series))).toBeLessThan(0.18);
    });
    it('open nickel cell, plain nickel: 0.15 V', () => {
        expect(Math.abs(worstBlind(curves.open, 'nickel-plain', openGap))).toBeLessThan(0.15);
    });
    it('open nickel cell with nothing but smooth nickel: 1.689 and 1.883 V, the cell 0.11 V above (own recomputation)', () => {
        // 8 mV: the rest voltage over the lye was counted a little differently.
        near(cellVoltage(make(curves.open[0], 0, openGap()), 519), 1.689, 8e-3);
        near(cellVoltage(make(curves.open[0], 0, openGap()), 2429), 1.883, 8e-3);
    });
});

describe('what the published formula misses against its own points (Ulleberg 2003)', () => {
    it('5 to 27 mV too low, most when cold', () => {
        const mean = (curve: Curve): number => {
            let sum = 0;
            for (const [j, volts] of curve.points) sum += stackUlleberg(j * 10, celsius(curve.t)) - volts;
            return sum / curve.points.length * 1e3;
        };
        const [fifty, seventy, eighty, thirty] = curves.ulleberg;
        // 4 mV: only part of the 54 points stands here.
        near(mean(thirty), -27, 4);
        near(mean(fifty), -25, 4);
        near(mean(seventy), -10, 4);
        near(mean(eighty), -5, 4);
    });
});

describe('a stack with ports at very small current', () => {
    it('sits far below its reversible voltage, as measured (Sha et al. 2023: 10.25 V at 1 A, 16.5 V at 9 A, ten cells)', () => {
        // Plates and ports of that stack are not told: these are invented, so only where the volts lie is asked, not how many.
        const area = 0.2;
        const base = make({ t: 60, bar: 1.01325, points: [] }, 0.05, 0.4e-4);
        const law = { volts: (i: number) => plateVoltage(base, i / area), slope: (i: number) => plateSlope(base,
            i / area) / area };
        const channels = [{ port: 12, segment: 0.25 }, { port: 12, segment: 0.25 }];
        const at1 = solveLadder(10, 1, law, channels).volts;
        const at9 = solveLadder(10, 9, law, channels).volts;
        const at100 = solveLadder(10, 100, law, channels).volts;
        expect(at1).toBeLessThan(9 * 1.2);
        expect(at9).toBeGreaterThan(at1);
        expect(at1).toBeGreaterThan(0);
        expect(at100).toBeGreaterThan(9 * 1.5);
    });
});
