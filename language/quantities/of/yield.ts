/** Gas, water, and how much of the current makes gas. */
import { ATMOSPHERE, FARADAY, MOLAR_MASS } from '../../physics/constants.js';
import { diffusionAcross, diffusivity, hydrogenInOxygen, mixingAcross, pressedAcross, solubility } from '../../physics/crossover.js';
import { wetGasVolume, gasVolume } from '../../physics/gas-volume.js';
import { findRoot } from '../../physics/root.js';
import { vapourFlow } from '../../physics/vapour.js';
import { defineModel, defineQuantity, type Model } from '../define.js';
import { crossoverDoubt } from '../doubts.js';
import type { Side } from '../lye-loop.js';
import { lowLoad, operatingPoint, stackMake, tunedMake, usable } from '../operating-point.js';
import { solveStack, type OperatingPoint, type StackMake } from '../stack-solver.js';
import { sourceModel } from '../source.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

/** m, a sheet whose thickness is not stated. */
const USUAL_SHEET = 0.5e-3;
/** m³/s of lye that changes sides through a narrow link as it breathes, 10 mL/min. Common practice, no source: one order of magnitude
 *  either way. */
const LINK_FLOW = 0.01 / 60000;
/** Share of saturation that lye brings along from the other side: half of it comes from there where both circuits meet in one vessel or
 *  pump; all of what goes through a link. */
const HALF = 0.5;
/** Hydrogen in the oxygen at which it counts as clean no longer, as a fraction: customary trip, from memory. */
const CLEAN = 0.02;
/** Least share of the working current at which cleanness is looked for. Own choice. */
const LEAST_LOAD = 0.01;
/** Least part of the current that is taken to make gas, so that what crosses is divided by something. Own choice. */
const LEAST_EFFICIENCY = 0.02;

/** A/m² that really make gas, bypass taken off. */
function gasMakingDensity(p: OperatingPoint, make: StackMake): number {
    return Math.max(1e-9, p.groupCurrent * Math.max(LEAST_EFFICIENCY, p.bypassEfficiency) / make.area);
}
/**
 * Gas that crosses to the other side, mol/s per m² of separator, at an operating point: diffused, and carried by lye that changes sides.
 * `across`: Pa by which the hydrogen side presses more than the oxygen side.
 */
function crossing(q: View, p: OperatingPoint | undefined, across = 0): { hydrogen: number; oxygen: number } | undefined {
    const make = q.model(stackMake);
    if (!make || !p) return undefined;
    const thickness = make.separatorThickness > 0 ? make.separatorThickness : USUAL_SHEET;
    const off = Math.exp(q.doubt(crossoverDoubt));
    const joined = circuitsMeet(q);
    // m/s of lye through the sheet, towards the oxygen side.
    const seeps = across === 0 ? 0 : (q.the('separator')?.maybe('permeability', 0) ?? 0) * across;
    const one = (gas: Side) => {
        const other = gas === 'hydrogen' ? 'oxygen' : 'hydrogen';
        const s = solubility(gas, make.solute, make.strength, p.temperature);
        const diffused = diffusionAcross(diffusivity(gas, make.solute, make.strength, p.temperature), s, make.pressure, thickness, 1);
        // Lye that changes sides carries its dissolved gas: through a narrow link next to nothing, through joined returns half of what
        // flows into the cells of the other side.
        const mixed = joined ? mixingAcross(p.lyeFlow[other], s, make.pressure, HALF) : mixingAcross(LINK_FLOW, s, make.pressure, 1);
        return off * (diffused + mixed / (make.area * make.cells * make.groups) + pressedAcross(gas === 'hydrogen' ? seeps : -seeps, s, make.pressure));
    };
    return { hydrogen: one('hydrogen'), oxygen: one('oxygen') };
}
/** Whether the lye of both sides meets in returns, a vessel or a pump. */
function circuitsMeet(q: View): boolean {
    const shared = q.the('link')?.word('shared');
    return shared === 'returns' || shared === 'pumped-loop';
}
/** Pa by which the hydrogen side presses more than the oxygen side, where the sheet is known to let lye pass; 0 where not. */
function pressing(q: View): number {
    return (q.the('separator')?.maybe('permeability', 0) ?? 0) > 0 ? q.maybeQ('hydrogen-head', 0) - q.maybeQ('oxygen-head', 0) : 0;
}
/** The same at the point in steady running, pressed lye counted: what analysers would show. */
const arriving = (q: View, p = q.model(operatingPoint)) => crossing(q, p, pressing(q));
/** What analysers would show at one point, of dry gas, as fractions. */
export function impuritiesAt(q: View, p: OperatingPoint | undefined): { readonly hydrogenInOxygen: number; readonly oxygenInHydrogen: number } {
    const make = q.model(stackMake);
    const c = arriving(q, p);
    if (!p || !make || !c) return { hydrogenInOxygen: NaN, oxygenInHydrogen: NaN };
    const made = gasMakingDensity(p, make);
    return { hydrogenInOxygen: hydrogenInOxygen(c.hydrogen, made), oxygenInHydrogen: c.oxygen / (c.oxygen + made / (2 * FARADAY)) };
}
/** How close the lowest clean current is found, as a share of the working one: far closer than what crosses is known. */
const FOUND = 0.001;
interface Clean {
    /** A; NaN where there is none, and why. */
    readonly current: number;
    readonly why?: string;
    readonly point?: OperatingPoint;
}
const lowestClean: Model<Clean> = defineModel<Clean>({
    name: 'lowest-clean', of: 'stack', meaning: 'The lowest current at which the oxygen is clean.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const p = q.model(operatingPoint);
        if (!usable(make, source) || !p || !(p.current > 0)) return { current: NaN };
        // Each is solved from the one before. What makes the gas grows with the current and what crosses hardly: the reciprocal is almost a straight line.
        let last = q.nearby(lowestClean)?.point ?? p;
        const over = (current: number) => {
            last = current === p.current ? p : solveStack(make, source!, p.room, p.temperature, current, last);
            return 1 / CLEAN - 1 / impuritiesAt(q, last).hydrogenInOxygen;
        };
        const found = FOUND * p.current;
        if (last !== p) {
            const current = secant(over, last.current, found);
            if (current > LEAST_LOAD * p.current && current < p.current) return { current, point: last };
        }
        if (!(over(p.current) < 0)) {
            return { current: NaN, why: circuitsMeet(q) ? 'the lye of both sides meets and carries gas across' : p.bypassEfficiency < HALF ? 'most of the current bypasses the cells' : 'too much crosses the separators for so little gas' };
        }
        const least = LEAST_LOAD * p.current;
        if (over(least) < 0) return { current: least };
        const current = findRoot(over, least, p.current, found);
        return { current, point: last };
    },
});
/** Steps after which a function counts as no straight line. */
const MOST_SECANTS = 5;
/** Where a function that is almost a straight line through `1 / CLEAN` at nothing crosses zero; NaN where it bends too much. */
function secant(f: (x: number) => number, from: number, tolerance: number): number {
    let x = from;
    let slope = NaN;
    let here = f(x);
    for (let step = 0; step < MOST_SECANTS; step++) {
        if (!(slope < 0)) slope = (here - 1 / CLEAN) / x;
        const next = x - here / slope;
        if (Math.abs(next - x) <= tolerance) return next;
        if (!(next > 0)) return NaN;
        const there = f(next);
        slope = (there - here) / (next - x);
        x = next;
        here = there;
    }
    return NaN;
}
/** Share of the hydrogen made at a point that crosses through the separators. */
function crossedShare(q: View, p: OperatingPoint | undefined): number {
    const c = crossing(q, p);
    const make = q.model(stackMake);
    return c && make && p ? Math.min(1, (c.hydrogen + 2 * c.oxygen) / (p.groupCurrent / make.area / (2 * FARADAY))) : NaN;
}
/** mol/s of hydrogen that leaves a stack at a point: what bypasses the cells and what crosses taken off. */
export function hydrogenAt(q: View, p: OperatingPoint): number {
    const make = q.model(stackMake);
    return make ? p.groupCurrent * make.cells * make.groups * Math.max(0, p.bypassEfficiency - crossedShare(q, p)) / (2 * FARADAY) : NaN;
}

export default [
    defineQuantity({ name: 'bypass-current', of: 'stack', measure: 'current', meaning: 'Mean current that passes by a cell through the lye of ports and channels instead of making gas.', formula: 'exact ladder of ports and channels: (1 - efficiency of the ladder) x current per group', source: 'Kirchhoff; checked against Haverkort\'s closed form for equal cells', work: q => q.model(operatingPoint)?.bypass ?? NaN }),
    defineQuantity({ name: 'bypass-share', of: 'stack', measure: 'fraction', meaning: 'That current as a share of the current of a group.', formula: '1 - (I + sum of plate currents) / (N I)', source: 'Kirchhoff', shownAt: 'port', shownAs: 'bypass', work: q => 1 - (q.model(operatingPoint)?.bypassEfficiency ?? NaN) }),
    defineQuantity({ name: 'bypass-share-low', of: 'stack', measure: 'fraction', meaning: 'The same at the lowest current that is allowed.', formula: 'as bypass-share', source: 'Kirchhoff', work: q => 1 - (q.model(lowLoad)?.bypassEfficiency ?? NaN) }),
    defineQuantity({ name: 'worst-cell-current', of: 'stack', measure: 'current', meaning: 'Current of the plate that gets least, in the middle of a group.', formula: 'least plate current of the ladder', source: 'Kirchhoff', work: q => q.model(operatingPoint)?.worstCell ?? NaN }),
    defineQuantity({ name: 'port-resistance', of: 'stack', measure: 'resistance', meaning: 'Resistance of the lye in the ports of one cell on one inlet side, working temperature.', formula: 'length / (conductivity x area)', source: 'definition', work: q => q.model(operatingPoint)?.portResistance ?? NaN }),
    defineQuantity({ name: 'crossover-share', of: 'stack', measure: 'fraction', meaning: 'Share of the hydrogen made that crosses through the separators and comes out as impurity.', formula: '(hydrogen + 2 x oxygen crossing) / hydrogen made', source: 'Trinke 2018; Schalenbach 2016; within a factor of three', work: q => crossedShare(q, q.model(operatingPoint)) }),
    defineQuantity({ name: 'faraday-efficiency', of: 'stack', measure: 'fraction', meaning: 'Share of the current that ends up as hydrogen at the outlet.', formula: '1 - bypass share - crossover share', source: 'ladder and crossover as named there', range: 'good to ± 3 points at full load', shownAt: 'port', shownAs: 'to gas', work: q => Math.max(0, 1 - q.q('bypass-share') - q.q('crossover-share')) }),
    defineQuantity({ name: 'hydrogen-rate', of: 'stack', measure: 'gas-flow', unit: 'NL/h', meaning: 'Hydrogen made, dry, counted at 0 °C and 101.325 kPa.', formula: 'current per group x cells x faraday efficiency / 2F', source: 'Faraday; CODATA 2018', shownAt: 'header', shownAs: 'hydrogen', work: q => q.q('current-per-group') * q.q('cells-total') * q.q('faraday-efficiency') / (2 * FARADAY) }),
    defineQuantity({ name: 'hydrogen-rate-room', of: 'stack', measure: 'flow', unit: 'L/h', meaning: 'The same gas as a dry volume at 20 °C and 101.325 kPa.', formula: 'ideal gas', source: 'ideal gas', work: q => gasVolume(q.q('hydrogen-rate'), ROOM, ATMOSPHERE) }),
    defineQuantity({ name: 'hydrogen-rate-wet', of: 'stack', measure: 'flow', unit: 'L/h', meaning: 'Volume of the gas as it leaves the lye, warm and moist.', formula: 'dry gas at (air pressure - vapour pressure over the lye)', source: 'Dalton; Balej 1985', work: q => wetGasVolume(q.q('hydrogen-rate'), q.q('temperature'), airPressureOf(q), q.the('lye')?.q('vapour-pressure') ?? NaN) }),
    defineQuantity({ name: 'oxygen-rate', of: 'stack', measure: 'gas-flow', unit: 'NL/h', meaning: 'Oxygen made, dry, at 0 °C and 101.325 kPa.', formula: 'half of the hydrogen', source: 'stoichiometry', shownAt: 'header', shownAs: 'oxygen', work: q => q.q('hydrogen-rate') / 2 }),
    defineQuantity({ name: 'gas-per-day', of: 'stack', measure: 'gas-per-day', unit: 'NL/day', meaning: 'Hydrogen in a day of the stated hours.', formula: 'hydrogen rate x hours a day', source: 'definition', work: q => q.q('hydrogen-rate') * (q.the('routine')?.num('hours') ?? NaN) }),
    defineQuantity({ name: 'water-use', of: 'stack', measure: 'mass-flow', unit: 'g/h', meaning: 'Water that is split.', formula: 'one mole for each mole of hydrogen', source: 'stoichiometry', work: q => q.q('hydrogen-rate') * MOLAR_MASS.water }),
    defineQuantity({ name: 'vapour-loss', of: 'stack', measure: 'mass-flow', unit: 'g/h', meaning: 'Water that both gases carry away as vapour over the warm lye.', formula: '1.5 x hydrogen x p_w / (P - p_w)', source: 'Dalton; Balej 1985', work: q => vapourFlow(1.5 * q.q('hydrogen-rate'), q.the('lye')?.q('vapour-pressure') ?? NaN, airPressureOf(q)) }),
    defineQuantity({ name: 'hydrogen-in-oxygen', of: 'stack', measure: 'fraction', meaning: 'Hydrogen in the dry oxygen at working current, separators whole and wetted.', formula: 'diffusion with obstruction 6 and supersaturation 5, plus lye that changes sides: half of what goes round where the circuits meet, and what the difference of heads presses through a sheet of known permeability', source: 'Trinke 2018; Schalenbach 2016; within a factor of three', work: q => impuritiesAt(q, q.model(operatingPoint)).hydrogenInOxygen }),
    defineQuantity({ name: 'oxygen-in-hydrogen', of: 'stack', measure: 'fraction', meaning: 'Oxygen in the dry hydrogen at working current, separators whole and wetted.', formula: 'as hydrogen-in-oxygen, the other way', source: 'as hydrogen-in-oxygen', work: q => impuritiesAt(q, q.model(operatingPoint)).oxygenInHydrogen }),
    defineQuantity({ name: 'hydrogen-in-oxygen-low', of: 'stack', measure: 'fraction', meaning: 'Hydrogen in the oxygen at the lowest current that is allowed: what leaks stays, what dilutes it shrinks.', formula: 'as hydrogen-in-oxygen, at the gas that the low current really makes', source: 'as hydrogen-in-oxygen', work: q => impuritiesAt(q, q.model(lowLoad)).hydrogenInOxygen }),
    defineQuantity({ name: 'oxygen-in-hydrogen-low', of: 'stack', measure: 'fraction', meaning: 'Oxygen in the hydrogen at the lowest current that is allowed.', formula: 'as oxygen-in-hydrogen', source: 'as hydrogen-in-oxygen', work: q => impuritiesAt(q, q.model(lowLoad)).oxygenInHydrogen }),
    defineQuantity({ name: 'lowest-clean-current', of: 'stack', measure: 'current', meaning: 'Lowest current at which less than 2 % of hydrogen is in the oxygen, warm: what crosses hardly shrinks with the current, what dilutes it does.', formula: 'hydrogen-in-oxygen at that current, its bypass and its lye flow = 2 %', source: 'as hydrogen-in-oxygen; 2 %: customary trip, from memory', work: q => {
        const { current, why } = q.model(lowestClean);
        return why ? { value: NaN, remarks: [`There is none: even at the working current more than 2 % of hydrogen is in the oxygen, because ${why}.`] } : current;
    } }),
];
