/**
 * Runs a rig through a stretch of time: states that move by the laws, control lines that act as the text says, and everything that happens
 * at its moment. Always ends: steps, events and time are bounded, and what goes on for ever is told.
 */
import { ControlLines, nothingYet } from './control-lines.js';
import { CannotRun } from './laws.js';
import { Plant, type Draw } from './plant.js';
import { at, slight, states, type Moment, type StateName } from './states.js';
import type { Side, Way } from './ways.js';
import { MAINS, PUSHED, TOPPED_UP, type Act, type Scenario } from './scenario.js';
import { follow, MOST_STEPS, type Stretch } from './stepper.js';
import { hazards, RESEATS, watchesOf, type Hazard, type Watch } from './watches.js';
import { GAS_CONSTANT } from '../physics/constants.js';
import { parseValue } from '../values/parse-value.js';
import { measures } from '../units/dimension.js';
import { toSi } from '../units/unit.js';
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import { consequence, nameOfCause } from './tell.js';
import { show } from '../units/format.js';

/** Of each state and step; a fraction of a second in when things happen. */
const RELATIVE = 1e-7;
/** s */
const LONGEST_STEP = 300;
/** The same of a brief run while nothing runs, shines or is drawn: then all of it only dies away, and nothing comes and goes. */
const LONGEST_AT_REST = 3600;
const FIRST_STEP = 1;
const MOST_EVENTS = 4000;
/** Steps between two pauses: a millisecond or so. */
const STEPS_AT_A_STRETCH = 30;
/** Within so many seconds so many events are a chatter. */
const CHATTER = { events: 40, within: 20 } as const;
/** Why a run that looks for hazards ends. */
const REACHED = 'a hazard was reached';

export interface Happened {
    /** s since the start. */
    readonly t: number;
    /** In words: 'bag-full makes at 96 L'. */
    readonly cause: string;
    /** What followed at once: 'compressor starts'. */
    readonly then: readonly string[];
    readonly sort: 'act' | 'control' | 'trip' | 'hazard' | 'relief' | 'note';
    /** The parts that it is about, the cause first. */
    readonly parts: readonly string[];
    /** Guards that acted at this moment: what tripped, reliefs that lifted, seals that blew. */
    readonly acted: readonly string[];
}
export interface Series {
    readonly name: string;
    readonly measure: keyof typeof measures;
    readonly unit: string;
    readonly values: readonly number[];
}
export interface RunResult {
    readonly scenario: Scenario;
    readonly events: readonly Happened[];
    /** s since the start. */
    readonly times: readonly number[];
    readonly series: readonly Series[];
    readonly hazards: readonly Hazard[];
    /** By the names of the states, SI. */
    readonly final: Readonly<Record<StateName, number>>;
    readonly starts: number;
    /** s at which it ended, and why if that was before its time. */
    readonly ended: { readonly t: number; readonly early?: string };
    /** Hydrogen made less hydrogen found again, as a share of what was made. */
    readonly balance: number;
    readonly notes: readonly string[];
    /** Each time that a device went on or off, in order; where it stood at the start first. */
    readonly switched: readonly { readonly t: number; readonly name: string; readonly on: boolean }[];
    /** Guards that tripped, in their order. */
    readonly tripped: readonly string[];
    /** Parts that the gases of the stack, or of a bag that overflows, took their way through. */
    readonly passed: ReadonlySet<string>;
}
export interface RunOptions {
    /** Ends at the first hazard of which this is true. */
    readonly until?: (hazard: Hazard) => boolean;
    /** Tells what happened and how it ended, and no series. For weather that stays as it is. */
    readonly brief?: boolean;
    /** Failures that are there from the beginning: hidden ones. */
    readonly already?: readonly { readonly part: string; readonly what: string }[];
    /** What is taken as warm and running: lye as at rest, store half full. */
    readonly warm?: boolean;
    /** How close states are followed, as a share; finer by default than anything that is told. */
    readonly relative?: number;
    /** A plant that was made of the same workings before. */
    readonly plant?: Plant;
}
/** @throws CannotRun where too little is known */
export function run(workings: Workings, scenario: Scenario, options: RunOptions = {}): RunResult {
    return (scenario.of ?? workings).unnoted(() => {
        const steps = runInSteps(workings, scenario, options);
        for (;;) {
            const step = steps.next();
            if (step.done) return step.value;
        }
    });
}
/** The same with a pause every millisecond or so. What it reads is noted as read by whoever asks for the next step. */
export function* runInSteps(workings: Workings, scenario: Scenario, options: RunOptions = {}): Generator<void, RunResult> {
    const of = scenario.of ?? workings;
    return yield* new Run(options.plant ?? new Plant(of), of, scenario, options).go();
}

class Run {
    private readonly m: Moment = { t: 0, x: new Float64Array(states.length), c: nothingYet() };
    private readonly lines: ControlLines;
    private stalled = false;
    /** K of the lye when the stack stopped, until it runs again. */
    private stoppedAt: number | undefined;
    private readonly shut = new Set<Side>();
    /** Seals by which the gas of the stack leaves, or has left. */
    private readonly blown = new Set<string>();
    private inside = false;
    /** Pa on each side while it had a way out. */
    private readonly lastHead = { hydrogen: 0, oxygen: 0 };
    private draw: Draw | undefined;
    private readonly events: Happened[] = [];
    private readonly hazards: Hazard[] = [];
    private readonly times: number[] = [];
    private readonly kept: number[][] = [];
    private readonly followed: readonly Followed[];
    private readonly switched: { t: number; name: string; on: boolean }[] = [];
    private readonly tripped: string[] = [];
    private readonly passed = new Set<string>();
    private readonly lastWay: Partial<Record<Side, Way>> = {};
    private starts = 0;
    private readonly start: Float64Array;
    private readonly notes: string[];

    constructor(private readonly plant: Plant, private readonly workings: Workings, private readonly scenario: Scenario, private readonly options: RunOptions) {
        plant.weather = scenario.weather;
        plant.sun = scenario.sun;
        plant.store?.open.clear();
        const begins = scenario.begins;
        const kelvin = scenario.weather(0);
        const rest = plant.stack.maybeQ('temperature');
        const bag = plant.bag && begins.get(`${plant.bag.view.name}.volume`);
        const store = plant.store && begins.get(`${plant.store.view.name}.pressure`);
        const warm = options.warm ?? false;
        const cutOff = plant.store?.view.maybeQ('cut-off') ?? NaN;
        this.m.x = plant.begin({
            lye: begins.get(`${plant.stack.name}.temperature`) ?? (warm && rest === rest ? rest : kelvin),
            bagVolume: bag ?? (warm && plant.bag ? plant.bag.volume / 2 : undefined),
            storePressure: store ?? (warm && cutOff === cutOff ? cutOff / 2 : undefined),
            charge: plant.feeding.battery && begins.get(`${plant.feeding.battery.view.name}.charge`),
        });
        this.start = this.m.x.slice();
        this.lines = new ControlLines(workings, this.m, (quantity, by) => plant.sensor(quantity, by));
        this.followed = followedOf(plant);
        this.lines.begin(this.m.c);
        for (const [name, on] of this.m.c.on) this.switched.push({ t: 0, name, on });
        for (const { part, what } of options.already ?? []) this.m.c.failed.set(part, what);
        this.notes = [...plant.notes, ...scenario.notes, ...this.lines.unheard.map(u => `${u.device} senses ${u.senses}, which a run does not follow: it stays as it is.`)];
    }
    *go(): Generator<void, RunResult> {
        const acts = [...this.scenario.acts];
        this.keep();
        this.settle('at the start', 'note', [], true);
        let early: string | undefined;
        while (this.m.t < this.scenario.lasts && !early) {
            while (acts.length && acts[0].t <= this.m.t + 1e-9) {
                const act = acts.shift()!;
                for (const later of this.act(act)) acts.splice(acts.findIndex(a => a.t > later.t) < 0 ? acts.length : acts.findIndex(a => a.t > later.t), 0, later);
            }
            const to = Math.min(this.scenario.lasts, acts[0]?.t ?? Infinity, this.lines.next(this.m.c, this.m.t));
            const watches = watchesOf(this.plant, this.lines, { state: this.m.c, draw: this.draw, made: this.plant.made(this.m), stoppedAt: this.stoppedAt });
            this.alreadyThere(watches);
            if (this.found) {
                early = REACHED;
                break;
            }
            // One moment for all that is looked at while stepping: nothing of it is kept.
            const looked: Moment = { t: 0, x: this.m.x, c: this.m.c };
            const seen = (t: number, x: Float64Array) => {
                looked.t = t;
                looked.x = x;
                return looked;
            };
            const slope = (t: number, x: Float64Array, out: Float64Array) => this.plant.slope(seen(t, x), this.draw, this.stalled, out);
            const rests = this.options.brief && !this.draw && !this.plant.feeding.panels && !this.plant.feeding.runs(this.m.c) && !this.plant.pump?.runs(this.m.c);
            const accuracy = { relative: this.options.relative ?? RELATIVE, absolute: slight, longest: rests ? LONGEST_AT_REST : LONGEST_STEP };
            const values = watches.map(w => (t: number, x: Float64Array) => w.value(seen(t, x)));
            let stretch: Stretch;
            let first = FIRST_STEP;
            for (let steps = 0; ; ) {
                stretch = follow(slope, this.m.t, to, this.m.x, values, accuracy, first, (t, x) => {
                    this.m.t = t;
                    this.m.x = x;
                    this.keep();
                }, STEPS_AT_A_STRETCH);
                this.m.t = stretch.t;
                this.m.x = stretch.x;
                steps += stretch.steps;
                yield;
                if (stretch.paused === undefined || steps > MOST_STEPS) break;
                first = stretch.paused;
            }
            if (stretch.stuck || stretch.paused !== undefined) {
                early = 'the steps became too small to go on: something changes without end';
                break;
            }
            for (const i of stretch.hit) {
                this.reached(watches[i]);
            }
            const causes = [...new Set(stretch.hit.map(i => watches[i]).filter(w => w.tells))];
            const elapsed = stretch.hit.length || this.m.t < to ? [] : this.lines.elapsed(this.m.c, this.m.t);
            const cause = causes.map(w => w.tells!()).join('; ') || elapsed.map(({ device, point }) => (point ? nameOfCause([device.name], device, point) : `${device.name} runs out`)).join(', ');
            if (causes.some(w => w.ends)) this.draw = undefined;
            for (const w of causes) for (const name of w.through ?? []) this.passed.add(name);
            const unsettled = this.settle(cause, causes.some(w => w.always) ? 'act' : 'control', [...causes.flatMap(w => w.parts), ...elapsed.map(e => e.device.name)], causes.some(w => w.always), causes.flatMap(w => w.seal ?? []), () => {
                for (const { becomes, parts } of causes) {
                    if (becomes?.failure) this.m.c.failed.set(parts[0], becomes.failure);
                    else if (becomes) this.m.c.failed.delete(parts[0]);
                }
            });
            if (this.found) early = REACHED;
            else if (unsettled) early = unsettled;
            else if (this.chatters()) early = `${this.chattering()} keeps going on and off within seconds`;
            else if (this.events.length > MOST_EVENTS) early = `more than ${MOST_EVENTS} things happened`;
        }
        return this.result(early);
    }

    /** Whether a hazard is there that the run was to look for. */
    private get found(): boolean {
        return !!this.options.until && this.hazards.some(this.options.until);
    }
    /** What a switch or a failure has brought about at once: it does not rise any more, it is there. */
    private alreadyThere(watches: readonly Watch[]): void {
        for (const w of watches) if (w.hazard && w.value(this.m) >= 0) this.reached(w);
    }
    private reached({ hazard }: Watch): void {
        if (!hazard || this.hazards.some(h => h.name === hazard.name && h.part === hazard.part)) return;
        const words = hazard.words();
        this.hazards.push({ t: this.m.t, name: hazard.name, part: hazard.part, words });
        this.happened(words, [], 'hazard', [hazard.part]);
    }

    // ---- what happens -----------------------------------------------------------------------------------------------

    private happened(cause: string, then: readonly string[], sort: Happened['sort'], parts: readonly string[], acted: readonly string[] = []): void {
        this.events.push({ t: this.m.t, cause, then, sort, parts, acted });
    }
    /** Does what a scenario asks for; what follows from it later: a push button that is let go, a feed that lasts for a while. */
    private act(act: Act): readonly Act[] {
        const view = this.workings.viewOf(act.part);
        const device = this.lines.devices.get(act.part);
        const { what, part } = act;
        let later: readonly Act[] = [];
        let fails = () => {};
        if (part === MAINS && (what === 'lost' || what === 'returns')) {
            const holding = what === 'lost' ? this.plugged().filter(f => f.maybe('holds-for', 0) > 0) : [];
            later = holding.map(f => ({ t: this.m.t + f.maybe('holds-for', 0), part: f.name, what: 'lost' }));
            fails = () => this.mains(what === 'lost', holding);
        }
        else if (view?.kind === 'feed' && (what === 'lost' || what === 'returns')) {
            for (const feed of this.feedNames(part)) {
                if (what === 'lost') this.m.c.lostFeeds.add(feed);
                else this.m.c.lostFeeds.delete(feed);
            }
        } else if (view?.kind === 'burner' && what.startsWith('draws')) this.draw = this.drawn(part, this.flowOf(what));
        else if (view?.kind === 'burner' && what === 'lit') this.draw = this.drawn(part, view.maybe('flow', 0));
        else if (view?.kind === 'burner' && what === 'shut') this.draw = undefined;
        else if (device && (what === 'pressed' || what === 'released')) {
            this.lines.press(part, what === 'pressed', this.m.c);
            if (what === 'pressed' && device.kind === 'button' && (device.sort ?? 'push') !== 'key') later = [{ t: this.m.t + PUSHED, part, what: 'released' }];
        } else if (what === TOPPED_UP) this.m.x[at.added] = this.m.x[at.water];
        else if (device && what === 'reset') this.lines.reset(part, this.m.c);
        else if (view?.declared?.events?.includes(what)) {
            // What watches a flame shuts the gas when it is out; nothing else does.
            const shuts = view.kind === 'burner' && (what === 'blocked' || (what === 'goes out' && watchesFlame(view)));
            if (shuts) this.draw = undefined;
            fails = () => void this.m.c.failed.set(part, shuts ? 'blocked' : what);
            if (part === this.plant.bag?.view.name && what === 'bursts') this.plant.bag.burst(this.m, !!this.plant.room);
            if (part === this.plant.bag?.view.name && what === 'sticks') this.plant.bag.sticks(this.m);
        } else this.notes.push(`${part} ${what}: a run does not know this and leaves it out.`);
        this.settle(what === TOPPED_UP ? 'water is added' : what === 'released' && device?.kind === 'button' ? '' : `${part} ${what}`, 'act', [part], what !== 'released', [], fails);
        return later;
    }
    /** Feeds that hang on the socket: what a battery feeds goes on. */
    private plugged(): View[] {
        return this.workings.partsOf('feed').filter(f => !f.names('fed-from').some(n => this.workings.viewOf(n)?.kind === 'battery'));
    }
    /** @param holding  those that last for a while without it */
    private mains(lost: boolean, holding: readonly View[]): void {
        const { lostFeeds } = this.m.c;
        this.m.c.mainsLost = lost;
        const names = this.plugged().filter(f => !holding.includes(f)).flatMap(f => this.feedNames(f.name));
        // Without a feed in the text, all of it hangs on the socket.
        for (const name of [...names, MAINS, ...(this.workings.partsOf('feed').length ? [] : [''])]) {
            if (lost) lostFeeds.add(name);
            else lostFeeds.delete(name);
        }
    }
    /** The names by which devices call a feed: its own, and none where it is the one that carries the controls. */
    private feedNames(feed: string): string[] {
        const named = new Set([...this.lines.devices.values()].map(d => d.feed));
        const first = this.workings.partsOf('feed')[0]?.name;
        return named.has(feed) && feed !== first ? [feed] : [feed, ''];
    }
    private drawn(user: string, flow: number | undefined): Draw | undefined {
        const from = this.plant.feeds(user);
        return from && flow !== undefined && flow > 0 ? { flow, from } : undefined;
    }
    private flowOf(what: string): number | undefined {
        const value = parseValue(what.replace(/^draws\s*/, '')).list[0]?.[0];
        if (value?.is !== 'quantity') return undefined;
        const si = toSi(value.value, value.unit);
        return value.unit.dimension === measures['gas-flow'].dimension ? si : si * this.plant.air / (GAS_CONSTANT * this.scenario.weather(this.m.t));
    }
    /**
     * Lets the control lines come to rest and tells what changed by it; a reason if they never do.
     * @param change  what happens to a part before that
     */
    private settle(cause: string, sort: Happened['sort'], parts: readonly string[], always: boolean, seals: readonly string[] = [], change: () => void = () => {}): string | undefined {
        const { plant } = this;
        const state = this.m.c;
        // What gathers on a side that shuts now begins at what its way had cost, and the contacts feel that at once.
        for (const side of ['hydrogen', 'oxygen'] as const) if (!this.shut.has(side)) this.m.x[at[`${side}-head`]] = this.lastHead[side];
        const before = new Map(state.on);
        const trippedBefore = new Set(state.tripped);
        const ran = plant.feeding.runs(state);
        const pressed = plant.pump?.runs(state) ?? false;
        change();
        state.turn++;
        const unsettled = this.lines.settle(state, this.m.t);
        const moved = [...state.on].filter(([name, on]) => before.get(name) !== on && (before.has(name) || on) && this.lines.devices.has(name)).map(([name]) => name);
        for (const name of moved) this.switched.push({ t: this.m.t, name, on: state.on.get(name)! });
        const then = moved.filter(name => !parts.includes(name) || !cause).flatMap(name => consequence(this.lines.devices.get(name)!, state.on.get(name)!, sort === 'note') ?? []);
        const tripped = [...state.tripped].filter(name => !trippedBefore.has(name) && this.lines.devices.get(name)?.kind !== 'stop-button');
        for (const name of tripped) if (!this.tripped.includes(name)) this.tripped.push(name);
        const acted = [...tripped, ...seals];
        const runs = plant.feeding.runs(state);
        if (runs !== ran || this.m.t === 0) this.switched.push({ t: this.m.t, name: plant.stack.name, on: runs });
        if (runs !== ran) this.stoppedAt = runs ? undefined : this.m.x[at.lye];
        if (runs !== ran) then.push(runs ? 'the stack makes gas' : 'the stack stops');
        then.push(...this.startOrStop(pressed));
        plant.pump?.settle(this.m, this.stalled);
        then.push(...this.reliefs(acted), ...this.waysOut(runs, acted));
        // What jumps with a switch is kept on both sides of it.
        if (moved.length) this.keep();
        const trips = moved.some(n => state.tripped.has(n) && !trippedBefore.has(n));
        if (then.length || (cause && (always || moved.length))) this.happened(cause || nameOfCause(moved), then, trips ? 'trip' : sort, [...parts, ...moved], acted);
        return unsettled.length ? `${unsettled.slice(0, 4).join(', ')} keep switching each other: the control lines never come to rest` : undefined;
    }
    /** A compressor that starts against more than it can stands still. */
    private startOrStop(pressed: boolean): string[] {
        const { pump, bag: from } = this.plant;
        if (!pump?.runs(this.m.c)) {
            this.stalled = false;
            return [];
        }
        const bag = from?.view.name ?? '';
        if (from?.isBurst(this.m.c) && !this.hazards.some(h => h.name === 'air-stored')) {
            const words = `${pump.view.name} draws air through ${bag}, which has burst, and presses it into the store`;
            this.hazards.push({ t: this.m.t, name: 'air-stored', part: bag, words });
            return [words];
        }
        if (pressed) return [];
        this.starts++;
        const { name } = pump.view;
        const against = pump.startsAgainst(this.m);
        this.stalled = against > pump.startsBelow;
        if (!this.stalled) return [];
        const words = `${name} stands still against ${show(against, 'bar')}: its motor heats`;
        this.hazards.push({ t: this.m.t, name: 'held-motor', part: name, words });
        return [words];
    }
    /** @param acted  gets those that lift */
    private reliefs(acted: string[]): string[] {
        const { store } = this.plant;
        if (!store) return [];
        const gauge = store.gauge(this.m);
        return store.reliefs.flatMap(r => {
            const failure = this.m.c.failed.get(r.name);
            const was = store.open.has(r.name);
            const is = failure === 'sticks shut' || failure === 'outlet blocked' ? false : failure === 'sticks open' ? true : was ? gauge > RESEATS * r.set : gauge >= r.set;
            if (is === was) return [];
            if (is) {
                store.open.add(r.name);
                acted.push(r.name);
            } else store.open.delete(r.name);
            return [`${r.name} ${is ? 'lifts' : 'shuts again'} at ${show(gauge, 'bar')}`];
        });
    }
    /**
     * Where the gases of the stack go now: by a seal, into the room, or nowhere.
     * @param acted  gets the seals that blow
     */
    private waysOut(runs: boolean, acted: string[]): string[] {
        const told: string[] = [];
        for (const side of ['hydrogen', 'oxygen'] as const) {
            const way = runs ? this.plant.sides.way(side, this.m)?.way : undefined;
            const seal = way?.parts.find(n => this.workings.viewOf(n)?.kind === 'seal');
            if (seal && !this.blown.has(seal)) {
                this.blown.add(seal);
                acted.push(seal);
                told.push(`${seal} blows: the ${side} leaves by it`);
            }
            if (way && side === 'hydrogen') {
                const inside = this.plant.ways.escapes(way, this.m.c);
                if (inside && !this.inside) told.push('hydrogen comes out where the rig stands');
                this.inside = inside;
            }
            const shut = this.plant.sides.shut(side, this.m);
            if (shut && !this.shut.has(side)) {
                this.shut.add(side);
                told.push(`the ${side} has no way out: its pressure rises`);
            } else if (!shut) this.shut.delete(side);
        }
        return told;
    }
    private chatters(): boolean {
        const from = this.events[this.events.length - CHATTER.events];
        return !!from && this.m.t - from.t < CHATTER.within;
    }
    private chattering(): string {
        const counts = new Map<string, number>();
        for (const e of this.events.slice(-CHATTER.events)) for (const p of e.parts) counts.set(p, (counts.get(p) ?? 0) + 1);
        return [...counts].sort((a, b) => b[1] - a[1]).slice(0, 2).map(([n]) => n).join(' with ') || 'something';
    }

    // ---- what is kept -------------------------------------------------------------------------------------------

    private keep(): void {
        const { sides } = this.plant;
        for (const side of ['hydrogen', 'oxygen'] as const) {
            if (!sides.shut(side, this.m)) this.lastHead[side] = sides.head(side, this.m);
            const way = sides.way(side, this.m)?.way;
            if (!way || way === this.lastWay[side]) continue;
            this.lastWay[side] = way;
            for (const name of way.parts) this.passed.add(name);
        }
        if (this.options.brief) return;
        this.times.push(this.m.t);
        this.kept.push(this.followed.map(f => f.value(this.m, this.starts)));
    }
    private result(early: string | undefined): RunResult {
        const { start } = this;
        const { x } = this.m;
        const hydrogenIn = (y: Float64Array) => (['bag', 'line', 'cylinder'] as const).reduce((sum, v) => sum + y[at[v]] - y[at[`${v}-oxygen`]] - y[at[`${v}-nitrogen`]], 0);
        const series = this.followed.map(({ name, measure, unit }, i) => ({ name, measure, unit, values: this.kept.map(row => row[i]) }));
        const found = hydrogenIn(x) - hydrogenIn(start) + x[at.vented] + x[at.escaped] + x[at.relieved] + x[at.used] + x[at.trapped];
        return {
            scenario: this.scenario, events: this.events, times: this.times, series, hazards: this.hazards, starts: this.starts,
            final: Object.fromEntries(states.map((s, i) => [s, x[i]])) as Record<StateName, number>,
            ended: { t: this.m.t, early }, balance: x[at.made] > 0 ? (x[at.made] - found) / x[at.made] : 0, notes: this.notes, tripped: this.tripped, switched: this.switched, passed: this.passed,
        };
    }
}
/** Whether a burner has something that shuts its gas when the flame is out. */
const watchesFlame = (burner: View) => !['none', undefined].includes(burner.word('flame-proof'));

interface Followed extends Omit<Series, 'values'> {
    readonly value: (m: Moment, starts: number) => number;
}
/** What is told of each moment. */
function followedOf(plant: Plant): Followed[] {
    const { stack, pump, bag, store, sides, room, feeding } = plant;
    const out: Followed[] = [
        { name: `${stack.name}.temperature`, measure: 'temperature', unit: '°C', value: m => m.x[at.lye] },
        { name: `${stack.name}.current`, measure: 'current', unit: 'A', value: m => feeding.of('current', m) },
        { name: `${stack.name}.voltage`, measure: 'voltage', unit: 'V', value: m => feeding.of('volts', m) },
    ];
    const { panels, battery } = feeding;
    if (panels) out.push({ name: `${panels.name}.irradiance`, measure: 'irradiance', unit: 'W/m2', value: m => feeding.light(m) });
    if (battery) out.push({ name: `${battery.view.name}.charge`, measure: 'fraction', unit: '%', value: m => feeding.chargeShare(m.x) });
    if (pump) {
        out.push({ name: `${pump.view.name}.starts`, measure: 'number', unit: '', value: (_, starts) => starts });
        out.push({ name: `${pump.view.name}.discharge-pressure`, measure: 'pressure', unit: 'bar', value: m => pump.line.pressure(m) - plant.air });
    }
    if (bag) {
        out.push({ name: `${bag.view.name}.volume`, measure: 'volume', unit: 'L', value: m => bag.held(m) });
        out.push({ name: `${bag.view.name}.pressure`, measure: 'pressure', unit: 'kPa', value: m => bag.pressure(m) });
        out.push({ name: `${bag.view.name}.oxygen`, measure: 'fraction', unit: '%', value: m => bag.mixture(m.x).oxygen });
    }
    if (store) {
        out.push({ name: `${store.view.name}.pressure`, measure: 'pressure', unit: 'bar', value: m => store.gauge(m) });
        out.push({ name: `${store.view.name}.temperature`, measure: 'temperature', unit: '°C', value: m => m.x[at['cylinder-warmth']] });
        out.push({ name: `${store.view.name}.oxygen`, measure: 'fraction', unit: '%', value: m => store.mixture(m).oxygen });
    }
    for (const c of sides.columns) out.push({ name: `${c.view.name}.level`, measure: 'length', unit: 'mm', value: m => plant.level(c, m) });
    if (room) {
        out.push({ name: 'site.hydrogen', measure: 'fraction', unit: '%', value: m => room.share(m) });
        out.push({ name: 'site.oxygen', measure: 'fraction', unit: '%', value: m => room.oxygen(m) });
    }
    return out;
}
export { CannotRun, hazards, type Hazard };
