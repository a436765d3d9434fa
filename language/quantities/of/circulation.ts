/** Lye that goes round: how much the gas lifts, how warm it gets on its way, and what goes on after a stop. */
import { fineBubbleRise } from '../../physics/circulation.js';
import { counterflowHeat } from '../../physics/heat.js';
import { lyeDensity, lyeHeatCapacity } from '../../physics/lye.js';
import { defineQuantity } from '../define.js';
import { columnOf, sidesOf, warmCirculation, type Side } from '../lye-loop.js';
import { operatingPoint, tunedMake } from '../operating-point.js';
import type { View } from '../view.js';

const lift = 'drift balance of the gas in cells and riser = friction of ports, channel, riser, return and cooler tube';
const source = 'Zuber & Findlay 1965; held against air lifts of Stenning & Martin 1968, Kassab 2009; -30 .. +50 %';

/** Lye that goes round one side. */
const flow = (q: View, side: Side) => q.model(operatingPoint)?.lyeFlow[side] ?? NaN;
/** K by which lye warms on its way through the cells of the side where less of it flows. Half of the heat falls to each side. */
function rise(q: View): number {
    const p = q.model(operatingPoint);
    const make = q.model(tunedMake);
    if (!p || !make || !(p.current > 0)) return NaN;
    const least = Math.min(p.lyeFlow.hydrogen, p.lyeFlow.oxygen);
    // Where none flows, no rise can be told.
    if (!(least > 0)) return NaN;
    return p.heat / 2 / (least * lyeDensity(make.solute, make.strength, p.temperature) * lyeHeatCapacity(make.solute, make.strength, p.temperature));
}
/** Lye that warmth alone moves past what cools it, in the first minutes of a stop; NaN where no heights or no cooler are told. */
function afterStop(q: View): number {
    const p = q.model(operatingPoint);
    const make = q.model(tunedMake);
    const coolers = q.all('cooler').filter(c => (c.word('sort') ?? 'none') !== 'none');
    const cooler = coolers.find(c => c.word('sort') === 'coil-in-column') ?? coolers.find(c => c.word('sort') === 'tube-in-tube');
    if (!p || !make?.cooler || !cooler || !(p.cooling > 0)) return NaN;
    const { conductance, waterFlow, waterTemperature } = make.cooler;
    const side = sidesOf(q, cooler)[0] ?? 'oxygen';
    const column = columnOf(q, side);
    const coil = cooler.word('sort') === 'coil-in-column';
    const middle = coil ? (column?.num('base-height') ?? NaN) + (column?.num('level') ?? NaN) / 2 : cooler.num('middle-height');
    const height = middle - (q.num('top-height') - make.height / 2);
    const capacity = lyeDensity(make.solute, make.strength, p.temperature) * lyeHeatCapacity(make.solute, make.strength, p.temperature);
    // The less flows, the colder it gets, down to the water. A coil goes on taking what it took; a tube what the flow through it carries.
    const taken = (flow: number) => (coil ? p.cooling : counterflowHeat(conductance, flow * capacity, waterFlow, p.temperature, waterTemperature));
    const cooled = (flow: number) => (flow > 0 ? Math.max(waterTemperature, p.temperature - taken(flow) / (flow * capacity)) : waterTemperature);
    return height === height ? warmCirculation(make.loops[side], make, p.temperature, height, cooled) : NaN;
}
/** m, bubbles that smooth plates let go of in strong lye: usual, from memory. */
const FINE_BUBBLE = 0.2e-3;

export default [
    defineQuantity({ name: 'lye-flow-hydrogen', of: 'stack', measure: 'flow', unit: 'L/min', meaning: 'Lye that goes round on the hydrogen side while gas is made, lifted by the gas or sent by a pump. Nothing flows where the gas does not lift it over the mouth of its riser.', formula: lift, source, work: q => flow(q, 'hydrogen') }),
    defineQuantity({ name: 'lye-flow-oxygen', of: 'stack', measure: 'flow', unit: 'L/min', meaning: 'The same on the oxygen side: half of the gas, and so less lye.', formula: lift, source, work: q => flow(q, 'oxygen') }),
    defineQuantity({ name: 'lye-rise', of: 'stack', measure: 'temperature-difference', meaning: 'How much warmer lye leaves a cell than it came in, on the side with less flow. All cells of a side share its flow alike.', formula: 'half of the heat / (flow x density x heat capacity)', source, work: rise }),
    defineQuantity({ name: 'lye-flow-stopped', of: 'stack', measure: 'flow', unit: 'L/min', meaning: 'Lye that warmth alone sends past a coil in the column, or through a tube-in-tube cooler whose height is told, when the current has just been switched off. None where the cooler stands no higher than the cells.', formula: 'density difference x g x height between the middles of cells and cooler = friction of ports, channel, riser, return and cooler tube; cooled by what the cooler takes', source: 'Hagen-Poiseuille; Blasius', work: afterStop }),
    defineQuantity({ name: 'down-speed', of: 'column', measure: 'speed', unit: 'mm/s', meaning: 'Speed at which the lye sinks in this column on its way back to the stack.', formula: 'lye flow of its side / cross-section', source: 'definition', work: q => {
        const side = q.paths.on('hydrogen').includes(q.name) ? 'hydrogen' : 'oxygen';
        return (q.the('stack')?.q(`lye-flow-${side}`) ?? NaN) / (Math.PI / 4 * q.num('bore') ** 2);
    } }),
    defineQuantity({ name: 'fine-bubble-rise', of: 'column', measure: 'speed', unit: 'mm/s', meaning: 'Speed at which a bubble of 0.2 mm rises in the warm lye. Lye that sinks faster takes such bubbles along.', formula: 'density x g x diameter² / (18 x viscosity)', source: 'Stokes 1851', work: q => {
        const lye = q.the('lye');
        return lye ? fineBubbleRise(FINE_BUBBLE, lye.q('density'), lye.q('viscosity')) : NaN;
    } }),
];
