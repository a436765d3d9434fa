/**
 * The same rig at its corners: the coldest and the hottest day of the site, a quarter of the current, full and empty cylinder,
 * after three idle days with what goes meanwhile. Told in one table, with what each corner breaks: findings that the rig as described does not have.
 */
import { Supposed } from '../quantities/supposed.js';
import { Workings, type Result } from '../quantities/workings.js';
import type { Finding } from '../rules/define.js';
import { judge, type JudgeOptions } from '../rules/judge.js';
import type { View } from '../quantities/view.js';

/** One line of the table: a number at each corner; undefined where it has no meaning. */
export interface CornerLine {
    readonly name: string;
    readonly results: readonly (Result | undefined)[];
}
export interface Corner {
    readonly name: string;
    /** What is supposed there. */
    readonly meaning: string;
    /** Why it could not be looked at. */
    readonly skipped?: string;
    /** What it breaks: findings of error or warning that the rig as described does not have. */
    readonly breaks: readonly Finding[];
}
export interface Corners {
    readonly corners: readonly Corner[];
    readonly lines: readonly CornerLine[];
}

/** m that open water falls in a shut room, in three days: 3 mm a day. Common practice, no source. */
const DRIED_IN_THREE_DAYS = 0.009;
const QUARTER = 0.25;

type Name = 'as described' | 'coldest day' | 'hottest day' | 'quarter of the current' | 'empty cylinder' | 'full cylinder' | 'three idle days';
interface Look {
    readonly name: Name;
    readonly meaning: string;
    /** Undefined: nothing to look at in this rig. A text: why it cannot be looked at. */
    readonly suppose: (w: Workings, s: Supposed) => Supposed | string | undefined;
}
const first = (w: Workings, kind: string): View | undefined => w.livePartsOf(kind)[0];
/** The site's air is the same all year: the day of the corner. */
const day = (key: 'coldest' | 'hottest') => (w: Workings, s: Supposed) => {
    const site = first(w, 'site');
    const kelvin = site?.num(key) ?? NaN;
    return site && kelvin === kelvin ? s.value(site.name, 'coldest', kelvin).value(site.name, 'hottest', kelvin) : `site.${key} is not given.`;
};
const looks: readonly Look[] = [
    { name: 'as described', meaning: 'a room of 20 °C, after hours', suppose: (_, s) => s },
    { name: 'coldest day', meaning: 'the coldest air of the site, after hours', suppose: day('coldest') },
    { name: 'hottest day', meaning: 'the hottest air of the site, after hours', suppose: day('hottest') },
    {
        name: 'quarter of the current', meaning: 'the current turned down to a quarter', suppose: (w, s) => {
            const current = first(w, 'stack')?.maybeQ('current') ?? NaN;
            if (!(current > 0)) return first(w, 'stack') ? 'The current is not known.' : undefined;
            const supply = first(w, 'supply');
            return supply ? s.value(supply.name, 'current-limit', QUARTER * current) : 'Nothing in this rig turns the current down: no supply with a limit feeds the stack.';
        },
    },
    { name: 'empty cylinder', meaning: 'the store at the start of a filling', suppose: (w, s) => (first(w, 'cylinder') ? s : undefined) },
    { name: 'full cylinder', meaning: 'the store at its cut-off', suppose: (w, s) => (first(w, 'cylinder') ? s : undefined) },
    {
        name: 'three idle days', meaning: 'started from the coldest air, water of seals and bubblers 9 mm lower, batteries as far down as they go by themselves', suppose: (w, s) => {
            for (const v of w.livePartsOf('bubbler')) lower(v, 'immersion', s);
            for (const v of w.livePartsOf('scrubber')) lower(v, 'immersion', s);
            for (const v of w.livePartsOf('seal')) lower(v, 'depth', s);
            for (const v of w.livePartsOf('battery')) {
                const left = v.maybeQ('charge-idle');
                if (v.said('charge') && left === left) s.value(v.name, 'charge', left);
            }
            return first(w, 'stack') ? s : undefined;
        },
    },
];
function lower(v: View, key: string, s: Supposed): void {
    const depth = v.maybe(key);
    if (depth > 0) s.value(v.name, key, Math.max(1e-4, depth - DRIED_IN_THREE_DAYS));
}

interface Line {
    readonly name: string;
    readonly kind: string;
    readonly quantity: string;
    /** Of several parts the one on this side. */
    readonly side?: 'hydrogen';
    /** Corners at which another number tells it. */
    readonly instead?: Partial<Record<Name, string>>;
}
const lines: readonly Line[] = [
    { name: 'current', kind: 'stack', quantity: 'current', instead: { 'three idle days': 'current-cold' } },
    { name: 'volts per cell', kind: 'stack', quantity: 'volts-per-cell', instead: { 'three idle days': 'volts-per-cell-cold' } },
    { name: 'lye', kind: 'stack', quantity: 'temperature' },
    { name: 'hydrogen', kind: 'stack', quantity: 'hydrogen-rate' },
    { name: 'bypass', kind: 'stack', quantity: 'bypass-share' },
    { name: 'hydrogen in oxygen', kind: 'stack', quantity: 'hydrogen-in-oxygen' },
    { name: 'across separators', kind: 'stack', quantity: 'separator-head' },
    { name: 'energy', kind: 'stack', quantity: 'plug-energy-per-volume' },
    { name: 'starts', kind: 'bag', quantity: 'starts-per-hour' },
    { name: 'starts', kind: 'gasometer', quantity: 'starts-per-hour' },
    { name: 'compressor delivers', kind: 'compressor', quantity: 'free-delivery', instead: { 'empty cylinder': 'free-delivery-start' } },
    { name: 'compressed gas', kind: 'compressor', quantity: 'discharge-temperature', instead: { 'hottest day': 'discharge-temperature-hot' } },
    { name: 'cylinder', kind: 'cylinder', quantity: 'cut-off', instead: { 'coldest day': 'pressure-cold', 'hottest day': 'pressure-hot' } },
    { name: 'lost through walls', kind: 'stack', quantity: 'lost-idle' },
    { name: 'lost by the cylinder', kind: 'cylinder', quantity: 'lost-idle' },
    { name: 'gas shrinks', kind: 'column', side: 'hydrogen', quantity: 'shrinks-idle' },
    { name: 'oxygen drawn in', kind: 'column', side: 'hydrogen', quantity: 'oxygen-idle' },
    { name: 'battery left', kind: 'battery', quantity: 'charge-idle' },
];
/** What only standing idle moves. The battery is the one of the rig as described: at its corner it is already supposed to be down. */
const onlyIdle: ReadonlySet<string> = new Set(['lost-idle', 'shrinks-idle', 'oxygen-idle', 'charge-idle']);
/** Corners at which a start is looked at: nothing has warmed up, so what needs hours has no meaning there. */
const atStart: ReadonlySet<string> = new Set(['temperature', 'hydrogen-rate', 'bypass-share', 'hydrogen-in-oxygen', 'plug-energy-per-volume', 'starts-per-hour', 'free-delivery', 'discharge-temperature', 'cut-off']);
/** What the fill of the cylinder moves. */
const withStore: ReadonlySet<string> = new Set(['free-delivery', 'discharge-temperature', 'cut-off']);
const emptyMeansNothing: ReadonlySet<string> = new Set(['discharge-temperature', 'cut-off']);

function hasMeaning(look: Name, quantity: string): boolean {
    if (onlyIdle.has(quantity)) return look === 'three idle days';
    if (look === 'three idle days') return !atStart.has(quantity);
    if (look === 'full cylinder') return withStore.has(quantity);
    if (look === 'empty cylinder') return withStore.has(quantity) && !emptyMeansNothing.has(quantity);
    return true;
}
/** Looks at a rig in all its corners. */
export function cornersOf(workings: Workings, options: JudgeOptions = {}): Corners {
    const before = judge(new Workings(workings.rig, undefined, workings.supposed), options).findings;
    const there: (Workings | undefined)[] = [];
    const looked: Look[] = [];
    const corners: Corner[] = [];
    for (const look of looks) {
        const supposed = look.suppose(workings, new Supposed(workings.supposed));
        if (supposed === undefined) continue;
        looked.push(look);
        if (typeof supposed === 'string') {
            there.push(undefined);
            corners.push({ name: look.name, meaning: look.meaning, skipped: supposed, breaks: [] });
            continue;
        }
        const w = new Workings(workings.rig, undefined, supposed);
        there.push(w);
        corners.push({ name: look.name, meaning: look.meaning, breaks: look.name === 'as described' ? [] : newly(before, judge(w, options).findings) });
    }
    const table = lines.flatMap(line => {
        const parts = workings.livePartsOf(line.kind);
        const part = (parts.find(v => line.side && v.paths.on(line.side).includes(v.name)) ?? parts[0])?.part;
        if (!part) return [];
        const results = looked.map(({ name }, i) => {
            const quantity = line.instead?.[name] ?? line.quantity;
            const from = onlyIdle.has(quantity) ? workings : there[i];
            return quantity !== line.quantity || hasMeaning(name, line.quantity) ? from?.quantity(part, quantity) : undefined;
        });
        return results.some(r => r && r.value === r.value) ? [{ name: line.name, results }] : [];
    });
    return { corners, lines: table };
}
/** Findings of error or warning that were not there, or were a mere hint. */
function newly(before: readonly Finding[], after: readonly Finding[]): Finding[] {
    const key = (f: Finding) => `${f.rule} ${f.span.file} ${f.span.start}`;
    const had = new Set(before.filter(f => f.severity !== 'hint').map(key));
    return after.filter(f => f.severity !== 'hint' && !had.has(key(f)));
}
