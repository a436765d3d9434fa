/** What goes while a rig stands: hydrogen through walls and leaks, charge of batteries, gas that shrinks as it cools. All in three days. */
import { OXYGEN_IN_AIR } from '../../physics/constants.js';
import { contraction, gasMoles } from '../../physics/gas-volume.js';
import { lyeVapourPressure } from '../../physics/lye.js';
import { permeationThroughTube } from '../../physics/permeation.js';
import { defineQuantity } from '../define.js';
import { selfDischargeDoubt } from '../doubts.js';
import { tubeBore } from '../heads.js';
import { stackMake } from '../operating-point.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import { hydrogenThrough, lostByFilm } from '../walls.js';
import type { View } from '../view.js';

/** s, three days. */
const IDLE = 3 * 86400;
/** m, wall of a hose whose text tells only the bore. Common practice, no source. */
const USUAL_WALL = 1.5e-3;
/** s, and share of its capacity that a full battery loses in it: lead-acid 4 to 6 %, lithium 2 to 3 %, nickel-metal hydride 30 %. */
const MONTH = 30 * 86400;
const LOST_IN_A_MONTH: Readonly<Record<string, number>> = { 'lead-acid': 0.05, LFP: 0.025, NMC: 0.025, NiMH: 0.3 };
/** How much more hydrogen passes a small hole than the gas of a test, by volume: the square root of their molar masses over that of hydrogen. */
const FASTER: readonly (readonly [gas: RegExp, factor: number])[] = [[/hydrogen/i, 1], [/helium/i, Math.sqrt(4.0026 / 2.01588)], [/nitrogen/i, Math.sqrt(28.0134 / 2.01588)]];
/** Air, which is what a test without a word was done with. */
const FASTER_THAN_AIR = Math.sqrt(28.9647 / 2.01588);
/** What a gas passes freely on its way to the open air. */
const open = new Set(['tube', 'arrestor', 'vent', 'tee', 'filter']);

const onHydrogen = (q: View) => q.paths.on('hydrogen').includes(q.name);
/** Pa of hydrogen in a hose that stands: that of the store behind the last compressor before it, else the air's. */
function within(q: View): number {
    const before = q.paths.before(q.name, 'hydrogen').map(n => q.other(n));
    const pressed = before.find(v => v && ['compressor', 'regulator', 'bag', 'gasometer', 'stack'].includes(v.kind));
    const over = pressed?.kind === 'compressor' ? pressed.maybeQ('presses-to', 0) : pressed?.kind === 'regulator' ? pressed.maybe('set', 0) : 0;
    return airPressureOf(q) + over;
}
/** Share of the hydrogen of a cylinder that a test on record says it loses each second; NaN where none covers it. */
function leakRate(q: View): number {
    const full = (q.maybeQ('cut-off', q.maybe('rating'))) + airPressureOf(q);
    let worst = NaN;
    for (const t of q.all('test')) {
        const [pressure, drop, lasted] = ['pressure', 'drop', 'lasted'].map(key => t.maybe(key));
        if (!t.names('covers').includes(q.name) || !(pressure > 0 && drop >= 0 && lasted > 0)) continue;
        const gas = t.rows('with').flatMap(r => [...r.values()].map(f => f.text ?? f.word ?? f.names?.join('.') ?? '')).join(' ');
        const faster = FASTER.find(([name]) => name.test(gas))?.[1] ?? FASTER_THAN_AIR;
        // Choked through the same hole the share that leaves each second is the same at every pressure, up to the speed of the gas.
        const rate = full > 0 ? faster * drop / (pressure + airPressureOf(q)) / lasted : NaN;
        if (!(rate <= worst)) worst = rate;
    }
    return worst;
}
const lostOf = (q: View, kind: string) => q.all(kind).map(v => v.maybeQ('lost-idle')).filter(n => n === n);

export default [
    defineQuantity({ name: 'lost-idle', of: 'bag', measure: 'gas-volume', unit: 'NL', meaning: 'Hydrogen that leaves through the film of a full bag in three days at room temperature.', formula: 'permeability x film x air pressure / thickness x 3 days; at most what is in it', source: 'as lost-per-day', work: q => (onHydrogen(q) ? Math.min(gasMoles(q.num('volume'), ROOM, airPressureOf(q)), IDLE * lostByFilm(q)) : NaN) }),
    defineQuantity({ name: 'lost-idle', of: 'tube', measure: 'gas-volume', unit: 'NL', meaning: 'Hydrogen that leaves through the wall of this hose in three days at room temperature, with hydrogen in it.', formula: '2 π length x permeability x pressure / ln(outside / bore) x 3 days', source: 'material table, ± a factor of two; a wall of 1.5 mm where none is told', work: q => {
        if (!onHydrogen(q)) return NaN;
        const bore = tubeBore(q);
        return IDLE * permeationThroughTube(hydrogenThrough(q), q.num('length'), bore, q.sizes('size')?.[0] ?? bore + 2 * USUAL_WALL, within(q));
    } }),
    defineQuantity({ name: 'lost-idle', of: 'cylinder', measure: 'gas-volume', unit: 'NL', meaning: 'Hydrogen that leaves a full cylinder in three days, if it leaks as the worst test on record says; hydrogen passes a hole faster than the gas of the test.', formula: 'full x (1 - exp(-drop / pressure / time x √(M / M of hydrogen) x 3 days))', source: 'choked flow through one hole; the test', work: q => q.q('stored-gas') * -Math.expm1(-leakRate(q) * IDLE) }),
    defineQuantity({ name: 'lost-idle', of: 'stack', measure: 'gas-volume', unit: 'NL', meaning: 'Hydrogen that leaves through the walls of all bags and hoses whose material is told, in three days at room temperature. Joints and separators are not counted.', formula: 'sum of lost-idle', source: 'as lost-idle of bag and tube', work: q => {
        const all = [...lostOf(q, 'bag'), ...lostOf(q, 'tube')];
        return all.length ? all.reduce((sum, n) => sum + n, 0) : NaN;
    } }),
    defineQuantity({ name: 'charge-idle', of: 'battery', measure: 'fraction', meaning: 'How full it is after three days with nothing drawn, at 20 °C; from full where no charge is stated. Electronics that stay on take more.', formula: 'charge - loss in a month x 3 / 30', source: 'self-discharge of 5 % a month (lead-acid), 2.5 % (lithium), 30 % (nickel-metal hydride): encyclopedia pages; twice that 10 K warmer', work: q => {
        const lost = (LOST_IN_A_MONTH[q.word('sort') ?? ''] ?? NaN) * (1 + q.doubt(selfDischargeDoubt)) * IDLE / MONTH;
        return Math.max(0, q.maybe('charge', 1) - lost);
    } }),
    defineQuantity({ name: 'shrinks-idle', of: 'column', measure: 'volume', unit: 'L', meaning: 'By how much the gas above its lye shrinks when it cools from working to the coldest of the site: bag, water of a bubbler or air comes back for it.', formula: 'gas space x (1 - T cold / T warm x dry share warm / dry share cold)', source: 'ideal gas; Balej 1985', work: q => Math.PI / 4 * q.num('bore') ** 2 * (q.num('height') - q.num('level')) * shrinks(q) }),
    defineQuantity({ name: 'oxygen-idle', of: 'column', measure: 'fraction', meaning: 'Oxygen in the hydrogen above its lye after it has cooled, where nothing but hoses stands between it and the open air: at least this much, since more mixes in.', formula: '0.2095 x share that shrinks', source: 'as shrinks-idle', work: q => (opensToAir(q) ? OXYGEN_IN_AIR * shrinks(q) : NaN) }),
];

/** Share of the gas above the lye that is gone when it has cooled. */
function shrinks(q: View): number {
    const stack = q.the('stack');
    const make = stack?.model(stackMake);
    const warm = stack?.q('temperature') ?? NaN;
    const cold = q.the('site')?.num('coldest') ?? NaN;
    if (!make) return NaN;
    const vapour = (kelvin: number) => lyeVapourPressure(make.solute, make.strength, kelvin);
    return Math.max(0, 1 - contraction(warm, vapour(warm), cold, vapour(cold), airPressureOf(q)));
}
/** The hydrogen side, with a way to the open air that nothing closes. */
function opensToAir(q: View): boolean {
    return onHydrogen(q) && q.paths.routes(q.name, 'hydrogen').some(route => route.length > 1 && route.slice(1).every((n, i, way) => {
        const v = q.other(n);
        return v ? open.has(v.kind) : i === way.length - 1 && (n === 'outdoors' || n === 'room');
    }));
}
