/**
 * What feeds the stack, reduced to what the operating point needs: volts over amperes with a limit, or (solar modules)
 * amperes over volts. Read from whatever the text describes: a bought supply, a transformer with a rectifier, a battery,
 * modules, with the leads and diodes on the way.
 */
import { crestVolts, pulsedCurrent, rectifiedMean, diodesInPath, solarCurrent, type RectifierCircuit } from '../physics/supply.js';
import { leadsResistanceOf, leadsToStack } from './leads-model.js';
import { defineModel } from './define.js';
import type { View } from './view.js';

export interface Source {
    readonly part: string;
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
        const diodes = q.all('diode').reduce((sum, d) => sum + d.maybe('forward-drop', 0.8), 0);
        const common = { part: supply.name, leads, diodes, formFactor: () => 1 };
        switch (supply.kind) {
            case 'transformer':
                return transformerSource(q, supply, common);
            case 'battery': {
                const open = supply.num('voltage');
                const cells = supply.maybe('internal-resistance', open / 51.2 * 0.02);
                return { ...common, kind: 'voltage', open, crest: supply.maybe('full', open), limit: Infinity, limited: false, resistance: cells, efficiency: 0.95 };
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
    const efficiency = supply.maybe('efficiency', 0.88);
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
    const open = set === set ? set : noLoad === noLoad ? noLoad : sort === 'converter' && limited ? 120 : supply.num('voltage');
    return { ...common, kind: 'voltage', open, crest: open, limit: current, limited, resistance: 0, efficiency };
}

function transformerSource(q: View, transformer: View, common: Common): Source {
    const rectifier = q.the('rectifier');
    const circuit = (rectifier?.word('circuit') ?? 'bridge') as RectifierCircuit | 'none';
    const drop = rectifier?.maybe('forward-drop', 1) ?? 1;
    const secondary = transformer.num('secondary');
    const unloaded = transformer.maybe('secondary-unloaded', 1.08 * secondary);
    const rated = transformer.maybe('secondary-current', transformer.maybe('power') / secondary);
    const winding = rated > 0 ? Math.max(0, (unloaded - secondary) / rated) : 0;
    const capacitance = q.the('capacitor')?.maybe('capacitance', 0) ?? 0;
    const efficiency = 0.88;
    if (circuit === 'none' || !(circuit in rectifiedMean)) {
        return { ...common, kind: 'voltage', open: unloaded, crest: Math.SQRT2 * unloaded, limit: Infinity, limited: false, resistance: winding, efficiency };
    }
    const crest = crestVolts(circuit, unloaded, drop);
    if (capacitance > 0) {
        // A large capacitor keeps the crest; the mean sags with the current by the winding's resistance, about three times over
        // because it charges in short pulses.
        return { ...common, kind: 'voltage', open: crest, crest, limit: Infinity, limited: false, resistance: 3 * winding, efficiency };
    }
    if (circuit === 'three-phase-bridge') {
        const open = rectifiedMean[circuit] * unloaded - diodesInPath[circuit] * drop;
        return { ...common, kind: 'voltage', open, crest, limit: Infinity, limited: false, resistance: 1.8 * winding, efficiency };
    }
    const r = Math.max(1e-4, winding + common.leads);
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
        shortCircuit: shortEach, openCircuit: openEach, bestCurrent: best?.get('x')?.number ?? 0.94 * shortEach, bestVolts: best?.get('y')?.number ?? 0.82 * openEach,
        currentGrowth: 0.0005, voltsGrowth: -0.003,
    };
    return {
        ...common, kind: 'current', open: series * openEach, crest: series * openEach, limit: parallel * shortEach, limited: true, resistance: 0, efficiency: 1,
        currentAt: volts => parallel * Math.max(0, solarCurrent(module, (volts + common.diodes) / series, 1000, 318.15)),
    };
}

/** Ω of the leads that the stack's current passes, there and back, at 50 °C. 0 where none are described. */
function leadsResistance(q: View): number {
    return leadsToStack(q).reduce((sum, l) => sum + leadsResistanceOf(l), 0);
}
