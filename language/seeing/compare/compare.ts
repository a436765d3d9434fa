/** Two rigs side by side: consequences, not characters. What was changed, which numbers moved, which findings went and came, what is to be tested again. */
import type { Analysis, Near } from '../../index.js';
import type { Result } from '../../quantities/workings.js';
import { isKeyNumber, resultsOf } from '../../reference/quantities.js';
import { resultText } from '../../reference/values.js';
import type { Part } from '../../rig/rig.js';
import { testsAgain, type Again } from './again.js';
import { findingsOf, type Told } from './findings.js';

export interface Changed {
    /** 'stack.gap'; 'path', 'expect', 'let x', 'allow x' for lines. */
    readonly name: string;
    readonly before: string | undefined;
    readonly after: string | undefined;
    /** Parts that are like the one that was changed, and change with it. */
    readonly like: readonly string[];
}
export interface Moved {
    readonly name: string;
    readonly meaning: string;
    readonly before: string;
    readonly after: string;
    /** Of the earlier one; NaN where that is 0, or where a share means nothing (°C). */
    readonly share: number;
    /** The move is smaller than the ± of the later number. */
    readonly within: boolean;
    /** Others that moved from the same to the same. */
    readonly twins: readonly string[];
}
/** One of the few numbers by which a rig is known, moved or not. */
export interface Headline {
    readonly name: string;
    readonly before: string | undefined;
    readonly after: string | undefined;
    readonly moved: boolean;
    /** Of the earlier one; NaN where it means nothing. */
    readonly share: number;
}
export interface Comparison {
    readonly before: string;
    readonly after: string;
    readonly added: readonly string[];
    readonly removed: readonly string[];
    readonly changed: readonly Changed[];
    readonly headlines: readonly Headline[];
    /** The weightiest first. */
    readonly moved: readonly Moved[];
    /** Numbers that are known in one of both only. */
    readonly appeared: readonly string[];
    readonly vanished: readonly string[];
    readonly findings: Told;
    readonly nearer: readonly { readonly near: Near; readonly before: Near | undefined }[];
    /** What was tested, or would be, before the change: to be done again. */
    readonly again: readonly Again[];
}
/** Share of a number below which it counts as not moved, and K. Own choice: below what a reader would act on. */
const STILL = 0.005;
const STILL_WARM = 0.2;
/** Weight of a number that only others read, beside one that is shown by itself. */
export const IN_THE_BACK = 0.1;
/** A move that is less than the ± weighs less. */
const UNSURE = 0.3;

/** What a rig is known by: the first part of the kind that has it counts. */
const known: readonly (readonly [kind: string, quantity: string])[] = [
    ['stack', 'current'], ['stack', 'volts-per-cell'], ['stack', 'hydrogen-rate'], ['stack', 'temperature'], ['stack', 'plug-energy-per-volume'], ['stack', 'hydrogen-in-oxygen'],
    ['bag', 'fill-time'], ['cylinder', 'fill-time'], ['cylinder', 'stored-gas'], ['budget', 'parts-total'], ['budget', 'gas-cost'],
];
const nameOf = (r: Result) => `${r.part.name}.${r.quantity.name}`;

/** Numbers of an analysis that are known, by their name, in the order of the text. */
export function numbersOf(a: Analysis): Map<string, Result> {
    return new Map(resultsOf(a.workings).filter(r => r.value === r.value).map(r => [nameOf(r), r]));
}
/** Names of the numbers by which rigs are known; a sum of prices where nothing has one is none. */
export function headlinesOf(numbers: readonly ReadonlyMap<string, Result>[]): string[] {
    return known.flatMap(([kind, quantity]) => {
        for (const n of numbers) for (const [name, r] of n) if (r.part.kindWord === kind && r.quantity.name === quantity && r.value !== 0) return [name];
        return [];
    });
}
/** Whether two values of one number differ by more than counts. */
export function differ(a: Result, b: Result): boolean {
    if (a.quantity.measure === 'temperature') return Math.abs(a.value - b.value) > STILL_WARM;
    return Math.abs(a.value - b.value) > STILL * Math.max(Math.abs(a.value), Math.abs(b.value));
}
/** How much a number differs: the factor, up or down, as its logarithm; a kelvin counts as a fiftieth. What only others read weighs a tenth. Own choice. */
export function weightOf(then: Result, now: Result): number {
    const factor = now.quantity.measure === 'temperature' ? Math.abs(now.value - then.value) / 50 : now.value * then.value > 0 ? Math.abs(Math.log(now.value / then.value)) : 1;
    return factor * (isKeyNumber(now) ? 1 : IN_THE_BACK);
}
/** Of the earlier number; NaN where that is 0 or a share means nothing. */
export function shareOf(then: Result, now: Result): number {
    const share = now.quantity.measure === 'temperature' ? NaN : (now.value - then.value) / Math.abs(then.value);
    return Number.isFinite(share) ? share : NaN;
}

/** @param before  and `after`: two rigs, or one at two times; what is not known in either is left out of the numbers. */
export function compare(before: Analysis, after: Analysis): Comparison {
    return before.workings.unnoted(() => after.workings.unnoted(() => compareNow(before, after)));
}
function compareNow(before: Analysis, after: Analysis): Comparison {
    const { added, removed, changed, touched } = changesOf(before, after);
    const [numbersBefore, numbersAfter] = [numbersOf(before), numbersOf(after)];
    const headlines = headlinesOf([numbersAfter, numbersBefore]).map((name): Headline => {
        const [then, now] = [numbersBefore.get(name), numbersAfter.get(name)];
        return { name, before: then && resultText(then), after: now && resultText(now), moved: !then || !now || differ(then, now), share: then && now ? shareOf(then, now) : NaN };
    });
    const nearBefore = new Map(before.near.map(n => [`${n.rule} ${n.part} ${n.key}`, n]));
    return {
        before: before.rig.title, after: after.rig.title, added, removed, changed, headlines, moved: movedOf(numbersBefore, numbersAfter),
        appeared: [...numbersAfter.keys()].filter(n => !numbersBefore.has(n)), vanished: [...numbersBefore.keys()].filter(n => !numbersAfter.has(n)),
        findings: findingsOf(before, after),
        nearer: after.near.map(near => ({ near, before: nearBefore.get(`${near.rule} ${near.part} ${near.key}`) })).filter(n => !n.before || n.near.left < n.before.left - STILL),
        again: testsAgain(before, after, touched, changed.some(c => c.name === 'path' && c.after !== undefined)),
    };
}
function movedOf(before: ReadonlyMap<string, Result>, after: ReadonlyMap<string, Result>): Moved[] {
    const moved = new Map<string, Moved & { twins: string[]; weight: number }>();
    for (const [name, now] of after) {
        const then = before.get(name);
        if (!then || !differ(then, now)) continue;
        const [was, is] = [resultText(then), resultText(now)];
        const twin = moved.get(`${now.quantity.name} ${was} ${is}`);
        if (twin) {
            twin.twins.push(name);
            continue;
        }
        const share = shareOf(then, now);
        const half = Math.max(now.high - now.value, now.value - now.low) || 0;
        const within = Math.abs(now.value - then.value) < half;
        moved.set(`${now.quantity.name} ${was} ${is}`, { name, meaning: now.quantity.meaning, before: was, after: is, share, within, twins: [], weight: weightOf(then, now) * (within ? UNSURE : 1) });
    }
    return [...moved.values()].sort((a, b) => b.weight - a.weight || (a.name < b.name ? -1 : 1)).map(({ weight: _, ...m }) => m);
}

// ---- what was changed ------------------------------------------------------------------------------------------------

const texts = (p: Part) => new Map([...p.entries].map(([key, e]) => [key, spaced(e.value?.text)]));
const spaced = (text: string | undefined) => text?.replace(/\s+/g, ' ').trim() ?? '';

function changesOf(before: Analysis, after: Analysis) {
    const [was, is] = [before.rig.parts, after.rig.parts];
    const added = [...is.keys()].filter(n => !was.has(n));
    const removed = [...was.keys()].filter(n => !is.has(n));
    const touched = new Map<string, string[] | undefined>(added.map(n => [n, undefined]));
    const touch = (name: string, key: string) => {
        const keys = touched.get(name);
        if (keys) keys.push(key);
        else if (!touched.has(name)) touched.set(name, [key]);
    };
    const changed: Changed[] = [];
    const note = (name: string, then: string | undefined, now: string | undefined, like: readonly string[] = []) => changed.push({ name, before: then, after: now, like });
    /** Parts that take a value from another one, since they do not say it themselves. */
    const likes = (name: string, key: string): string[] => {
        const found = new Set([name]);
        for (const n of found) for (const p of is.values()) if (p.base?.name === n && !p.entries.has(key)) found.add(p.name);
        return [...found].slice(1);
    };
    for (const [key, [then, now]] of bothOf(new Map([...before.rig.lets].map(([k, l]) => [k, spaced(l.value?.text)])), new Map([...after.rig.lets].map(([k, l]) => [k, spaced(l.value?.text)])))) {
        if (then === now) continue;
        note(`let ${key}`, then, now);
        const names = new RegExp(`(?<![\\p{L}\\p{N}_.-])${key.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{N}_-])`, 'u');
        for (const p of is.values()) for (const e of p.entries.values()) if (e.value?.names && names.test(e.value.text)) touch(p.name, e.key);
    }
    for (const [name, p] of is) {
        const q = was.get(name);
        if (!q) continue;
        if (p.kindWord !== q.kindWord) {
            note(name, q.kindWord, p.kindWord);
            touch(name, 'kind');
        }
        if (p.base?.name !== q.base?.name) {
            note(`${name} like`, q.base?.name, p.base?.name);
            touch(name, 'like');
        }
        for (const [key, [then, now]] of bothOf(texts(q), texts(p))) {
            if (then === now) continue;
            const like = key === 'price' ? [] : likes(name, key);
            note(`${name}.${key}`, then, now, like);
            for (const n of [name, ...like]) touch(n, key);
        }
    }
    const lines = (of: (a: Analysis) => readonly (readonly [name: string, text: string])[]) => {
        const [then, now] = [of(before), of(after)];
        const has = (all: typeof then, [name, text]: readonly [string, string]) => all.some(x => x[0] === name && x[1] === text);
        for (const x of now) if (!has(then, x)) note(x[0], undefined, x[1]);
        for (const x of then) if (!has(now, x)) note(x[0], x[1], undefined);
    };
    lines(a => [...new Set(a.rig.paths.flatMap(p => p.stops.slice(1).map((s, i) => `${p.medium}: ${p.stops[i].name} -> ${s.name}`)))].map(text => ['path', text]));
    lines(a => a.rig.expects.map(e => ['expect', spaced(e.text.replace(/^expect\s+/, ''))]));
    lines(a => a.rig.allows.map(w => [w.level ? 'weigh' : 'allow', [w.rule, w.level && `as ${w.level}`, w.on && `on ${w.on.name}`, w.until && `until ${w.until}`, w.by && `by ${w.by}`, w.because && `because ${w.because}`].filter(Boolean).join(' ')]));
    if (before.rig.stage !== after.rig.stage) note('stage', before.rig.stage, after.rig.stage);
    return { added, removed, changed, touched };
}
function bothOf(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): Map<string, readonly [string | undefined, string | undefined]> {
    return new Map([...new Set([...before.keys(), ...after.keys()])].map(key => [key, [before.get(key), after.get(key)]]));
}
