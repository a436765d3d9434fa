/** Heads, levels and separators: what stands across every separator, and what holds the gas back. */
import { GRAVITY, MOLAR_MASS } from '../../physics/constants.js';
import { gasVolume } from '../../physics/gas-volume.js';
import { levelShift } from '../../physics/hydrostatics.js';
import { bubblePoint } from '../../physics/separator.js';
import { vapourFlow } from '../../physics/vapour.js';
import { waterSurfaceTension, saturationPressure } from '../../physics/water.js';
import { tubeFlow } from '../../physics/flow.js';
import { gasViscosity, idealGasDensity } from '../../physics/gases.js';
import { defineQuantity } from '../define.js';
import { easiestWay, ENTRY_AND_EXIT, gasOf, headOfPart, sideHead, tubeBore, tubeLoss } from '../heads.js';
import { airPressureOf, IN_THE_HOSE, ROOM, WATER_DENSITY } from '../surroundings.js';
import type { View } from '../view.js';

/** K, 25 °C, at which bubble points are stated and tested; warm water holds a tenth less at 60 °C, lye a tenth more than water. */
const TESTED_AT = 298.15;
/** Part of the pressure that a seal holds which is left to drive gas through its pipe once it blows. Common practice, no source. */
const LEFT_TO_DRIVE = 0.5;

/** m², cross-section of a column. */
const area = (v: View) => Math.PI / 4 * v.num('bore') ** 2;
/** m², area of all columns that share their lye: with a link they fall together. */
function fallingArea(v: View): number {
    const all = v.all('column');
    return all.length > 1 && v.the('link') ? all.reduce((sum, c) => sum + area(c), 0) : area(v);
}

export default [
    defineQuantity({ name: 'head', of: 'column', measure: 'pressure', unit: 'kPa', meaning: 'Pressure of the gas in this column while it flows, above the air outside: everything that it must push against.', formula: 'sum over bubblers, wash bottles, valves, hoses and the bag, along the easiest way', source: 'hydrostatics', shownAt: 'level', shownAs: 'head', work: q => {
        const gas = gasOf(q);
        return gas ? easiestWay(q, q.name, gas)?.head ?? NaN : NaN;
    } }),
    defineQuantity({ name: 'hydrogen-head', of: 'stack', measure: 'pressure', unit: 'kPa', meaning: 'Pressure on the hydrogen side while gas flows, above the air outside.', formula: 'sum along the easiest way of the hydrogen', source: 'hydrostatics', work: q => sideHead(q, 'hydrogen') }),
    defineQuantity({ name: 'oxygen-head', of: 'stack', measure: 'pressure', unit: 'kPa', meaning: 'Pressure on the oxygen side while gas flows, above the air outside.', formula: 'sum along the easiest way of the oxygen', source: 'hydrostatics', work: q => sideHead(q, 'oxygen') }),
    defineQuantity({ name: 'separator-head', of: 'stack', measure: 'pressure', unit: 'kPa', meaning: 'Difference between the two sides across every separator in steady running.', formula: '| hydrogen head - oxygen head |', source: 'hydrostatics', shownAt: 'header', shownAs: 'across separators', work: q => Math.abs(q.q('hydrogen-head') - q.q('oxygen-head')) }),
    defineQuantity({ name: 'separator-head-worst', of: 'stack', measure: 'pressure', unit: 'kPa', meaning: 'Largest difference that one blocked outlet can put across the separators: up to the seal that opens first on that side.', formula: 'for each side: the least pressure at which one of its seals opens - head of the other side', source: 'hydrostatics; one failure at a time', work: q => {
        let worst = q.maybeQ('separator-head');
        for (const [gas, other] of [['hydrogen', 'oxygen'], ['oxygen', 'hydrogen']] as const) {
            const opens = sealOpens(q, gas);
            if (opens === opens) worst = Math.max(worst === worst ? worst : 0, opens - (q.maybeQ(`${other}-head`, 0)));
        }
        return worst;
    } }),
    defineQuantity({ name: 'bubble-point', of: 'stack', measure: 'pressure', unit: 'kPa', meaning: 'Difference of pressure at which gas breaks through a wet separator. As tested wet, or from the largest pore.', formula: '4 x surface tension / largest pore, fully wetted, surface tension of water (the cautious choice)', source: 'Young-Laplace; IAPWS surface tension', work: q => {
        const s = q.the('separator');
        if (!s) return q.num('separator');
        const tested = s.maybe('bubble-pressure');
        return tested === tested ? tested : bubblePoint(waterSurfaceTension(TESTED_AT), 0, s.num('largest-pore'));
    } }),
    defineQuantity({ name: 'bubble-point', of: 'separator', measure: 'pressure', unit: 'kPa', meaning: 'Difference of pressure at which gas breaks through it, wet.', formula: 'as stack.bubble-point', source: 'Young-Laplace', shownAt: 'largest-pore', shownAs: 'holds gas to', work: q => q.the('stack')?.q('bubble-point') ?? NaN }),
    defineQuantity({ name: 'level-difference', of: 'link', measure: 'length', meaning: 'How far the levels of the two columns stand apart because of the difference of heads.', formula: 'head difference / (density x g)', source: 'hydrostatics', shownAt: 'depth', shownAs: 'levels apart', work: q => (q.the('stack')?.q('separator-head') ?? NaN) / ((q.the('lye')?.q('density') ?? NaN) * GRAVITY) }),
    defineQuantity({ name: 'level-down', of: 'column', measure: 'length', meaning: 'How far the level of this column is pushed down (positive) by the difference of heads, with a link between the columns.', formula: 'head difference / (density x g), shared by the areas', source: 'hydrostatics', work: q => {
        const stack = q.the('stack');
        const gas = gasOf(q);
        const other = q.all('column').find(c => c.name !== q.name);
        if (!stack || !gas || !other || !q.the('link')) return 0;
        const difference = stack.q('hydrogen-head') - stack.q('oxygen-head');
        return levelShift(gas === 'hydrogen' ? difference : -difference, q.the('lye')?.q('density') ?? NaN, area(q), area(other));
    } }),
    defineQuantity({ name: 'level-fall', of: 'column', measure: 'speed', unit: 'mm/h', meaning: 'How fast the level falls as water is split and carried away.', formula: '(water split + vapour) / density of water / area of the columns that share their lye', source: 'stoichiometry; Balej 1985', shownAt: 'return-port', shownAs: 'falls', work: q => {
        const stack = q.the('stack');
        return stack ? (stack.q('water-use') + stack.q('vapour-loss')) / WATER_DENSITY / fallingArea(q) : NaN;
    } }),
    defineQuantity({ name: 'time-to-port', of: 'column', measure: 'time', unit: 'h', meaning: 'Time until the level reaches the return port, from the working level.', formula: 'depth of the port / fall of the level, pushed-down level counted', source: 'geometry', shownAt: 'return-port', shownAs: 'port dry after', work: q => Math.max(0, q.num('return-port') - Math.max(0, q.maybeQ('level-down', 0))) / q.q('level-fall') }),
    defineQuantity({ name: 'headspace', of: 'column', measure: 'length', meaning: 'Free height above the working level.', formula: 'height - level', source: 'geometry', work: q => q.num('height') - q.num('level') }),
    defineQuantity({ name: 'outlet-speed', of: 'column', measure: 'speed', unit: 'm/s', meaning: 'Speed of the warm moist gas in the outlet.', formula: 'wet volume flow / area of the outlet', source: 'definition', work: q => {
        const gas = gasOf(q);
        const wet = q.the('stack')?.q('hydrogen-rate-wet') ?? NaN;
        return gas ? wet * (gas === 'hydrogen' ? 1 : 0.5) / (Math.PI / 4 * q.num('outlet') ** 2) : NaN;
    } }),
    defineQuantity({ name: 'head', of: ['bubbler', 'scrubber'], measure: 'pressure', unit: 'kPa', meaning: 'Pressure that the gas needs to bubble through.', formula: 'immersion x density x g', source: 'hydrostatics', shownAt: 'immersion', shownAs: '', work: q => headOfPart(q, 'hydrogen') }),
    defineQuantity({ name: 'drying-time', of: 'bubbler', measure: 'time', unit: 'day', meaning: 'Running time until dry gas has carried off the water above the least depth; gas that comes from warm lye adds water instead.', formula: 'reserve / (dry gas x saturation at 20 °C)', source: 'IAPWS vapour pressure', work: q => {
        const rate = (q.the('stack')?.q('hydrogen-rate') ?? NaN) * (gasOf(q) === 'oxygen' ? 0.5 : 1);
        const carried = vapourFlow(rate, saturationPressure(ROOM), airPressureOf(q));
        const share = 1 - q.num('minimum') / q.num('immersion');
        return q.num('water') * WATER_DENSITY * share / carried;
    } }),
    defineQuantity({ name: 'opens-at', of: 'seal', measure: 'pressure', unit: 'kPa', meaning: 'Pressure at which this seal lets gas out.', formula: 'depth x density x g', source: 'hydrostatics', shownAt: 'depth', shownAs: 'opens at', work: q => headOfPart(q, 'hydrogen') }),
    defineQuantity({ name: 'capacity', of: 'seal', measure: 'flow', unit: 'm3/h', meaning: 'Hydrogen that its pipe carries off with the liquid blown out, at half of the pressure that it holds.', formula: 'pipe friction, smooth tube, entry and exit', source: 'Blasius; Hagen-Poiseuille', work: q => {
        const gas = gasOf(q) ?? 'hydrogen';
        return tubeFlow(LEFT_TO_DRIVE * q.q('opens-at'), q.num('pipe.bore'), q.num('pipe.length'), idealGasDensity(MOLAR_MASS[gas], ROOM, airPressureOf(q)), gasViscosity(gas, ROOM), ENTRY_AND_EXIT);
    } }),
    defineQuantity({ name: 'drop', of: 'tube', measure: 'pressure', unit: 'kPa', meaning: 'Pressure that the gas of the stack loses in this tube, dry and clean, at 25 °C.', formula: 'laminar or turbulent friction, entry and exit', source: 'Hagen-Poiseuille; Blasius', work: q => {
        const gas = gasOf(q);
        return gas ? tubeLoss(q, gas) : NaN;
    } }),
    defineQuantity({ name: 'speed', of: 'tube', measure: 'speed', unit: 'm/s', meaning: 'Mean speed of the gas of the stack in this tube at 25 °C.', formula: 'volume flow / area', source: 'definition', work: q => {
        const gas = gasOf(q);
        const rate = (q.the('stack')?.q('hydrogen-rate') ?? NaN) * (gas === 'oxygen' ? 0.5 : 1);
        return gas ? gasVolume(rate, IN_THE_HOSE, airPressureOf(q)) / (Math.PI / 4 * tubeBore(q) ** 2) : NaN;
    } }),
];

/** Least pressure, at the stack, at which a seal of one side opens; NaN if that side has none that counts. */
function sealOpens(q: View, gas: 'hydrogen' | 'oxygen'): number {
    const stack = q.the('stack');
    if (!stack) return NaN;
    let least = NaN;
    for (const seal of q.all('seal')) {
        const route = q.paths.route(stack.name, seal.name, gas);
        if (!route) continue;
        const before = route.slice(1, -1).map(n => q.other(n)).reduce((sum, v) => sum + (v ? headOfPart(v, gas) : 0), 0);
        const opens = before + seal.q('opens-at');
        if (!(opens >= least)) least = opens;
    }
    return least;
}
