/**
 * The control lines of a rig as they work at a moment: which contacts are made, what has tripped, what runs. All that it knows is what
 * the text says: senses, makes, breaks, trips, resets, needs, stopped-by, latched-by, follows, and where things go without power.
 */
import type { Facts } from '../values/match.js';
import type { View } from '../quantities/view.js';
import type { Moment, Sensor } from './states.js';
import type { Workings } from '../quantities/workings.js';

/** What tells something sensed, as 'bag.volume', where that device sits; its values are undefined where a run does not follow it. */
export type Sense = (quantity: string, by: View) => Sensor;

/** `needs: a, b or c`: all of the list, and of each entry one or all. */
interface Condition {
    readonly join: 'one' | 'or' | 'and';
    readonly of: readonly { readonly name: string; readonly what: string | undefined }[];
}
/** A point of a switch or trip. */
export interface Point {
    readonly side: 'above' | 'below';
    readonly value: number;
    /** s that it must last. */
    readonly lasts: number;
}
export interface Device {
    readonly view: View;
    readonly kind: string;
    readonly name: string;
    readonly senses: string | undefined;
    readonly makes: Point | undefined;
    readonly breaks: Point | undefined;
    readonly trips: Point | undefined;
    readonly alarm: Point | undefined;
    /** Above or below what it resets by itself; a hand is needed without. */
    readonly resets: { readonly by: 'hand' | 'itself'; readonly point: Point | undefined; readonly when: string | undefined };
    readonly armed: readonly Condition[];
    readonly needs: readonly Condition[];
    readonly stoppedBy: readonly Condition[];
    readonly latchedBy: readonly Condition[];
    readonly shutWhile: readonly Condition[] | undefined;
    readonly openWhile: readonly Condition[] | undefined;
    readonly openedBy: readonly Condition[];
    readonly shutBy: readonly Condition[];
    readonly follows: string | undefined;
    readonly sort: string | undefined;
    /** s, of a timer. */
    readonly time: number;
    readonly unpowered: string | undefined;
    readonly wireBreaks: string | undefined;
    readonly detached: string | undefined;
    /** Names of the feeds any of which, lost, leaves it without power. */
    readonly feed: string | undefined;
}
/** What was done to a device: it holds from then on. */
export type Failure = string;

/** What stands in the rig at a moment, by the names of its devices. */
export interface ControlState {
    /** Contact made, trip ready, timer made, button held, valve open, machine running. */
    readonly on: Map<string, boolean>;
    /** Trips, analysers and detectors that have tripped; longest-on timers; stop buttons pressed. */
    readonly tripped: Set<string>;
    /** Contactors and relays that hold themselves. */
    readonly latched: Set<string>;
    /** When what a timer follows last came or went, s. */
    readonly since: Map<string, number>;
    /** Since when a point with a time has been passed, s. */
    readonly passed: Map<string, number>;
    readonly failed: Map<string, Failure>;
    readonly lostFeeds: Set<string>;
    /** Nothing comes out of the socket. */
    mainsLost: boolean;
    /** Another number whenever something of it has moved: what was worked out for the last one may be kept until then. */
    turn: number;
}

/** Before anything is known. */
export const nothingYet = (): ControlState => ({ on: new Map(), tripped: new Set(), latched: new Set(), since: new Map(), passed: new Map(), failed: new Map(), lostFeeds: new Set(), mainsLost: false, turn: 0 });

const machines = new Set(['supply', 'transformer', 'charger', 'compressor', 'fan', 'circulation-pump', 'top-up', 'engine']);
const coils = new Set(['contactor', 'relay', 'solid-state-relay']);
const guards = new Set(['trip', 'analyser', 'detector']);
const valves = new Set(['valve', 'unloader']);
const followed = new Set([...machines, ...coils, ...guards, ...valves, 'switch', 'timer', 'button', 'stop-button']);

function conditions(view: View, key: string): Condition[] {
    return view.rows(key).flatMap((row: Facts) => [...row.values()].flatMap(f => (f.condition ? [{
        join: f.condition.join, of: f.condition.of.map(c => ({ name: c.names[0], what: c.names[1] })),
    }] : [])));
}
function point(view: View, key: string): Point | undefined {
    const side = view.word(`${key}.side`);
    const value = view.maybe(`${key}.value`);
    return (side === 'above' || side === 'below') && value === value ? { side, value, lasts: view.maybe(`${key}.for`, 0) } : undefined;
}
function deviceOf(view: View, controls: Workings['controls']): Device {
    const has = (key: string) => key in (view.declared?.properties ?? {});
    const list = (key: string) => (has(key) ? conditions(view, key) : []);
    return {
        view, kind: view.kind, name: view.name, senses: has('senses') ? controls.sensed(view) : undefined,
        makes: has('makes') ? point(view, 'makes') : undefined, breaks: has('breaks') ? point(view, 'breaks') : undefined, trips: has('trips') ? point(view, 'trips') : undefined,
        alarm: has('alarm') ? point(view, 'alarm') : undefined,
        resets: { by: has('resets') && view.word('resets.by') === 'itself' ? 'itself' : 'hand', point: has('resets') ? point(view, 'resets') : undefined, when: has('resets') ? view.names('resets').find(n => n !== 'hand' && n !== 'itself' && n !== 'above' && n !== 'below') : undefined },
        armed: list('armed-while'), needs: list('needs'), stoppedBy: list('stopped-by'), latchedBy: list('latched-by'),
        shutWhile: has('shut-while') && view.names('shut-while').length ? conditions(view, 'shut-while') : undefined,
        openWhile: has('open-while') && view.names('open-while').length ? conditions(view, 'open-while') : undefined,
        openedBy: list('opened-by'), shutBy: list('shut-by'),
        follows: has('follows') ? view.names('follows')[0]?.split('.')[0] ?? view.word('follows') : undefined,
        sort: has('sort') ? view.word('sort') : undefined, time: has('time') ? view.maybe('time', 0) : 0,
        unpowered: has('if-unpowered') ? view.word('if-unpowered') : undefined, wireBreaks: has('if-wire-breaks') ? view.word('if-wire-breaks') : undefined,
        detached: has('if-detached') ? view.word('if-detached') : undefined,
        feed: has('fed-from') ? view.names('fed-from')[0] ?? view.word('fed-from') : undefined,
    };
}
/** What a device that reads wrong shows of what is there. Common practice, no source: half and twice; a dead cell and a poisoned bead show none. */
export const misreads: Readonly<Record<string, number>> = { 'reads low': 0.5, 'reads high': 2, 'cell dies': 0, poisoned: 0 };
/** How far a set point that drifts goes off before anybody looks, the way that acts later: a tenth, of temperatures 10 K. Common practice, no source. */
const DRIFT = 0.1;
const DRIFT_KELVIN = 10;

/** Rounds after which a control that still changes is taken never to settle. */
const MOST_ROUNDS = 60;

export class ControlLines {
    readonly devices = new Map<string, Device>();
    /** What a device senses and a run does not follow: told, and taken to stay as it is when all is well. */
    readonly unheard: { readonly device: string; readonly senses: string }[] = [];

    private readonly sensors = new Map<string, Sensor>();

    /** @param now  the moment at which things are sensed: it moves on */
    constructor(workings: Workings, private readonly now: Moment, sense: Sense) {
        for (const view of workings.allViews()) if (followed.has(view.kind) && !view.pattern) this.devices.set(view.name, deviceOf(view, workings.controls));
        for (const d of this.devices.values()) {
            if (!d.senses) continue;
            this.sensors.set(d.name, sense(d.senses, d.view));
            if (this.value(d) === undefined) this.unheard.push({ device: d.name, senses: d.senses });
        }
    }
    /** As things stand before anything has been started: contacts where what they sense puts them, nothing tripped, nothing latched. */
    begin(state: ControlState): void {
        for (const d of this.devices.values()) {
            const value = this.value(d);
            if (d.kind === 'switch') {
                const makes = d.makes && value !== undefined && this.beyond(d, d.makes, value, state);
                const breaks = d.breaks && value !== undefined && this.beyond(d, d.breaks, value, state);
                // Between its two points it is where it was last: not yet beyond the one that it waits for.
                state.on.set(d.name, makes ? true : breaks ? false : d.makes && d.breaks ? d.breaks.side === 'above' || (value === undefined) : d.breaks ? true : !d.makes);
            } else if (d.kind === 'button') state.on.set(d.name, false);
            else if (d.kind === 'timer') state.on.set(d.name, d.sort === 'minimum-off' || d.sort === 'longest-on');
            // A valve that no power moves stands as it does in ordinary running: open.
            else state.on.set(d.name, guards.has(d.kind) || d.kind === 'stop-button' || (d.kind === 'valve' && !d.shutWhile && !d.openWhile));
        }
    }
    private value(d: Device): number | undefined {
        return this.sensors.get(d.name)?.(this.now);
    }
    /** Where a point lies in what is really there, for a device that may read wrong. */
    threshold(d: Device, p: Point, state: ControlState): number {
        const failure = state.failed.get(d.name);
        const outwards = p.side === 'above' ? 1 : -1;
        if (failure === 'drifts') return p.value + outwards * (d.senses?.endsWith('temperature') ? DRIFT_KELVIN : DRIFT * Math.abs(p.value));
        const factor = failure === undefined ? 1 : misreads[failure] ?? 1;
        return factor === 0 ? Infinity : p.value / factor;
    }
    private beyond(d: Device, p: Point, value: number, state: ControlState): boolean {
        const limit = this.threshold(d, p, state);
        return p.side === 'above' ? value >= limit : value <= limit;
    }
    /** Whether a point has been passed for as long as it must. */
    private lasting(d: Device, key: string, p: Point, value: number, state: ControlState, now: number): boolean {
        const name = `${d.name} ${key}`;
        if (!this.beyond(d, p, value, state)) {
            state.passed.delete(name);
            return false;
        }
        if (!p.lasts) return true;
        if (!state.passed.has(name)) state.passed.set(name, now);
        return now >= state.passed.get(name)! + p.lasts - 1e-6;
    }
    /** Whether a device has power: its own feed, or the control feed where none is named. */
    private powered(d: Device, state: ControlState): boolean {
        return d.feed !== undefined ? !state.lostFeeds.has(d.feed) : !state.lostFeeds.has('');
    }
    private holds(list: readonly Condition[], state: ControlState): boolean {
        return list.every(c => (c.join === 'or' ? c.of.some(x => this.made(x, state)) : c.of.every(x => this.made(x, state))));
    }
    private acts(list: readonly Condition[], state: ControlState): boolean {
        return list.some(c => (c.join === 'and' ? c.of.every(x => !this.made(x, state)) : c.of.some(x => !this.made(x, state))));
    }
    private made({ name, what }: { name: string; what: string | undefined }, state: ControlState): boolean {
        if (what === 'alarm') {
            const d = this.devices.get(name);
            const value = d && this.value(d);
            return !(d?.alarm && value !== undefined && this.beyond(d, d.alarm, value, state));
        }
        // What is no device of the control lines neither stops nor holds anything.
        return state.on.get(name) ?? true;
    }
    /**
     * Everything as it is at a moment, until nothing changes any more.
     *
     * @returns names of devices that go on changing for ever; none where it settles
     */
    settle(state: ControlState, now: number): readonly string[] {
        state.turn++;
        let changing: string[] = [];
        for (let round = 0; round < MOST_ROUNDS; round++) {
            changing = [];
            for (const d of this.devices.values()) {
                const was = state.on.get(d.name);
                const is = this.working(d, state, now);
                if (was === is) continue;
                state.on.set(d.name, is);
                state.turn++;
                changing.push(d.name);
                for (const t of this.devices.values()) if (t.follows === d.name) state.since.set(t.name, now);
            }
            if (!changing.length) return [];
        }
        return changing;
    }
    private working(d: Device, state: ControlState, now: number): boolean {
        const is = this.healthy(d, state, now);
        const failure = state.failed.get(d.name);
        return failure === undefined ? is : failed(d, failure, is, state.on.get(d.name) ?? is);
    }
    private healthy(d: Device, state: ControlState, now: number): boolean {
        const was = state.on.get(d.name) ?? true;
        if (d.kind === 'switch') return this.switched(d, was, state, now);
        if (guards.has(d.kind)) return !this.tripping(d, state, now);
        if (d.kind === 'stop-button') return !state.tripped.has(d.name);
        if (d.kind === 'button') return was;
        if (d.kind === 'timer') return this.timed(d, state, now);
        if (coils.has(d.kind)) {
            if (!this.powered(d, state)) {
                state.latched.delete(d.name);
                return d.unpowered === 'makes' || (d.unpowered === 'stays' && was);
            }
            const free = this.holds(d.needs, state) && !this.acts(d.stoppedBy, state);
            if (!d.latchedBy.length) return free;
            if (!free) state.latched.delete(d.name);
            else if (d.latchedBy.some(c => c.of.some(x => this.made(x, state)))) state.latched.add(d.name);
            return state.latched.has(d.name);
        }
        if (valves.has(d.kind)) {
            const held = this.powered(d, state);
            if (d.shutWhile) return !(held && this.holds(d.shutWhile, state) && !this.acts(d.openedBy, state));
            if (d.openWhile) return held && this.holds(d.openWhile, state) && !this.acts(d.shutBy, state);
            return was;
        }
        return this.powered(d, state) && this.holds(d.needs, state) && !this.acts(d.stoppedBy, state);
    }
    private switched(d: Device, was: boolean, state: ControlState, now: number): boolean {
        if (d.unpowered && !this.powered(d, state)) return d.unpowered === 'makes' || (d.unpowered === 'stays' && was);
        const value = this.value(d);
        if (value === undefined) return was;
        const makes = !!d.makes && this.lasting(d, 'makes', d.makes, value, state, now);
        const breaks = !!d.breaks && this.lasting(d, 'breaks', d.breaks, value, state, now);
        if (makes && !breaks) return true;
        if (breaks) return false;
        // With one point only it is the same point both ways.
        if (!d.breaks && d.makes && !this.beyond(d, d.makes, value, state)) return false;
        if (!d.makes && d.breaks && !this.beyond(d, d.breaks, value, state)) return true;
        return was;
    }
    private tripping(d: Device, state: ControlState, now: number): boolean {
        const value = this.value(d);
        const lost = d.unpowered === 'trips' && !this.powered(d, state);
        const over = !!d.trips && value !== undefined && this.beyond(d, d.trips, value, state) && this.holds(d.armed, state);
        if (over && !state.passed.has(d.name)) state.passed.set(d.name, now);
        if (!over) state.passed.delete(d.name);
        if (lost || (over && now >= state.passed.get(d.name)! + d.trips!.lasts - 1e-6)) state.tripped.add(d.name);
        else if (state.tripped.has(d.name) && d.resets.by === 'itself' && !over) {
            const back = d.resets.point;
            if (!back || (value !== undefined && this.beyond(d, back, value, state))) state.tripped.delete(d.name);
        }
        return state.tripped.has(d.name);
    }
    private timed(d: Device, state: ControlState, now: number): boolean {
        if (!this.powered(d, state)) return d.unpowered === 'makes';
        const on = d.follows === undefined || (state.on.get(d.follows) ?? false);
        const since = state.since.get(d.name);
        const over = since === undefined || now >= since + d.time - 1e-6;
        switch (d.sort) {
            case 'off-delay': return on || (since !== undefined && !over);
            case 'minimum-off': return on || over;
            case 'longest-on':
                if (on && since !== undefined && over) state.tripped.add(d.name);
                else if (!on && d.resets.by === 'itself') state.tripped.delete(d.name);
                return !state.tripped.has(d.name);
            default: return on && since !== undefined && over;
        }
    }
    /** A hand: a button, a stop button, a reset. */
    press(name: string, down: boolean, state: ControlState): void {
        const d = this.devices.get(name);
        if (d?.kind === 'stop-button') {
            if (down) state.tripped.add(name);
            else state.tripped.delete(name);
        } else if (d?.kind === 'button') state.on.set(name, down);
    }
    reset(name: string, state: ControlState): void {
        state.tripped.delete(name);
    }
    /** What runs out and when, s: timers, and points that must be passed for a while. */
    private running(state: ControlState): { readonly device: Device; readonly point: Point | undefined; readonly t: number }[] {
        const out: { device: Device; point: Point | undefined; t: number }[] = [];
        for (const device of this.devices.values()) {
            if (device.kind === 'timer') out.push({ device, point: undefined, t: (state.since.get(device.name) ?? -Infinity) + device.time });
            for (const key of ['trips', 'makes', 'breaks'] as const) {
                const point = device[key];
                const since = point?.lasts ? state.passed.get(key === 'trips' ? device.name : `${device.name} ${key}`) : undefined;
                if (since !== undefined) out.push({ device, point, t: since + point!.lasts });
            }
        }
        return out;
    }
    /** The first time behind now at which something runs out; Infinity if none. */
    next(state: ControlState, now: number): number {
        return this.running(state).reduce((next, { t }) => (t > now + 1e-9 && t < next ? t : next), Infinity);
    }
    /** What runs out at this moment. */
    elapsed(state: ControlState, now: number): { readonly device: Device; readonly point: Point | undefined }[] {
        return this.running(state).filter(r => Math.abs(r.t - now) < 1e-6);
    }
    /** Everything that may happen by what is sensed: below zero until it does. Which of them count follows from the state. */
    watched(state: ControlState): { readonly device: Device; readonly point: Point; readonly limit: number; readonly rises: boolean; readonly of: string }[] {
        const out: { device: Device; point: Point; limit: number; rises: boolean; of: string }[] = [];
        for (const d of this.devices.values()) {
            if (!d.senses) continue;
            const add = (point: Point | undefined, back = false) => {
                const limit = point ? this.threshold(d, point, state) : Infinity;
                if (point && Number.isFinite(limit)) out.push({ device: d, point: back ? { ...point } : point, limit, rises: (point.side === 'above') !== back, of: d.senses! });
            };
            for (const p of [d.makes, d.breaks, d.trips, d.alarm, state.tripped.has(d.name) && d.resets.by === 'itself' ? d.resets.point : undefined]) add(p);
            // Where only one point is given, the way back matters as well; of what must last too.
            if (!d.makes || !d.breaks) add(d.makes ?? d.breaks, true);
            else for (const p of [d.makes, d.breaks]) if (p.lasts) add(p, true);
            if (d.trips?.lasts || d.resets.by === 'itself') add(d.trips, true);
        }
        return out;
    }
}
/** What a device with a failure shows, where it would show `is` in health and showed `was` before. */
export function failed(d: Device, failure: Failure, is: boolean, was: boolean): boolean {
    const shows = (said: string | undefined) => (said === 'breaks' || said === 'trips' || said === 'stops' ? false : said === 'makes' ? true : guards.has(d.kind) || d.kind === 'stop-button' ? true : was);
    switch (failure) {
        case 'sticks made': case 'sticks open': case 'fails on': case 'left open': case 'fails to trip': return true;
        case 'sticks broken': case 'sticks shut': case 'fails off': case 'left shut': case 'coil fails': case 'stops': case 'stalls': case 'trips': return false;
        // Two of a kind: a broken wire of a coil lets go; of a contact that is heard it is as the text says.
        case 'wire breaks': if (d.kind === 'timer' || d.kind === 'button') return false;
            return coils.has(d.kind) || valves.has(d.kind) ? (d.unpowered === 'makes' || d.unpowered === 'opens') : shows(d.wireBreaks);
        case 'detached': return shows(d.detached);
        default: return is;
    }
}
