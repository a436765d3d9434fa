/** A run and its faults as lines of text: what happened by the clock, how it stands at the end, what hurts most. */
import { duration, show } from '../units/format.js';
import type { Happened, RunResult } from '../run/run.js';
import type { FaultResult, Faults, HiddenResult } from '../run/faults.js';
import { DAY } from '../run/scenario.js';
import { trialOf } from '../rules/test-intervals.js';
import type { Held } from '../run/expectations.js';
import type { Workings } from '../quantities/workings.js';


/** Time of day so many seconds after the start: '08:10:12', with the day where it is not the first. */
export function clockOf(starts: number, t: number): string {
    const seconds = Math.round(starts + t);
    const two = (n: number) => String(n).padStart(2, '0');
    const day = Math.floor(seconds / DAY);
    const s = seconds % DAY;
    return `${day ? `day ${day + 1} ` : ''}${two(Math.floor(s / 3600))}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}`;
}
/** Whether something is worth a line: it was done, or something followed from it. */
export const worthTelling = (e: Happened): boolean => e.then.length > 0 || e.sort === 'act' || e.sort === 'hazard' || e.sort === 'trip';
/** What happened, in one line: the cause and what followed. */
export const happenedText = (e: Happened): string => (e.then.length ? `${e.cause}: ${e.then.join(', ')}` : e.cause);

/** What a run comes to in numbers, a line each: name, value. */
export function totalsOf(r: RunResult, asWritten: Workings): { readonly name: string; readonly value: string }[] {
    const { final } = r;
    const workings = r.scenario.of ?? asWritten;
    const stack = workings.partsOf('stack')[0];
    const out: { name: string; value: string }[] = [];
    const gas = (name: string, mol: number) => {
        if (mol > 1e-6) out.push({ name, value: show(mol, 'NL') });
    };
    for (const s of r.series) out.push({ name: s.name, value: show(s.values.at(-1) ?? NaN, s.unit) });
    gas('hydrogen made', final.made);
    gas('let outdoors through vents and seals', final.vented);
    gas('blown off by relief valves', final.relieved);
    gas('escaped where the rig stands', final.escaped);
    gas('drawn by whoever uses it', final.used);
    gas('shut in with no way out', final.trapped);
    if (final.water > 0) out.push({ name: 'water used', value: show(final.water, 'g') });
    const rest = (stack?.maybeQ('plug-power') ?? NaN) / ((stack?.maybeQ('voltage') ?? NaN) * (stack?.maybeQ('current') ?? NaN));
    const plug = final['stack-energy'] * (rest === rest ? rest : 1);
    if (plug > 0) out.push({ name: rest === rest ? 'electricity for the stack, at the plug' : 'electricity for the stack', value: show(plug, 'kWh') });
    if (final['compressor-energy'] > 0) out.push({ name: 'electricity for the compressor', value: show(final['compressor-energy'], 'kWh') });
    const tariff = workings.partsOf('budget')[0]?.given('tariff').facts.get('');
    if (tariff?.amount?.unit && plug > 0) out.push({ name: 'cost of the electricity', value: `${((plug + final['compressor-energy']) * tariff.number).toFixed(2)} ${tariff.amount.unit.text.split('/')[0]}` });
    return out;
}
/** When a device went on and off in a run: 'makes first after 64 min, then every 53 min'; undefined where it never moved. */
export function timesOf(r: RunResult, name: string, kind: string): string | undefined {
    const acts = kind === 'trip' || kind === 'analyser' || kind === 'detector' || kind === 'stop-button';
    const moved = r.switched.filter((s, i, all) => s.name === name && s.on !== acts && all.slice(0, i).findLast(x => x.name === name)?.on === acts).map(s => s.t);
    if (!moved.length) return undefined;
    const does = acts ? 'trips' : kind === 'switch' ? 'makes' : 'pulls in';
    const first = moved[0] < 1 ? `${does} at once` : `${does} first after ${duration(moved[0])}`;
    if (moved.length < 2) return first;
    return `${first}, then every ${duration((moved.at(-1)! - moved[0]) / (moved.length - 1))}`;
}
/** How an expectation over time stands, in one line. */
export function heldText(h: Held, starts: number): string {
    const when = h.t === undefined ? '' : ` at ${clockOf(starts, h.t)}`;
    return `${h.holds === undefined ? '?' : h.holds ? 'holds' : 'FAILS'}  ${h.expectation.text}  (${h.words}${h.holds === undefined && h.t === undefined ? '' : when})`;
}
/** 'caught by bag-high after 8 min', 'a hazard after 3 min'. */
export function outcomeText(f: FaultResult): string {
    const caught = f.caughtBy ? `${f.caughtBy.name} acts ${when(f.caughtBy.t)}` : '';
    if (f.outcome === 'hazard') return `${when(f.hazard!.t)}${sooner(f)}: ${f.hazard!.words}${caught ? `; ${caught}, ${duration(f.left!)} before, and does not stop it` : '; nothing acts before'}`;
    if (f.outcome === 'caught') return caught;
    if (f.outcome === 'escapes') return `${show(f.escaped!, 'NL')} within the time looked at${caught ? `; ${caught}` : '; nothing acts'}`;
    return f.outcome === 'unseen' ? 'nothing shows' : 'no hazard within the time looked at';
}
/** Told where it is sooner by more than the words would show anyway. */
const sooner = (f: FaultResult) => (f.earliest !== undefined && f.earliest < 0.95 * f.hazard!.t ? ` (${duration(f.earliest)} at the earliest)` : '');
const when = (t: number) => (t < 1 ? 'at once' : `after ${duration(t)}`);

/** A hazard that is reached on the hottest day with nothing broken, in a line each. What breaks is then told only where it does otherwise. */
export const healthyHazards = (found: Faults): string[] => found.healthy.hazards.map(h => `With nothing broken, ${when(h.t)}: ${h.words}`);
/** Faults in groups, each with what stands over it. */
export function faultGroups(found: Faults): { readonly title: string; readonly faults: readonly FaultResult[] }[] {
    return [
        { title: 'A single failure reaches a hazard', faults: found.faults.filter(f => f.outcome === 'hazard') },
        { title: 'Hydrogen escapes where the rig stands; evenly mixed it stays under a quarter of what can burn, at the leak and under the ceiling it does not', faults: found.faults.filter(f => f.outcome === 'escapes') },
        { title: 'Something acts in time', faults: found.faults.filter(f => f.outcome === 'caught') },
        { title: 'No hazard is reached within the time; the rig stops, or goes on otherwise', faults: found.faults.filter(f => f.outcome === 'stops') },
        { title: 'Nothing shows: only a test would find it', faults: found.faults.filter(f => f.outcome === 'unseen') },
    ].filter(g => g.faults.length);
}
/** Second failures that are told by name. */
const MOST_SECONDS = 3;
/** Over what hidden failures lead to. */
export const HIDDEN_TITLE = 'A failure that nothing shows, and a second one, reach a hazard';
/** 'main sticks made, then bag-full sticks made: after 13 min: …'. */
export function hiddenText(h: HiddenResult): string {
    const [{ fault, hazard }, ...others] = h.seconds;
    const more = others.slice(0, MOST_SECONDS).map(s => `${s.fault.part} ${s.fault.what} (${when(s.hazard.t)})`);
    if (others.length > MOST_SECONDS) more.push(`${others.length - MOST_SECONDS} more`);
    const also = more.length ? `; also beside ${more.length > 1 ? `${more.slice(0, -1).join(', ')} and ${more.at(-1)}` : more[0]}` : '';
    return `${h.part} ${h.ways.join(' or ')}, then ${fault.part} ${fault.what}: ${when(hazard.t)}: ${hazard.words}${also}`;
}
/** Said with what the guards are good for. */
export const GUARDS_TESTED = `Nothing shows that a guard is out of action until it is tested; usual: trips each ${trialOf('trip').each}, sensors each ${trialOf('detector').each}, relief valves each ${trialOf('relief-valve').each}, seals each ${trialOf('seal').each}.`;
/** What finds such a failure, and how often that is usually done. */
export function trialText(h: HiddenResult, kind: string): string {
    const { each, how } = trialOf(kind);
    return `Nothing shows the first; only a test finds it. Usual, each ${each}: ${how}.`;
}
/** What a guard is good for, in a sentence; undefined where no failure that was tried needs it. */
export function guardText(g: Faults['guards'][number]): string {
    if (!g.without.length) return 'none of the failures tried here came to it first';
    const bad = g.without.filter(w => w.outcome === 'hazard');
    const backed = [...new Set(g.without.map(w => w.caughtBy).filter(n => n !== undefined))];
    const list = (names: readonly string[]) => (names.length > 3 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', '));
    if (bad.length) return `without it a hazard is reached: ${list(bad.map(w => `${w.fault.part} ${w.fault.what}`))}`;
    return backed.length ? `without it ${list(backed)} ${backed.length === 1 ? 'acts' : 'act'} instead` : 'without it no hazard was reached within the time either';
}

/** Failures that come to the same end in the same words, told once: 'h2-hose blocked or kinked, h2-vent blocked'. */
export interface Alike {
    readonly names: string;
    readonly fault: FaultResult;
    /** What happened on the way, without the failure itself. */
    readonly story: readonly string[];
}
export function alikeEnds(faults: readonly FaultResult[]): Alike[] {
    const ends = new Map<string, { fault: FaultResult; story: readonly string[]; ways: Map<string, string[]> }>();
    for (const fault of faults) {
        const story = fault.story.map(line => line.replace(`${fault.part} ${fault.what}, `, '')).filter(line => line !== `${fault.part} ${fault.what}`);
        const key = JSON.stringify([outcomeText(fault), fault.help, story]);
        const end = ends.get(key) ?? { fault, story, ways: new Map<string, string[]>() };
        ends.set(key, end);
        end.ways.set(fault.part, [...(end.ways.get(fault.part) ?? []), fault.what]);
    }
    return [...ends.values()].map(({ fault, story, ways }) => ({ fault, story, names: [...ways].map(([part, whats]) => `${part} ${whats.join(' or ')}`).join(', ') }));
}
