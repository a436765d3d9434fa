/** Lye that its own gas sends round: the loop of a stack held against measured air lifts, and what must follow from it. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { loopFlow, slugDrift, type LyeLoop } from '../../language/physics/circulation.js';
import { lyeDensity, lyeViscosity } from '../../language/physics/lye.js';
import { nearly } from '../physics/near.js';

/** Kassab et al., Int. J. Heat Fluid Flow 30 (2009) 88-98: bore 25.4 mm, 3.75 m, submergence 0.57; L/min of air and of water. */
const kassab = [[11.4, 4.0], [17.5, 7.5], [25.5, 11.1], [37.1, 15.1], [51.6, 18.5], [70.2, 20.7], [86.7, 21.2]] as const;
const lift = (share: number, clear: LyeLoop['clear'] = []): LyeLoop => ({
    riser: { bore: 0.0254, height: 3.75, submergence: share * 3.75, density: 998, viscosity: 1e-3, drift: slugDrift(0.0254), fittings: 1.5 },
    cellArea: 0, cellHeight: 0, clear, mixed: [],
});
const air = (litres: number) => litres / 6e4 * 101325 / (101325 + 998 * 9.80665 * 0.57 * 3.75 / 2);

describe('a loop without cells', () => {
    it('is the air lift of Kassab et al. 2009, -30 .. +50 %', () => {
        for (const [gas, water] of kassab) {
            const ours = loopFlow(lift(0.57), air(gas)) * 6e4;
            expect(ours / water, `${gas} L/min`).toBeGreaterThan(0.7);
            expect(ours / water, `${gas} L/min`).toBeLessThan(1.5);
        }
    });
    it('moves nothing below its threshold, and less through a narrow return', () => {
        expect(loopFlow(lift(0.57), air(1))).toBe(0);
        expect(loopFlow(lift(1), 0)).toBe(0);
        const wide = loopFlow(lift(0.9), air(20));
        expect(loopFlow(lift(0.9, [{ bore: 8e-3, length: 2, parallel: 1, fittings: 2 }]), air(20))).toBeLessThan(wide / 2);
    });
});

const rig = (more: string, stack = '', limit = 12) => `rig "Loop", drawn
site { place: shed   hottest: 35 °C }
supply { sort: bench   voltage: 30 V   current-limit: ${limit} A }
lye { solute: KOH   strength: 28 wt% }
stack { cells: 12   wetted: 90 x 110 mm   top-height: 300 mm   ${stack} }
column h2-column { base-height: 400 mm }
column o2-column like h2-column
${more}
path hydrogen: stack -> h2-column -> outdoors
path oxygen: stack -> o2-column -> outdoors
`;
const number = (text: string, name: string) => {
    const { workings } = analyseText(text, { today: '2026-06-15' });
    return workings.quantity(workings.rig.parts.get('stack')!, name)!;
};
const coil = (length: number, bore: number) => `cooler { sort: tube-in-tube   length: ${length} m   bore: ${bore} mm   water: 15 °C, 2 L/min, 2 bar }
path lye: o2-column -> cooler -> stack.oxygen`;

describe('lye round a stack', () => {
    it('goes round by tenths of a litre to a few litres, more on the side with more gas', () => {
        const hydrogen = number(rig(''), 'lye-flow-hydrogen');
        const oxygen = number(rig(''), 'lye-flow-oxygen');
        expect(hydrogen.value * 6e4).toBeGreaterThan(0.3);
        expect(hydrogen.value * 6e4).toBeLessThan(10);
        expect(oxygen.value).toBeLessThan(hydrogen.value);
        // Measured lifts lie between two thirds and ten sevenths of the law; what else leaves the flow open comes on top.
        expect(hydrogen.low).toBeLessThan(hydrogen.value / 1.4);
        expect(hydrogen.high).toBeGreaterThan(hydrogen.value * 1.4);
        expect(hydrogen.high).toBeLessThan(hydrogen.value * 2);
    });
    it('grows with the current', () => {
        expect(number(rig('', '', 4), 'lye-flow-oxygen').value).toBeLessThan(number(rig('', '', 12), 'lye-flow-oxygen').value);
    });
    it('is held back by a narrow cooler, which then takes less of the heat than one twice as wide and half as long', () => {
        // Equal walls: what differs is the lye that passes.
        const narrow = rig(coil(6, 4), '', 25);
        const wide = rig(coil(3, 8), '', 25);
        expect(number(narrow, 'lye-flow-oxygen').value).toBeLessThan(0.5 * number(wide, 'lye-flow-oxygen').value);
        expect(number(narrow, 'temperature').value).toBeGreaterThan(number(wide, 'temperature').value + 1);
        // On its side of the stack only.
        expect(number(narrow, 'lye-flow-hydrogen').value).toBeGreaterThan(number(narrow, 'lye-flow-oxygen').value * 3);
    });
    it('carries its half of the heat: the balance closes', () => {
        const text = rig(coil(3, 8), 'temperature: 50 °C');
        const { workings } = analyseText(text, { today: '2026-06-15' });
        const of = (part: string, name: string) => workings.quantity(workings.rig.parts.get(part)!, name)!.value;
        const least = of('stack', 'lye-flow-oxygen');
        nearly(of('stack', 'lye-rise') * least * of('lye', 'density') * of('lye', 'heat-capacity'), of('stack', 'heat') / 2, 0.02);
    });
    it('is what a pump sends, where there is one', () => {
        nearly(number(rig('circulation-pump { flow: 2 L/min }'), 'lye-flow-oxygen').value * 6e4, 2, 1e-9);
    });
    it('goes on by warmth past a coil that hangs above the cells, and does not where the text tells no coil', () => {
        const hung = rig('cooler { sort: coil-in-column   length: 2 m   bore: 8 mm   water: 15 °C, 1 L/min, 2 bar }\npath lye: o2-column -> cooler -> stack.oxygen');
        const flow = number(hung, 'lye-flow-stopped').value * 6e4;
        expect(flow).toBeGreaterThan(0.02);
        expect(flow).toBeLessThan(number(hung, 'lye-flow-oxygen').value * 6e4);
        expect(number(rig(''), 'lye-flow-stopped').value).toBeNaN();
    });
    describe('through a tube-in-tube cooler after a stop', () => {
        const beside = (height: string, bore = 8) => rig(coil(3, bore).replace(' }', `   ${height} }`), '', 25);
        const stopped = (height: string, bore?: number) => number(beside(height, bore), 'lye-flow-stopped').value;
        it('goes on where it hangs higher than the cells, the faster the higher and the wider', () => {
            const flows = ['0.4 m', '0.6 m', '1 m'].map(h => stopped(`middle-height: ${h}`));
            expect(flows[0]).toBeGreaterThan(0);
            expect(flows[1]).toBeGreaterThan(flows[0]);
            expect(flows[2]).toBeGreaterThan(flows[1]);
            expect(stopped('middle-height: 0.6 m', 6)).toBeLessThan(flows[1]);
            expect(flows[2]).toBeLessThan(number(beside('middle-height: 1 m'), 'lye-flow-oxygen').value);
        });
        it('stands still where the cooler is beside the cells, and is not told where its height is not', () => {
            // Cells of 110 mm below their top at 300 mm: their middle is at 245 mm.
            expect(stopped('middle-height: 0.24 m')).toBe(0);
            expect(stopped('note: "on the wall"')).toBeNaN();
        });
        it('needs lye up to the mouth of the riser', () => expect(number(beside('middle-height: 1 m').replace('base-height: 400 mm', 'base-height: 400 mm   inlet-port: 300 mm   level: 240 mm'), 'lye-flow-stopped').value).toBe(0));
        it('balances: what the cold leg weighs more is what a plain long tube loses', () => {
            // Ports and channels wide, so that the one tube counts: 3 m of 4 mm, laminar. Hagen-Poiseuille by hand, with the density and
            // viscosity of the lye as the rig tells them for water-cold lye behind the cooler (so little flows that it leaves as cold as the water).
            const text = beside('middle-height: 1 m', 4).replace('cells: 12', 'cells: 12   port: 2 of 8 mm, 20 mm long');
            const flow = number(text, 'lye-flow-stopped').value;
            const warm = number(text, 'temperature').value;
            const density = (t: number) => lyeDensity('KOH', 0.28, t);
            const viscosity = lyeViscosity('KOH', 0.28, 288.15);
            const poiseuille = (density(288.15) - density(warm)) * 9.80665 * (1 - 0.245) * Math.PI * 0.004 ** 4 / (128 * viscosity * 3);
            // Behind 3 m of tube lye is within a few kelvin of the water; the rest of the way and the bends take a part.
            expect(flow / poiseuille).toBeGreaterThan(0.6);
            expect(flow / poiseuille).toBeLessThan(1.1);
        });
    });
});
