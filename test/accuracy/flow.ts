/** Holes, tubes, relief valves, heads, gas lift. */
import { bubbleDrift, circuitDrop, circuitFlow, gasFraction, liftedFlow, liftPressure, slugDrift } from '../../language/physics/circulation.js';
import { MOLAR_MASS } from '../../language/physics/constants.js';
import {
    accumulatedPressure, criticalPressureRatio, frictionFactor, holeFlow, reliefArea, reliefFactor, reliefVolumeOfGas, reynolds, smallHoleFlow, subcriticalFactor, tubeDrop, tubeFlow,
} from '../../language/physics/flow.js';
import { airDensity, gasViscosity, idealGasDensity, type Gas } from '../../language/physics/gases.js';
import { compressibility } from '../../language/physics/hydrogen.js';
import { columnPressure, pushTime } from '../../language/physics/hydrostatics.js';
import { fromBarrer, permeationFlow, permeationWarmth } from '../../language/physics/permeation.js';
import { bubblePoint, bubblePointByStandardTest, poreByStandardTest } from '../../language/physics/separator.js';
import { hoopStress } from '../../language/physics/solids.js';
import { waterDensity, waterSurfaceTension, waterViscosity } from '../../language/physics/water.js';
import { celsius } from '../physics/near.js';
import { bench } from './rigs.js';
import { ofRig, outside, type Chapter, type Outside } from './outside.js';

const { hydrogen, oxygen, air } = MOLAR_MASS;
const normal = 22.413969e-3;
const area = (bore: number) => Math.PI / 4 * bore * bore;
const psi = 6894.757293;
const TEXT = 'textbook formula';
const twice = ['second-hand copy', 'recomputed'] as const;
const skin = () => waterSurfaceTension(celsius(25));
const warmLoop = () => {
    const difference = waterDensity(celsius(40)) - waterDensity(celsius(60));
    const density = waterDensity(celsius(50));
    // Half of the loop is warm, half cold: the mean of the two counts.
    const viscosity = (waterViscosity(celsius(60)) + waterViscosity(celsius(40))) / 2;
    const loop = [{ bore: 0.008, length: 2, parallel: 1, fittings: 0 }];
    const flow = circuitFlow(() => difference * 9.80665 * 0.5, q => circuitDrop(q, loop, density, viscosity), 1e-3);
    return { difference, drive: difference * 9.80665 * 0.5, flow: flow * 6e7, reynolds: reynolds(flow, 0.008, density, viscosity) };
};

/** Measured air lifts with water at 20 °C; litres per minute, air at 1 atm. `rising` ends where the plateau begins. */
const lifts = [
    { who: 'Goharzadeh & Fernandes, IMECE2014-39899', bore: 0.019, height: 0.80, share: 0.74, rising: 14, points: [[2.66, 2.53], [5.74, 5.12], [8.28, 6.42], [10.8, 6.96], [14.0, 6.84], [20.9, 7.20], [28.0, 7.62], [41.7, 7.56], [63, 7.56], [91, 7.50]] },
    { who: 'Stenning & Martin, J. Eng. Power 90 (1968) 106', bore: 0.0254, height: 4.27, share: 0.709, rising: 68.6, points: [[9.5, 11.3], [11.6, 14.3], [13.7, 17.5], [17.9, 20.4], [23.2, 23.5], [30.1, 26.4], [43.3, 29.1], [68.6, 31.0], [99, 30.8], [156, 28.6]] },
    { who: 'Stenning & Martin, J. Eng. Power 90 (1968) 106', bore: 0.0254, height: 4.27, share: 0.532, rising: 112, points: [[21.6, 6.3], [24.3, 8.7], [29.0, 11.8], [36.4, 14.8], [53.3, 17.1], [79.7, 18.5], [112, 18.6], [205, 17.6]] },
    { who: 'Kassab et al., Int. J. Heat Fluid Flow 30 (2009) 88', bore: 0.0254, height: 3.75, share: 0.57, rising: 123, points: [[11.4, 4.0], [17.5, 7.5], [25.5, 11.1], [37.1, 15.1], [51.6, 18.5], [70.2, 20.7], [86.7, 21.2], [123, 20.7], [202, 21.2]] },
] as const;
function lifted(lift: (typeof lifts)[number], airPerMinute: number): number {
    const submergence = lift.share * lift.height;
    const mean = 101325 + 998 * 9.80665 * submergence / 2;
    return liftedFlow({ bore: lift.bore, height: lift.height, submergence, density: 998, viscosity: 1e-3, drift: slugDrift(lift.bore), fittings: 1.5 }, airPerMinute / 6e4 * 101325 / mean) * 6e4;
}
const LIFT = (l: (typeof lifts)[number]) => `bore ${l.bore * 1e3} mm, ${l.height} m, immersed ${l.share}`;

export const flow: Chapter = {
    title: 'Flow, relief, heads and lift',
    rows: [
        outside({ quantity: 'Viscosity of gases', unit: 'µPa·s', at: (g: Gas, t: number) => `${g} ${t} °C`, ours: (g: Gas, t: number) => gasViscosity(g, celsius(t)) * 1e6, points: [['hydrogen', 25, 8.9], ['hydrogen', 100, 10.3], ['oxygen', 25, 20.5], ['nitrogen', 25, 17.8], ['air', 0, 17.2], ['air', 100, 21.8]], within: { share: 0.02 }, why: 'Sutherland against tables', source: 'textbook tables', known: ['from memory'] }),
        outside({ quantity: 'Drop in 3 m of tube, 25 °C', unit: 'Pa', at: (gas: string, bore: number) => `${gas}, bore ${bore} mm`, ours: (gas: string, bore: number) => (gas === 'hydrogen' ? tubeDrop(109.5e-3 / 3600, bore * 1e-3, 3, idealGasDensity(hydrogen, 298.15, 101325), 8.9e-6) : tubeDrop(54.8e-3 / 3600, bore * 1e-3, 3, idealGasDensity(oxygen, 298.15, 101325), 20.5e-6)), points: [['hydrogen', 3, 409], ['oxygen', 3, 471], ['hydrogen', 4, 129], ['oxygen', 4, 149], ['hydrogen', 6, 25.5], ['oxygen', 6, 29.4]], within: { share: 0.01 }, why: 'print', source: 'Hagen-Poiseuille', known: ['recomputed'] }),
        outside({ quantity: 'Hydrogen through 2 m of seal pipe at 1.04 kPa', unit: 'm³/h', at: (bore: number) => `bore ${bore} mm`, ours: (bore: number) => tubeFlow(1040, bore * 1e-3, 2, idealGasDensity(hydrogen, celsius(20), 101325), 8.8e-6, 1.5) * 3600, points: [[10, 14.8], [20, 85.0]], within: { share: 0.03 }, why: 'the friction law', source: 'Blasius', known: ['recomputed'] }),
        outside({ quantity: 'Friction factor of a smooth tube', unit: '1', at: (re: number) => `Re ${re}`, ours: frictionFactor, points: [[1000, 0.064], [1e4, 0.0316], [1e5, 0.0178]], within: 1e-4, why: 'print', source: TEXT, known: ['from memory'] }),
        outside({ quantity: 'Critical pressure ratio', unit: '1', at: (k: number) => `k ${k}`, ours: criticalPressureRatio, points: [[1.40, 0.52828], [1.405, 0.52744], [1.41, 0.52660]], within: 1e-5, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Choked hydrogen, 1 mm, factor 0.85, 18 bar, 20 °C', unit: 'g/s', ours: () => holeFlow(area(1e-3), 0.85, 18e5, 101325, celsius(20), hydrogen, 1.405, compressibility(celsius(20), 18e5)) * 1e3, points: [[0.7452]], within: { share: 1e-3 }, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Choked hydrogen, 1 mm, factor 0.85, 18 bar, 20 °C', unit: 'Nm³/h', ours: () => holeFlow(area(1e-3), 0.85, 18e5, 101325, celsius(20), hydrogen, 1.405, compressibility(celsius(20), 18e5)) / hydrogen * normal * 3600, points: [[29.85]], within: { share: 1e-3 }, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Compressibility there', unit: '1', ours: () => compressibility(celsius(20), 18e5), points: [[1.0107]], within: 2e-4, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Hole that the relief formula gives back', unit: 'mm²', ours: () => reliefArea(0.7452e-3, 18e5, celsius(20), hydrogen, 1.405, 1.0107, 0.85) * 1e6, points: [[0.7854]], within: { share: 1e-3 }, why: 'print', source: 'API 520-1', known: ['recomputed'] }),
        outside({ quantity: '`relief-valve.capacity-hydrogen` by its seat of 1 mm', unit: 'Nm³/h', under: 'factor 0.85, relieving at 18 bar absolute, 20 °C', ours: () => ofRig(`${bench({ temperature: 50 })}cylinder { volume: 10 L   rating: 40 bar }\nrelief-valve { set: ${(18 - 1.01325) / 1.1} bar   orifice: 1 mm   coefficient: 0.85   overpressure: 10 % }\npath hydrogen: stack -> cylinder -> relief-valve -> outdoors`, 'relief-valve.capacity-hydrogen') * normal * 3600, points: [[29.85]], within: { share: 1e-3 }, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Choked air, 1 mm², 2 bar, 15 °C', unit: 'kg/h', ours: () => holeFlow(1e-6, 1, 2e5, 1e5, celsius(15), air, 1.4) * 3600, points: [[1.7142]], within: { share: 4e-4 }, why: 'molar mass of air', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Choked hydrogen, factor 0.8, 20 °C', unit: 'm³/h', at: (bore: number, bar: number) => `${bore} mm ${bar} bar`, ours: (bore: number, bar: number) => holeFlow(area(bore * 1e-3), 0.8, bar * 1e5, 101325, celsius(20), hydrogen, 1.405) / hydrogen * 24.0551e-3 * 3600, points: [[2, 11.01, 74.1], [2, 15.01, 101.1], [0.3, 11.01, 1.668], [0.3, 15.01, 2.274]], within: { share: 2e-3 }, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Hydrogen of 50 °C through 0.5 mm', unit: 'L/h', at: (p: number) => `${p} Pa`, ours: (p: number) => smallHoleFlow(area(0.5e-3), 0.6, p, idealGasDensity(hydrogen, celsius(50), 101325)) * 3.6e6, points: [[1570, 86], [890, 65]], within: { share: 0.05 }, why: 'print of two figures', source: 'orifice', known: ['recomputed'] }),
        outside({ quantity: 'Through a hole of 1 mm', unit: 'L/h', at: (gas: string, p: number) => `${gas} ${p} Pa`, ours: (gas: string, p: number) => smallHoleFlow(area(1e-3), 0.6, p, gas === 'air' ? airDensity(celsius(20)) : idealGasDensity(hydrogen, celsius(20), 101325)) * 3.6e6, points: [['hydrogen', 1600, 331], ['hydrogen', 100, 83], ['air', 5000, 155]], within: { share: 0.03 }, why: 'print', source: 'orifice', known: ['recomputed'] }),
        outside({ quantity: 'Relief factor C', unit: '1', at: (k: number) => `k ${k}`, ours: reliefFactor, points: [[1.35, 2.6694], [1.40, 2.7033], [1.41, 2.7100]], within: { share: 1e-4 }, why: 'print; API 520 writes a hundredth of it', source: 'API 520-1; ISO 4126-1', known: [...twice] }),
        outside({ quantity: 'Relief factor C, US units', unit: '1', at: (k: number) => `k ${k}`, ours: (k: number) => reliefFactor(k) / 3.948 * 520, points: [[1.35, 351.6], [1.40, 356.1], [1.41, 356.9]], within: { share: 2e-4 }, why: 'print', source: 'API 520-1', known: [...twice] }),
        outside({ quantity: 'Sizing example, critical flow', unit: 'mm²', ours: () => reliefArea(24270 / 3600, 670e3, 348, 51e-3, 1.11, 0.90, 0.975) * 1e6, points: [[3698], [3699.05]], within: { share: 1e-3 }, why: 'the standard rounds on its way', source: 'API 520-1 as reproduced in the library fluids', known: [...twice] }),
        outside({ quantity: 'Sizing example, critical flow', unit: 'in²', ours: () => reliefArea(24270 / 3600, 670e3, 348, 51e-3, 1.11, 0.90, 0.975) / 0.0254 ** 2, points: [[5.725]], within: { share: 2e-3 }, why: 'US units round on their way', source: 'API 520-1 as reproduced in the library fluids', known: [...twice] }),
        outside({ quantity: 'Factor F2', unit: '1', ours: () => subcriticalFactor(1.8, 0.7), points: [[0.86007]], within: 1e-5, why: 'print', source: 'API 520, example 2', known: [...twice] }),
        outside({ quantity: 'Pressure while relieving', unit: 'psi', at: (rated: number, valves: number) => `rated ${rated}, ${valves} valve${valves > 1 ? 's' : ''}`, ours: (rated: number, valves: number) => accumulatedPressure(rated * psi, valves) / psi, points: [[100, 1, 110], [100, 2, 116], [15, 1, 18], [15, 3, 19]], within: { share: 1e-12 }, why: 'rule', source: 'ASME VIII-1 UG-125(c), as quoted', known: ['read in the primary', 'read in a secondary page'] }),
        outside({ quantity: 'The same above vacuum, and over a valve set at 80 psi', unit: 'psi, %', at: (which: string) => which, ours: (which: string) => (which === 'absolute' ? (accumulatedPressure(100 * psi) + 101325) / psi : (accumulatedPressure(100 * psi) / (80 * psi) - 1) * 100), points: [['absolute', 124.7], ['over set', 37.5]], within: { share: 1e-3 }, why: 'print', source: 'column quoting API 520', known: ['read in a secondary page', 'recomputed'] }),
        outside({ quantity: 'Volume of hydrogen that a valve rated in air passes', unit: '1', ours: () => reliefVolumeOfGas(1, 1.4, 1.405, air, hydrogen), points: [[Math.sqrt(air / hydrogen)]], within: { share: 3e-3 }, why: 'the two ratios of heat capacities', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Hoop stress of 300 x 2.6 mm at 3.0 MPa', unit: 'MPa', ours: () => hoopStress(0.3, 2.6e-3, 3e6) / 1e6, points: [[171.6]], within: { share: 1e-3 }, why: 'print', source: 'mean diameter', known: ['recomputed'] }),
        outside({ quantity: 'Height of a blocked column, as pressure', unit: 'kPa', at: (mm: number) => `${mm} mm each`, ours: (mm: number) => columnPressure(1280, 2e-3 * mm) / 1e3, points: [[50, 1.255], [140, 3.52], [250, 6.28]], within: { share: 5e-3 }, why: 'print', source: 'hydrostatics', known: ['recomputed'] }),
        outside({ quantity: 'Time until then, 54.8 L/h of oxygen or twice of hydrogen', unit: 's', at: (mm: number, gas: string) => `${mm} mm ${gas}`, ours: (mm: number, gas: string) => pushTime((gas === 'oxygen' ? 54.8e-3 : 109.6e-3) / 3600, 0.7e-3, mm * 1e-3, 1280, 50.27e-4, 50.27e-4, 101325), points: [[50, 'oxygen', 17], [140, 'oxygen', 49], [250, 'oxygen', 91], [50, 'hydrogen', 8.5], [140, 'hydrogen', 24.5], [250, 'hydrogen', 45.5]], within: { share: 0.05 }, why: 'print of two figures', source: 'U-tube and Boyle', known: ['recomputed'] }),
        outside({ quantity: 'Bubble point in water, 25 °C', unit: 'kPa', at: (d: number) => `${d} µm`, ours: (d: number) => bubblePoint(skin(), 0, d * 1e-6) / 1e3, points: [[1, 287.9], [10, 28.79], [50, 5.758], [100, 2.879]], within: { share: 2e-3 }, why: 'print', source: 'Young-Laplace; IAPWS surface tension', known: ['recomputed'] }),
        outside({ quantity: '`separator.pore-limit`', unit: 'kPa', at: (d: number) => `${d} µm`, ours: (d: number) => ofRig(`${bench({ temperature: 50 })}separator { material: PP-woven   thickness: 0.5 mm   largest-pore: ${d} um }`, 'separator.pore-limit') / 1e3, points: [[10, 28.79], [50, 5.758]], within: { share: 2e-3 }, why: 'print', source: 'Young-Laplace; IAPWS surface tension', known: ['recomputed'] }),
        outside({ quantity: 'Bubble point by the constant of the standard test, 10 µm', unit: 'kPa', ours: () => bubblePointByStandardTest(skin(), 10e-6) / 1e3, points: [[20.58]], within: { share: 2e-3 }, why: 'print; 0.715 of the full formula', source: 'ASTM F316', known: ['from memory', 'recomputed'] }),
        outside({ quantity: 'Pore by the standard test at 20.58 kPa', unit: 'µm', ours: () => poreByStandardTest(skin(), 20580) * 1e6, points: [[2860 * 71.97 / 20580]], within: { share: 1e-3 }, why: 'surface tension', source: 'ASTM F316, 2860·γ[mN/m]/p[Pa]', known: ['from memory', 'recomputed'] }),

        outside({ quantity: 'Drift of bubbles in water, 25 °C', unit: 'm/s', ours: () => bubbleDrift(0.07197, 997.05, 1.2), points: [[0.2495]], within: { share: 5e-3 }, why: 'surface tension', source: 'Zuber & Findlay 1965; Harmathy 1960', known: ['from memory', 'recomputed'] }),
        outside({ quantity: 'Gas fraction by drift', unit: '1', at: (...a: readonly number[]) => a.join(', '), ours: (jg: number, jl: number, c0: number, v: number) => gasFraction(jg, jl, c0, v), points: [[0.05, 0.10, 1.2, 0.249, 0.1166], [0.01, 0.02, 1.2, 0.155, 0.0524], [0.10, 0, 1.2, 0.249, 0.2710], [0.05, 0.10, 1, 0, 1 / 3], [0.1, 0, 1, 0, 1]], within: 1e-4, why: 'print', source: 'Zuber & Findlay 1965', known: ['recomputed'] }),
        outside({ quantity: 'Lift of 0.20 gas over 0.4 m of 1270 kg/m³', unit: 'Pa', ours: () => liftPressure(0.2, 0.4, 1270), points: [[996.7]], within: 1, why: 'print', source: 'hydrostatics', known: ['recomputed'] }),
        outside({ quantity: 'Thermosiphon of water, 60 and 40 °C, 0.5 m, bore 8 mm, 2 m', unit: 'kg/m³, Pa, mL/min, 1', at: (which: string) => which, ours: (which: string) => warmLoop()[which as 'flow'], points: [['difference', 9.02], ['drive', 44.2], ['flow', 238], ['reynolds', 1117]], within: { share: 0.01 }, why: 'viscosity of half a warm and half a cold loop', source: 'Hagen-Poiseuille; IAPWS-95', known: ['recomputed'] }),
        ...lifts.map(l => outside({ quantity: 'Water over measured water of an air lift, to its plateau', unit: '1', under: LIFT(l), at: (a: number) => `${a} L/min of air`, ours: (a: number) => lifted(l, a) / l.points.find(p => p[0] === a)![1], points: l.points.filter(p => p[0] <= l.rising).map(p => [p[0], [0.7, 1.5] as const] as readonly [number, Outside]), within: 0, why: 'a balance of drift and friction knows nothing of the regime', source: l.who, known: [...twice] })),
        ...lifts.slice(1).map(l => outside({ quantity: 'Water over measured water of an air lift, beyond its plateau', unit: '1', under: LIFT(l), at: (a: number) => `${a} L/min of air`, ours: (a: number) => lifted(l, a) / l.points.find(p => p[0] === a)![1], points: l.points.filter(p => p[0] > l.rising).map(p => [p[0], [0.7, 1.3] as const] as readonly [number, Outside]), within: 0, why: 'as on the rising part; no rig works there', source: l.who, known: [...twice] })),
        outside({ quantity: 'Water of an air lift below its threshold', unit: 'L/min', at: (k: number, a: number) => `${LIFT(lifts[k])}, ${a} L/min of air`, ours: (k: number, a: number) => lifted(lifts[k], a), points: [[2, 2, 0], [3, 1, 0]], within: 0, why: 'none moves, not a little', source: 'Stenning & Martin 1968; Kassab et al. 2009', known: [...twice] }),
        outside({ quantity: 'Permeation at 80 over 30 °C', unit: '1', ours: () => permeationWarmth(celsius(80), celsius(30)), points: [[2.29]], within: { share: 5e-3 }, why: 'our warmth is set to it; a simulation, no measurement', source: 'Polymers 16 (2024) 953, abstract', known: ['read in the primary'] }),
        outside({ quantity: 'One barrer', unit: '1e-16 mol/(m·s·Pa)', ours: () => fromBarrer(1) * 1e16, points: [[1e16 * 1e-10 * 1e-6 / 22.413969e-3 * 1e-2 / 1e-4 / 1333.224]], within: { share: 1e-3 }, why: 'definition', source: 'from its own parts', known: ['recomputed'] }),
        outside({ quantity: 'Hydrogen through 1 m² of natural rubber, 50 µm, 1 atm', unit: 'L/h', ours: () => permeationFlow(fromBarrer(49), 1, 50e-6, 101325) * 22.413969 * 3600, points: [[2.68]], within: { share: 2e-3 }, why: 'print', source: 'polymer handbooks, 49 barrer', known: ['from memory', 'recomputed'] }),
    ],
    unmet: [
        { what: 'Air lift on the plateau of a short riser (7.5 L/min at 41.7 L/min of air), to +50 %', reason: 'churning gas carries less than the balance says', source: lifts[0].who, known: ['second-hand copy'], off: { unit: 'L/min', ours: () => lifted(lifts[0], 41.7), outside: 7.56, within: { share: 0.3 } } },
        { what: 'Circulation of a rig by its own gas', reason: 'no measurement on a rig was found; air lifts stand for it', source: 'none', known: ['common practice, no source'] },
    ],
};
