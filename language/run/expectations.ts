/**
 * Expectations over time, held against a run: `always`, `never`, `at 18:00`, `at end`, `from 15:50 to 16:30 always`, `within 2 s of 20:30`,
 * `before 12:00`; of two values, or of states: `compressor stopped`.
 */
import { measures } from '../units/dimension.js';
import { toSi, unitOf } from '../units/unit.js';
import { parseValue, type NodeOf } from '../values/parse-value.js';
import type { Resolve } from '../values/evaluate.js';
import { weighNode } from '../quantities/expectation.js';
import { namesOf } from '../quantities/varied.js';
import type { Workings } from '../quantities/workings.js';
import type { Expectation } from '../rig/rig.js';
import { run, type RunResult } from './run.js';
import { DAY, usualDayIn } from './scenario.js';

/** s: a comparison that fails for less is the moment of a switching. */
const MOMENT = 1e-6;

export interface Held {
    readonly expectation: Expectation;
    /** Undefined where it is not understood, or not known at that time. */
    readonly holds: boolean | undefined;
    /** s since the start at which it first failed, or at which it was looked at. */
    readonly t?: number;
    /** What it was then: '2.1 kPa', 'compressor runs'; or why it was not held against the run. */
    readonly words: string;
}
const on: ReadonlySet<string> = new Set(['running', 'made', 'open', 'ready', 'released']);
const off: ReadonlySet<string> = new Set(['stopped', 'broken', 'shut', 'tripped', 'pressed']);

/** Those of the text that this run is about: of its scenario, of what fails in it, of the usual day in a variant, or those that name neither, of the usual day. */
export function expectationsOf(workings: Workings, scenario: string | undefined, fault?: string, variants: readonly string[] = []): Expectation[] {
    return workings.rig.expects.filter(e => {
        if (e.broken || !e.overTime) return false;
        if (e.when?.word === 'if') return e.when.text.trim() === fault;
        if (e.when?.word === 'with') return fault === undefined && scenario === undefined && variants.join() === namesOf(e.when.text).join();
        return fault === undefined && !variants.length && (e.when ? e.when.word === 'during' && e.when.text.trim() === scenario : scenario === undefined);
    });
}
/** All that the text expects of this run; with a usual day also of one in each variant that an expectation over time names. */
export function heldIn(workings: Workings, r: RunResult, { fault, variants = [], since = 0 }: { readonly fault?: string; readonly variants?: readonly string[]; readonly since?: number } = {}): Held[] {
    return workings.unnoted(() => {
        const held = expectationsOf(workings, r.scenario.name, fault, variants).map(e => holdAgainst(workings, r, e, since));
        if (fault !== undefined || variants.length || r.scenario.name !== undefined) return held;
        const named = new Map(workings.rig.expects.flatMap(e => (e.when?.word === 'with' && e.overTime && !e.broken ? [[namesOf(e.when.text).join(), namesOf(e.when.text)] as const] : [])));
        for (const names of named.values()) {
            const day = run(workings, usualDayIn(workings, names, r.scenario.lasts));
            held.push(...expectationsOf(workings, undefined, undefined, names).map(e => holdAgainst(workings, day, e)));
        }
        return held;
    });
}
/** @param since  s since the start at which it happened that the expectation is about, where it begins with if */
export function holdAgainst(workings: Workings, r: RunResult, e: Expectation, since = 0): Held {
    const rest = (e.when ? e.text.slice(e.text.indexOf(':') + 1) : e.text).trim();
    const m = /^(?:(?<word>always|never)|at\s+(?<at>\d{1,2}:\d{2}|end)|from\s+(?<from>\d{1,2}:\d{2})\s+to\s+(?<to>\d{1,2}:\d{2})\s+(?<within>always|never)|within\s+(?<span>[\d.]+\s*[a-z]+)(?:\s+of\s+(?<of>\d{1,2}:\d{2}))?|after\s+(?<after>[\d.]+\s*[a-z]+)|before\s+(?<before>\d{1,2}:\d{2}))\s+(?<what>.+)$/su.exec(rest)?.groups;
    if (!m) return { expectation: e, holds: undefined, words: 'is not understood: it begins with always, never, at, from … to … always, within … of, after, or before' };
    const condition = conditionOf(r.scenario.of ?? workings, r, m.what.trim());
    if (typeof condition === 'string') return { expectation: e, holds: undefined, words: condition };
    const clock = (text: string) => {
        const [h, min] = text.split(':').map(Number);
        return (h * 3600 + min * 60 - r.scenario.starts + DAY) % DAY;
    };
    const last = r.times.length - 1;
    const indexAt = (t: number) => {
        const i = r.times.findIndex(x => x > t + MOMENT);
        return i < 0 ? last : Math.max(0, i - 1);
    };
    const told = (i: number, holds: boolean | undefined): Held => ({ expectation: e, holds, t: r.times[i], words: condition.say(i) });
    const throughout = (from: number, to: number, never: boolean): Held => {
        for (let i = from; i <= to; i++) {
            const is = condition.holds(i);
            if (is === undefined) return told(i, undefined);
            // At the very moment of a switching, both sides of it are kept: what holds after it counts.
            if (is === never && !(i < last && r.times[i + 1] - r.times[i] < MOMENT && condition.holds(i + 1) !== never)) return told(i, false);
        }
        // What came closest to failing is what is told.
        let worst = to;
        for (let i = from; i <= to; i++) if (condition.closeness(i) < condition.closeness(worst)) worst = i;
        return told(worst, true);
    };
    if (m.word) return throughout(indexAt(since), last, m.word === 'never');
    if (m.from) return throughout(indexAt(clock(m.from)), indexAt(clock(m.to)), m.within === 'never');
    if (m.at) {
        const i = m.at === 'end' ? last : indexAt(clock(m.at));
        return told(i, condition.holds(i));
    }
    const seconds = (text: string) => {
        const unit = unitOf(/[a-z]+$/.exec(text)![0]);
        return unit ? toSi(parseFloat(text), unit) : 0;
    };
    if (m.after) return throughout(indexAt(since + seconds(m.after)), last, false);
    const from = m.before ? 0 : m.of ? clock(m.of) : since;
    const to = m.before ? clock(m.before) : from + seconds(m.span);
    for (let i = indexAt(from); i <= indexAt(to); i++) if (condition.holds(i)) return told(i, true);
    return told(indexAt(to), false);
}

interface OfRun {
    readonly holds: (i: number) => boolean | undefined;
    readonly say: (i: number) => string;
    /** Smaller where it is nearer to failing; the same everywhere where nothing can be said of that. */
    readonly closeness: (i: number) => number;
}
function conditionOf(workings: Workings, r: RunResult, what: string): OfRun | string {
    const states = what.split(/\s*,\s*/).map(s => /^(?<part>[\p{L}_][\p{L}\p{N}_-]*)\s+(?<not>not\s+)?(?<state>[a-z]+)$/u.exec(s)?.groups);
    if (states.every(s => s && (on.has(s.state) || off.has(s.state)))) {
        const unknown = states.find(s => !r.switched.some(x => x.name === s!.part));
        if (unknown) return `${unknown.part} is nothing that a run switches`;
        const is = (name: string, i: number) => r.switched.findLast(x => x.name === name && x.t <= r.times[i] + MOMENT)!.on;
        return {
            holds: i => states.every(s => (is(s!.part, i) === on.has(s!.state)) === !s!.not),
            say: i => states.map(s => `${s!.part} is ${is(s!.part, i) ? 'on' : 'off'}`).join(', '),
            closeness: () => 0,
        };
    }
    const node = parseValue(what).list[0]?.[0];
    if (node?.is !== 'operation') return 'is not understood: two values are compared, or states are named, as compressor stopped';
    const series = new Map(r.series.map(s => [s.name, s]));
    const rest = workings.resolver();
    const resolveAt = (i: number): Resolve => name => {
        const s = series.get(name.names.join('.'));
        if (!s) return rest(name);
        const si = s.values[i];
        return { si, low: si, high: si, dimension: measures[s.measure].dimension, unit: unitOf(s.unit), basis: s.measure === 'pressure' ? 'gauge' : undefined, point: s.measure === 'temperature' };
    };
    const weighed = (i: number) => weighNode(workings, node as NodeOf<'operation'>, resolveAt(i), resolveAt(i));
    const [trouble] = weighed(0).troubles;
    if (trouble) return trouble.message;
    const gap = (i: number) => {
        const { left, limits } = weighed(i);
        return left === undefined ? 0 : Math.min(...(limits ?? []).map(l => Math.abs(left - l)));
    };
    return { holds: i => weighed(i).holds, say: i => weighed(i).now ?? 'not known', closeness: gap };
}
