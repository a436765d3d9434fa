/**
 * Runs a rig through a stretch of time: states that move by the laws, control lines that act as the text says, and everything that happens
 * at its moment. Always ends: steps, events and time are bounded, and what goes on for ever is told.
 */
import { ControlLines, nothingYet, type ControlState, type Device, type Point } from './control-lines.js';
import { CannotRun } from './laws.js';
import { at, Plant, RESEATS, slight, states, type StateName } from './plant.js';
import type { Side, Way } from './ways.js';
import { PUSHED, TOPPED_UP, type Act, type Scenario } from './scenario.js';
import { follow, MOST_STEPS, type Stretch, type Watched } from './stepper.js';
import { GAS_CONSTANT } from '../physics/constants.js';
import { LOWER_LIMIT } from '../physics/ventilation.js';
import { parseValue } from '../values/parse-value.js';
import { measures } from '../units/dimension.js';
import { toSi } from '../units/unit.js';
import type { Workings } from '../quantities/workings.js';
import { consequence, nameOfCause } from './tell.js';
import { show } from '../units/format.js';

/** Of each state and step; a fraction of a second in when things happen. */
const RELATIVE = 1e-7;
/** s */
const LONGEST_STEP = 300;
/** The same of a brief run while nothing runs and nothing is drawn: then all of it only dies away, and nothing comes and goes. */
const LONGEST_AT_REST = 3600;
const FIRST_STEP = 1;
const MOST_EVENTS = 4000;
/** Steps between two pauses: a millisecond or so. */
const STEPS_AT_A_STRETCH = 30;
/** Within so many seconds so many events are a chatter. */
const CHATTER = { events: 40, within: 20 } as const;
/** Pa below the air around it at which a low side counts as drawn empty. Common practice, no source. */
const DRAWN_EMPTY = -200;
/** Hydrogen in the room's air that counts as a danger: a quarter of what can burn. */
const ROOM_LIMIT = LOWER_LIMIT / 4;
/** Pressure over the rating that a vessel may reach while one relief blows [asme-viii]; beyond it it is a hazard. */
const OVER_RATING = 1.1;
/** Pa gauge at which nothing more can be drawn from a store, and what is told then. Own choice: the air's own pressure, nearly. */
const EMPTY = 500;
const EMPTIED = 'the store is empty: nothing more can be drawn';
/** K, lye that boils in a rig open to the air. */
const BOILS = 373.15;

/** Each hazard by its name, as the reference tells it. */
export const hazards = {
    'bag-over-rating': 'A bag at the pressure that it bears.',
    'drawn-empty': 'A low side drawn 0.2 kPa under the air around it, which comes in wherever it can.',
    'air-stored': 'Air pressed into the store through a bag that has burst.',
    'cylinder-over-rating': 'A cylinder a tenth over its rating.',
    'too-hot': 'Lye at the highest temperature that the stack bears, or at 100 °C.',
    'port-dry': 'A level down to the return port of its column.',
    'separators-pass': 'More between both sides than the wet separators hold.',
    'room-hydrogen': 'A quarter of what can burn in the air of the room, evenly mixed.',
    'held-motor': 'A compressor that stands still against more than it starts against.',
} as const;

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
export interface Hazard {
    readonly t: number;
    readonly name: keyof typeof hazards;
    /** The part that it befalls. */
    readonly part: string;
    readonly words: string;
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
interface Watch {
    readonly value: Watched;
    /** Put into words only when it happens. */
    readonly tells?: () => string;
    /** Told even where no contact moves by it. */
    readonly always?: boolean;
    /** The seal that blows by it. */
    readonly seal?: string;
    /** Parts that gas passes from then on. */
    readonly through?: readonly string[];
    readonly hazard?: Pick<Hazard, 'name' | 'part'> & { readonly words: () => string };
    /** The store is empty by it. */
    readonly empties?: boolean;
    readonly parts: readonly string[];
}

/** @throws CannotRun where too little is known */
export function run(workings: Workings, scenario: Scenario, options: RunOptions = {}): RunResult {
    return workings.unnoted(() => {
        const steps = runInSteps(workings, scenario, options);
        for (;;) {
            const step = steps.next();
            if (step.done) return step.value;
        }
    });
}
/** The same with a pause every millisecond or so. What it reads is noted as read by whoever asks for the next step. */
export function* runInSteps(workings: Workings, scenario: Scenario, options: RunOptions = {}): Generator<void, RunResult> {
    return yield* new Run(options.plant ?? new Plant(workings), workings, scenario, options).go();
}

class Run {
    private t = 0;
    private x: Float64Array;
    private readonly lines: ControlLines;
    private readonly state: ControlState = nothingYet();
    private readonly open = new Set<string>();
    private stalled = false;
    private readonly shut = new Set<Side>();
    /** Seals by which the gas of the stack leaves, or has left. */
    private readonly blown = new Set<string>();
    private inside = false;
    /** Pa on each side while it had a way out. */
    private readonly lastHead = { hydrogen: 0, oxygen: 0 };
    private readonly lastWay: Partial<Record<Side, Way>> = {};
    private draw = 0;
    private readonly events: Happened[] = [];
    private readonly hazards: Hazard[] = [];
    private readonly times: number[] = [];
    private readonly kept: Float64Array[] = [];
    private readonly keptCurrent: number[] = [];
    private readonly keptVoltage: number[] = [];
    private readonly keptStarts: number[] = [];
    private readonly switched: { t: number; name: string; on: boolean }[] = [];
    private readonly tripped: string[] = [];
    private readonly passed = new Set<string>();
    private starts = 0;
    private readonly start: Float64Array;
    private readonly notes: string[];

    constructor(private readonly plant: Plant, private readonly workings: Workings, private readonly scenario: Scenario, private readonly options: RunOptions) {
        plant.weather = scenario.weather;
        const begins = scenario.begins;
        const kelvin = scenario.weather(0);
        const rest = plant.stack.maybeQ('temperature');
        const bag = plant.bag && begins.get(`${plant.bag.view.name}.volume`);
        const store = plant.cylinder && begins.get(`${plant.cylinder.view.name}.pressure`);
        const warm = options.warm ?? false;
        const cutOff = plant.cylinder?.view.maybeQ('cut-off') ?? NaN;
        this.x = plant.begin(
            begins.get(`${plant.stack.name}.temperature`) ?? (warm && rest === rest ? rest : kelvin),
            bag ?? (warm && plant.bag ? plant.bag.volume / 2 : undefined), store ?? (warm && cutOff === cutOff ? cutOff / 2 : undefined),
        );
        this.start = this.x.slice();
        this.lines = new ControlLines(workings, quantity => plant.sensed(quantity, this.t, this.x, this.state));
        this.lines.begin(this.state);
        for (const [name, on] of this.state.on) this.switched.push({ t: 0, name, on });
        for (const { part, what } of options.already ?? []) this.state.failed.set(part, what);
        this.notes = [...plant.notes, ...scenario.notes, ...this.lines.unheard.map(u => `${u.device} senses ${u.senses}, which a run does not follow: it stays as it is.`)];
    }
    *go(): Generator<void, RunResult> {
        const acts = [...this.scenario.acts];
        this.keep();
        this.settle('at the start', 'note', [], true);
        let early: string | undefined;
        while (this.t < this.scenario.lasts && !early) {
            while (acts.length && acts[0].t <= this.t + 1e-9) {
                const act = acts.shift()!;
                const release = this.act(act);
                if (release) acts.splice(acts.findIndex(a => a.t > release.t) < 0 ? acts.length : acts.findIndex(a => a.t > release.t), 0, release);
            }
            const to = Math.min(this.scenario.lasts, acts[0]?.t ?? Infinity, this.lines.next(this.state, this.t));
            const watches = this.watches();
            const slope = (t: number, x: Float64Array, out: Float64Array) => this.plant.slope(t, x, this.state, this.open, this.draw, this.stalled, out);
            const rests = this.options.brief && this.draw === 0 && !this.plant.stackRuns(this.state) && !this.plant.compressorRuns(this.state);
            const accuracy = { relative: this.options.relative ?? RELATIVE, absolute: slight, longest: rests ? LONGEST_AT_REST : LONGEST_STEP };
            const values = watches.map(w => w.value);
            let stretch: Stretch;
            let first = FIRST_STEP;
            for (let steps = 0; ; ) {
                stretch = follow(slope, this.t, to, this.x, values, accuracy, first, (t, x) => {
                    this.t = t;
                    this.x = x;
                    this.keep();
                }, STEPS_AT_A_STRETCH);
                this.t = stretch.t;
                this.x = stretch.x;
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
                const { hazard } = watches[i];
                if (!hazard || this.hazards.some(h => h.name === hazard.name && h.part === hazard.part)) continue;
                const words = hazard.words();
                this.hazards.push({ t: this.t, ...hazard, words });
                this.happened(words, [], 'hazard', [hazard.part]);
            }
            const causes = [...new Set(stretch.hit.map(i => watches[i]).filter(w => w.tells))];
            const timers = stretch.hit.length || this.t < to ? [] : this.ranOut();
            const cause = causes.map(w => w.tells!()).join('; ') || (timers.length ? `${timers.join(', ')} ${timers.length === 1 ? 'runs' : 'run'} out` : '');
            if (causes.some(w => w.empties)) this.draw = 0;
            for (const w of causes) for (const name of w.through ?? []) this.passed.add(name);
            const unsettled = this.settle(cause, causes.some(w => w.always) ? 'act' : 'control', [...causes.flatMap(w => w.parts), ...timers], causes.some(w => w.always), causes.flatMap(w => w.seal ?? []));
            if (this.options.until && this.hazards.some(this.options.until)) early = 'a hazard was reached';
            else if (unsettled) early = unsettled;
            else if (this.chatters()) early = `${this.chattering()} keeps going on and off within seconds`;
            else if (this.events.length > MOST_EVENTS) early = `more than ${MOST_EVENTS} things happened`;
        }
        return this.result(early);
    }

    // ---- what happens -----------------------------------------------------------------------------------------------

    private happened(cause: string, then: readonly string[], sort: Happened['sort'], parts: readonly string[], acted: readonly string[] = []): void {
        this.events.push({ t: this.t, cause, then, sort, parts, acted });
    }
    /** Does what a scenario asks for; of a push button, the moment at which it is let go. */
    private act(act: Act): Act | undefined {
        const view = this.workings.viewOf(act.part);
        const device = this.lines.devices.get(act.part);
        const { what, part } = act;
        let release: Act | undefined;
        if (view?.kind === 'feed' && (what === 'lost' || what === 'returns')) {
            for (const feed of this.feedNames(part)) {
                if (what === 'lost') this.state.lostFeeds.add(feed);
                else this.state.lostFeeds.delete(feed);
            }
        } else if (view?.kind === 'burner' && what.startsWith('draws')) this.draw = this.flowOf(what) ?? this.draw;
        else if (view?.kind === 'burner' && what === 'lit') this.draw = view.maybe('flow', 0);
        else if (view?.kind === 'burner' && (what === 'shut' || what === 'goes out')) this.draw = 0;
        else if (device && (what === 'pressed' || what === 'released')) {
            this.lines.press(part, what === 'pressed', this.state);
            if (what === 'pressed' && device.kind === 'button' && (device.sort ?? 'push') !== 'key') release = { t: this.t + PUSHED, part, what: 'released' };
        } else if (what === TOPPED_UP) this.x[at.added] = this.x[at.water];
        else if (device && what === 'reset') this.lines.reset(part, this.state);
        else if (view?.declared?.events?.includes(what)) {
            this.state.failed.set(part, what);
            if (part === this.plant.bag?.view.name && what === 'bursts') this.plant.burst(this.t, this.x);
        } else this.notes.push(`${part} ${what}: a run does not know this and leaves it out.`);
        this.settle(what === TOPPED_UP ? 'water is added' : what === 'released' && device?.kind === 'button' ? '' : `${part} ${what}`, 'act', [part], what !== 'released');
        return release;
    }
    /** The names by which devices call a feed: its own, and none where it is the one that carries the controls. */
    private feedNames(feed: string): string[] {
        const named = new Set([...this.lines.devices.values()].map(d => d.feed));
        const first = this.workings.partsOf('feed')[0]?.name;
        return named.has(feed) && feed !== first ? [feed] : [feed, ''];
    }
    private flowOf(what: string): number | undefined {
        const value = parseValue(what.replace(/^draws\s*/, '')).list[0]?.[0];
        if (value?.is !== 'quantity') return undefined;
        const si = toSi(value.value, value.unit);
        return value.unit.dimension === measures['gas-flow'].dimension ? si : si * this.plant.air / (GAS_CONSTANT * this.scenario.weather(this.t));
    }
    /** Lets the control lines come to rest and tells what changed by it; a reason if they never do. */
    private settle(cause: string, sort: Happened['sort'], parts: readonly string[], always: boolean, seals: readonly string[] = []): string | undefined {
        const { plant, state } = this;
        const heads = { ...this.lastHead };
        const before = new Map(state.on);
        const trippedBefore = new Set(state.tripped);
        const ran = plant.stackRuns(state);
        const pressed = plant.compressorRuns(state);
        state.turn++;
        const unsettled = this.lines.settle(state, this.t);
        const moved = [...state.on].filter(([name, on]) => before.get(name) !== on && (before.has(name) || on) && this.lines.devices.has(name)).map(([name]) => name);
        for (const name of moved) this.switched.push({ t: this.t, name, on: state.on.get(name)! });
        const then = moved.filter(name => !parts.includes(name) || !cause).flatMap(name => consequence(this.lines.devices.get(name)!, state.on.get(name)!, sort === 'note') ?? []);
        const tripped = [...state.tripped].filter(name => !trippedBefore.has(name) && this.lines.devices.get(name)?.kind !== 'stop-button');
        for (const name of tripped) if (!this.tripped.includes(name)) this.tripped.push(name);
        const acted = [...tripped, ...seals];
        const runs = plant.stackRuns(state);
        if (runs !== ran || this.t === 0) this.switched.push({ t: this.t, name: plant.stack.name, on: runs });
        if (runs !== ran) then.push(runs ? 'the stack makes gas' : 'the stack stops');
        then.push(...this.startOrStop(pressed), ...this.reliefs(acted), ...this.waysOut(runs, heads, acted));
        // What jumps with a switch is kept on both sides of it.
        if (moved.length) this.keep();
        const trips = moved.some(n => state.tripped.has(n) && !trippedBefore.has(n));
        if (then.length || (cause && (always || moved.length))) this.happened(cause || nameOfCause(moved), then, trips ? 'trip' : sort, [...parts, ...moved], acted);
        return unsettled.length ? `${unsettled.slice(0, 4).join(', ')} keep switching each other: the control lines never come to rest` : undefined;
    }
    /** A compressor that starts against more than it can stands still. */
    private startOrStop(pressed: boolean): string[] {
        if (!this.plant.compressorRuns(this.state)) {
            this.stalled = false;
            return [];
        }
        const bag = this.plant.bag?.view.name ?? '';
        if (this.plant.isBurst(this.state) && !this.hazards.some(h => h.name === 'air-stored')) {
            const words = `${this.plant.compressor!.name} draws air through ${bag}, which has burst, and presses it into the store`;
            this.hazards.push({ t: this.t, name: 'air-stored', part: bag, words });
            return [words];
        }
        if (pressed) return [];
        this.starts++;
        const { name } = this.plant.compressor!;
        const against = this.plant.startsAgainst(this.t, this.x, this.state);
        this.stalled = against > this.plant.compressor!.maybe('starts-against');
        if (!this.stalled) return [];
        const words = `${name} stands still against ${show(against, 'bar')}: its motor heats`;
        this.hazards.push({ t: this.t, name: 'held-motor', part: name, words });
        return [words];
    }
    /** @param acted  gets those that lift */
    private reliefs(acted: string[]): string[] {
        if (!this.plant.cylinder) return [];
        const gauge = this.plant.cylinderPressure(this.t, this.x) - this.plant.air;
        return this.plant.reliefs.flatMap(r => {
            const failure = this.state.failed.get(r.name);
            const was = this.open.has(r.name);
            const is = failure === 'sticks shut' ? false : failure === 'sticks open' ? true : was ? gauge > RESEATS * r.set : gauge >= r.set;
            if (is === was) return [];
            if (is) {
                this.open.add(r.name);
                acted.push(r.name);
            } else this.open.delete(r.name);
            return [`${r.name} ${is ? 'lifts' : 'shuts again'} at ${show(gauge, 'bar')}`];
        });
    }
    /**
     * Where the gases of the stack go now: by a seal, into the room, or nowhere.
     * @param acted  gets the seals that blow
     */
    private waysOut(runs: boolean, heads: Readonly<Record<Side, number>>, acted: string[]): string[] {
        const told: string[] = [];
        for (const side of ['hydrogen', 'oxygen'] as const) {
            const way = runs ? this.plant.way(side, this.t, this.x, this.state)?.way : undefined;
            const seal = way?.parts.find(n => this.workings.viewOf(n)?.kind === 'seal');
            if (seal && !this.blown.has(seal)) {
                this.blown.add(seal);
                acted.push(seal);
                told.push(`${seal} blows: the ${side} leaves by it`);
            }
            if (way && side === 'hydrogen') {
                const inside = this.plant.escapes(way, this.state);
                if (inside && !this.inside) told.push('hydrogen comes out where the rig stands');
                this.inside = inside;
            }
            const shut = this.plant.shut(side, this.t, this.x, this.state);
            // What gathers begins at what the way had cost.
            if (shut && !this.shut.has(side)) {
                this.x[at[`${side}-head`]] = heads[side];
                this.shut.add(side);
                told.push(`the ${side} has no way out: its pressure rises`);
            } else if (!shut) this.shut.delete(side);
        }
        return told;
    }
    private ranOut(): string[] {
        return [...this.lines.devices.values()].filter(d => d.kind === 'timer' && Math.abs((this.state.since.get(d.name) ?? -Infinity) + d.time - this.t) < 1e-6).map(d => d.name);
    }
    private chatters(): boolean {
        const from = this.events[this.events.length - CHATTER.events];
        return !!from && this.t - from.t < CHATTER.within;
    }
    private chattering(): string {
        const counts = new Map<string, number>();
        for (const e of this.events.slice(-CHATTER.events)) for (const p of e.parts) counts.set(p, (counts.get(p) ?? 0) + 1);
        return [...counts].sort((a, b) => b[1] - a[1]).slice(0, 2).map(([n]) => n).join(' with ') || 'something';
    }

    // ---- what may happen ----------------------------------------------------------------------------------------

    private watches(): Watch[] {
        const { plant, state } = this;
        const out: Watch[] = this.lines.watched(state).map(w => this.watchOf(w));
        const hazard = (name: Hazard['name'], part: string, words: () => string, value: Watched) => out.push({ value, hazard: { name, part, words }, parts: [part] });
        if (plant.bag) {
            const { view } = plant.bag;
            const rating = view.kind === 'bag' ? view.maybe('rating') : NaN;
            if (rating === rating) hazard('bag-over-rating', view.name, () => `${view.name} is stretched to ${show(rating, 'kPa')}, all that it bears`, (t, x) => plant.bagPressure(t, x) - rating);
            hazard('drawn-empty', view.name, () => `${view.name} is drawn empty: ${show(-DRAWN_EMPTY, 'kPa')} below the air, which comes in wherever it can`, (t, x) => DRAWN_EMPTY - plant.bagPressure(t, x));
            const { overflow } = plant.bag;
            if (overflow) out.push({ value: (t, x) => plant.overfull(t, x), tells: () => `${view.name} stands at its top: gas leaves under its rim, ${overflow === 'room' ? 'into the room' : 'outdoors'}`, always: true, parts: [view.name] });
            const opens = plant.bagOpens(state);
            if (opens) out.push({ value: (t, x) => plant.bagPressure(t, x) - opens.head, tells: () => `${view.name} is full: gas leaves through ${opens.seal ?? 'its way out'}`, always: true, seal: opens.seal, through: opens.through, parts: [view.name] });
        }
        if (plant.cylinder) {
            const { view, rating } = plant.cylinder;
            const gauge = (t: number, x: Float64Array) => plant.cylinderPressure(t, x) - plant.air;
            if (rating > 0) hazard('cylinder-over-rating', view.name, () => `${view.name} stands at ${show(OVER_RATING * rating, 'bar')}, a tenth over its rating`, (t, x) => gauge(t, x) - OVER_RATING * rating);
            if (this.draw > 0) out.push({ value: (t, x) => EMPTY - gauge(t, x), tells: () => EMPTIED, empties: true, always: true, parts: [view.name] });
            for (const r of plant.reliefs) {
                const failed = state.failed.get(r.name);
                if (failed === 'sticks shut' || failed === 'sticks open') continue;
                out.push(this.open.has(r.name) ? { value: (t, x) => RESEATS * r.set - gauge(t, x), parts: [r.name] } : { value: (t, x) => gauge(t, x) - r.set, parts: [r.name] });
            }
        }
        const most = plant.stack.maybe('max-temperature');
        const limit = Math.min(most === most ? most : BOILS, BOILS);
        hazard('too-hot', plant.stack.name, () => `the lye is at ${show(limit, '°C')}${limit < BOILS ? ', all that the stack bears' : ' and boils'}`, (_, x) => x[at.lye] - limit);
        for (const c of plant.columns) {
            const port = c.view.maybe('return-port');
            if (port === port) hazard('port-dry', c.view.name, () => `the lye in ${c.view.name} is down to its return port: gas goes down with it`, (t, x) => c.level - port - plant.level(c, t, x, state));
        }
        const holds = plant.stack.maybeQ('bubble-point');
        if (holds === holds) hazard('separators-pass', plant.stack.name, () => `the separators are pressed by ${show(holds, 'kPa')}: gas breaks through them`, (t, x) => Math.abs(plant.sideHead('hydrogen', t, x, state) - plant.sideHead('oxygen', t, x, state)) - holds);
        if (plant.hasRoom) hazard('room-hydrogen', 'site', () => `the air of the room holds ${show(ROOM_LIMIT, '%')} hydrogen, evenly mixed; at the ceiling it is more`, (t, x) => plant.roomShare(t, x) - ROOM_LIMIT);
        return out;
    }
    private watchOf({ device, point, of }: { device: Device; point: Point; of: string }): Watch {
        const sign = point.side === 'above' ? 1 : -1;
        return {
            value: (t, x) => {
                const value = this.plant.sensed(of, t, x, this.state);
                return value === undefined ? -1 : sign * (value - point.value);
            },
            tells: () => nameOfCause([device.name], device, point), parts: [device.name],
        };
    }

    // ---- what is kept -------------------------------------------------------------------------------------------

    private keep(): void {
        for (const side of ['hydrogen', 'oxygen'] as const) {
            if (!this.plant.shut(side, this.t, this.x, this.state)) this.lastHead[side] = this.plant.sideHead(side, this.t, this.x, this.state);
            const way = this.plant.way(side, this.t, this.x, this.state)?.way;
            if (!way || way === this.lastWay[side]) continue;
            this.lastWay[side] = way;
            for (const name of way.parts) this.passed.add(name);
        }
        if (this.options.brief) return;
        this.times.push(this.t);
        this.kept.push(this.x.slice());
        this.keptCurrent.push(this.plant.sensed(`${this.plant.stack.name}.current`, this.t, this.x, this.state) ?? 0);
        this.keptVoltage.push(this.plant.sensed(`${this.plant.stack.name}.voltage`, this.t, this.x, this.state) ?? 0);
        this.keptStarts.push(this.starts);
    }
    private result(early: string | undefined): RunResult {
        const { plant } = this;
        const series: Series[] = [];
        const add = (name: string, measure: Series['measure'], unit: string, value: (t: number, x: Float64Array) => number) => series.push({ name, measure, unit, values: this.kept.map((x, i) => value(this.times[i], x)) });
        add(`${plant.stack.name}.temperature`, 'temperature', '°C', (_, x) => x[at.lye]);
        series.push({ name: `${plant.stack.name}.current`, measure: 'current', unit: 'A', values: this.keptCurrent }, { name: `${plant.stack.name}.voltage`, measure: 'voltage', unit: 'V', values: this.keptVoltage });
        if (plant.compressor) series.push({ name: `${plant.compressor.name}.starts`, measure: 'number', unit: '', values: this.keptStarts });
        if (plant.bag) {
            add(`${plant.bag.view.name}.volume`, 'volume', 'L', (t, x) => plant.bagVolume(t, x));
            add(`${plant.bag.view.name}.pressure`, 'pressure', 'kPa', (t, x) => plant.bagPressure(t, x));
        }
        if (plant.cylinder) add(`${plant.cylinder.view.name}.pressure`, 'pressure', 'bar', (t, x) => plant.cylinderPressure(t, x) - plant.air);
        for (const c of plant.columns) add(`${c.view.name}.level`, 'length', 'mm', (t, x) => plant.level(c, t, x, this.state));
        if (plant.hasRoom) add('site.hydrogen', 'fraction', '%', (t, x) => plant.roomShare(t, x));
        const { x, start } = this;
        const found = x[at.bag] - start[at.bag] + x[at.cylinder] - start[at.cylinder] + x[at.vented] + x[at.escaped] + x[at.relieved] + x[at.used] + x[at.trapped];
        return {
            scenario: this.scenario, events: this.events, times: this.times, series, hazards: this.hazards, starts: this.starts,
            final: Object.fromEntries(states.map((s, i) => [s, x[i]])) as Record<StateName, number>,
            ended: { t: this.t, early }, balance: x[at.made] > 0 ? (x[at.made] - found) / x[at.made] : 0, notes: this.notes, tripped: this.tripped, switched: this.switched, passed: this.passed,
        };
    }
}
export { CannotRun };
