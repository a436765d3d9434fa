/**
 * What feeds the stack, reduced to what the operating point needs: volts over amperes with a limit, or (solar modules)
 * amperes over volts. Read from whatever the text describes: a bought supply, a transformer with a rectifier, a battery,
 * modules, with the leads and diodes on the way.
 */
import { crestVolts, pulsedCurrent, rectifiedMean, diodesInPath, solarCurrent, type RectifierCircuit } from '../physics/supply.js';
import { leadsResistanceOf, leadsToStack } from './leads-model.js';
import { defineModel } from './define.js';
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
/**
 * How much more than its own resistance a winding costs, when a capacitor is charged in short pulses, and under a three-phase bridge,
 * where two windings carry the current in turn. Common practice, no source.
 */
const CAPACITOR_PULSES = 3;
const THREE_PHASE = 1.8;
/** Ω, least of a winding with its leads: real ones are never without. */
const LEAST_WINDING = 1e-4;
/** V that a converter makes at most where only its current is stated: the ceiling for extra-low direct voltage (IEC 61140, from memory). */
const CONVERTER_CEILING = 120;
/** Best current over short-circuit current, best volts over open-circuit volts, and growth in 1/K, of usual silicon modules: data sheets,
 *  from memory. */
const SILICON = { current: 0.94, volts: 0.82, currentGrowth: 0.0005, voltsGrowth: -0.003 } as const;
/** Full sun, W/m², and cells in it 25 K above air of 20 °C, K. */
const FULL_SUN = { irradiance: 1000, temperature: 318.15 } as const;

/** Which part of a rig feeds its stack: what stands first on the current path, else the only source there is. */
export function sourceParts(q: View): View[] {
    const kinds = ['supply', 'transformer', 'battery', 'panels'];
    const onPath = q.paths.on('current').map(n => q.other(n)).filter((v): v is View => !!v && kinds.includes(v.kind));
    return onPath.length ? onPath : kinds.flatMap(k => [...q.all(k)]).slice(0, 1);
}

export const sourceModel = defineModel<Source | undefined>({
    name: 'source', of: 'stack', meaning: 'What feeds the stack: volts over amperes, with leads and diodes.',
    solve(q) {
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
                const open = supply.num('voltage');
                const cells = supply.maybe('internal-resistance', open * BATTERY_RESISTANCE_PER_VOLT);
                return { ...common, kind: 'voltage', open, crest: supply.maybe('full', open), limit: Infinity, limited: false, resistance: cells, efficiency: BATTERY_EFFICIENCY };
            }
            case 'panels':
                return panelSource(supply, common);
            default:
                return supplySource(supply, common);
        }
    },
});

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
        return { ...common, kind: 'voltage', open, crest: noLoad === noLoad ? noLoad : open, limit: current, limited, resistance, efficiency };
    }
    // A converter makes the volts that its limited current needs.
    const open = set === set ? set : noLoad === noLoad ? noLoad : sort === 'converter' && limited ? CONVERTER_CEILING : supply.num('voltage');
    return { ...common, kind: 'voltage', open, crest: open, limit: current, limited, resistance: 0, efficiency };
}

function transformerSource(q: View, transformer: View, common: Common): Source {
    const rectifier = q.the('rectifier');
    const circuit = (rectifier?.word('circuit') ?? 'bridge') as RectifierCircuit | 'none';
    const drop = rectifier?.maybe('forward-drop', RECTIFIER_DIODE) ?? RECTIFIER_DIODE;
    const secondary = transformer.num('secondary');
    const unloaded = transformer.maybe('secondary-unloaded', UNLOADED_OVER_RATED * secondary);
    const rated = transformer.maybe('secondary-current', transformer.maybe('power') / secondary);
    const winding = rated > 0 ? Math.max(0, (unloaded - secondary) / rated) : 0;
    const capacitance = q.the('capacitor')?.maybe('capacitance', 0) ?? 0;
    const efficiency = USUAL_EFFICIENCY;
    if (circuit === 'none' || !(circuit in rectifiedMean)) {
        return { ...common, kind: 'voltage', open: unloaded, crest: Math.SQRT2 * unloaded, limit: Infinity, limited: false, resistance: winding, efficiency };
    }
    const crest = crestVolts(circuit, unloaded, drop);
    if (capacitance > 0) {
        // A large capacitor keeps the crest; the mean sags with the current by the winding's resistance.
        return { ...common, kind: 'voltage', open: crest, crest, limit: Infinity, limited: false, resistance: CAPACITOR_PULSES * winding, efficiency };
    }
    if (circuit === 'three-phase-bridge') {
        const open = rectifiedMean[circuit] * unloaded - diodesInPath[circuit] * drop;
        return { ...common, kind: 'voltage', open, crest, limit: Infinity, limited: false, resistance: THREE_PHASE * winding, efficiency };
    }
    const r = Math.max(LEAST_WINDING, winding + common.leads);
    const half = circuit === 'half-wave' ? 0.5 : 1;
    return {
        ...common, leads: 0, kind: 'pulses', open: crest, crest, limit: Infinity, limited: false, resistance: r, efficiency,
        currentAt: volts => half * pulsedCurrent(crest, volts + common.diodes, r).mean,
        formFactor: volts => {
            const p = pulsedCurrent(crest, volts + common.diodes, r);
            return p.mean > 0 ? (p.rms / p.mean) / Math.sqrt(half) : 1;
        },
    };
}

function panelSource(panels: View, common: Common): Source {
    const count = panels.maybe('count', 1);
    const series = panels.maybe('wiring.series', 1);
    const parallel = panels.maybe('wiring.parallel', Math.max(1, count / series));
    const best = panels.rows('best')[0];
    const openEach = panels.num('open-circuit');
    const shortEach = panels.num('short-circuit');
    const module = {
        shortCircuit: shortEach, openCircuit: openEach, bestCurrent: best?.get('x')?.number ?? SILICON.current * shortEach, bestVolts: best?.get('y')?.number ?? SILICON.volts * openEach,
        currentGrowth: SILICON.currentGrowth, voltsGrowth: SILICON.voltsGrowth,
    };
    return {
        ...common, kind: 'current', open: series * openEach, crest: series * openEach, limit: parallel * shortEach, limited: true, resistance: 0, efficiency: 1,
        currentAt: volts => parallel * Math.max(0, solarCurrent(module, (volts + common.diodes) / series, FULL_SUN.irradiance, FULL_SUN.temperature)),
    };
}

/** Ω of the leads that the stack's current passes, there and back, at 50 °C. 0 where none are described. */
function leadsResistance(q: View): number {
    return leadsToStack(q).reduce((sum, l) => sum + leadsResistanceOf(l), 0);
}
