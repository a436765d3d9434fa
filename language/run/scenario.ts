/** What a run begins with and what happens in it: read from a `scenario` block, or what is usual where the rig names none. */
import { clearLight, FULL_SUN, panelLight } from '../quantities/source.js';
import { ROOM } from '../quantities/surroundings.js';
import { workingsIn } from '../quantities/varied.js';
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import { toSi, unitOf } from '../units/unit.js';

/** s */
export const DAY = 86400;
/** s after midnight at which a run begins where nothing is said. Own choice. */
const USUAL_START = 8 * 3600;
/** How long a push button is held down, s. */
export const PUSHED = 1;

/** Water is added up to the working level. */
export const TOPPED_UP = 'topped up';
/** s between two fillings of water where the routine does not tell. Common practice, no source. */
const USUAL_FILLING = 4 * 3600;

/** What comes out of the socket: no part of a rig, and it can be lost and return. */
export const MAINS = 'mains';

/** Something that is done, or happens, at a time. */
export interface Act {
    /** s since the start. */
    readonly t: number;
    readonly part: string;
    /** As the vocabulary has it: 'pressed', 'sticks made', 'lost'. */
    readonly what: string;
}
export interface Scenario {
    /** Of the block; undefined for the usual day. */
    readonly name: string | undefined;
    /** The rig in the variants that it runs with; undefined where it runs as it stands. */
    readonly of?: Workings;
    /** s after midnight. */
    readonly starts: number;
    /** s */
    readonly lasts: number;
    /** K of room and air at a time since the start, s. */
    readonly weather: (t: number) => number;
    /** W/m² of sunshine at a time since the start, on the panels or on whatever stands in it. */
    readonly sun: (t: number) => number;
    readonly acts: readonly Act[];
    /** SI, what stands in the rig before it begins, by 'part.quantity': a temperature, a volume, a pressure. */
    readonly begins: ReadonlyMap<string, number>;
    /** What of it is not understood or not followed, in sentences. */
    readonly notes: readonly string[];
}

const timed = /^(?:(?<clock>\d{1,2}:\d{2})|(?:after|at)\s+(?<after>\d+(?:\.\d+)?\s*[a-z]+))\s+(?<part>[\p{L}_][\p{L}\p{N}_-]*)\s+(?<what>.+)$/u;

/** The usual day: every start button pressed, a room at 20 °C or as near to it as the site allows, a day and a night. */
export function usualDay(workings: Workings, lasts = DAY): Scenario {
    const [site] = workings.partsOf('site');
    const low = site?.maybe('coldest') ?? NaN;
    const high = site?.maybe('hottest') ?? NaN;
    const kelvin = Math.min(high === high ? high : ROOM, Math.max(low === low ? low : ROOM, ROOM));
    return { name: undefined, starts: USUAL_START, lasts, weather: () => kelvin, sun: sunOf(workings, USUAL_START), acts: [...pressed(workings, 0), ...toppedUp(workings, lasts)], begins: new Map(), notes: [] };
}
/** The same of the rig with variants laid over it. */
export function usualDayIn(workings: Workings, variants: readonly string[], lasts = DAY): Scenario {
    const of = workingsIn(workings, variants);
    return { ...usualDay(of, lasts), of };
}
/** Water added as the routine says, for as long as a run lasts. */
function toppedUp(workings: Workings, lasts: number): Act[] {
    const [routine] = workings.partsOf('routine');
    const [stack] = workings.partsOf('stack');
    const every = routine?.rows('water-fill').flatMap(r => [...r.values()]).find(f => f.amount && f.number > 600)?.number ?? USUAL_FILLING;
    return stack ? Array.from({ length: Math.max(0, Math.ceil(lasts / every) - 1) }, (_, i) => ({ t: (i + 1) * every, part: stack.name, what: TOPPED_UP })) : [];
}
/** Every button that something is latched by. */
export function pressed(workings: Workings, t: number): Act[] {
    const buttons = new Set<string>();
    for (const v of workings.allViews()) {
        if (v.pattern || !('latched-by' in (v.declared?.properties ?? {}))) continue;
        for (const n of v.names('latched-by')) if (v.other(n.split('.')[0])?.kind === 'button') buttons.add(n.split('.')[0]);
    }
    return [...buttons].map(part => ({ t, part, what: 'pressed' }));
}
/** A scenario of the text. */
export function readScenario(asWritten: Workings, view: View): Scenario {
    const variants = view.names('with');
    const of = variants.length ? workingsIn(asWritten, variants) : undefined;
    const workings = of ?? asWritten;
    const usual = usualDay(workings);
    const notes: string[] = [];
    const said = view.given('starts').facts;
    // With a date before it, the clock is read as part of that.
    const dated = /(\d{1,2}):(\d{2})/.exec(said.get('date')?.text ?? '');
    const starts = said.get('clock')?.number ?? (dated ? Number(dated[1]) * 3600 + Number(dated[2]) * 60 : USUAL_START);
    const acts: Act[] = [];
    for (const row of view.rows('events')) {
        const text = [...row.values()][0]?.text ?? '';
        const m = timed.exec(text.trim())?.groups;
        if (!m) {
            notes.push(`${view.name}: "${text}" is not understood; an event is written as 08:05 start-button pressed, or after 2 h control lost.`);
            continue;
        }
        let t: number;
        if (m.clock) {
            const [h, min] = m.clock.split(':').map(Number);
            t = (h * 3600 + min * 60 - starts + DAY) % DAY;
        } else {
            const [, number, word] = /^([\d.]+)\s*([a-z]+)$/.exec(m.after)!;
            const unit = unitOf(word);
            t = unit ? toSi(Number(number), unit) : NaN;
        }
        const part = m.part === MAINS || workings.viewOf(m.part);
        if (!(t >= 0) || !part) notes.push(`${view.name}: "${text}" is left out: ${part ? 'its time is not understood' : `there is no part ${m.part}`}.`);
        else acts.push({ t, part: m.part, what: m.what.trim() });
    }
    const rows = clocked(view, 'weather');
    const begins = new Map<string, number>();
    for (const key of view.part.entries.keys()) {
        const n = key.includes('.') ? view.seen(key) : NaN;
        if (n === n) begins.set(key, n);
    }
    const suns = clocked(view, 'sun');
    return {
        name: view.name, of, starts, lasts: view.maybe('lasts', DAY), weather: rows.length ? byTheClock(rows, starts) : usual.weather, sun: suns.length ? byTheClock(suns, starts) : sunOf(workings, starts),
        acts: acts.some(a => workings.viewOf(a.part)?.kind === 'button') ? acts.sort((a, b) => a.t - b.t) : [...usual.acts, ...acts].sort((a, b) => a.t - b.t), begins, notes,
    };
}
interface Clocked {
    readonly value: number;
    /** s after midnight; NaN where it holds throughout. */
    readonly clock: number;
}
function clocked(view: View, key: string): Clocked[] {
    return view.rows(key).map(r => ({ value: r.get('value')?.number ?? NaN, clock: r.get('at')?.number ?? NaN })).filter(r => r.value === r.value);
}
/** Straight lines between what is told by the clock, round the day. */
function byTheClock(rows: readonly Clocked[], starts: number): (t: number) => number {
    const timed = rows.filter(r => r.clock === r.clock).sort((a, b) => a.clock - b.clock);
    if (timed.length < 2) return () => rows[0].value;
    return t => {
        const clock = (starts + t) % DAY;
        const next = timed.findIndex(r => r.clock > clock);
        const b = timed[next < 0 ? 0 : next];
        const a = timed[(next < 0 ? timed.length : next || timed.length) - 1];
        const span = (b.clock - a.clock + DAY) % DAY || DAY;
        return a.value + (b.value - a.value) * (((clock - a.clock + DAY) % DAY) / span);
    };
}
/** s between two looks at a clear sky. */
const SKY_STEP = 900;
/** The sun of an ordinary clear day: as the site tells it by the clock, else by latitude and where the panels look, else from six to six. */
function sunOf(workings: Workings, starts: number): (t: number) => number {
    const [site] = workings.partsOf('site');
    const [panels] = workings.partsOf('panels');
    const told = site ? clocked(site, 'sun') : [];
    if (told.length) return byTheClock(told, starts);
    const hour = (clock: number) => (clock / DAY - 0.5) * 2 * Math.PI;
    const known = panels && clearLight(panels, panels, 0) === clearLight(panels, panels, 0);
    const best = panels ? panelLight(panels, panels) : FULL_SUN;
    const light = (clock: number) => (known ? clearLight(panels, panels, hour(clock)) : Math.max(0, best * Math.cos(hour(clock))));
    return byTheClock(Array.from({ length: DAY / SKY_STEP }, (_, i) => ({ clock: i * SKY_STEP, value: light(i * SKY_STEP) })), starts);
}
