/**
 * What if one thing breaks: every way in which a part can fail that a run can follow, each run to a hazard or through a day and a night;
 * and each guard put out of action in turn, to see what hangs on it.
 */
import type { Workings } from '../quantities/workings.js';
import { EXPECTED, Plant, type Pace } from './plant.js';
import { run, type Hazard, type RunResult } from './run.js';
import { DAY, usualDay, type Scenario } from './scenario.js';

/** s after the start at which it fails: the rig is warm and fills. */
export const FAILS_AT = 600;
/** Events of the vocabulary that a run follows, by kind of part. Others are listed as not followed. */
export const followedFailures: Readonly<Record<string, readonly string[]>> = {
    switch: ['sticks made', 'sticks broken', 'wire breaks', 'detached', 'drifts'], trip: ['fails to trip', 'trips', 'wire breaks', 'detached', 'drifts'],
    analyser: ['fails to trip', 'trips', 'wire breaks', 'cell dies', 'reads low', 'reads high', 'drifts'], detector: ['fails to trip', 'trips', 'wire breaks', 'poisoned', 'reads low', 'reads high', 'drifts'],
    relay: ['sticks made', 'sticks broken', 'coil fails', 'wire breaks'], contactor: ['sticks made', 'sticks broken', 'coil fails', 'wire breaks'], 'solid-state-relay': ['fails on', 'fails off', 'wire breaks'],
    timer: ['sticks made', 'sticks broken', 'wire breaks'], button: ['sticks made', 'sticks broken', 'wire breaks'], 'stop-button': ['sticks made', 'wire breaks'],
    supply: ['stops', 'limit fails', 'runs away'], transformer: ['stops', 'winding shorts'], battery: ['runs empty', 'disconnects itself'], panels: ['shaded', 'snowed over'], charger: ['stops'], fuse: ['blows'],
    leads: ['comes off'], diode: ['opens'],
    separator: ['torn'], link: ['blocked'], column: ['outlet blocked', 'leaks'], cooler: ['water fails'],
    bag: ['leaks', 'pinched', 'bursts'], gasometer: ['sticks', 'leaks'], tube: ['comes off', 'blocked', 'leaks', 'kinked'], tee: ['leaks'], bubbler: ['dry', 'frozen', 'blocked', 'overfilled'],
    scrubber: ['blocked', 'frozen', 'dry'], seal: ['dry', 'frozen', 'blocked'], vent: ['blocked'], arrestor: ['blocked'], dryer: ['blocked', 'leaks'], trap: ['full'], filter: ['blocked'],
    bleed: ['leaks', 'left open'], 'purge-point': ['leaks', 'left open'], valve: ['sticks open', 'sticks shut', 'left shut'], 'check-valve': ['leaks back', 'sticks shut', 'sticks open'],
    compressor: ['stalls', 'stops', 'valves worn', 'leaks'], unloader: ['sticks open', 'sticks shut', 'leaks', 'wire breaks'], 'relief-valve': ['sticks shut', 'sticks open', 'weeps', 'outlet blocked'],
    cylinder: ['leaks', 'warms', 'left shut'], burner: ['goes out', 'blocked'], fan: ['stops', 'blocked'], feed: ['lost'],
};
/** Guards: what acts only when something is wrong. */
const guards = new Set(['trip', 'analyser', 'detector', 'seal', 'relief-valve']);
/** How each of them is out of action. */
const outOfAction: Readonly<Record<string, string>> = { trip: 'fails to trip', analyser: 'fails to trip', detector: 'fails to trip', seal: 'frozen', 'relief-valve': 'sticks shut' };
/** Things of a story that are told: the rest follows from them. */
const MOST_TOLD = 4;
/** Part of what a healthy day makes by which another day may differ and still count as the same. */
const ALIKE = 0.01;

export interface Fault {
    readonly part: string;
    readonly what: string;
}
export interface FaultResult extends Fault {
    /** What came of it. escapes: hydrogen leaves where the rig stands, no hazard as counted here is reached. stops: it stops or does otherwise than on a healthy day, and reaches no hazard. unseen: nothing shows until something else fails. */
    readonly outcome: 'hazard' | 'escapes' | 'caught' | 'stops' | 'unseen';
    /** s from the failure. */
    readonly hazard?: Hazard;
    /** s from the failure: the earliest that the ± of what is made and delivered leave open. */
    readonly earliest?: number;
    /** What acted first: a guard, a relief that lifted, a seal that blew; and when, s from the failure. */
    readonly caughtBy?: { readonly name: string; readonly t: number };
    /** s between the first that anybody could notice and the hazard. */
    readonly left?: number;
    /** The first things that happened otherwise than on a healthy day. */
    readonly story: readonly string[];
    /** mol of hydrogen that came out where the rig stands, more than on a healthy day. */
    readonly escaped?: number;
    /** What would help against this hazard. */
    readonly help?: string;
}
export interface GuardResult {
    readonly name: string;
    /** Faults that it caught first, and what came of them without it. */
    readonly without: readonly { readonly fault: Fault; readonly outcome: FaultResult['outcome']; readonly hazard?: Hazard; readonly caughtBy?: string }[];
}
export interface Faults {
    readonly faults: readonly FaultResult[];
    readonly guards: readonly GuardResult[];
    /** Ways to fail that a run does not follow, by part. */
    readonly left: readonly string[];
    readonly notes: readonly string[];
    readonly healthy: RunResult;
}

const helps: Readonly<Record<Hazard['name'], string>> = {
    'oxygen-in-hydrogen': 'an oxygen analyser before the compressor that drops stack and compressor, and a trip on the suction side',
    'hydrogen-in-oxygen': 'a hydrogen analyser in the oxygen, heads that are alike on both sides, and a test of the separators once a year',
    'room-oxygen': 'a fixed pipe for the oxygen to the open air, and an oxygen detector in the room',
    'ceiling-hydrogen': 'a detector at the highest point that drops the stack, and a fan whose flow the stack needs',
    'bag-over-rating': 'a trip of its own above the highest switch that stops the stack, and a seal that opens below what the bag bears',
    'drawn-empty': 'a trip on the suction side, wired so that it drops the compressor by itself, above the pressure of the air',
    'air-stored': 'a switch that stops the compressor when the bag does not fill, and an oxygen analyser before it',
    'cylinder-over-rating': 'a second pressure switch that drops the compressor by another contactor, and a relief valve that has been tested',
    'too-hot': 'a trip on the temperature that drops the stack, not shared with the switch that calls for cooling',
    'port-dry': 'a low-level trip in each column that drops the stack',
    'room-hydrogen': 'a detector at the highest point that drops the stack, and a fan whose flow the stack needs',
    'separators-pass': 'a liquid seal between each column and the first thing that can shut or freeze, which opens far below what the separators hold',
    'held-motor': 'an unloader that opens without power, and a rest between two runs',
};

/** Every way to fail that a run follows, in the order of the text. */
export function faultsOf(workings: Workings, plant: Plant): { readonly faults: Fault[]; readonly left: string[] } {
    const faults: Fault[] = [];
    const left: string[] = [];
    for (const v of workings.allViews()) {
        if (v.part.pattern || v.part.kind?.statement) continue;
        const known = followedFailures[v.kind] ?? [];
        for (const what of v.part.kind?.events ?? []) {
            if (['pressed', 'released', 'reset', 'returns', 'cleared', 'starts', 'draws', 'lit', 'shut', 'opened', 'restarts', 'set', 'removed', 'fills'].includes(what)) continue;
            // A valve that nobody powers does not stick by itself, and one that is powered is not left shut.
            const powered = v.kind !== 'valve' || v.names('shut-while').length > 0 || v.names('open-while').length > 0;
            if (v.kind === 'valve' && powered === (what === 'left shut')) continue;
            if (known.includes(what) && plant.followsFailure(v.name, what)) faults.push({ part: v.name, what });
            else left.push(`${v.name} ${what}`);
        }
    }
    return { faults, left };
}
/** The day on which things fail: the hottest of the site, the rig warm and running, the store half full. */
function dayWith(workings: Workings, lasts: number, fault?: Fault): Scenario {
    const day = usualDay(workings, lasts);
    const hottest = workings.partsOf('site')[0]?.maybe('hottest') ?? NaN;
    // A flame that goes out must have burnt.
    const lit = fault && workings.viewOf(fault.part)?.kind === 'burner' ? [{ t: 0, part: fault.part, what: 'lit' }] : [];
    const acts = [...day.acts, ...lit, ...(fault ? [{ t: FAILS_AT, part: fault.part, what: fault.what }] : [])].sort((a, b) => a.t - b.t);
    return { ...day, weather: hottest === hottest ? () => hottest : day.weather, acts };
}
/** One fault by itself, with the whole run: for who wants to see it happen. */
export function runWithFault(workings: Workings, fault: Fault, lasts: number): RunResult {
    return run(workings, dayWith(workings, lasts, fault), { warm: true });
}

/**
 * All faults, one run after the other; pauses after each, so that whoever asks can tell how far it is, let others go first, or stop.
 *
 * @returns a generator of how many of how many runs are done; its last value is the result
 * @throws CannotRun where the rig cannot be run at all
 */
export function* faultRuns(workings: Workings, lasts = DAY): Generator<{ readonly done: number; readonly of: number }, Faults> {
    const plant = workings.unnoted(() => new Plant(workings));
    const healthy = run(workings, dayWith(workings, lasts), { warm: true, plant });
    const { faults, left } = workings.unnoted(() => faultsOf(workings, plant));
    const tried = (fault: Fault, already: readonly Fault[] = []) => resultOf(fault, run(workings, dayWith(workings, lasts, fault), { warm: true, plant, untilHazard: true, already }), healthy);
    const paces = workings.unnoted(() => plant.paces());
    const at = <T>(pace: Pace, work: () => T): T => {
        plant.pace = pace;
        try {
            return work();
        } finally {
            plant.pace = EXPECTED;
        }
    };
    const results: FaultResult[] = [];
    for (const fault of faults) {
        yield { done: results.length, of: faults.length };
        const result = tried(fault);
        results.push(result.outcome === 'hazard' ? { ...result, earliest: Math.min(result.hazard!.t, ...paces.map(pace => at(pace, () => tried(fault).hazard?.t ?? Infinity))) } : result);
    }
    const guardResults: GuardResult[] = [];
    for (const v of workings.allViews()) {
        if (v.part.pattern || !guards.has(v.kind)) continue;
        const without: GuardResult['without'][number][] = [];
        for (const fault of results.filter(r => r.caughtBy?.name === v.name && r.part !== v.name)) {
            yield { done: faults.length, of: faults.length };
            const again = tried(fault, [{ part: v.name, what: outOfAction[v.kind] }]);
            without.push({ fault: { part: fault.part, what: fault.what }, outcome: again.outcome, hazard: again.hazard, caughtBy: again.caughtBy?.name });
        }
        guardResults.push({ name: v.name, without });
    }
    const rank = { hazard: 0, escapes: 1, caught: 2, stops: 3, unseen: 4 } as const;
    results.sort((a, b) => rank[a.outcome] - rank[b.outcome] || (a.hazard?.t ?? a.caughtBy?.t ?? 0) - (b.hazard?.t ?? b.caughtBy?.t ?? 0));
    return { faults: results, guards: guardResults, left, notes: healthy.notes, healthy };
}
/** The same without a pause. */
export function faultsIn(workings: Workings, lasts = DAY): Faults {
    const runs = faultRuns(workings, lasts);
    for (;;) {
        const step = runs.next();
        if (step.done) return step.value;
    }
}
function resultOf(fault: Fault, r: RunResult, healthy: RunResult): FaultResult {
    const usual = new Set(healthy.hazards.map(h => `${h.name} ${h.part}`));
    const hazard = r.hazards.find(h => h.t >= FAILS_AT && !usual.has(`${h.name} ${h.part}`));
    const since = (t: number) => t - FAILS_AT;
    const usualActs = new Set(healthy.events.flatMap(e => e.acted));
    const actions = r.events.filter(e => e.t >= FAILS_AT).flatMap(e => e.acted.filter(name => !usualActs.has(name)).map(name => ({ name, t: e.t })));
    // What trips because its own supply was cut has caught nothing.
    const first = actions.find(a => a.name !== fault.part && !(fault.what === 'lost' && a.t <= FAILS_AT) && (!hazard || a.t < hazard.t));
    const usualCauses = new Set(healthy.events.map(e => e.cause));
    const story = r.events.filter(e => e.t >= FAILS_AT && (e.then.length > 0 || /^\S+ stands at its top/.test(e.cause)) && !usualCauses.has(e.cause)).map(e => [e.cause, ...e.then].join(', ')).filter((w, i, all) => all.indexOf(w) === i).slice(0, MOST_TOLD);
    const differs = (key: 'made' | 'vented' | 'escaped' | 'relieved' | 'compressor-hours') => Math.abs(r.final[key] - healthy.final[key]) > ALIKE * Math.max(healthy.final.made, 1e-9) * (key === 'compressor-hours' ? 1e3 : 1);
    const alike = !r.ended.early && !(['made', 'vented', 'escaped', 'relieved', 'compressor-hours'] as const).some(differs);
    const escaped = r.final.escaped - healthy.final.escaped;
    const outcome = hazard ? 'hazard' : escaped > ALIKE * healthy.final.made ? 'escapes' : first ? 'caught' : alike ? 'unseen' : 'stops';
    return {
        ...fault, outcome, hazard: hazard && { ...hazard, t: since(hazard.t) }, caughtBy: first && { name: first.name, t: since(first.t) },
        escaped: outcome === 'escapes' ? escaped : undefined, left: hazard && first ? hazard.t - first.t : undefined, story: r.ended.early && !hazard ? [...story, r.ended.early] : story, help: hazard && helps[hazard.name],
    };
}
