/** What a reading says, held against what the stack as described should have given at the current and the warmth of the reading. */
import { FARADAY, MOLAR_MASS } from '../../physics/constants.js';
import { lyeVapourPressure } from '../../physics/lye.js';
import { vapourFlow } from '../../physics/vapour.js';
import { defineQuantity } from '../define.js';
import { instrumentDoubts, toleranceDoubt, vapourLeavesDoubt, warmthDoubt, type Metered, type Read } from '../doubts.js';
import { curvedMake, offInstrument, operatingPoint, stackMake, takesAt, tunedMake } from '../operating-point.js';
import type { OperatingPoint } from '../stack-solver.js';
import { airPressureOf } from '../surroundings.js';
import type { View } from '../view.js';
import { hydrogenAt } from './yield.js';

/** Currents that count as the same, as a share, and K between two readings that are still compared. Common practice, no source. */
const SAME_CURRENT = 0.05;
const SAME_WARMTH = 15;
/** V/K for each cell that warmth takes off where the stack is not known well enough for its law: 3 to 5 mV/K, from memory. */
const PER_KELVIN = 0.004;
/** Part of the vapour over the warm lye that is expected not to come back to it as drops. */
const VAPOUR_LEAVES = 0.5;

/** Volts, amperes or warmth of the stack as a reading tells it, off by what its instrument leaves open; NaN where it does not tell. */
function read(q: View, stack: View, name: string, what: Read): number {
    const key = `${stack.name}.${name}`;
    const value = q.seen(key);
    if (q.kind === 'claim') return value;
    return value === value ? offInstrument(q, what, value, q.seenHalf(key)) : NaN;
}
/** A flow as a reading tells it: its ± is a share. What is only claimed was read by no meter. */
function metered(q: View, name: string, what: Metered, measure: 'gas-flow' | 'mass-flow'): number {
    const key = `${q.the('stack')?.name}.${name}`;
    const value = q.seen(key, measure);
    if (!(value > 0) || q.kind === 'claim') return value;
    const half = q.seenHalf(key) / q.seen(key);
    return value * (1 + (half > 0 ? q.doubt(toleranceDoubt(what), half) : q.doubt(instrumentDoubts[what])));
}
/** The stack at the current and the warmth of a reading; as it works where the reading does not tell them. */
function then(q: View): { readonly stack: View; readonly p: OperatingPoint } | undefined {
    const stack = q.the('stack');
    if (!stack) return undefined;
    const current = read(q, stack, 'current', 'amperes');
    const warmth = read(q, stack, 'temperature', 'temperature');
    const p = current === current ? takesAt(stack.model(tunedMake), warmth === warmth ? warmth : stack.maybeQ('temperature'), current) : stack.model(operatingPoint);
    return p && { stack, p };
}
function hydrogenThen(q: View): number {
    const t = then(q);
    return t && t.p.current > 0 ? hydrogenAt(t.stack, t.p) : NaN;
}
function waterThen(q: View): number {
    const t = then(q);
    const make = t?.stack.model(stackMake);
    if (!t || !make) return NaN;
    const made = q.q('hydrogen-expected');
    const vapour = vapourFlow(1.5 * made, lyeVapourPressure(make.solute, make.strength, t.p.temperature), airPressureOf(q));
    return made * MOLAR_MASS.water + VAPOUR_LEAVES * (1 + q.doubt(vapourLeavesDoubt)) * vapour;
}
/** The oldest dated reading of the same current on an earlier day, if neither was much warmer than the other. */
export function readingBefore(q: View): View | undefined {
    const stack = q.the('stack');
    const day = q.word('date') ?? '';
    if (!stack || !day) return undefined;
    const of = (r: View, name: string) => r.seen(`${stack.name}.${name}`);
    const current = of(q, 'current');
    let first: View | undefined;
    for (const r of q.all('reading')) {
        const then = r.word('date') ?? '';
        if (!then || then >= (first?.word('date') ?? day) || !(of(r, 'voltage') > 0) || !(Math.abs(of(r, 'current') - current) <= SAME_CURRENT * current)) continue;
        first = r;
    }
    return first && !(Math.abs(of(first, 'temperature') - of(q, 'temperature')) > SAME_WARMTH) ? first : undefined;
}
/** V that the stack should take now, by what it took then: by its law from one current and warmth to the other. */
function voltsByBefore(q: View): number {
    const stack = q.the('stack');
    const before = readingBefore(q);
    if (!stack || !before) return NaN;
    const [volts, warm, current] = [read(before, stack, 'voltage', 'volts'), read(before, stack, 'temperature', 'temperature'), read(before, stack, 'current', 'amperes')];
    const [warmNow, currentNow] = [read(q, stack, 'temperature', 'temperature'), read(q, stack, 'current', 'amperes')];
    if (!(warm === warm && warmNow === warmNow)) return volts;
    const make = stack.model(curvedMake);
    const [law, lawNow] = [takesAt(make, warm, current), takesAt(make, warmNow, currentNow)];
    const change = law && lawNow ? lawNow.voltage - law.voltage : (warm - warmNow) * PER_KELVIN * stack.maybe('cells', 0);
    return volts + (1 + q.doubt(warmthDoubt)) * change;
}
/** mol/s of hydrogen that all the charge would make. */
function most(q: View): number {
    const stack = q.the('stack');
    const current = stack ? read(q, stack, 'current', 'amperes') : NaN;
    return (current === current ? current : stack?.q('current') ?? NaN) * (stack?.q('cells-total') ?? NaN) / (2 * FARADAY);
}
const off = (seen: number, expected: number) => (expected > 0 ? seen / expected - 1 : NaN);

export default [
    defineQuantity({ name: 'hydrogen-most', of: ['claim', 'reading'], measure: 'gas-flow', unit: 'NL/h', meaning: 'The most hydrogen that its current can make, with nothing lost; by the working current where it tells none.', formula: 'current x cells / 2F', source: 'Faraday; CODATA 2018', work: most }),
    defineQuantity({ name: 'hydrogen-over-charge', of: ['claim', 'reading'], measure: 'fraction', meaning: 'How much more hydrogen is told than the charge can make, as a share; its ± is that of the meters.', formula: 'told / hydrogen-most - 1', source: 'as hydrogen-most; instruments as their ± tells, else usual ones', work: q => off(metered(q, 'hydrogen-rate', 'gas', 'gas-flow'), q.q('hydrogen-most')) }),
    defineQuantity({ name: 'hydrogen-expected', of: 'reading', measure: 'gas-flow', unit: 'NL/h', meaning: 'Hydrogen that the stack as described should have made at the current and warmth of this reading, bypass and crossing counted; at working current and warmth where it does not tell them.', formula: 'current per group x cells x (1 - bypass share - crossover share) / 2F', source: 'as hydrogen-rate of the stack', work: hydrogenThen }),
    defineQuantity({ name: 'oxygen-expected', of: 'reading', measure: 'gas-flow', unit: 'NL/h', meaning: 'The oxygen that goes with it.', formula: 'half of the hydrogen', source: 'stoichiometry', work: q => q.q('hydrogen-expected') / 2 }),
    defineQuantity({ name: 'water-expected', of: 'reading', measure: 'mass-flow', unit: 'g/h', meaning: 'Water that the stack should have used then: what is split, and half of the vapour over the warm lye, ± the same again.', formula: 'M x hydrogen + 1/2 x vapour', source: 'stoichiometry; Dalton; Balej 1985', work: waterThen }),
    defineQuantity({ name: 'hydrogen-off', of: 'reading', measure: 'fraction', meaning: 'How much more hydrogen was read than expected, as a share; its ± is that of the meters and of what is expected.', formula: 'read / expected - 1', source: 'as hydrogen-expected; instruments as their ± tells, else usual ones', work: q => off(metered(q, 'hydrogen-rate', 'gas', 'gas-flow'), q.q('hydrogen-expected')) }),
    defineQuantity({ name: 'oxygen-off', of: 'reading', measure: 'fraction', meaning: 'How much more oxygen was read than expected, as a share.', formula: 'read / expected - 1', source: 'as hydrogen-off', work: q => off(metered(q, 'oxygen-rate', 'gas', 'gas-flow'), q.q('oxygen-expected')) }),
    defineQuantity({ name: 'water-off', of: 'reading', measure: 'fraction', meaning: 'How much more water was used than expected, as a share.', formula: 'read / expected - 1', source: 'as hydrogen-off', work: q => off(metered(q, 'water-use', 'water', 'mass-flow'), q.q('water-expected')) }),
    defineQuantity({ name: 'volts-before', of: 'reading', measure: 'voltage', meaning: 'Volts that the stack should take by the oldest reading at the same current within 5 %, brought to the warmth and current of this one.', formula: 'volts then + law at this warmth and current - law at those; 4 mV/K for each cell where the stack is not known well enough', source: 'as volts-per-cell; what warmth saves ± half of it, measured stacks', range: 'within 15 K', work: voltsByBefore }),
    defineQuantity({ name: 'volts-gained', of: 'reading', measure: 'fraction', meaning: 'How much more volts it takes than then, as a share; its ± is that of both readings and of the warmth between them.', formula: 'read / volts-before - 1', source: 'as volts-before', work: q => { const stack = q.the('stack'); return stack ? off(read(q, stack, 'voltage', 'volts'), q.q('volts-before')) : NaN; } }),
];
