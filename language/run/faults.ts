/**
 * What if one thing breaks: every way in which a part can fail that a run can follow, each run to a hazard or through a day and a night;
 * each guard put out of action in turn, to see what hangs on it; and each failure that nothing shows beside a second one.
 */
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import { ControlLines, type Device, failed, misreads, nothingYet } from './control-lines.js';
import { keptRuns, type Tried } from './kept-runs.js';
import { solveStackInSteps } from './laws.js';
import { EXPECTED, Plant, type Pace } from './plant.js';
import { run, runInSteps, type Hazard, type RunOptions, type RunResult } from './run.js';
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
/** s for which two failures at once are followed: a working day. There are many of them. */
const PAIRS_FOR = 8 * 3600;
/** Things of a story that are told: the rest follows from them. */
const MOST_TOLD = 4;
/** Part of what a healthy day makes by which another day may differ and still count as the same. */
const SAME = 0.01;

export interface Fault {
    readonly part: string;
    readonly what: string;
}
export interface FaultResult extends Fault {
    /** What came of it. escapes: hydrogen leaves where the rig stands, no hazard as counted here is reached. stops: it stops or does otherwise than on a healthy day, and reaches no hazard. unseen: nothing shows until something else fails. */
    readonly outcome: 'hazard' | 'escapes' | 'caught' | 'stops' | 'unseen';
    /** s from the failure. */
    readonly hazard?: Hazard;
    /** s from the failure: the earliest that is left open by the ± of what is made and delivered, and of whatever else that hazard hangs on. */
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
/** A failure that nothing shows, with the second failures beside which a hazard is reached that neither reaches alone. */
export interface HiddenResult {
    readonly part: string;
    /** Its ways to fail that come to the same. */
    readonly ways: readonly string[];
    /** The soonest first; times from the second failure. */
    readonly seconds: readonly { readonly fault: Fault; readonly hazard: Hazard }[];
}
export interface Faults {
    readonly faults: readonly FaultResult[];
    readonly guards: readonly GuardResult[];
    /** Without what stands with the guards already. */
    readonly hidden: readonly HiddenResult[];
    /** False while guards and hidden failures are still being tried. */
    readonly whole: boolean;
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
    'lye-carried': 'a high-level trip in each column that drops the stack, and a liquid seal between each column and the first thing that can shut or freeze',
    'link-bare': 'a low-level trip in each column that drops the stack, and a liquid seal between each column and the first thing that can shut or freeze',
    'room-hydrogen': 'a detector at the highest point that drops the stack, and a fan whose flow the stack needs',
    'separators-pass': 'a liquid seal between each column and the first thing that can shut or freeze, which opens far below what the separators hold',
    'held-motor': 'an unloader that opens without power, a rest between two runs in which the line behind the compressor empties, and a check valve that holds',
};

/** Every way to fail that a run follows, in the order of the text. */
export function faultsOf(workings: Workings, plant: Plant): { readonly faults: Fault[]; readonly left: string[] } {
    const faults: Fault[] = [];
    const left: string[] = [];
    for (const v of workings.allViews()) {
        const kind = v.declared;
        if (v.pattern || kind?.statement) continue;
        const known = followedFailures[v.kind] ?? [];
        for (const what of kind?.events ?? []) {
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
/** Devices that do nothing but switch: whatever keeps such a contact made, or lets it go, comes to the same. */
const contacts = new Set(['switch', 'trip', 'analyser', 'detector', 'relay', 'contactor', 'solid-state-relay', 'timer']);
/** What reads wrong is no contact that stands still. */
const asContact = (lines: ControlLines, fault: Fault): Device | undefined => {
    const device = lines.devices.get(fault.part);
    return device && contacts.has(device.kind) && fault.what !== 'drifts' && !(fault.what in misreads) ? device : undefined;
};
/** The contacts of a rig, without any moment. */
export const contactsOf = (workings: Workings): ControlLines => new ControlLines(workings, { t: 0, x: new Float64Array(0), c: nothingYet() }, () => () => 0);
/**
 * Whether a contact that fails goes on standing as it stood all day in health: then the day is the same.
 *
 * @param lines    the rig's contacts
 * @param healthy  the same day with nothing broken
 * @returns false for whatever switches that day, reads wrong, or is more than a contact
 */
export function standsAlready(lines: ControlLines, healthy: RunResult): (fault: Fault) => boolean {
    const stood = new Map<string, Set<boolean>>();
    for (const { name, on } of healthy.switched) stood.set(name, (stood.get(name) ?? new Set()).add(on));
    return fault => {
        const device = asContact(lines, fault);
        const states = [...(stood.get(fault.part) ?? [])];
        return device !== undefined && states.length === 1 && failed(device, fault.what, states[0], states[0]) === states[0];
    };
}
/** Of ways to fail that come to the same the first, which is run for all of them. */
function alikeIn(lines: ControlLines, faults: readonly Fault[]): (fault: Fault) => Fault {
    const firsts = new Map<string, Fault>();
    const known = new Map<string, Fault>();
    for (const fault of faults) {
        const device = asContact(lines, fault);
        if (!device) continue;
        const shows = [true, false].flatMap(is => [true, false].map(was => failed(device, fault.what, is, was))).join();
        const first = firsts.get(`${fault.part} ${shows}`) ?? fault;
        firsts.set(`${fault.part} ${shows}`, first);
        known.set(`${fault.part} ${fault.what}`, first);
    }
    return ({ part, what }) => known.get(`${part} ${what}`) ?? { part, what };
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

export interface Progress {
    readonly done: number;
    /** Grows once it is known which second failures matter. */
    readonly of: number;
    /** What is known so far, told once when all single failures are. */
    readonly found?: Faults;
}
/**
 * All faults, one run after the other; pauses every millisecond or so, so that whoever asks can tell how far it is, let others go first,
 * or stop. What was run before and would come out the same is not run again.
 *
 * @returns a generator of how many of how many runs are done; its last value is the result
 * @throws CannotRun where the rig cannot be run at all
 */
export function* faultRuns(workings: Workings, lasts = DAY): Generator<Progress, Faults> {
    const kept = keptRuns(workings, lasts);
    if (kept.faults?.whole) return kept.faults;
    const progress = { done: 0, of: 0 };
    const [stack] = workings.partsOf('stack');
    if (stack) {
        const laws = solveStackInSteps(stack);
        while (!kept.noting(() => laws.next()).done) yield { ...progress };
    }
    const plant = kept.noting(() => {
        // What drives what is looked up in one piece.
        workings.noteCell('controls');
        return new Plant(workings);
    });
    function* follow(fault: Fault | undefined, options: RunOptions, pace: Pace = EXPECTED, within = lasts): Generator<Progress, RunResult> {
        const steps = kept.noting(() => runInSteps(workings, dayWith(workings, within, fault), { ...options, warm: true, plant }));
        for (;;) {
            const step = kept.noting(() => {
                plant.pace = pace;
                try {
                    return steps.next();
                } finally {
                    plant.pace = EXPECTED;
                }
            });
            if (step.done) return step.value;
            yield { ...progress };
        }
    }
    const healthy = (kept.healthy ??= yield* follow(undefined, {}));
    const usual = usualOf(healthy);
    const until = (h: Hazard) => h.t >= FAILS_AT && !usual.hazards.has(`${h.name} ${h.part}`);
    const { faults, left } = kept.noting(() => faultsOf(workings, plant));
    const lines = kept.noting(() => contactsOf(workings));
    const alike = alikeIn(lines, faults);
    const already = standsAlready(lines, healthy);
    function* tried(named: Fault, beside?: Fault, within = lasts): Generator<Progress, Tried> {
        const fault = alike(named);
        const other = beside && alike(beside);
        const key = `${[fault, other].map(f => (f ? `${f.part} ${f.what}` : '')).join(', ')} ${within}`;
        let known = kept.tried(key);
        if (!known && !other && already(fault)) {
            known = { result: resultOf(fault, healthy, healthy, usual), ...movedIn(healthy) };
            kept.keep(key, known);
        }
        if (!known) {
            const r = yield* follow(fault, { brief: true, until, already: other && [other] }, EXPECTED, within);
            known = { result: resultOf(fault, r, healthy, usual), ...movedIn(r) };
            // How soon at the earliest is told of single failures only.
            if (known.result.outcome === 'hazard' && !other) {
                let earliest = known.result.hazard!.t;
                for (const pace of kept.noting(() => plant.paces(known!.result.hazard!.name))) earliest = Math.min(earliest, resultOf(fault, yield* follow(fault, { brief: true, until }, pace), healthy, usual).hazard?.t ?? Infinity);
                known = { ...known, result: { ...known.result, earliest } };
            }
            kept.keep(key, known);
        }
        progress.done++;
        if (fault.what === named.what) return known;
        const renamed = (words: string) => (words.startsWith(`${fault.part} ${fault.what}`) ? `${named.part} ${named.what}${words.slice(`${fault.part} ${fault.what}`.length)}` : words);
        return { ...known, result: { ...known.result, what: named.what, story: known.result.story.map(renamed) } };
    }

    progress.of = faults.length;
    yield { ...progress };
    const singles: Tried[] = [];
    for (const fault of faults) {
        singles.push(yield* tried(fault));
        yield { ...progress };
    }
    const told = { left, notes: healthy.notes, healthy };
    const rank = { hazard: 0, escapes: 1, caught: 2, stops: 3, unseen: 4 } as const;
    const results = singles.map(s => s.result).sort((a, b) => rank[a.outcome] - rank[b.outcome] || (a.hazard?.t ?? a.caughtBy?.t ?? 0) - (b.hazard?.t ?? b.caughtBy?.t ?? 0));
    const { guarded, pairs } = kept.noting(() => secondsOf(workings, alike, singles, movedIn(healthy)));
    progress.of += [...guarded, ...pairs].reduce((n, p) => n + p.seconds.length, 0);
    kept.faults = { faults: results, guards: [], hidden: [], whole: false, ...told };
    yield { ...progress, found: kept.faults };

    const guardResults: GuardResult[] = [];
    for (const { hidden, seconds } of guarded) {
        const without: GuardResult['without'][number][] = [];
        for (const fault of seconds) {
            const { outcome, hazard, caughtBy } = (yield* tried(fault, hidden)).result;
            without.push({ fault, outcome, hazard, caughtBy: caughtBy?.name });
            yield { ...progress };
        }
        guardResults.push({ name: hidden.part, without });
    }
    const hiddenResults: HiddenResult[] = [];
    for (const { hidden, ways, seconds } of pairs) {
        const found: HiddenResult['seconds'][number][] = [];
        for (const fault of seconds) {
            const { hazard } = (yield* tried(fault, hidden, Math.min(lasts, PAIRS_FOR))).result;
            if (hazard) found.push({ fault, hazard });
            yield { ...progress };
        }
        if (found.length) hiddenResults.push({ part: hidden.part, ways, seconds: found.sort((a, b) => a.hazard.t - b.hazard.t) });
    }
    hiddenResults.sort((a, b) => a.seconds[0].hazard.t - b.seconds[0].hazard.t);
    return (kept.faults = { faults: results, guards: guardResults, hidden: merged(hiddenResults), whole: true, ...told });
}
/** The same without a pause. */
export function faultsIn(workings: Workings, lasts = DAY): Faults {
    const runs = faultRuns(workings, lasts);
    for (;;) {
        const step = runs.next();
        if (step.done) return step.value;
    }
}
/** Single failures only, with no guard taken away and no pairs, which take ten times as long. */
export function singleFaultsIn(workings: Workings, lasts = DAY): Faults {
    const runs = faultRuns(workings, lasts);
    for (;;) {
        const step = runs.next();
        const found = step.done ? step.value : step.value.found;
        if (found) return found;
    }
}
/** What was found before and still holds: nothing that those runs read has become another since; undefined where there is nothing. */
export function faultsKept(workings: Workings, lasts = DAY): Faults | undefined {
    return keptRuns(workings, lasts).faults;
}

// ---- which two together ---------------------------------------------------------------------------------------------

interface Pairs {
    readonly hidden: Fault;
    readonly ways: readonly string[];
    readonly seconds: readonly Fault[];
}
/** Which second failures are tried beside which first: of a guard taken away those that it caught; of another hidden failure those in which that part has something to do. */
function secondsOf(workings: Workings, alike: (fault: Fault) => Fault, singles: readonly Tried[], healthy: Pick<Tried, 'switched' | 'passed'>): { readonly guarded: readonly Pairs[]; readonly pairs: readonly Pairs[] } {
    const plain = ({ part, what }: Fault): Fault => ({ part, what });
    const guarded: Pairs[] = [];
    for (const v of workings.allViews()) {
        if (v.pattern || !guards.has(v.kind)) continue;
        const what = outOfAction[v.kind];
        guarded.push({ hidden: { part: v.name, what }, ways: [what], seconds: singles.filter(s => s.result.caughtBy?.name === v.name && s.result.part !== v.name).map(s => plain(s.result)) });
    }
    const groups = new Map<string, { hidden: Fault; ways: string[] }>();
    for (const { result } of singles) {
        if (result.outcome !== 'unseen') continue;
        const { part, what } = alike(result);
        const group = groups.get(`${part} ${what}`);
        if (group) group.ways.push(result.what);
        else groups.set(`${part} ${what}`, { hidden: { part, what }, ways: [result.what] });
    }
    const pairs = [...groups.values()].map(({ hidden, ways }) => {
        const view = workings.viewOf(hidden.part)!;
        const takenAway = guarded.find(g => g.hidden.part === hidden.part)?.seconds ?? [];
        const partners = partnersOf(view);
        const seconds = singles.filter(({ result, switched, acted, passed }) => {
            if (result.part === hidden.part || result.outcome === 'hazard' || takenAway.some(f => f.part === result.part && f.what === result.what)) return false;
            if (acted.has(hidden.part) || (passed.has(hidden.part) && !healthy.passed.has(hidden.part))) return true;
            if (view.kind === 'fan') return result.outcome === 'escapes';
            return [hidden.part, ...partners].some(name => {
                const times = switched.get(name) ?? 0;
                return name === result.part || (times > 0 && (result.outcome !== 'unseen' || times !== healthy.switched.get(name)));
            });
        }).map(s => plain(s.result));
        return { hidden, ways, seconds };
    });
    return { guarded, pairs: pairs.filter(p => p.seconds.length) };
}
/** Parts whose switching asks something of this one: a button is let go for what it latches, a cooler gets water by a valve, a check valve holds while an unloader is open. */
function partnersOf(v: View): readonly string[] {
    if (v.kind === 'button') return v.controls.listeners(v.name);
    if (v.kind === 'cooler') return v.all('valve').map(o => o.name).filter(name => v.paths.on('water').includes(name));
    if (v.kind === 'check-valve') return v.all('unloader').map(o => o.name);
    return [];
}
/** Ways of one part to fail that lead to the same become one. */
function merged(found: readonly HiddenResult[]): HiddenResult[] {
    const out = new Map<string, HiddenResult>();
    for (const h of found) {
        const key = `${h.part}: ${h.seconds.map(s => `${s.fault.part} ${s.fault.what} ${s.hazard.name}`).sort().join(', ')}`;
        const same = out.get(key);
        out.set(key, same ? { ...same, ways: [...same.ways, ...h.ways] } : h);
    }
    return [...out.values()];
}

// ---- what came of it --------------------------------------------------------------------------------------------------

/** What moved after the failure, how often each, and what gas passed. */
function movedIn(r: RunResult): Pick<Tried, 'switched' | 'acted' | 'passed'> {
    const switched = new Map<string, number>();
    for (const s of r.switched) if (s.t >= FAILS_AT) switched.set(s.name, (switched.get(s.name) ?? 0) + 1);
    return { switched, acted: new Set(r.events.flatMap(e => (e.t >= FAILS_AT ? e.acted : []))), passed: r.passed };
}
/** What a healthy day brings anyway. */
function usualOf(healthy: RunResult) {
    return { hazards: new Set(healthy.hazards.map(h => `${h.name} ${h.part}`)), acts: new Set(healthy.events.flatMap(e => e.acted)), causes: new Set(healthy.events.map(e => e.cause)) };
}
function resultOf(fault: Fault, r: RunResult, healthy: RunResult, usual: ReturnType<typeof usualOf>): FaultResult {
    const hazard = r.hazards.find(h => h.t >= FAILS_AT && !usual.hazards.has(`${h.name} ${h.part}`));
    const since = (t: number) => t - FAILS_AT;
    const actions = r.events.filter(e => e.t >= FAILS_AT).flatMap(e => e.acted.filter(name => !usual.acts.has(name)).map(name => ({ name, t: e.t })));
    // What trips because its own supply was cut has caught nothing.
    const first = actions.find(a => a.name !== fault.part && !(fault.what === 'lost' && a.t <= FAILS_AT) && (!hazard || a.t < hazard.t));
    const story = r.events.filter(e => e.t >= FAILS_AT && (e.then.length > 0 || /^\S+ stands at its top/.test(e.cause)) && !usual.causes.has(e.cause)).map(e => [e.cause, ...e.then].filter(Boolean).join(', ')).filter((w, i, all) => all.indexOf(w) === i).slice(0, MOST_TOLD);
    const differs = (key: 'made' | 'vented' | 'escaped' | 'relieved' | 'compressor-hours') => Math.abs(r.final[key] - healthy.final[key]) > SAME * Math.max(healthy.final.made, 1e-9) * (key === 'compressor-hours' ? 1e3 : 1);
    const alike = !r.ended.early && !(['made', 'vented', 'escaped', 'relieved', 'compressor-hours'] as const).some(differs);
    const escaped = r.final.escaped - healthy.final.escaped;
    const outcome = hazard ? 'hazard' : escaped > SAME * healthy.final.made ? 'escapes' : first ? 'caught' : alike ? 'unseen' : 'stops';
    return {
        ...fault, outcome, hazard: hazard && { ...hazard, t: since(hazard.t) }, caughtBy: first && { name: first.name, t: since(first.t) },
        escaped: outcome === 'escapes' ? escaped : undefined, left: hazard && first ? hazard.t - first.t : undefined, story: r.ended.early && !hazard ? [...story, r.ended.early] : story, help: hazard && helps[hazard.name],
    };
}
