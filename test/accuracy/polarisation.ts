/** Kinetics, separators, gaps and bubbles; formulas of single stacks. */
import { conductivityGilliam, lyeConductivity, molarity } from '../../language/physics/lye.js';
import {
    activatedKinetics, bubbleCoverage, cellVoltage, compositeSheetResistance, exchangeCurrent, gasFractionInGap, gasResistanceFactor, layerResistance, macMullinFromPorosity,
    nickelKinetics, overvoltage, pressedExtra, restVoltage, separators, stackSanchez, stackUlleberg, surfaces, tafelSlope,
} from '../../language/physics/polarisation.js';
import { FARADAY } from '../../language/physics/constants.js';
import { SHEET_OBSTRUCTION } from '../../language/physics/crossover.js';
import { reversibleVoltage } from '../../language/physics/water-splitting.js';
import { celsius } from '../physics/near.js';
import { bench } from './rigs.js';
import { ofRig, outside, type Chapter } from './outside.js';

const { anode, cathode } = nickelKinetics;
const inC = (t: number) => `${t} °C`;
const KIBRIA = 'Kibria, Mridha & Khan 1995 and Kibria & Mridha 1996, Int. J. Hydrogen Energy';
const ULLEBERG = 'Ulleberg, Int. J. Hydrogen Energy 28 (2003) 21';
const SANCHEZ = 'Sánchez et al., Int. J. Hydrogen Energy 43 (2018) 20332';
const VERMEIREN = 'Vermeiren et al., Int. J. Hydrogen Energy 23 (1998) 321';
const twice = ['second-hand copy', 'recomputed'] as const;
const densities = [20, 50, 100, 200, 300];
const warmth = [
    [25, [0.316, 0.348, 0.380, 0.421, 0.444], [0.198, 0.264, 0.313, 0.363, 0.392]], [40, [0.300, 0.332, 0.362, 0.404, 0.429], [0.179, 0.220, 0.269, 0.319, 0.348]],
    [60, [0.281, 0.313, 0.337, 0.382, 0.408], [0.156, 0.188, 0.216, 0.266, 0.295]], [80, [0.264, 0.296, 0.320, 0.360, 0.388], [0.136, 0.167, 0.192, 0.219, 0.248]],
] as const;
/** A cell whose plates carry all of 10 A per 100 cm²: one cell has no bypass. */
const cellAt = (t: number, strength: string, stack: string, amperes: number) => bench({ temperature: t, strength, amperes, stack: `separator: none   ${stack}` });
const fall = (j: number) => (t1: number, t2: number) => {
    const volts = (t: number) => ofRig(bench({ temperature: t, amperes: j / 10 }), 'stack.volts-per-cell');
    return (volts(t2) - volts(t1)) / (t2 - t1) * 1e3;
};
/** The same of a cell with 0.30 Ω·cm² at 50 °C and 0.25 at 70 °C in series. */
const narrowFall = (j: number) => {
    const volts = (t: number, series: number) => cellVoltage({ temperature: celsius(t), rest: reversibleVoltage(celsius(t)), anode, cathode, areaResistance: series, offset: 0 }, j);
    return (volts(70, 0.25e-4) - volts(50, 0.3e-4)) / 20 * 1e3;
};
const gapResistance = (gap: number, flow: number) => layerResistance(gap * 1e-3, 100) * gasResistanceFactor(gasFractionInGap(1000, celsius(60), 9e4, 1 / (2 * FARADAY), gap * 1e-3, 0.15, flow));

export const polarisation: Chapter = {
    title: 'Electrodes, separators and gaps',
    rows: [
        ...warmth.flatMap(([t, a, c]) => ([['Anode', anode, a], ['Cathode', cathode, c]] as const).map(([side, electrode, row]) => outside({
            quantity: `${side} overvoltage, smooth nickel`, unit: 'V', under: `${t} °C`, at: (j: number) => `${j} mA/cm²`, ours: (j: number) => overvoltage(electrode, 10 * j, celsius(t)), points: row.map((u, i) => [densities[i], u] as const),
            within: 1.2e-3, why: 'print, and the inverse hyperbolic sine in place of the logarithm', source: `two Tafel lines after ${KIBRIA}, constants rounded`, known: [...twice],
        }))),
        outside({ quantity: 'Sum of `stack.anode-overvoltage` and `stack.cathode-overvoltage`', unit: 'V', under: '80 °C, 100 mA/cm²', ours: () => ['anode', 'cathode'].reduce((s, e) => s + ofRig(cellAt(80, '30 wt%', '', 10), `stack.${e}-overvoltage`), 0), points: [[0.50]], within: 0.04, why: 'scatter of the fits', source: KIBRIA, known: ['second-hand copy'] }),
        outside({ quantity: 'Exchange current, cathode, low line', unit: 'mA/cm²', at: inC, ours: (t: number) => exchangeCurrent(cathode.low, celsius(t)) / 10, points: [[40, 0.116], [60, 0.259], [80, 0.403]], within: { share: 0.3 }, why: 'scatter of the fits', source: KIBRIA, known: ['second-hand copy'] }),
        outside({ quantity: 'Exchange current, cathode, high line', unit: 'mA/cm²', at: inC, ours: (t: number) => exchangeCurrent(cathode.high, celsius(t)) / 10, points: [[25, 1.27], [60, 6.46], [80, 9.42]], within: { share: 0.3 }, why: 'scatter of the fits', source: KIBRIA, known: ['second-hand copy'] }),
        outside({ quantity: 'Exchange current, cathode, high line', unit: 'mA/cm²', at: inC, ours: (t: number) => exchangeCurrent(cathode.high, celsius(t)) / 10, points: [[40, 3.50]], within: { share: 0.4 }, why: 'the fits are straight lines that run to zero at 24 °C; an Arrhenius line bends away from them', source: KIBRIA, known: ['second-hand copy'] }),
        outside({ quantity: 'Exchange current, anode, low line', unit: 'mA/cm²', at: inC, ours: (t: number) => exchangeCurrent(anode.low, celsius(t)) / 10, points: [[25, 0.00227], [40, 0.00435], [60, 0.00713], [80, 0.00991]], within: { share: 0.3 }, why: 'scatter of the fits', source: KIBRIA, known: ['second-hand copy'] }),
        outside({ quantity: 'Exchange current, anode, high line', unit: 'mA/cm²', at: inC, ours: (t: number) => exchangeCurrent(anode.high, celsius(t)) / 10, points: [[40, 0.271], [60, 0.681], [80, 1.09]], within: { share: 0.3 }, why: 'scatter of the fits', source: KIBRIA, known: ['second-hand copy'] }),
        outside({ quantity: 'Tafel slope from a transfer coefficient of a half', unit: 'mV/decade', at: inC, ours: (t: number) => tafelSlope(celsius(t), 0.5) * 1e3, points: [[25, 118.3], [60, 132.2], [80, 140.1]], within: 0.1, why: 'print', source: 'textbook, 2.303 RT/αF', known: ['recomputed'] }),
        ...([[25, 0.255, 0.167], [40, 0.227, 0.165], [60, 0.190, 0.159], [80, 0.164, 0.150]] as const).map(([t, a, c]) => outside({
            quantity: 'Overvoltages of an activated pair', unit: 'V', under: `${t} °C, 100 mA/cm²`, at: (side: string) => side, ours: (side: string) => overvoltage(activatedKinetics(celsius(t))[side as 'anode'], 1000, celsius(t)), points: [['anode', a], ['cathode', c]] as const,
            within: 1.5e-3, why: 'print, and the inverse hyperbolic sine', source: 'Hammoudi et al. 2012; Henao et al. 2014', known: [...twice],
        })),
        outside({ quantity: 'Voltage of one stack by its published formula', unit: 'V', at: (t: number, j: number) => `${t} °C ${j} A/m²`, ours: (t: number, j: number) => stackUlleberg(j, celsius(t)), points: [[80, 500, 1.5107], [80, 1000, 1.5949], [80, 2000, 1.7102], [80, 3000, 1.8029], [20, 1000, 1.8546], [20, 3000, 2.0938], [30, 1000, 1.7940], [30, 3000, 2.0281]], within: 1e-4, why: 'the same formula; half of the copies carry +1.002 for a constant, which gives 2.06 V at 80 °C and 3000 A/m²', source: ULLEBERG, known: [...twice] }),
        ...([[55, [1.6144, 1.7333, 1.8773, 1.9808, 2.0675, 2.1449]], [65, [1.5637, 1.6808, 1.8239, 1.9272, 2.0138, 2.0911]], [75, [1.5156, 1.6304, 1.7723, 1.8752, 1.9616, 2.0389]]] as const).map(([t, row]) => outside({
            quantity: 'Voltage of another stack by its published formula', unit: 'V', under: `${t} °C, 7 bar`, at: (j: number) => `${j} A/m²`, ours: (j: number) => stackSanchez(j, celsius(t), 7e5), points: row.map((u, i) => [[500, 1000, 2000, 3000, 4000, 5000][i], u] as const),
            within: 1e-4, why: 'the same formula, with the logarithm to base ten', source: SANCHEZ, known: [...twice],
        })),
        ...[500, 1000].map(j => outside({ quantity: '`stack.volts-per-cell`, its fall with warmth', unit: 'mV/K', under: `${j / 10} mA/cm²`, at: (a: number, b: number) => `${a} to ${b} °C`, ours: fall(j / 10), points: [[50, 70, [-5.5, -1.5] as const], [55, 75, [-5.5, -1.5] as const]], within: 0, why: 'the span of three measured stacks', source: 'Ulleberg 2003; Sánchez et al. 2018; de Groot et al. 2022', known: [...twice] })),
        outside({ quantity: 'Volts of a cell without gaps, their fall from 50 to 70 °C', unit: 'mV/K', at: (j: number) => `${j / 10} mA/cm²`, ours: narrowFall, points: [500, 1000, 2000, 3000].map(j => [j, [-5.5, -1.5] as const] as const), within: 0, why: 'the span of three measured stacks, which have no gaps or narrow ones', source: 'Ulleberg 2003; Sánchez et al. 2018; de Groot et al. 2022', known: [...twice] }),
        outside({ quantity: 'What 10 to 55 bar costs', unit: 'mV', at: inC, ours: (t: number) => (restVoltage(celsius(t), 55e5, 8000, 0.6) - restVoltage(celsius(t), 10e5, 8000, 0.6)) * 1e3, points: [[50, [0, 36] as const], [70, [0, 38] as const]], within: 0, why: 'measured +25 and +10 mV; Nernst alone gives the upper end, smaller bubbles give part of it back', source: 'de Groot et al., Int. J. Hydrogen Energy 47 (2022) 34773', known: [...twice] }),

        outside({ quantity: 'Resistance of 3 mm of 28 wt% KOH, 60 °C', unit: 'Ω·cm²', ours: () => layerResistance(3e-3, 107.75) * 1e4, points: [[0.2784]], within: 1e-4, why: 'print', source: 'after Gilliam et al. 2007', known: ['recomputed'] }),
        outside({ quantity: '`stack.ohmic-voltage`, gaps of 3 mm together, no separator', unit: 'mV', under: '28 wt% KOH, 60 °C, 200 mA/cm²', ours: () => ofRig(bench({ temperature: 60, strength: '28 wt%', amperes: 20, stack: 'separator: none' }).replace('gap: 2 mm', 'gap: 1.5 mm'), 'stack.ohmic-voltage') * 1e3, points: [[55.7]], within: { share: 0.01 }, why: 'our density moves the molarity by 0.3 %', source: 'after Gilliam et al. 2007', known: ['recomputed'] }),
        outside({ quantity: 'Composite sheet of 0.5 mm in 30 wt% KOH, its own curve', unit: 'Ω·cm²', at: inC, ours: (t: number) => compositeSheetResistance(celsius(t)) * 1e4, points: [[19, 0.280], [30, 0.260], [39, 0.210], [50, 0.180], [59, 0.170], [70, 0.140], [80, 0.130]], within: 1e-9, why: 'the curve is drawn through the points', source: VERMEIREN, known: ['second-hand copy'] }),
        outside({ quantity: 'Composite sheet told by its kind: MacMullin number, thickness, lye', unit: 'Ω·cm²', at: inC, ours: (t: number) => layerResistance(0.5e-3, lyeConductivity('KOH', 0.3, celsius(t)), separators['zirconia-polysulfone'].macMullin) * 1e4, points: [[19, 0.280], [30, 0.260], [39, 0.210], [50, 0.180], [59, 0.170], [70, 0.140], [80, 0.130]], within: { share: 0.25 }, why: 'what a sheet told by its kind is good for', source: VERMEIREN, known: ['second-hand copy'] }),
        outside({ quantity: 'Composite sheet told by its kind', unit: 'Ω·cm²', at: inC, ours: (t: number) => layerResistance(0.5e-3, lyeConductivity('KOH', 0.3, celsius(t)), separators['zirconia-polysulfone'].macMullin) * 1e4, points: [[25, 0.263], [60, 0.162], [80, 0.128]], within: { share: 0.25 }, why: 'a copy with a power of one half for the exponential says five times as much', source: 'exponential fit in Hammoudi 2012, Abdin 2017 and others', known: [...twice] }),
        outside({ quantity: 'MacMullin number of the composite sheet', unit: '1', at: inC, ours: () => separators['zirconia-polysulfone'].macMullin, points: [[25, 3.3], [60, 3.5]], within: { share: 0.15 }, why: 'scatter of the measurement', source: VERMEIREN, known: [...twice] }),
        outside({ quantity: 'Composite sheet told by its kind', unit: 'Ω·cm²', under: '25 °C', ours: () => layerResistance(0.5e-3, lyeConductivity('KOH', 0.3, celsius(25)), separators['zirconia-polysulfone'].macMullin) * 1e4, points: [[0.3]], within: { share: 0.25 }, why: 'a class of data sheets', source: 'maker\'s data sheet', known: ['from memory'] }),
        outside({ quantity: 'MacMullin number of open cloth', unit: '1', at: (open: number) => `${100 * open} % open`, ours: macMullinFromPorosity, points: [[0.5, 2.8], [0.8, 1.4]], within: 0.04, why: 'print of two figures', source: 'Bruggeman, porosity^-1.5', known: ['recomputed'] }),
        outside({ quantity: 'Obstruction of dissolved gas in the sheet', unit: '1', ours: () => SHEET_OBSTRUCTION, points: [[6]], within: { share: 0.25 }, why: 'stated as "about"', source: 'Schalenbach et al., J. Electrochem. Soc. 163 (2016) F1480', known: ['read in the primary'] }),
        outside({ quantity: 'Electrodes pressed onto the sheet, extra', unit: 'Ω·cm²', ours: () => pressedExtra.usual * 1e4, points: [[[0.05, 0.15] as const]], within: 0, why: 'a pressed face does no work', source: 'article on voltage losses in zero-gap alkaline cells, abstract', known: ['read in the primary'] }),
        outside({ quantity: 'Electrodes pressed onto the sheet, extra at 1 A/cm²', unit: 'mV', ours: () => pressedExtra.usual * 1e4 * 1e3, points: [[80]], within: { share: 0.25 }, why: 'stated as "about"', source: 'van der Does, Valle & Haverkort, Electrochim. Acta 562 (2026) 148509, abstract', known: ['read in the primary'] }),
        outside({ quantity: 'Gap of a published study', unit: 'Ω·cm²', under: '10 wt% KOH, 25 °C', at: (mm: number) => `${mm} mm`, ours: (mm: number) => layerResistance(mm * 1e-3, conductivityGilliam(molarity('KOH', 0.1, celsius(25)), celsius(25))) * 1e4, points: [[10, 2.71], [50, 13.6]], within: { share: 0.01 }, why: 'arithmetic; the study\'s own slopes of 0.80 and 2.31 Ω·cm² cannot be', source: 'lye by Gilliam et al. 2007; study: Emam et al. 2024', known: [...twice] }),
        outside({ quantity: 'Bubble coverage', unit: '1', at: (j: number) => `${j} A/m²`, ours: bubbleCoverage, points: [[500, 0.148], [1000, 0.183], [2000, 0.225], [3000, 0.254]], within: 1e-3, why: 'the same formula', source: 'Vogt & Balzer, Electrochim. Acta 50 (2005) 2073', known: ['from memory', 'recomputed'] }),
        outside({ quantity: 'Resistance of a gap with free bubbles over that of 3 mm', unit: '1', under: '100 mA/cm², no flow', at: (mm: number) => `${mm} mm`, ours: (mm: number) => gapResistance(mm, 0) / gapResistance(3, 0), points: [[1, [0.85, Infinity] as const], [2, [0.85, Infinity] as const]], within: 0, why: 'an order, no number: under 3 .. 4 mm nothing more is won', source: 'Int. J. Electrochem. (2019) 5392452 and Nagai et al., Int. J. Hydrogen Energy 28 (2003) 35, abstracts', known: ['read in the primary'] }),
        outside({ quantity: 'Resistance of a gap with free bubbles over that of 4.15 mm', unit: '1', under: '100 mA/cm², no flow', at: (mm: number) => `${mm} mm`, ours: (mm: number) => gapResistance(mm, 0) / gapResistance(4.15, 0), points: [[6.05, [1, Infinity] as const], [7.25, [1, Infinity] as const], [10.65, [1, Infinity] as const]], within: 0, why: 'an order, no number: wider gaps cost', source: 'Int. J. Electrochem. (2019) 5392452, abstract', known: ['read in the primary'] }),
        outside({ quantity: 'Void that bubbles add to the gap\'s resistance, gas leaving freely', unit: '%', under: '100 mA/cm², 5 mm', ours: () => (gapResistance(5, 0.3) / (layerResistance(5e-3, 100)) - 1) * 100, points: [[[3, 12] as const]], within: 0, why: 'the effect is known to half of itself', source: 'estimate from Vogt & Balzer 2005', known: ['recomputed'] }),
        outside({ quantity: 'Stainless over plain nickel', unit: 'V', ours: () => surfaces.stainless.offset - surfaces['nickel-plain'].offset, points: [[[-0.1, 0.1] as const]], within: 0, why: 'an order: 316 steel and nickel were found alike', source: 'Symes et al., Int. J. Low-Carbon Technol. (2013), abstract', known: ['read in the primary'] }),
    ],
    unmet: [
        { what: '`stack.volts-per-cell` with gaps of 2 x 2 mm, its fall from 50 to 70 °C at 300 mA/cm², within −1.5 .. −5.5 mV/K', reason: 'the measured stacks have narrow gaps or none; 4 mm of lye with bubbles, which conducts better when warm, adds to the fall', source: 'Ulleberg 2003; Sánchez et al. 2018; de Groot et al. 2022', known: [...twice], off: { unit: 'mV/K', ours: () => fall(300)(50, 70), outside: [-5.5, -1.5], within: 0 } },
        { what: 'Smooth nickel of a second laboratory (50 wt% KOH, 80 °C): both overvoltages at 100 mA/cm²', reason: 'two careful laboratories differ by a third of a volt; measured stacks side with the lower one, which is ours', source: 'Miles et al., J. Electrochem. Soc. 123 (1976) 332', known: ['second-hand copy', 'recomputed'], off: { unit: 'V', ours: () => overvoltage(anode, 1000, celsius(80)) + overvoltage(cathode, 1000, celsius(80)), outside: 0.83, within: 0.04 } },
        { what: 'Exchange currents and slopes of that laboratory', reason: 'one Tafel line for each electrode there, two here; see the line above for what it makes in volts', source: 'Miles et al. 1976', known: ['from memory', 'second-hand copy'] },
        { what: 'Bubble coverage by a polynomial in temperature', reason: 'not used: it turns over at 50 °C and goes negative outside 25 .. 80 °C; ours follows Vogt & Balzer', source: 'Hammoudi et al. 2012', known: ['second-hand copy'], off: { unit: '1', ours: () => bubbleCoverage(1000), outside: 0.086, within: { share: 0.2 } } },
        { what: 'Nickel at 10 mA/cm²: 1.81 V in 30 % KOH at 80 °C', reason: 'gap and area are not stated; the highest of all sets', source: 'Wei et al., J. Electrochem. Soc. (2024), abstract', known: ['read in the primary'], off: { unit: 'V', ours: () => ofRig(cellAt(80, '30 wt%', '', 1), 'stack.volts-per-cell'), outside: 1.81, within: 0.15 } },
        { what: 'A bare stainless anode against a nickel-iron plated one (514 mV at 10 mA/cm²)', reason: 'plated nickel-iron is no surface of ours; only direction and size of the step are printed', source: 'Wang et al., J. Appl. Electrochem. (2023), abstract', known: ['read in the primary'] },
        { what: 'Step in volts from a gap of 0 to 0.1 mm', reason: 'two groups find opposite signs; not tested', source: 'preprint 2411.08940, abstract', known: ['read in the primary'] },
        { what: 'Woven steel cloth as separator: half of the composite\'s resistance, 97.5 .. 99.25 % pure', reason: 'no kind of ours', source: 'Gannon, Warwick & Dunnill, Membranes 10 (2020) 109, abstract', known: ['read in the primary'], rules: ['separator-not-tested'] },
        { what: 'Errors of measuring a separator at home (0.3 .. 42 %)', reason: 'says how well others measure; nothing of ours answers to it', source: 'Rodríguez et al., Membranes 9 (2019) 129, abstract', known: ['read in the primary'] },
        { what: 'Tallest plates without separator before the gas layers meet (7.6 cm at 3 mm, 1000 A/m²)', reason: 'gas layers are not followed along a plate; a stack without separator that stores gas is told', source: 'Rajora & Haverkort, Chem. Eng. Sci. 260 (2022) 117823, abstract', known: ['read in the primary'], rules: ['no-separator-gas-stored'] },
        { what: 'Another diaphragm, and coated zero-gap cells (order only)', reason: 'kinds of sheets and coatings beyond those told are not in the model', source: 'Otero et al., J. Power Sources 247 (2014) 967; Phillips, thesis, Swansea (2019), abstracts', known: ['read in the primary'] },
    ],
};
