/** Groups side by side share one voltage, not one current: the better one takes more. And what metal between far cells would carry. */
import { findRoot } from '../../physics/root.js';
import { passageResistance } from '../../physics/bypass-ladder.js';
import { materials } from '../../vocabulary/materials.js';
import { defineModel, defineQuantity } from '../define.js';
import { operatingPoint, remembered, tunedMake, usable } from '../operating-point.js';
import { type StackMake } from '../stack-solver.js';
import { sourceModel } from '../source.js';
import type { View } from '../view.js';

/** V by which cells of one make stray, each for itself, from gaps and surfaces that are never quite alike. Own choice, no source. */
const CELL_SPREAD = 0.02;
/** Share of the current up to which the better group is looked for. */
const ALL_BUT = 0.99;
/** V that metal between two points of lye takes before it splits water on itself: rule of the neighbouring finding on metal channels. */
const BEFORE_GAS = 1.5;

/** A that the better group takes; NaN with one group or without current. */
const better = defineModel<number>({
    name: 'better-group', of: 'stack', meaning: 'Current of the better group, all groups at one voltage.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const p = q.model(operatingPoint);
        if (!usable(make, source) || !p || !(p.current > 0) || !(make.groups > 1)) return NaN;
        const stated = q.said('better-group');
        const lower = stated ? q.maybe('better-group.volts', 0) : CELL_SPREAD * Math.sqrt(2 * make.cells);
        const one: StackMake = { ...make, groups: 1, cooler: undefined };
        const good: StackMake = { ...one, cells: q.maybe('better-group.cells', make.cells), gap: q.maybe('better-group.gap', make.gap) };
        const volts = (m: StackMake, current: number) => remembered(m, source!, p.room, p.temperature, current).voltage;
        const excess = (current: number) => volts(good, current) - lower - volts(one, (p.current - current) / (make.groups - 1));
        // A group that stands above the others takes less than its share: then another one is the better.
        const even = p.current / make.groups;
        if (!(excess(even) < 0)) return even;
        const most = ALL_BUT * p.current;
        return excess(most) < 0 ? most : findRoot(excess, even, most, 0.005 * p.current);
    },
});
/** The first metal part in the lye beside the stack. */
export function metalInLye(q: View): View | undefined {
    const wet = q.paths.on('lye');
    const metal = (v: View) => !!materials.get(v.word('material') ?? '')?.conducts;
    return [...q.all('column'), ...q.all('tube').filter(t => wet.includes(t.name)), ...q.all('cooler').filter(c => wet.includes(c.name) && !['fan', 'fins', 'none'].includes(c.word('sort') ?? ''))].find(metal);
}

const source = 'Kirchhoff, with the curve of the stack; 20 mV from cell to cell: own choice, no source';
export default [
    defineQuantity({ name: 'better-group-current', of: 'stack', measure: 'current', meaning: 'Current of the better one of several groups: as stated by better-group, else by the spread that making leaves. The lye of both counted equally warm; in truth the better one warms more and takes still more.', formula: 'volts of the better group at its current = volts of the others at theirs', source, work: q => q.model(better) }),
    defineQuantity({ name: 'group-share', of: 'stack', measure: 'number', meaning: 'That current over the mean of the groups: 1 where they share alike.', formula: 'better-group-current / current-per-group', source, work: q => q.model(better) / q.q('current-per-group') }),
    defineQuantity({ name: 'metal-bridge-current', of: 'stack', measure: 'current', meaning: 'Current that metal between both ends of the stack could draw through the lye of the hoses, were it joined to both. Zero where the hoses leave at one end, or nothing in the lye is of metal.', formula: '(stack voltage - 1.5 V) / lye of two hoses', source: 'Ohm; passage of clear lye', work: q => {
        const make = q.model(tunedMake);
        const p = q.model(operatingPoint);
        const ends = q.word('hose-ends');
        if (!make || !p || !ends) return NaN;
        if (ends === 'same' || !metalInLye(q)) return 0;
        const { returnBore, returnLength } = make.loops.hydrogen;
        return Math.max(0, p.voltage - BEFORE_GAS) / (2 * passageResistance(returnLength, Math.PI / 4 * returnBore ** 2, p.conductivity));
    } }),
];
