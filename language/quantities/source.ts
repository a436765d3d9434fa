/**
 * What feeds the stack, reduced to what the operating point needs: volts over amperes with a limit, or (solar modules)
 * amperes over volts. Read from whatever the text describes: a bought supply, a transformer with a rectifier, a battery,
 * modules, with the leads and diodes on the way.
 */
import { clearSkyOnFace } from '../physics/sun.js';
import { crestVolts, diodesInPath, ironPhosphateRestVolts, leadAcidRestVolts, pulsedCurrent, rectifiedMean, smoothedWave, solarCurrent, voltsPerTurn, type RectifierCircuit } from '../physics/supply.js';
import { copperResistivity } from '../physics/wiring.js';
import { leadsResistanceOf, leadsToStack } from './leads-model.js';
import { defineModel } from './define.js';
import { ROOM } from './surroundings.js';
import type { View } from './view.js';

/** A source as the operating point needs it. */
export interface Source {
    readonly part: string;
    /** Volts over amperes, amperes over volts, or a rectified wave that nothing smooths. */
    readonly kind: 'voltage' | 'current' | 'pulses';
    /** V without load. NaN if not known. */
    readonly open: number;
    /** V, highest instantaneous value without load. */
    readonly crest: number;
    /** A, most that it gives; Infinity if nothing limits it. */
    readonly limit: number;
    /** Whether the text says that something limits the current. */
    readonly limited: boolean;
    /** Ω inside the source (droop); 0 for a stiff one. */
    readonly resistance: number;
    /** Ω of leads, there and back, and V of diodes in series, before the stack. */
    readonly leads: number;
    readonly diodes: number;
    /** Mean current that the source sends into a stack at a voltage, A; for 'current' and 'pulses'. */
    readonly currentAt?: (volts: number) => number;
    /** Form factor (RMS over mean) at a stack voltage; 1 for smooth current. */
    readonly formFactor: (volts: number) => number;
    /** Energy out over energy in, at the DC terminals. */
    readonly efficiency: number;
}

/** V across one conducting diode in series, and across one of a rectifier: silicon under load, data sheets, from memory. */
export const SERIES_DIODE = 0.8;
const RECTIFIER_DIODE = 1;
/** Energy out over energy in where no plate says it: switching supplies and transformers with rectifiers; batteries, one way. Common
 *  practice, no source. */
const USUAL_EFFICIENCY = 0.88;
const BATTERY_EFFICIENCY = 0.95;
/** Ω of a battery with its leads and cells, for each volt: 20 mΩ at 51.2 V. Common practice, no source. */
export const BATTERY_RESISTANCE_PER_VOLT = 0.02 / 51.2;
/** V without load over V at the rated current of a transformer, where only one is stated. Common practice, no source. */
export const UNLOADED_OVER_RATED = 1.08;
/** How much more than its own resistance a winding costs under a three-phase bridge, where two windings carry the current in turn, and
 *  when three phases charge a capacitor in short pulses. Common practice, no source. */
const THREE_PHASE = 1.8;
const CAPACITOR_PULSES = 3;
/** A at which a smoothed wave is followed where the winding tells no rated current. Own choice. */
const USUAL_LOAD = 10;
/** Hz of the mains where none is said. */
export const USUAL_MAINS = 50;
/** K, 75 °C: copper of a winding after hours. Common practice, no source. */
const WINDING_WARM = 348.15;
/** V of one cell of a battery on its plate. */
const CELL_ON_PLATE: Readonly<Record<string, number>> = { 'lead-acid': 2, LFP: 3.2 };
/** Ω, least of a winding with its leads: real ones are never without. */
const LEAST_WINDING = 1e-4;
/** V that a converter makes at most where only its current is stated: the ceiling for extra-low direct voltage (IEC 61140, from memory). */
const CONVERTER_CEILING = 120;
/** Best current over short-circuit current, best volts over open-circuit volts, and growth in 1/K, of usual silicon modules: data sheets,
 *  from memory. */
const SILICON = { current: 0.94, volts: 0.82, currentGrowth: 0.0005, voltsGrowth: -0.003 } as const;
/** Full sun, W/m², and how much warmer than the air cells are in it, K: data sheets, from memory. */
export const FULL_SUN = 1000;
const CELLS_WARMER = 25;
/** rad from south, west positive, of the words for where panels look. */
const LOOKS: Readonly<Record<string, number>> = {
    south: 0, 'south-west': Math.PI / 4, west: Math.PI / 2, 'north-west': 3 * Math.PI / 4, north: Math.PI, 'north-east': -3 * Math.PI / 4, east: -Math.PI / 2, 'south-east': -Math.PI / 4, flat: 0,
};
/** Volts at which the most power is looked for, from none to those without load. */
const MOST_POWER_STEPS = 60;
/** Hour angles that are looked at for the best of the day, rad: each half hour from six to six. */
const HOURS = Array.from({ length: 25 }, (_, i) => (i - 12) * Math.PI / 24);

/** Which part of a rig feeds its stack: what stands first on the current path, else the only source there is. */
export function sourceParts(q: View): View[] {
    const kinds = ['supply', 'transformer', 'battery', 'panels'];
    const onPath = q.paths.on('current').map(n => q.other(n)).filter((v): v is View => !!v && kinds.includes(v.kind));
    return onPath.length ? onPath : kinds.flatMap(k => [...q.all(k)]).slice(0, 1);
}

export const sourceModel = defineModel<Source | undefined>({
    name: 'source', of: 'stack', meaning: 'What feeds the stack: volts over amperes, with leads and diodes.',
    solve: q => sourceIn(q, {}),
});
/** What can differ from the text over a day: W/m² on the panels, charge of the battery as a share. */
export interface Circumstances {
    readonly light?: number;
    readonly charge?: number;
}
/** What feeds the stack of a rig; undefined where nothing does, or it cannot be read. */
export function sourceIn(q: View, { light, charge }: Circumstances): Source | undefined {
    const parts = sourceParts(q);
    // The one next to the stack decides: a converter behind a battery, a battery behind a charger.
    const supply = parts.find(v => v.kind === 'supply') ?? parts.find(v => v.kind === 'transformer') ?? parts.find(v => v.kind === 'battery') ?? parts[0];
    if (!supply) return undefined;
    const leads = leadsResistance(q);
    const diodes = q.all('diode').reduce((sum, d) => sum + d.maybe('forward-drop', SERIES_DIODE), 0);
    const common = { part: supply.name, leads, diodes, formFactor: () => 1 };
    switch (supply.kind) {
        case 'transformer':
            return transformerSource(q, supply, common);
        case 'battery': {
            const open = charge === undefined ? batteryRest(supply) : batteryRest(supply, charge);
            const cells = supply.maybe('internal-resistance', supply.num('voltage') * BATTERY_RESISTANCE_PER_VOLT);
            return { kind: 'voltage', open, crest: supply.maybe('full', open), limit: Infinity, limited: false, resistance: cells, efficiency: BATTERY_EFFICIENCY, ...common };
        }
        case 'panels':
            return panelSource(q, supply, common, light ?? panelLight(q, supply));
        default:
            return supplySource(supply, common);
    }
}

/** V at rest: by its charge where that is told of a lead-acid or iron phosphate one, else as on its plate. */
export function batteryRest(battery: View, charge = battery.maybe('charge')): number {
    const plate = battery.num('voltage');
    const sort = battery.word('sort') ?? '';
    const cells = Math.round(plate / (CELL_ON_PLATE[sort] ?? NaN));
    if (charge !== charge || !(cells > 0)) return plate;
    return sort === 'LFP' ? ironPhosphateRestVolts(charge, cells) : leadAcidRestVolts(charge, cells);
}
/** Turns of the secondary by the iron; NaN where its section is not known. */
export function secondaryTurns(transformer: View): number {
    const each = voltsPerTurn(transformer.maybe('mains.frequency', USUAL_MAINS), transformer.maybe('flux'), transformer.maybe('core-area'));
    return transformer.maybe('secondary-unloaded', UNLOADED_OVER_RATED * transformer.maybe('secondary')) / each;
}
/** Ω of the secondary, warm, by its wire; NaN where turns, wire or turn are not known. */
export function secondaryResistance(transformer: View): number {
    return secondaryTurns(transformer) * transformer.maybe('mean-turn') * copperResistivity(WINDING_WARM) / transformer.maybe('wire');
}
/** W at the volts at which the panels give most, with that light on them. */
export function panelPower(q: View, panels: View, light: number): number {
    const source = panelSource(q, panels, { part: panels.name, leads: 0, diodes: 0, formFactor: () => 1 }, light);
    const volts = Array.from({ length: MOST_POWER_STEPS }, (_, i) => source.open * (i + 1) / MOST_POWER_STEPS);
    return Math.max(0, ...volts.map(v => v * source.currentAt!(v)));
}
/** W/m² of a clear day on the panels at an hour angle (rad from noon), at the equinox; NaN where latitude or where they look is not told. */
export function clearLight(q: View, panels: View, hour: number): number {
    const latitude = q.the('site')?.maybe('latitude') ?? NaN;
    const looks = panels.word('facing');
    if (latitude !== latitude || !looks) return NaN;
    const tilt = looks === 'flat' ? 0 : panels.maybe('facing.tilt', Math.abs(latitude));
    return clearSkyOnFace(latitude, 0, hour, tilt, LOOKS[looks] ?? 0);
}
/** W/m² on the panels: the brightest hour that the site tells, else the best of a clear day at the equinox by latitude and where they look, else full sun. */
export function panelLight(q: View, panels: View): number {
    const told = q.the('site')?.rows('sun').map(r => r.get('value')?.number ?? NaN).filter(n => n === n) ?? [];
    if (told.length) return Math.max(...told);
    const best = Math.max(...HOURS.map(hour => clearLight(q, panels, hour)));
    return best === best ? best : FULL_SUN;
}
/** K of the cells in that light, air of an ordinary day. */
export function panelTemperature(q: View, light: number): number {
    return (q.the('site')?.maybe('temperature') ?? ROOM) + CELLS_WARMER * light / FULL_SUN;
}
/** The wave of a winding on its smoothing capacitor at a current, V and A; undefined where nothing smooths one or two pulses a period. */
export function smoothing(q: View, transformer: View, current: number): ReturnType<typeof smoothedWave> | undefined {
    const rectifier = q.the('rectifier');
    const circuit = rectifier?.word('circuit') ?? 'bridge';
    const capacitance = q.the('capacitor')?.maybe('capacitance', 0) ?? 0;
    if (!(capacitance > 0) || (circuit !== 'bridge' && circuit !== 'centre-tap' && circuit !== 'half-wave')) return undefined;
    const unloaded = transformer.maybe('secondary-unloaded', UNLOADED_OVER_RATED * transformer.num('secondary'));
    const drop = diodesInPath[circuit] * (rectifier?.maybe('forward-drop', RECTIFIER_DIODE) ?? RECTIFIER_DIODE);
    return smoothedWave(unloaded, transformer.maybe('mains.frequency', USUAL_MAINS), capacitance, current, drop, Math.max(LEAST_WINDING, windingOf(transformer)), circuit === 'half-wave' ? 1 : 2);
}
/** A, rated, and Ω of a secondary: by its volts without and with load, else by its wire. */
function ratedCurrent(transformer: View): number {
    return transformer.maybe('secondary-current', transformer.maybe('power') / transformer.maybe('secondary'));
}
function windingOf(transformer: View): number {
    const wound = transformer.said('secondary-unloaded') ? NaN : secondaryResistance(transformer);
    if (wound === wound) return wound;
    const secondary = transformer.num('secondary');
    const rated = ratedCurrent(transformer);
    return rated > 0 ? Math.max(0, (transformer.maybe('secondary-unloaded', UNLOADED_OVER_RATED * secondary) - secondary) / rated) : 0;
}

type Common = Pick<Source, 'part' | 'leads' | 'diodes' | 'formFactor'>;

function supplySource(supply: View, common: Common): Source | undefined {
    // A limit that could not be read is no missing limit: nothing is worked out from a guess that there is none.
    if (supply.says('current-limit') === 'broken') {
        supply.num('current-limit');
        return undefined;
    }
    const limit = supply.maybe('current-limit', supply.maybe('rated-current'));
    const limited = supply.says('current-limit') === 'stated' || supply.says('current-limit') === 'like';
    const efficiency = supply.maybe('efficiency', USUAL_EFFICIENCY);
    const sort = supply.word('sort');
    const points = supply.rows('loaded').map(r => ({ volts: r.get('y')?.number ?? NaN, amps: r.get('x')?.number ?? NaN })).filter(p => p.volts === p.volts && p.amps > 0);
    const noLoad = supply.maybe('no-load');
    const set = supply.maybe('voltage');
    const current = limited ? limit : Infinity;
    if (points.length) {
        const last = points.at(-1)!;
        const first = noLoad === noLoad ? { volts: noLoad, amps: 0 } : points.length > 1 ? points[0] : { volts: last.volts, amps: 0 };
        const resistance = Math.max(0, (first.volts - last.volts) / (last.amps - first.amps));
        const open = first.volts + resistance * first.amps;
        return { kind: 'voltage', open, crest: noLoad === noLoad ? noLoad : open, limit: current, limited, resistance, efficiency, ...common };
    }
    // A converter makes the volts that its limited current needs.
    const open = set === set ? set : noLoad === noLoad ? noLoad : sort === 'converter' && limited ? CONVERTER_CEILING : supply.num('voltage');
    return { kind: 'voltage', open, crest: open, limit: current, limited, resistance: 0, efficiency, ...common };
}

function transformerSource(q: View, transformer: View, common: Common): Source {
    const rectifier = q.the('rectifier');
    const circuit = (rectifier?.word('circuit') ?? 'bridge') as RectifierCircuit | 'none';
    const drop = rectifier?.maybe('forward-drop', RECTIFIER_DIODE) ?? RECTIFIER_DIODE;
    const secondary = transformer.num('secondary');
    const unloaded = transformer.maybe('secondary-unloaded', UNLOADED_OVER_RATED * secondary);
    const winding = windingOf(transformer);
    const capacitance = q.the('capacitor')?.maybe('capacitance', 0) ?? 0;
    const efficiency = USUAL_EFFICIENCY;
    if (circuit === 'none' || !(circuit in rectifiedMean)) {
        return { kind: 'voltage', open: unloaded, crest: Math.SQRT2 * unloaded, limit: Infinity, limited: false, resistance: winding, efficiency, ...common };
    }
    const crest = crestVolts(circuit, unloaded, drop);
    const rated = ratedCurrent(transformer);
    const load = rated > 0 ? rated : USUAL_LOAD;
    const [half, full] = [smoothing(q, transformer, load / 2), smoothing(q, transformer, load)];
    if (half && full && full.mean < half.mean) {
        // The mean sags nearly straight with the current; the line through half and full load, which falls short of the crest without any.
        const sag = (half.mean - full.mean) / (load / 2);
        return { kind: 'voltage', open: half.mean + sag * load / 2, crest, limit: Infinity, limited: false, resistance: sag, efficiency, ...common };
    }
    if (capacitance > 0) {
        return { kind: 'voltage', open: crest, crest, limit: Infinity, limited: false, resistance: CAPACITOR_PULSES * winding, efficiency, ...common };
    }
    if (circuit === 'three-phase-bridge') {
        const open = rectifiedMean[circuit] * unloaded - diodesInPath[circuit] * drop;
        return { kind: 'voltage', open, crest, limit: Infinity, limited: false, resistance: THREE_PHASE * winding, efficiency, ...common };
    }
    const r = Math.max(LEAST_WINDING, winding + common.leads);
    const share = circuit === 'half-wave' ? 0.5 : 1;
    return {
        part: common.part, leads: 0, diodes: common.diodes, kind: 'pulses', open: crest, crest, limit: Infinity, limited: false, resistance: r, efficiency,
        currentAt: volts => share * pulsedCurrent(crest, volts + common.diodes, r).mean,
        formFactor: volts => {
            const p = pulsedCurrent(crest, volts + common.diodes, r);
            return p.mean > 0 ? (p.rms / p.mean) / Math.sqrt(share) : 1;
        },
    };
}

function panelSource(q: View, panels: View, common: Common, light: number): Source {
    const temperature = panelTemperature(q, light);
    const count = panels.maybe('count', 1);
    const series = panels.maybe('wiring.series', 1);
    const parallel = panels.maybe('wiring.parallel', Math.max(1, count / series));
    const best = panels.rows('best')[0];
    const openEach = panels.num('open-circuit');
    const shortEach = panels.num('short-circuit');
    const module = {
        shortCircuit: shortEach, openCircuit: openEach, bestCurrent: best?.get('x')?.number ?? SILICON.current * shortEach, bestVolts: best?.get('y')?.number ?? SILICON.volts * openEach,
        currentGrowth: SILICON.currentGrowth, voltsGrowth: panels.maybe('temperature-coefficient', SILICON.voltsGrowth * openEach) / openEach,
    };
    return {
        kind: 'current', open: series * openEach, crest: series * openEach, limit: parallel * shortEach * Math.max(1, light / FULL_SUN), limited: true, resistance: 0, efficiency: 1,
        currentAt: volts => parallel * Math.max(0, solarCurrent(module, (volts + common.diodes) / series, light, temperature)),
        ...common,
    };
}

/** Ω of the leads that the stack's current passes, there and back, at 50 °C. 0 where none are described. */
function leadsResistance(q: View): number {
    return leadsToStack(q).reduce((sum, l) => sum + leadsResistanceOf(l), 0);
}
