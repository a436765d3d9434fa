import { describe, expect, it } from 'vitest';
import * as balloon from '../../language/physics/balloon.js';
import * as bypassLadder from '../../language/physics/bypass-ladder.js';
import * as circulation from '../../language/physics/circulation.js';
import * as combustion from '../../language/physics/combustion.js';
import * as compression from '../../language/physics/compression.js';
import * as crossover from '../../language/physics/crossover.js';
import * as flow from '../../language/physics/flow.js';
import * as gasVolume from '../../language/physics/gas-volume.js';
import * as gases from '../../language/physics/gases.js';
import * as heat from '../../language/physics/heat.js';
import * as hydrogen from '../../language/physics/hydrogen.js';
import * as hydrostatics from '../../language/physics/hydrostatics.js';
import * as lye from '../../language/physics/lye.js';
import * as permeation from '../../language/physics/permeation.js';
import * as polarisation from '../../language/physics/polarisation.js';
import * as separator from '../../language/physics/separator.js';
import * as solids from '../../language/physics/solids.js';
import * as sun from '../../language/physics/sun.js';
import * as supply from '../../language/physics/supply.js';
import * as vapour from '../../language/physics/vapour.js';
import * as ventilation from '../../language/physics/ventilation.js';
import * as water from '../../language/physics/water.js';
import * as waterSplitting from '../../language/physics/water-splitting.js';
import * as wiring from '../../language/physics/wiring.js';

const cell: polarisation.CellMake = {
    temperature: 333, rest: 1.2, anode: polarisation.nickelKinetics.anode, cathode: polarisation.nickelKinetics.cathode,
    areaResistance: 3e-5, offset: 0.05,
};
const law = { volts: (i: number) => 1.6 + 0.02 * i, slope: () => 0.02 };
const riser = { bore: 0.02, height: 0.5, submergence: 0.45, density: 1250, viscosity: 1e-3, drift: 0.1, fittings: 1 };
const passages = [{ bore: 0.01, length: 1, parallel: 2, fittings: 1 }];
const module_ = { shortCircuit: 9, openCircuit: 38, bestCurrent: 8.4, bestVolts: 31, currentGrowth: 5e-4, voltsGrowth: -3e-3 };
const line = (x: number): number => 10 - x;
const rise = (x: number): number => x;

/** An ordinary call of every law. */
const calls: Record<string, Record<string, readonly unknown[]>> = {
    balloon: { ballVolume: [1], grossLift: [1, 300, 1e5, 0.9, 2000], airPressureAt: [500] },
    bypassLadder: {
        solveLadder: [5, 10, law, [{ port: 10, segment: 1 }]], passageResistance: [0.1, 1e-4, 90, 0.2],
            holeResistance: [0.005, 0.001, 90],
        leakPastPlate: [10, law, 5],
    },
    circulation: {
        gasFraction: [0.05, 0.1, 1.2, 0.2], bubbleDrift: [0.07, 1000, 1], fineBubbleRise: [1e-4, 1000, 1e-3], slugDrift: [0.02], liftPressure: [0.2, 0.4, 1200],
        circuitDrop: [1e-5, passages, 1200, 1e-3], circuitFlow: [line, rise, 100], riserDrive: [riser, 5e-5, 1e-5],
            liftedFlow: [riser, 5e-5],
        loopFlow: [{ riser, cellArea: 2e-3, cellHeight: 0.1, clear: passages, mixed: passages }, 5e-5],
    },
    combustion: {
        heatOfCombustion: [1, 'lower'], tntMass: [1], recombinerRise: [0.01], closedVesselRatio: [0.3, 'air'],
            chargeEnergy: [1e-3, 20],
        bleedTime: [0.1, 470, 30, 5],
    },
    compression: {
        isothermalWork: [300, 5], isothermalWorkOfHydrogen: [300, 1e5, 10e5], polytropicWork: [300, 5, 1.3],
            dischargeTemperature: [300, 5, 1.3],
        clearanceEfficiency: [0.05, 5, 1.3], stallRatio: [0.05, 1.3], freeDelivery: [8e-6, 48, 0.6],
            fillTemperature: [293, 290, 1e5, 10e5, 1.4],
        burstEnergy: [0.027, 10e5, 1e5, 1.4], pressureAtTemperature: [10e5, 293, 313], absolutePressure: [1e5, 1e5],
        afterPressureCycles: [0.2, 3, 3], afterSweep: [0.2, 3],
        stageRatio: [10, 2], stageSuctions: [300, 310, 3, 2, 1.3], stagedWork: [300, 310, 10, 2, 1.3],
        pressuresInSeries: [[(from: number) => 3 * from, (from: number) => from], 1e5, 10e5],
    },
    crossover: {
        solubility: ['hydrogen', 'KOH', 0.3, 330], diffusivity: ['hydrogen', 'KOH', 0.3, 330],
            diffusionAcross: [1e-9, 1e-6, 1e5, 5e-4, 0.1, 5, 6],
        mixingAcross: [1e-5, 1e-6, 1e5, 0.5], pressedAcross: [1e-6, 1e-6, 1e5, 5], impurity: [1e-6, 1e-4],
            hydrogenInOxygen: [1e-6, 1000],
        leastCurrentDensity: [1e-6, 0.02], hydrogenInOxygenSanchez: [2000, 330, 7e5],
    },
    flow: {
        reynolds: [1e-5, 0.01, 1000, 1e-3], frictionFactor: [1e4], tubeDrop: [1e-5, 0.01, 1, 1000, 1e-3, 1],
            tubeFlow: [100, 0.01, 1, 1000, 1e-3, 1],
        gasTubeDrop: [1e-5, 0.004, 5, 1e6, 1.2e6, 9e-6, 1], criticalPressureRatio: [1.4],
            holeFlow: [1e-6, 0.8, 5e5, 3e5, 300, 2e-3, 1.4, 1],
        smallHoleFlow: [1e-6, 0.6, 100, 1], smallHoleDrop: [1e-6, 0.6, 1e-5, 1], reliefFactor: [1.4], reliefArea: [0.01, 1e6, 300, 2e-3, 1.4, 1, 0.9],
            subcriticalFactor: [1.4, 0.8],
        accumulatedPressure: [1e6, 2],
        reliefVolumeOfGas: [1, 1.4, 1.405, 0.029, 0.002], blowDownTime: [0.01, 1e-6, 0.8, 10e5, 2e5, 1e5, 300, 2e-3, 1.4],
    },
    gasVolume: {
        molarVolume: [300, 1e5], gasVolume: [1, 300, 1e5], gasMoles: [1, 300, 1e5], wetGasVolume: [1, 300, 1e5, 3e3],
        contraction: [333, 1e4, 288, 1.7e3, 1e5],
    },
    gases: { gasViscosity: ['hydrogen', 300], idealGasDensity: [0.002, 300, 1e5], airDensity: [300, 1e5],
        airThermalConductivity: [300] },
    heat: {
        rayleighOfAir: [330, 293, 0.3, 1e5], nusseltUpright: [1e7, 0.7], nusseltUprightLaminar: [1e7, 0.7],
            nusseltCylinder: [1e6, 0.7],
        freeFilm: [330, 293, 0.3, 1e5], radiation: [330, 293, 0.9], surfaceLoss: [330, 293, 1, 0.3, 0.9], shortFilm: [40, 0.2],
        firstSteady: [line, 0, 100, 3, 1e-6], steadyMargin: [1, 2], tippingPoint: [(t: number) => t - t * t / 40, 0, 100, 3],
        steadyTemperature: [() => 100, (t: number) => t - 290, 290, 400], timeConstant: [1e5, 5],
            temperatureAfter: [290, 330, 100, 1000],
        meanDifference: [20, 10], counterflowEffectiveness: [1, 0.5], parallelEffectiveness: [1, 0.5],
            counterflowHeat: [10, 20, 30, 330, 290],
        nusseltAnnulusInner: [0.5], nusseltAnnulusOuter: [0.5], nusseltTurbulentTube: [1e4, 5, true],
        tubeConductance: [1000, 500, 0.01, 0.012, 15, 3],
    },
    hydrogen: {
        compressibility: [300, 1e6], hydrogenDensity: [300, 1e6], hydrogenMoles: [0.03, 300, 1e6],
            hydrogenPressure: [0.03, 300, 10],
        idealHeatCapacity: [300], hydrogenHeatCapacity: [300, 1e6], hydrogenHeatRatio: [300, 1e6], hydrogenSoundSpeed: [300, 1e6],
        jouleThomson: [300, 1e6], hydrogenThermalConductivity: [300],
    },
    hydrostatics: {
        columnPressure: [1000, 0.1], columnHeight: [1000, 1000], levelShift: [1000, 1000, 0.005, 0.005],
        pushTime: [1e-5, 1e-3, 0.05, 1280, 0.005, 0.005, 1e5],
    },
    lye: {
        molality: ['KOH', 0.3], strengthFromMolality: ['KOH', 7], molarity: ['KOH', 0.3, 330],
            strengthFromMolarity: ['KOH', 6900, 298],
        strengthFromMasses: [0.3, 0.7, 0.9], lyeDensity: ['NaOH', 0.3, 330], conductivityGilliam: [6900, 330],
            conductivitySeeWhite: [0.3, 330],
        lyeConductivity: ['NaOH', 0.3, 330], bestConductingStrength: ['KOH', 330], lyeViscosity: ['KOH', 0.3, 330],
        lyeHeatCapacity: ['KOH', 0.3, 330], lyeThermalConductivity: [0.3, 330], lyeSurfaceTension: ['KOH', 0.3, 300],
        lyeVapourPressure: ['KOH', 0.3, 330], waterActivity: ['KOH', 0.3, 330], lyeBoilingPoint: ['KOH', 0.3, 1e5],
            lyeFreezingPoint: ['KOH', 0.3],
        saturationStrength: ['KOH', 300], heatOfSolution: ['KOH', 0.3], mixingRise: ['KOH', 0.3, 293],
    },
    permeation: { permeationFlow: [1e-15, 1, 1e-4, 1e5], permeationThroughTube: [1e-15, 1, 6e-3, 9e-3, 1e5], permeationWarmth: [310, 300], fromBarrer: [10] },
    polarisation: {
        exchangeCurrent: [cell.anode.low, 330], tafelSlope: [330, 0.5], overvoltage: [cell.anode, 1000, 330],
            macMullinFromPorosity: [0.5],
        layerResistance: [1e-3, 100, 3], bubbleCoverage: [1000], gasFractionInGap: [1000, 330, 9e4, 5e-6, 3e-3, 0.15, 0.05],
        gasResistanceFactor: [0.2], restVoltage: [330, 5e5, 1e4, 0.6, 0.6], cellVoltage: [cell, 1000], cellSlope: [cell, 1000],
        overvoltageSlope: [cell.anode, 1000, 330], offsetFromReading: [cell, 1000, 2], plateVoltage: [cell, 1000],
            plateSlope: [cell, 1000],
        stackUlleberg: [1000, 330], stackSanchez: [1000, 330, 7e5], compositeSheetResistance: [330], activatedKinetics: [330], kineticsOf: ['highly-activated', 330],
    },
    separator: {
        bubblePoint: [0.07, 0.1, 1e-5], largestPore: [0.07, 0.1, 1e4], poreByStandardTest: [0.07, 1e4],
            bubblePointByStandardTest: [0.07, 1e-5],
        clampedEdge: [0.17, 0.16], permeability: [0.5, 1e-5, 1.5], seepage: [1e-14, 0.01, 5e-4, 1000, 1e-3],
    },
    solids: {
        faceForce: [1e5, 0.02], hoopStress: [0.3, 2e-3, 1e6], boardBow: [4000, 0.16, 0.2, 0.01, 3e9, 0.38],
            boardStress: [4000, 0.16, 0.2, 0.01],
        boltForce: [10, 0.008, 0.2], gasketSqueeze: [2e-3, 1.5e-3], gasketStress: [1e4, 1e5, 0.02, 0.004], rubberModulus: [60],
        squeezeUnderStress: [1e5, 3.6e6, 0.01, 2e-3],
    },
    supply: {
        droop: [30, 0, 27, 20], loadedVolts: [30, 0.1, 10], operatingCurrent: [line, rise, 100],
            rectifiedVolts: ['bridge', 12, 0.7],
        crestVolts: ['bridge', 12, 0.7], rippleFactor: [1.11], capacitorRipple: [10, 50, 0.01], capacitorCurrent: [32, 20],
        pulsedCurrent: [34, 25, 0.3], smoothedWave: [20, 50, 0.01, 5, 1.8, 0.05], ironPhosphateRestVolts: [0.5, 16], leadAcidTime: [3.6e5, 0.8, 10, 1.2],
        voltsPerTurn: [50, 1.2, 2e-3], continuousCurrent: [80, 0.2], leadAcidRestVolts: [0.5, 6],
        solarCurrent: [module_, 20, 800, 310], singleDiodeCurrent: [12, 1.03, 3.5e-6, 48, 1.2, 980, 318],
        curveCurrent: [[0, 1], [1, 0], 0.5], currentSourceMeetsStack: [line, rise, 10],
    },
    sun: {
        sunHeightSine: [0.8, 0, 0.3], sunOnFace: [0.8, 0, 0.3, 0.6, 0.1], clearSky: [0.7], clearSkyOnFace: [0.8, 0, 0.3, 0.6, 0.1],
    },
    vapour: {
        vapourPerDryGas: [1e4, 1e5], vapourFlow: [1e-3, 1e4, 1e5], dewPoint: [2000], condensate: [1e-3, 1e4, 1e5, 290, 1e5],
        vapourPressureAfter: [1000, 1e5, 5e5], vapourDensity: [2000, 300], molecularSieveLoading: [1000, 300],
            silicaGelLoading: [0.4, 310],
    },
    ventilation: {
        airNeeded: [0.1, 0.01], steadyFraction: [0.1, 10], roomClock: [20, 1e-4, 0.01, 1e-3], thinningTime: [0.04, 0.01, 1e-3],
        seriesOpening: [0.05, 0.06], passiveFlow: [0.05, 0.06, 2, 300, 290, 0.01], selfVentedFraction: [1e-5, 0.05, 0.06, 2],
        steadyOxygen: [1e-4, 1e-2], oxygenClock: [20, 1e-4, 0.235, 1e-5], releasedFraction: [0.1, 20],
    },
    water: {
        saturationPressure: [330], saturationTemperature: [2e4], waterDensity: [330], waterViscosity: [330],
            waterThermalConductivity: [330],
        waterHeatCapacity: [330], waterSurfaceTension: [330], latentHeat: [330],
    },
    waterSplitting: {
        reversibleVoltage: [330], thermoneutralVoltage: [330], higherHeatingVoltage: [330], vapourEnthalpyFromFeed: [330],
        thermoneutralVoltageWithVapour: [330, 1e4, 1e5], pressureVoltage: [330, 2e5, 2e5, 0.7], hydrogenRate: [10, 5, 0.95],
        oxygenRate: [10, 5, 0.95], waterSplit: [1e-3], energyPerMole: [2, 0.95], energyEfficiency: [2, 0.95, 'higher'],
        cellHeat: [5, 10, 2, 1.48, 0.95], faradayEfficiencyUlleberg: [1000], faradayEfficiencySanchez: [2000, 330],
    },
    wiring: {
        standardResistance: [2.5e-6, 'stranded'], copperResistivity: [300], copperResistance: [2.5e-6, 3, 300], gaugeArea: [10],
        roughAmpacity: [4e-6], withstand: [4e-6, 115], sheetResistance: [7e-7, 1e-3], endPlateDrop: [20, 7e-7, 0.1, 0.1, 1e-3],
        studDrop: [20, 7e-7, 1e-3, 0.01, 0.1], parallelShare: [1, 2], fuseTime: [3],
    },
};

const files: Record<string, object> = {
    balloon, bypassLadder, circulation, combustion, compression, crossover, flow, gasVolume, gases, heat, hydrogen,
        hydrostatics, lye,
    permeation, polarisation, separator, solids, sun, supply, vapour, ventilation, water, waterSplitting, wiring,
};

/** Every number in an answer. */
function numbers(answer: unknown): number[] {
    if (typeof answer === 'number') return [answer];
    if (answer instanceof Float64Array) return [...answer];
    if (answer && typeof answer === 'object') return Object.values(answer).flatMap(numbers);
    return [];
}

describe('every law', () => {
    for (const [file, exports] of Object.entries(files)) {
        for (const [name, law_] of Object.entries(exports)) {
            if (typeof law_ !== 'function') continue;
            const args = calls[file]?.[name];
            it(`${file}.${name}: known gives known, unknown gives unknown, nothing throws`, () => {
                expect(args, 'an ordinary call stands in this test').toBeDefined();
                const call = law_ as (...inputs: unknown[]) => unknown;
                const plain = numbers(call(...args!));
                expect(plain.length).toBeGreaterThan(0);
                for (const value of plain) expect(Number.isFinite(value), `${value}`).toBe(true);
                args!.forEach((arg, i) => {
                    if (typeof arg !== 'number') return;
                    const with_ = (value: number): unknown => call(...args!.map((other, k) => k === i ? value : other));
                    expect(numbers(with_(NaN)).some(value => Number.isNaN(value)), `input ${i} unknown`).toBe(true);
                    for (const odd of [0, -1, 1e-30, 1e30, -1e30, Infinity, -Infinity]) expect(() => with_(odd)).not.toThrow();
                });
            });
        }
    }
});
