/**
 * What one number must be so that an expectation holds: plates for a voltage, current for a filling time, depth of a seal,
 * volume of a bag. The whole rig is worked out again at each try, everything coupled solved again, so the answer holds for the
 * rig as it stands and not for a formula.
 */
import { digits } from '../units/format.js';
import { expectationOf, weigh } from '../quantities/expectation.js';
import { findRoot } from '../physics/root.js';
import type { Input, Result, Workings } from '../quantities/workings.js';
import { walk, type Node } from '../values/parse-value.js';
import type { Expectation, Fix } from '../rig/rig.js';
import { CannotTry, inputOf, type TriedInput } from './input.js';

/** Places at which a number is tried before the crossing between two of them is closed in. */
const TRIES = 48;
/** Share of the range to which a crossing is closed in: finer than it is written. */
const CLOSENESS = 1e-6;

export interface Sized {
    readonly input: TriedInput;
    /** SI, as it is written; undefined if there is no such number. */
    readonly value?: number;
    /** '2.4 mm'. */
    readonly text?: string;
    /** What the left side comes to there: '2.05 V'. */
    readonly gives?: string;
    /** What it comes to as it stands. */
    readonly now: string;
    /** It holds as it stands: nothing must change. */
    readonly already: boolean;
    /** On which side of the answer it holds: 'at least', 'at most', 'just there'. */
    readonly side?: 'at least' | 'at most' | 'just there';
    /** Why there is none. */
    readonly why?: string;
    readonly fix?: Fix;
}
interface Try {
    readonly si: number;
    readonly left: number;
    readonly holds: boolean;
}

/**
 * @param expectation  'cylinder.fill-time < 3 h', or a line of the rig
 * @param by           PART.PROPERTY
 * @param between      'a..b', where to look
 * @throws CannotTry where the question itself makes no sense
 */
export function sizeFor(workings: Workings, expectation: string | Expectation, by: string, between?: string): Sized {
    const wanted = asked(expectation);
    const input = inputOf(workings, by, between);
    const here = weigh(workings, wanted);
    if (here.troubles.length) throw new CannotTry(here.troubles[0].message);
    const tried = new Map<number, Try>();
    const attempt = (si: number): Try => {
        let t = tried.get(si);
        if (!t) {
            const w = weigh(input.at(si), wanted);
            tried.set(si, (t = { si, left: w.left ?? NaN, holds: w.holds === true }));
            limits ??= w.limits;
            say ??= w.say;
        }
        return t;
    };
    let { limits, say } = here;
    const now = here.now ?? 'not known';
    if (here.holds) return { input, now, already: true };
    const places = input.counted ? counts(input.low, input.high) : spaced(input.low, input.high, input.now);
    const tries = places.map(attempt);
    const equal = here.node?.op === '=';
    const answers = equal ? crossings(input, tries, attempt, limits?.[0] ?? NaN) : borders(input, tries, attempt);
    // Of several answers the one that changes least.
    const best = answers.sort((a, b) => Math.abs(a.si - input.now) - Math.abs(b.si - input.now) || a.si - b.si)[0];
    if (!best) return { input, now, already: false, why: reason(input, tries, here.missing, say ?? (si => digits(si, 3))) };
    const after = weigh(input.at(best.si), wanted);
    return { input, now, already: false, value: best.si, text: input.say(best.si), gives: after.now, side: best.side, fix: input.write(best.si) };
}

function asked(expectation: string | Expectation): Expectation {
    const wanted = typeof expectation === 'string' ? expectationOf(expectation) : expectation;
    if (!wanted) throw new CannotTry(`${String(expectation)} is no comparison. Write one like stack.volts-per-cell < 2.1 V.`);
    return wanted;
}
type Answer = Pick<Try, 'si'> & { readonly side: Sized['side'] };
/** Numbers at which it begins or ends to hold, rounded to the side where it does. */
function borders(input: TriedInput, tries: readonly Try[], attempt: (si: number) => Try): Answer[] {
    const found: Answer[] = [];
    for (let i = 1; i < tries.length; i++) {
        const [a, b] = [tries[i - 1], tries[i]];
        if (a.holds === b.holds) continue;
        let [holds, fails] = a.holds ? [a.si, b.si] : [b.si, a.si];
        while (!input.counted && Math.abs(holds - fails) > CLOSENESS * Math.max(Math.abs(holds), Math.abs(fails))) {
            const middle = (holds + fails) / 2;
            if (attempt(middle).holds) holds = middle;
            else fails = middle;
        }
        const side = holds > fails ? 1 : -1;
        const si = input.rounded(holds, side);
        if (attempt(si).holds) found.push({ si, side: side > 0 ? 'at least' : 'at most' });
        else if (attempt(holds).holds) found.push({ si: holds, side: side > 0 ? 'at least' : 'at most' });
    }
    return found;
}
/** Numbers at which the left side is just what is wanted. */
function crossings(input: TriedInput, tries: readonly Try[], attempt: (si: number) => Try, limit: number): Answer[] {
    const found: Answer[] = [];
    for (let i = 1; i < tries.length; i++) {
        const [a, b] = [tries[i - 1], tries[i]];
        if (!((a.left - limit) * (b.left - limit) <= 0)) continue;
        if (input.counted) {
            // A whole number seldom hits: the nearer of the two.
            found.push({ si: Math.abs(a.left - limit) <= Math.abs(b.left - limit) ? a.si : b.si, side: 'just there' });
            continue;
        }
        const root = findRoot(x => attempt(x).left - limit, a.si, b.si, CLOSENESS * Math.max(Math.abs(a.si), Math.abs(b.si)));
        if (root === root) found.push({ si: input.rounded(root, 0), side: 'just there' });
    }
    return found;
}
function counts(low: number, high: number): number[] {
    const step = Math.max(1, Math.floor((high - low) / 400));
    const out: number[] = [];
    for (let n = Math.ceil(low); n <= high; n += step) out.push(n);
    return out;
}
/** Places over a range, by equal steps or, over more than a decade, by equal factors; the present one among them. */
function spaced(low: number, high: number, now: number): number[] {
    const by = low > 0 && high / low > 10 ? (i: number) => low * (high / low) ** (i / TRIES) : (i: number) => low + (high - low) * i / TRIES;
    const places = Array.from({ length: TRIES + 1 }, (_, i) => by(i));
    return (now > low && now < high ? [...places, now] : places).sort((a, b) => a - b);
}
function reason(input: TriedInput, tries: readonly Try[], missing: readonly string[], say: (si: number) => string): string {
    const known = tries.filter(t => t.left === t.left);
    const range = `between ${input.say(input.low)} and ${input.say(input.high)}`;
    if (!known.length) return missing.length ? `It is not known, because ${missing.slice(0, 3).join(', ')} ${missing.length > 1 ? 'are' : 'is'} not given.` : `It is not known for any ${input.name} ${range}.`;
    const lowest = known.reduce((a, b) => (b.left < a.left ? b : a));
    const highest = known.reduce((a, b) => (b.left > a.left ? b : a));
    if (highest.left - lowest.left <= 1e-6 * Math.abs(highest.left)) return `It does not depend on ${input.name}: it is ${say(lowest.left)} ${range}.`;
    return `No ${input.name} ${range} is enough: it goes from ${say(lowest.left)} (at ${input.say(lowest.si)}) to ${say(highest.left)} (at ${input.say(highest.si)}). Something else must change as well.`;
}

/** What can change, of all that the left side of an expectation rests on. */
function candidates(workings: Workings, wanted: Expectation): string[] {
    const names = new Set<string>();
    const seen = new Set<Result>();
    const visit = (inputs: readonly Input[]) => {
        for (const i of inputs) {
            if (i.result && !seen.has(i.result)) {
                seen.add(i.result);
                visit(i.result.inputs);
            } else if (i.given?.property && !i.given.property.fact && !i.part.kind?.statement && !i.part.pattern && i.value === i.value) {
                names.add(i.label);
            }
        }
    };
    const node = wanted.value?.list[0]?.[0];
    for (const name of node?.is === 'operation' ? namesUnder(node.a) : []) {
        const part = workings.rig.parts.get(name[0]);
        const result = part && workings.quantity(part, name.slice(1).join('.'));
        if (result) {
            seen.add(result);
            visit(result.inputs);
        }
    }
    return [...names];
}
function namesUnder(node: Node): readonly (readonly string[])[] {
    const names: (readonly string[])[] = [];
    walk(node, n => {
        if (n.is === 'name') names.push(n.names);
    });
    return names;
}
/** A change that is tried to see whether a number moves the right way at all, as a share of it. */
const NUDGE = 0.05;
/** What is a matter of the place and its weather is no choice. */
const noChoice: ReadonlySet<string> = new Set(['site']);

/**
 * Every single number that can be changed so that an expectation holds, the least change first.
 * @param most  no more of them than these
 * @returns none where it holds as it stands, or where no single number is enough
 * @throws CannotTry where the question itself makes no sense, or where the left side is not known
 */
export function waysTo(workings: Workings, expectation: string | Expectation, most = 6): Sized[] {
    const wanted = asked(expectation);
    const here = weigh(workings, wanted);
    if (here.troubles.length) throw new CannotTry(here.troubles[0].message);
    if (here.left === undefined) throw new CannotTry(here.missing.length ? `It is not known yet, because ${here.missing.slice(0, 3).join(', ')} ${here.missing.length > 1 ? 'are' : 'is'} not given.` : 'It is not known yet.');
    const moving: { name: string; moves: number }[] = [];
    for (const name of candidates(workings, wanted)) {
        const input = tryInput(workings, name);
        if (!input || noChoice.has(input.view.kind) || !(input.now > 0) || !input.write(input.now)) continue;
        const moves = Math.max(...[1 - NUDGE, 1 + NUDGE].map(share => {
            const si = input.counted ? input.now + (share > 1 ? 1 : -1) : input.now * share;
            const there = si > 0 ? weigh(input.at(si), wanted).left : undefined;
            return there === undefined ? 0 : Math.abs(there - here.left!);
        }));
        if (moves > 0) moving.push({ name: input.name, moves });
    }
    moving.sort((a, b) => b.moves - a.moves);
    const found = moving.slice(0, 2 * most).map(({ name }) => sizeFor(workings, wanted, name)).filter(s => s.value !== undefined);
    const change = (s: Sized) => Math.abs(Math.log(s.value! / s.input.now));
    return found.sort((a, b) => change(a) - change(b)).slice(0, most);
}
function tryInput(workings: Workings, name: string): TriedInput | undefined {
    try {
        return inputOf(workings, name);
    } catch (e) {
        if (e instanceof CannotTry) return undefined;
        throw e;
    }
}
