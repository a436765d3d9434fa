/** Air of the room, balloons, and what rules hold without a number. */
import { airPressureAt, ballVolume, grossLift } from '../../language/physics/balloon.js';
import { airDensity } from '../../language/physics/gases.js';
import { hydrogenDensity } from '../../language/physics/hydrogen.js';
import { airNeeded, roomClock, steadyFraction, thinningTime } from '../../language/physics/ventilation.js';
import { unitOf } from '../../language/units/unit.js';
import { celsius } from '../physics/near.js';
import { bench } from './rigs.js';
import { ofRig, outside, type Chapter } from './outside.js';

const inC = (t: number) => `${t} °C`;
const LEACHMAN = 'ideal air of 28.9647 g/mol; Leachman et al. 2009';
const twice = ['second-hand copy', 'recomputed'] as const;
const balloon = `${bench({ temperature: 50 })}balloon { diameter: 30 cm }`;
const room = bench({ temperature: 50, cells: 12, amperes: 20 }).replace('place: outdoors', 'place: shed   volume: 20 m3');
const held = (what: string, rules: readonly string[], source: string, known: Chapter['unmet'][number]['known'], reason = 'a rule, no number') => ({ what, reason, source, known, rules });

export const siteAndSafety: Chapter = {
    title: 'Room, balloons and what rules hold',
    rows: [
        outside({ quantity: 'Fresh air that thins 0.1 m³/h to a quarter of the limit', unit: 'm³/h', ours: () => airNeeded(0.1, 0.01), points: [[9.9]], within: { share: 1e-12 }, why: 'exact', source: 'dilution', known: ['recomputed'] }),
        outside({ quantity: 'Share with that air', unit: '%', ours: () => steadyFraction(0.1, 9.9) * 100, points: [[1]], within: 1e-10, why: 'exact', source: 'dilution', known: ['recomputed'] }),
        outside({ quantity: 'Thinning after a release', unit: 'min', at: (a: number, b: number, n: number) => `${a} to ${b} %, ${n} changes/h`, ours: (a: number, b: number, n: number) => thinningTime(a / 100, b / 100, n / 3600) / 60, points: [[4, 0.4, 6, 23.0], [4, 1, 10, 8.32]], within: { share: 2e-3 }, why: 'print', source: 'exponential decay', known: ['recomputed'] }),
        outside({ quantity: 'Tight room of 20 m³ and 108 L/h: 1 %', unit: 'h', ours: () => roomClock(20, 0.108 / 3600, 0.01) / 3600, points: [[20 / 0.108 * Math.log(1 / 0.99)]], within: { share: 1e-9 }, why: 'the same law', source: 'dilution', known: ['recomputed'] }),
        outside({ quantity: '`site.room-clock` times `stack.hydrogen-rate-room`', unit: 'm³', under: 'shed of 20 m³', ours: () => ofRig(room, 'site.room-clock') * ofRig(room, 'stack.hydrogen-rate-room'), points: [[20 * Math.log(1 / 0.99)]], within: { share: 1e-3 }, why: 'the same law', source: 'dilution', known: ['recomputed'] }),
        outside({ quantity: 'Density of air, 1 atm', unit: 'kg/m³', at: inC, ours: (t: number) => airDensity(celsius(t)), points: [[0, 1.2923], [15, 1.2250], [20, 1.2041], [25, 1.1839]], within: { share: 1e-3 }, why: 'print', source: LEACHMAN, known: [...twice] }),
        outside({ quantity: 'Density of hydrogen, 1 atm', unit: 'kg/m³', at: inC, ours: (t: number) => hydrogenDensity(celsius(t), 101325), points: [[0, 0.08988], [15, 0.08520], [20, 0.08375], [25, 0.08235]], within: { share: 1e-3 }, why: 'print', source: LEACHMAN, known: [...twice] }),
        outside({ quantity: 'Lift of a cubic metre', unit: 'kg', at: inC, ours: (t: number) => grossLift(1, celsius(t)), points: [[0, 1.2024], [15, 1.1398], [20, 1.1203], [25, 1.1016]], within: { share: 1e-3 }, why: 'print', source: LEACHMAN, known: [...twice] }),
        outside({ quantity: '`balloon.gas-volume`, 30 cm', unit: 'L', ours: () => ofRig(balloon, 'balloon.gas-volume') * 1e3, points: [[14.137]], within: { share: 1e-3 }, why: 'print', source: 'geometry', known: ['recomputed'] }),
        outside({ quantity: '`balloon.lift-gross`, 30 cm, 20 °C', unit: 'g', ours: () => ofRig(balloon, 'balloon.lift-gross') * 1e3, points: [[15.84]], within: { share: 1e-3 }, why: 'print', source: LEACHMAN, known: [...twice] }),
        outside({ quantity: 'Ball of 1 m: volume, lift', unit: 'L, g', at: (which: string) => which, ours: (which: string) => (which === 'volume' ? ballVolume(1) * 1e3 : grossLift(ballVolume(1), celsius(20)) * 1e3), points: [['volume', 523.6], ['lift', 587]], within: { share: 2e-3 }, why: 'print', source: LEACHMAN, known: ['recomputed'] }),
        outside({ quantity: 'Standard atmosphere', unit: 'Pa', at: (h: number) => `${h} m`, ours: airPressureAt, points: [[0, 101325], [1000, 89875], [5000, 54020]], within: { share: 1e-3 }, why: 'print', source: 'US Standard Atmosphere 1976', known: ['from memory'] }),
        outside({ quantity: '`site.air-pressure`', unit: 'Pa', at: (h: number) => `${h} m`, ours: (h: number) => ofRig(bench({ temperature: 50 }).replace('place: outdoors', `place: outdoors   altitude: ${h} m`), 'site.air-pressure'), points: [[1000, 89875]], within: { share: 1e-3 }, why: 'print', source: 'US Standard Atmosphere 1976', known: ['from memory'] }),
        outside({ quantity: 'Degrees Fahrenheit read from a rig', unit: '°C', at: (f: number) => `${f} °F`, ours: (f: number) => ofRig(bench({ temperature: 50 }).replace('temperature: 50 °C', `temperature: ${f} °F`), 'stack.temperature') - 273.15, points: [[140, 60.0], [180, 82.2], [200, 93.3]], within: 0.05, why: 'print', source: 'definition', known: ['recomputed'] }),
        outside({ quantity: 'One bar', unit: 'psi', ours: () => (unitOf('bar')?.factor ?? NaN) / (unitOf('psi')?.factor ?? NaN), points: [[14.503768]], within: { share: 5e-7 }, why: 'that library rounds the pound-force per square inch to 6894.76 Pa; the definition is 6894.757', source: 'the library js-quantities, run apart', known: ['recomputed'] }),
    ],
    unmet: [
        held('Aluminium and zinc in caustic', ['aluminium-touches-lye'], 'corrosion handbooks', ['from memory']),
        held('Brass and other copper alloys in caustic', ['copper-alloy-in-lye'], 'corrosion handbooks', ['from memory']),
        held('Stainless steel in hot strong caustic', ['caustic-cracking-steel'], 'Nickel Institute guides', ['from memory']),
        held('Chromate from a stainless anode', ['stainless-anode-chromate'], 'potential diagrams of chromium', ['from memory']),
        held('Plastics within their temperature, and fluoro-rubber, polycarbonate, acrylic in lye', ['plastic-above-rating', 'plastic-or-rubber-unfit'], 'resistance charts', ['from memory']),
        held('Unseen flame', ['flame-invisible'], 'several pages', ['read in a secondary page']),
        held('Balloons near people and flames', ['balloon-indoors-or-public'], 'several pages', ['read in a secondary page']),
        held('Amount of flammable gas indoors, about 28 m³', ['cylinder-inventory-vs-room', 'bag-inventory-vs-room'], 'NFPA 2 and 55', ['from memory'], 'ours is held against the room, not against that amount'),
        held('Cold strong NaOH freezes where KOH does not', ['lye-freezes'], 'producers\' handbooks', ['from memory'], 'the numbers stand in the table, the telling is a rule'),
    ],
};
