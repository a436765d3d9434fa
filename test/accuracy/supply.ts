/** The electrical side: transformers, batteries, modules, conductors. */
import {
    capacitorCurrent, capacitorRipple, crestVolts, currentSourceMeetsStack, curveCurrent, formFactors, leadAcidRestVolts, rectifiedVolts, rippleFactor, singleDiodeCurrent, smoothedWave,
    solarCurrent, voltsPerTurn, windingFactors,
} from '../../language/physics/supply.js';
import { COPPER, copperResistance, copperResistivity, gaugeArea, RESISTIVITY, sheetResistance, standardResistance, withstand } from '../../language/physics/wiring.js';
import { celsius } from '../physics/near.js';
import { bench } from './rigs.js';
import { ofRig, outside, type Chapter } from './outside.js';

const volts = [0.1248, 1.8093, 3.3511, 4.7622, 6.0538, 7.2364, 8.3189, 9.3097, 10.2163, 11.0449, 11.8018, 12.4929, 13.1231, 13.6983, 14.2221, 14.6995, 15.1346, 15.5311, 15.8929, 16.2229, 16.5241, 16.7987];
const amperes = [1.0315, 1.0300, 1.0260, 1.0220, 1.0180, 1.0155, 1.0140, 1.0100, 1.0035, 0.9880, 0.9630, 0.9255, 0.8725, 0.8075, 0.7265, 0.6345, 0.5345, 0.4275, 0.3185, 0.2085, 0.1010, -0.0080];
const MODULE = 'module PWP201, Easwarakhanthan et al. 1986, 1000 W/m², 45 °C';
// Stated at 45 °C: the growths are taken as none by asking at 25 °C.
const sheet = { shortCircuit: 1.0317, openCircuit: 16.778, bestCurrent: 0.9255, bestVolts: 12.4929, currentGrowth: 0.0005, voltsGrowth: -0.0031 };
const stack = (n: number) => (a: number) => n * (1.70 + 0.20 * a);
const meeting = (n: number) => currentSourceMeetsStack(u => curveCurrent(volts, amperes, u), stack(n), 1.0315);
const IEC = 'IEC 60228';
const sizes = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50];
const atSize = (s: number) => `${s} mm²`;
/** The drop of both diodes at the 12 A of the pulses. */
const realDiodes = () => smoothedWave(20, 50, 10e-3, 5, 2 * 1.5 * 0.02585 * Math.log(12 / 1e-9), 0.02);
const TEXT = 'textbook formula';

export const supply: Chapter = {
    title: 'Supply and conductors',
    rows: [
        outside({ quantity: 'Volts for each turn', unit: 'V', at: (f: number, b: number, a: number) => `${f} Hz ${b} T ${a} cm²`, ours: (f: number, b: number, a: number) => voltsPerTurn(f, b, a * 1e-4), points: [[50, 1.2, 20, 0.5331], [50, 1.0, 8, 0.1777], [60, 1.5, 15, 0.5998]], within: 1e-4, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Mean behind a bridge on 12 V', unit: 'V', at: (drop: number) => `${2 * drop} V of diodes`, ours: (drop: number) => rectifiedVolts('bridge', 12, drop), points: [[0, 10.804], [0.7, 9.404]], within: 1e-3, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Crest behind it', unit: 'V', ours: () => crestVolts('bridge', 12, 0.7), points: [[15.57]], within: 5e-3, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Ripple factor without a capacitor', unit: '1', ours: () => rippleFactor(formFactors.bridge), points: [[0.4834]], within: 1e-4, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Mean of a three-phase bridge and of a half wave, for each volt', unit: 'V', at: (c: 'half-wave' | 'three-phase-bridge') => c, ours: (c: 'half-wave' | 'three-phase-bridge') => rectifiedVolts(c, 1, 0), points: [['three-phase-bridge', 1.3505], ['half-wave', 0.4502]], within: 1e-4, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Ripple by the straight-line rule', unit: 'V', at: (i: number, f: number, c: number) => `${i} A ${f} Hz ${c} mF`, ours: (i: number, f: number, c: number) => capacitorRipple(i, f, c * 1e-3), points: [[10, 50, 10, 10], [5, 50, 22, 2.273], [10, 60, 10, 8.333]], within: 1e-3, why: 'print', source: TEXT, known: ['recomputed'] }),
        outside({ quantity: 'Bridge into a capacitor, followed through its period: crest, trough, mean', unit: 'V', under: '20 V, 50 Hz, 10 mF, 5 A, diodes of 1 nA, ideality 1.5 and 10 mΩ', at: (which: string) => which, ours: (which: string) => realDiodes()[which as 'most'], points: [['most', 26.34], ['least', 22.43], ['mean', 24.49]], within: { share: 5e-3 }, why: 'real diodes as one drop at the crest of their pulses', source: 'ngspice', known: ['recomputed'] }),
        outside({ quantity: 'Winding and capacitor at 20 A', unit: 'A', at: (which: string) => which, ours: (which: string) => (which === 'winding' ? 20 / windingFactors['bridge-capacitor'] : capacitorCurrent(20 / windingFactors['bridge-capacitor'], 20)), points: [['winding', 32.3], ['capacitor', 25.4]], within: 0.1, why: 'print', source: 'rectifier guide of a transformer maker', known: ['second-hand copy'] }),
        outside({ quantity: 'Rest volts of a flooded lead-acid battery, 27 °C', unit: 'V', at: (c: number) => `${100 * c} %`, ours: (c: number) => leadAcidRestVolts(c), points: [[1, 12.65], [0.75, 12.45], [0.5, 12.24], [0.25, 12.06], [0, 11.89]], within: 0.05, why: 'batteries differ', source: 'battery table carried in a public file', known: ['read in a secondary page'] }),
        outside({ quantity: 'Current of a module, one diode with five constants', unit: 'A', at: (v: number) => `${v} V`, ours: (v: number) => singleDiodeCurrent(v, 1.0305, 3.4823e-6, 48.6428, 1.2013, 981.98, celsius(45)), points: volts.map((v, i) => [v, amperes[i]] as const), within: 0.02, why: '2 % of the short-circuit current', source: MODULE, known: ['second-hand copy', 'from memory'] }),
        outside({ quantity: 'Current of a module, four points of a data sheet', unit: 'A', at: (v: number) => `${v} V`, ours: (v: number) => solarCurrent(sheet, v, 1000, 298.15), points: volts.map((v, i) => [v, amperes[i]] as const), within: 0.026, why: 'no shunt in it, and the best point is known only to the spacing of the table', source: MODULE, known: ['second-hand copy'] }),
        outside({ quantity: 'Best power of that module', unit: 'W', ours: () => sheet.bestVolts * solarCurrent(sheet, sheet.bestVolts, 1000, 298.15), points: [[11.56]], within: 0.15, why: 'as above', source: MODULE, known: ['second-hand copy'] }),
        outside({ quantity: 'Where straight stacks meet that module', unit: 'A', at: (n: number) => `${n} cells`, ours: meeting, points: [[5, 1.009], [6, 0.977], [7, 0.873], [8, 0.647]], within: { share: 5e-3 }, why: 'interpolation', source: MODULE, known: ['second-hand copy', 'recomputed'] }),
        outside({ quantity: 'Volts there', unit: 'V', at: (n: number) => `${n} cells`, ours: (n: number) => stack(n)(meeting(n)), points: [[5, 9.51], [6, 11.37], [7, 13.12], [8, 14.64]], within: { share: 5e-3 }, why: 'interpolation', source: MODULE, known: ['second-hand copy', 'recomputed'] }),
        outside({ quantity: 'Cells that make most gas there', unit: '1', ours: () => [5, 6, 7, 8, 9].reduce((best, n) => (n * meeting(n) > best * meeting(best) ? n : best)), points: [[7]], within: 0, why: 'exact', source: MODULE, known: ['recomputed'] }),
        outside({ quantity: 'Gas of seven cells there', unit: 'A·cell', ours: () => 7 * meeting(7), points: [[6.11]], within: { share: 5e-3 }, why: 'interpolation', source: MODULE, known: ['recomputed'] }),
        outside({ quantity: 'Largest resistance of plain copper, 20 °C, class 2', unit: 'Ω/km', at: atSize, ours: (s: number) => standardResistance(s * 1e-6, 'stranded') * 1e3, points: [12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387].map((r, i) => [sizes[i], r] as const), within: { share: 1e-9 }, why: 'our table is this one', source: IEC, known: ['read in the primary'] }),
        outside({ quantity: 'Largest resistance of plain copper, 20 °C, class 5', unit: 'Ω/km', at: atSize, ours: (s: number) => standardResistance(s * 1e-6, 'flexible') * 1e3, points: [13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386].map((r, i) => [sizes[i], r] as const), within: { share: 1e-9 }, why: 'our table is this one', source: IEC, known: ['read in the primary'] }),
        outside({ quantity: 'Annealed copper: resistivity, growth to 70 °C, 25 mm²', unit: 'Ω·mm²/m, 1, Ω/km', at: (which: string) => which, ours: (which: string) => ({ resistivity: COPPER.resistivity * 1e6, growth: copperResistivity(celsius(70)) / copperResistivity(celsius(20)), resistance: copperResistance(25e-6, 1000, celsius(20)) }[which] ?? NaN), points: [['resistivity', 0.0172414], ['growth', 1.1965], ['resistance', 0.6897]], within: { share: 1e-4 }, why: 'print', source: 'IEC 60028', known: ['from memory', 'recomputed'] }),
        outside({ quantity: '`leads.resistance` of 2 x 500 m of 25 mm² at 50 °C', unit: 'Ω', ours: () => ofRig(bench({ temperature: 50, more: 'leads { length: 500 m   section: 25 mm2 }\npath current: supply -> leads -> stack' }), 'leads.resistance'), points: [[0.6897 * (1 + 0.00393 * 30)]], within: { share: 1e-3 }, why: 'print', source: 'IEC 60028', known: ['from memory', 'recomputed'] }),
        outside({ quantity: 'American gauges', unit: 'mm²', at: (g: number) => `${g < 0 ? `${1 - g}/0` : g} AWG`, ours: (g: number) => gaugeArea(g) * 1e6, points: [[10, 5.261], [12, 3.309], [4, 21.15], [0, 53.48], [-3, 107.2]], within: { share: 1e-3 }, why: 'print', source: 'ASTM B258', known: ['from memory'] }),
        outside({ quantity: 'Resistivity of stainless steel, 20 °C', unit: 'µΩ·m', at: (m: 'stainless-304' | 'stainless-316') => m, ours: (m: 'stainless-304' | 'stainless-316') => RESISTIVITY[m] * 1e6, points: [['stainless-304', 0.72], ['stainless-316', 0.74]], within: { share: 0.03 }, why: 'sheets scatter by 6 %', source: 'data sheets; EN 10088-1 as printed in a handbook', known: ['read in the primary'] }),
        outside({ quantity: '1 mm of 316L', unit: 'mΩ', ours: () => sheetResistance(RESISTIVITY['stainless-316'], 1e-3) * 1e3, points: [[0.74]], within: { share: 0.03 }, why: 'as above', source: 'definition', known: ['recomputed'] }),
        outside({ quantity: 'Adiabatic withstand', unit: 'A²·s', at: (k: number, s: number) => `k ${k}, ${s} mm²`, ours: (k: number, s: number) => withstand(s * 1e-6, k), points: [[115, 2.5, 82656], [143, 2.5, 127806], [115, 25, 8.266e6]], within: { share: 1e-4 }, why: 'print', source: 'IEC 60364-4-43', known: ['from memory', 'recomputed'] }),
        outside({ quantity: '`leads.ampacity` for each mm²', unit: 'A/mm²', at: atSize, ours: (s: number) => ofRig(bench({ temperature: 50, more: `leads { length: 1 m   section: ${s} mm2 }` }), 'leads.ampacity') / s, points: [[1.5, [4, 6] as const], [2.5, [4, 6] as const], [4, [4, 6] as const], [25, [2, 3] as const], [35, [2, 3] as const], [50, [2, 3] as const]], within: 1e-9, why: 'a rule of thumb of 25 %, for warnings only', source: 'IEC 60364-5-52', known: ['from memory'] }),
    ],
    unmet: [],
};
