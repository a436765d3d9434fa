/**
 * The way of the lye round one side of the stack, as described: from the cells up to the column with the gas, and back down,
 * through a cooler where one stands in the way.
 */
import { circuitDrop, circuitFlow, loopFlow, slugDrift, type Passage } from '../physics/circulation.js';
import { GAS_CONSTANT, GRAVITY } from '../physics/constants.js';
import { lyeDensity, lyeVapourPressure, lyeViscosity, type Solute } from '../physics/lye.js';
import { tubeBore } from './heads.js';
import type { View } from './view.js';

export type Side = 'hydrogen' | 'oxygen';
/** One side as plain numbers, SI. */
export interface Loop {
    /** m: riser from the top of the cells to its mouth in the column, and how high still lye would stand in it. */
    readonly riserBore: number;
    readonly riserHeight: number;
    readonly submergence: number;
    /** m: from the column back to the stack. */
    readonly returnBore: number;
    readonly returnLength: number;
    /** m: tubes of coolers that this lye passes one after the other; length 0 where none narrows its way. */
    readonly coolerBore: number;
    readonly coolerLength: number;
    /** m³/s that a pump sends round; 0 where none does. */
    readonly pumped: number;
}
/** What a loop meets in the stack. */
export interface LoopStack {
    readonly cells: number;
    readonly groups: number;
    /** m², wetted face of one plate. */
    readonly area: number;
    /** m, height of the wetted face. */
    readonly height: number;
    /** m, electrode to separator, each side. */
    readonly gap: number;
    /** m, one cell to the next. */
    readonly pitch: number;
    readonly solute: Solute;
    /** Mass fraction, 0 .. 0.5. */
    readonly strength: number;
    /** Ports side by side from a cell to one channel, with their bore and length, m; bore of a channel, m. */
    readonly ports: number;
    readonly portBore: number;
    readonly portLength: number;
    readonly manifoldBore: number;
    /** Pa above vacuum, in both gas spaces. */
    readonly pressure: number;
    /** What the lift law is off by, as a factor; 1 as expected. */
    readonly liftFactor: number;
}

/** m, from the cells up to the column where the text tells no heights, and hose beside what stands upright. Common practice, no source. */
const USUAL_RISE = 0.25;
const BESIDE = 0.3;
/** m, room in which lye rises behind electrodes that are pressed onto the separator. Common practice, no source. */
const BEHIND_PRESSED = 2e-3;
/** Loss factors: entry and exit; entry, exit and two bends. Textbook. */
const ENTRY_AND_EXIT = 1.5;
const WITH_BENDS = 3.5;

/** The column in which the gas of one side leaves the lye: the first one on its path. */
export function columnOf(q: View, side: Side): View | undefined {
    const first = q.paths.after(q.name, side).map(n => q.other(n)).find(v => v?.kind === 'column');
    return first ?? q.all('column')[0];
}
/** The sides whose lye passes a cooler: that of the nearest column before or behind it on the path of the lye; unknown: none. */
export function sidesOf(q: View, cooler: View): readonly Side[] {
    const near = [...q.paths.before(cooler.name, 'lye'), ...q.paths.after(cooler.name, 'lye')].map(n => q.other(n)).find(v => v?.kind === 'column');
    return near ? (['hydrogen', 'oxygen'] as const).filter(side => q.paths.on(side).includes(near.name)) : [];
}

/** Reads one side of the stack `q`. `tubes`: coolers in whose tubes this lye flows. */
export function readLoop(q: View, side: Side, tubes: readonly { readonly bore: number; readonly length: number }[]): Loop {
    const column = columnOf(q, side);
    const bore = q.num('manifold.bore');
    const level = column?.maybe('level') ?? NaN;
    const base = (column?.maybe('base-height') ?? NaN) - q.maybe('top-height');
    const mouth = column?.maybe('inlet-port', level) ?? NaN;
    const known = base + mouth === base + mouth;
    const riserHeight = known ? Math.max(0, base + mouth) : USUAL_RISE;
    const tubesOn = (from: string, to: string, medium: Side | 'lye') => q.paths.between(from, to, medium).map(n => q.other(n)).filter((v): v is View => v?.kind === 'tube');
    const riser = column ? tubesOn(q.name, column.name, side)[0] : undefined;
    const back = column ? tubesOn(column.name, q.name, 'lye') : [];
    const pump = q.all('circulation-pump').filter(p => (p.word('side') ?? 'both') === 'both' || p.word('side') === side).reduce((sum, p) => sum + p.maybe('flow', 0), 0);
    return {
        riserBore: riser ? tubeBore(riser) : bore, riserHeight, submergence: known ? Math.min(riserHeight, base + level) : USUAL_RISE,
        returnBore: back.length ? Math.min(...back.map(tubeBore)) : bore,
        returnLength: back.length ? back.reduce((sum, t) => sum + t.maybe('length', BESIDE), 0) : riserHeight + (q.sizes('wetted')?.[1] ?? 0) + BESIDE,
        coolerBore: tubes.length ? Math.min(...tubes.map(t => t.bore)) : bore, coolerLength: tubes.reduce((sum, t) => sum + t.length, 0),
        pumped: pump,
    };
}

/** What the lye of one side passes: from the cells to the riser, and from the column back into the cells. */
function passages(loop: Loop, stack: LoopStack): { readonly out: readonly Passage[]; readonly back: readonly Passage[] } {
    const port: Passage = { bore: stack.portBore, length: stack.portLength, parallel: stack.cells * stack.groups * stack.ports, fittings: ENTRY_AND_EXIT };
    // All of the flow enters the channel at one end and none is left at the other: half of its length counts.
    const channel: Passage = { bore: stack.manifoldBore, length: stack.cells * stack.pitch / 2, parallel: stack.groups, fittings: ENTRY_AND_EXIT };
    const back: Passage[] = [port, channel, { bore: loop.returnBore, length: loop.returnLength, parallel: 1, fittings: WITH_BENDS }];
    if (loop.coolerLength > 0) back.push({ bore: loop.coolerBore, length: loop.coolerLength, parallel: 1, fittings: ENTRY_AND_EXIT });
    return { out: [port, channel], back };
}
/** m³/s, more than warmth ever sends round. */
const MOST_BY_WARMTH = 1e-2;
/**
 * Lye that goes round one side by warmth alone.
 *
 * @param loop         the way
 * @param stack        the stack in it
 * @param temperature  K, of the lye in cells, riser and column
 * @param height       m, from the middle of the cells up to the middle of what cools
 * @param cooled       K, of the lye behind what cools, at a flow in m³/s; must not fall with it
 * @returns m³/s; 0 where what cools stands no higher than the cells, or the riser opens over the lye, so that no lye joins the two
 */
export function warmCirculation(loop: Loop, stack: LoopStack, temperature: number, height: number, cooled: (flow: number) => number): number {
    if (height <= 0 || loop.submergence < loop.riserHeight) return 0;
    const density = (kelvin: number) => lyeDensity(stack.solute, stack.strength, kelvin);
    const { out, back } = passages(loop, stack);
    const warm = [...out, { bore: loop.riserBore, length: loop.riserHeight, parallel: 1, fittings: WITH_BENDS }];
    const lost = (flow: number, way: readonly Passage[], kelvin: number) => circuitDrop(flow, way, density(kelvin), lyeViscosity(stack.solute, stack.strength, kelvin));
    return circuitFlow(
        flow => (density(cooled(flow)) - density(temperature)) * GRAVITY * height,
        flow => lost(flow, warm, temperature) + lost(flow, back, cooled(flow)), MOST_BY_WARMTH,
    );
}

/**
 * Lye that goes round one side.
 *
 * @param loop         the way
 * @param stack        the stack in it
 * @param temperature  K, of the lye
 * @param gas          mol/s, dry, made on this side
 * @returns m³/s: what the pump sends, else what the gas lifts, -30 .. +50 %; 0 where it lifts none
 */
export function circulation(loop: Loop, stack: LoopStack, temperature: number, gas: number): number {
    if (loop.pumped > 0) return loop.pumped;
    const density = lyeDensity(stack.solute, stack.strength, temperature);
    const viscosity = lyeViscosity(stack.solute, stack.strength, temperature);
    const gasPressure = Math.max(LEAST_SHARE * stack.pressure, stack.pressure - lyeVapourPressure(stack.solute, stack.strength, temperature));
    const halves = stack.cells * stack.groups;
    const { out: mixed, back: clear } = passages(loop, stack);
    return stack.liftFactor * loopFlow({
        riser: {
            bore: loop.riserBore, height: loop.riserHeight, submergence: loop.submergence, density, viscosity, drift: slugDrift(loop.riserBore),
            fittings: WITH_BENDS,
        },
        cellArea: halves * stack.area / stack.height * (stack.gap > 0 ? stack.gap : BEHIND_PRESSED), cellHeight: stack.height, clear, mixed,
    }, gas * GAS_CONSTANT * temperature / gasPressure);
}
/** Gas that is left beside the vapour at least, as a share of the pressure: beyond, the lye boils. */
const LEAST_SHARE = 0.1;
