/**
 * What a rig does over time, as slopes of its states: put together from what stands in `of/`, each with its own states. The same laws
 * as at rest, looked up where they were solved before; what opens, shuts and runs is asked of the control lines at each moment.
 */
import { lossDoubt } from '../quantities/doubts.js';
import { stackLoss } from '../quantities/stack-solver.js';
import { ROOM } from '../quantities/surroundings.js';
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import type { ControlState } from './control-lines.js';
import { Gases } from './gases.js';
import { CannotRun } from './laws.js';
import { Bag } from './of/bag.js';
import { Dryer } from './of/dryer.js';
import { Feeding } from './of/feeding.js';
import { Pump } from './of/pump.js';
import { Room } from './of/room.js';
import { Sides } from './of/sides.js';
import { Store } from './of/store.js';
import type { Hazard } from './watches.js';
import { at, states, type Mixture, type Moment, type Sensor } from './states.js';
import { anyFails, OpenWays } from './ways.js';

/** What is not known for sure, as shares of what is expected: what the stack makes, what the compressor delivers, what loose joints pass, what stack and lye lose, what the separators hold, what a bag takes up. */
export interface Pace {
    readonly made: number;
    readonly delivered: number;
    readonly leaks: number;
    readonly loses: number;
    readonly holds: number;
    readonly bag: number;
}
/** How far a loose joint and a bag's volume can be off. Common practice, no source: holes are rounder than sharp ones pass, seams take a twentieth of the film. */
const LEAKS_MORE = 4 / 3;
const BAG_LESS = 0.95;
/** What a user takes, mol/s, and from where. */
export interface Draw {
    readonly flow: number;
    readonly from: 'store' | 'bag';
}
export const EXPECTED: Pace = { made: 1, delivered: 1, leaks: 1, loses: 1, holds: 1, bag: 1 };
/** What stands in the rig before a run begins, SI; what is not told is cold, flat, nearly empty, as charged as the text says. */
export interface Beginning {
    readonly lye: number;
    readonly bagVolume?: number;
    readonly storePressure?: number;
    readonly charge?: number;
}

export class Plant {
    readonly stack: View;
    readonly bag: Bag | undefined;
    readonly store: Store | undefined;
    readonly pump: Pump | undefined;
    readonly room: Room | undefined;
    readonly dryer: Dryer | undefined;
    readonly sides: Sides;
    readonly ways: OpenWays;
    readonly feeding: Feeding;
    readonly gases: Gases;
    /** Pa above vacuum */
    readonly air: number;
    /** Pa between both sides that the wet separators hold; Infinity where it is not known. */
    private readonly wetHolds: number;
    get holds(): number {
        return this.wetHolds * this.pace.holds;
    }
    /** What a run leaves out of this rig, in sentences. */
    readonly notes: string[] = [];
    /** J/K */
    private readonly capacity: number;
    private readonly waterValves: readonly string[];
    private readonly sensors = new Map<string | undefined, Map<string, Sensor>>();
    /** How much more is made and delivered than expected: 1, or what their ± leaves open. Set by whoever runs it. */
    private asExpected: Pace = EXPECTED;
    get pace(): Pace {
        return this.asExpected;
    }
    set pace(pace: Pace) {
        this.asExpected = pace;
        this.sides.leaks = pace.leaks;
        if (this.bag) {
            this.bag.leaks = pace.leaks;
            this.bag.room = pace.bag;
        }
    }
    /** K of room and air, and W/m² of sunshine, at a time; set by whoever runs it. */
    weather: (t: number) => number = () => ROOM;
    set sun(of: (t: number) => number) {
        this.feeding.sun = of;
    }

    /** @throws CannotRun where too little is known */
    constructor(workings: Workings) {
        const [stack] = workings.partsOf('stack');
        if (!stack) throw new CannotRun('There is no stack: nothing would be made.');
        this.stack = stack;
        const sources = workings.controls.sources().map(v => v.name);
        this.feeding = new Feeding(stack, sources);
        this.air = stack.airPressure();
        this.capacity = stack.q('heat-capacity-total');
        if (!(this.capacity > 0)) throw new CannotRun('How much heat stack and lye take up is not known: rigwright show --all tells what is missing.');
        const around = (t: number) => this.weather(t);
        this.bag = Bag.of(stack, this.air, around, this.notes);
        this.store = Store.of(stack, this.air, around, this.notes);
        this.pump = Pump.of(stack, this.bag, this.store, this.air, this.feeding.laws.room, around, this.notes);
        this.ways = new OpenWays(stack, this.bag?.view.name);
        if (this.bag) {
            this.bag.ways = this.ways;
            this.bag.suction = this.pump?.view.name;
        }
        this.dryer = Dryer.of(stack, this.pump?.highLine ?? []);
        this.sides = new Sides(stack, this.ways, this.bag, this.air, around);
        this.room = Room.of(stack, this.air, around);
        this.gases = new Gases(this.room);
        const holds = stack.maybeQ('bubble-point');
        this.wetHolds = holds === holds ? holds : Infinity;
        this.waterValves = stack.all('valve').filter(v => stack.paths.on('water').includes(v.name)).map(v => v.name);
        this.notes.push(...this.feeding.notes());
        if (!sources.length && !this.feeding.battery) this.notes.push('No source that could be switched off is on the current path: the stack runs all the time.');
        if (stack.maybe('groups', 1) > 1) this.notes.push('Groups share the current as at rest.');
    }
    /** mol/s of hydrogen. */
    made(m: Moment): number {
        return Math.max(0, this.pace.made * this.feeding.of('hydrogen', m));
    }
    cools(c: ControlState): boolean {
        return !!this.feeding.laws.make.cooler && this.waterValves.every(v => c.on.get(v) !== false) && !anyFails(c, 'water fails');
    }
    level(c: Sides['columns'][number], m: Moment): number {
        return this.sides.level(c, m, this.feeding.runs(m.c));
    }

    /** How all states move. `stalled`: the compressor stands still against pressure. */
    slope(m: Moment, draw: Draw | undefined, stalled: boolean, out: Float64Array): void {
        out.fill(0);
        const made = this.made(m);
        this.warm(m, out);
        this.feeding.slope(m, out);
        out[at.made] = made;
        this.sides.slope(m, made, out);
        const coming = made > 0 ? this.fromStack(m, made, out) : 0;
        const drawn = this.bag ? this.pumped(m, made, coming - this.burnt(m, draw, out), stalled, out) : 0;
        this.dryer?.slope(made, drawn, out);
        this.pump?.slope(m, out);
        if (this.store) {
            if (draw?.from === 'store') {
                const gas = this.store.mixture(m);
                this.store.take(gas, -draw.flow, out);
                this.used(m, gas, draw.flow, out);
            }
            this.store.lets(m, this.gases, out);
            this.pump?.line.slope(m, out);
            this.store.warm(m, this.store.inSun ? this.feeding.sun(m.t) : 0, out);
        }
        this.room?.slope(m, out);
    }
    /** Burnt, or run out into the room where the flame is out. */
    private used(m: Moment, gas: Mixture, flow: number, out: Float64Array): void {
        if (anyFails(m.c, 'goes out')) this.gases.intoRoom(gas, flow, out);
        else this.gases.toUser(gas, flow, out);
    }
    /** mol/s that a burner takes out of the bag: less as the bag no longer presses. */
    private burnt(m: Moment, draw: Draw | undefined, out: Float64Array): number {
        const { bag } = this;
        if (draw?.from !== 'bag' || !bag) return 0;
        const flow = draw.flow * Math.min(1, Math.max(0, bag.own > 0 ? bag.pressure(m) / bag.own : 1));
        const gas = bag.mixture(m.x);
        out[at['bag-oxygen']] -= flow * gas.oxygen;
        out[at['bag-nitrogen']] -= flow * gas.nitrogen;
        this.used(m, gas, flow, out);
        return flow;
    }
    /** Where a user gets its gas from: the store where no path tells; undefined where straight from the stack, or nowhere. */
    feeds(user: string): Draw['from'] | undefined {
        const behind = (part: string | undefined) => part !== undefined && this.stack.paths.after(part, 'hydrogen').includes(user);
        if (behind(this.store?.view.name)) return 'store';
        if (behind(this.bag?.view.name)) return 'bag';
        return this.store && !this.stack.paths.on('hydrogen').includes(user) ? 'store' : undefined;
    }
    /** Stack and lye as one body. */
    private warm(m: Moment, out: Float64Array): void {
        const T = m.x[at.lye];
        const lost = this.pace.loses * stackLoss(this.feeding.laws.make, T, this.weather(m.t));
        const heat = this.feeding.of('heat', m);
        const cooled = this.cools(m.c) ? this.feeding.laws.cooling.at(T) : 0;
        out[at['stack-energy']] = this.feeding.of('current', m) * this.feeding.of('volts', m);
        out[at.heat] = heat;
        out[at.lost] = lost + cooled;
        out[at.lye] = (heat - lost - cooled) / this.capacity;
    }
    /** Where both gases of the stack go; mol/s that come into the bag. */
    private fromStack(m: Moment, made: number, out: Float64Array): number {
        const oxygen = this.sides.way('oxygen', m);
        if (oxygen && this.ways.escapes(oxygen.way, m.c)) this.room?.takeOxygen(made / 2, out);
        const to = this.sides.way('hydrogen', m);
        if (!to) {
            out[at['hydrogen-head']] = made / this.sides.softness('hydrogen', m);
            out[at.trapped] += made;
            return 0;
        }
        const gas = this.sides.ofHydrogenSide(m, made);
        // What crosses comes on top of what is made.
        const all = made / (1 - gas.oxygen);
        const lost = Math.min(all, this.sides.leaking(to, m));
        if (lost > 0) this.gases.intoRoom(gas, lost, out);
        const flow = all - lost;
        if (this.ways.escapes(to.way, m.c) && !(to.way.ends === 'bag' && this.bag!.isBurst(m.c))) this.gases.intoRoom(gas, flow, out);
        else if (to.way.ends === 'bag') {
            out[at['bag-oxygen']] += flow * gas.oxygen;
            return flow;
        }
        else if (to.way.ends === 'user') this.gases.toUser(gas, flow, out);
        else this.gases.outdoors(gas, flow, out);
        return 0;
    }
    /** Between bag and store, and what the bag does by itself; mol/s that are drawn. */
    private pumped(m: Moment, made: number, coming: number, stalled: boolean, out: Float64Array): number {
        const bag = this.bag!;
        const gas = bag.mixture(m.x);
        let net = coming;
        const drawn = this.pump?.draws(m, this.pace.delivered, stalled) ?? 0;
        if (drawn > 0) {
            const broken = this.pump!.broken(m.c);
            if (broken !== 'shut') {
                net -= drawn;
                out[at['bag-oxygen']] -= drawn * gas.oxygen;
                out[at['bag-nitrogen']] -= drawn * gas.nitrogen;
                if (broken === 'open') this.gases.intoRoom(gas, drawn, out);
                else (this.pump!.line.takes ? this.pump!.line : this.store!).take(gas, drawn, out);
            }
        }
        const left = this.pump?.line.lets(m);
        if (left) {
            this.pump!.line.take(left.gas, -left.flow, out);
            net += left.flow;
            out[at['bag-oxygen']] += left.flow * left.gas.oxygen;
            out[at['bag-nitrogen']] += left.flow * left.gas.nitrogen;
        }
        const back = this.pump?.back(m) ?? 0;
        if (back > 0) {
            const stored = this.store!.mixture(m);
            this.store!.take(stored, -back, out);
            net += back;
            out[at['bag-oxygen']] += back * stored.oxygen;
            out[at['bag-nitrogen']] += back * stored.nitrogen;
        }
        // Drawn below what the separators hold, it gets the oxygen of the stack as well.
        bag.slope(m, net, made > 0 && this.sides.difference(m) <= -this.holds ? made / 2 : 0, this.gases, out);
        return drawn;
    }

    // ---- what is sensed -------------------------------------------------------------------------------------------

    /** What tells something sensed, by a device or for nobody in particular; its values are undefined where a run does not follow it. Pressures as gauge. */
    sensor(quantity: string, by?: View): Sensor {
        let known = this.sensors.get(by?.name);
        if (!known) this.sensors.set(by?.name, (known = new Map()));
        let sensor = known.get(quantity);
        if (!sensor) known.set(quantity, (sensor = this.sensorOf(quantity, by) ?? (() => undefined)));
        return sensor;
    }
    private sensorOf(quantity: string, by: View | undefined): Sensor | undefined {
        const dot = quantity.indexOf('.');
        const [name, what] = [quantity.slice(0, dot), quantity.slice(dot + 1)];
        const v = this.stack.other(name);
        if (!v) return undefined;
        if (name === this.stack.name && what === 'temperature') return m => m.x[at.lye];
        if (v.kind === 'site' && what === 'temperature') return m => this.weather(m.t);
        const own = this.feeding.sensor(v, what) ?? this.bag?.sensor(v, what) ?? this.store?.sensor(v, what) ?? this.pump?.sensor(v, what) ?? this.room?.sensor(v, what, by);
        if (own) return own;
        if (v.kind === 'site' && what === 'hydrogen' && !this.room && v.word('place') === 'outdoors') return () => 0;
        const { bag } = this;
        if (bag && this.onSuction(name)) {
            if (what === 'pressure') return m => bag.pressure(m);
            if (what === 'oxygen') return m => bag.mixture(m.x).oxygen;
        }
        return this.sides.sensor(v, what, m => this.made(m), c => this.feeding.runs(c));
    }
    /** Whether a part stands between the bag and the store: it sees the gas of the bag; before the compressor at its pressure. */
    private onSuction(name: string): boolean {
        return !!this.pump && this.stack.paths.between(this.bag!.view.name, this.pump.view.name, 'hydrogen').includes(name);
    }
    /** As things stand before the start. */
    begin({ lye, bagVolume, storePressure, charge }: Beginning): Float64Array {
        const x = new Float64Array(states.length);
        x[at.lye] = lye;
        this.bag?.begin(x, bagVolume);
        this.store?.begin(x, storePressure, this.weather(0));
        this.pump?.begin(x);
        this.feeding.begin(x, charge);
        return x;
    }
    /** Whether a run follows a failure of a part where it stands. */
    followsFailure(part: string, what: string): boolean {
        const kind = this.stack.other(part)?.kind ?? '';
        const low = this.ways.onLow(part);
        const oxygen = this.ways.onOxygen(part);
        const high = this.pump?.followsFailure(part, kind, what);
        if (high !== undefined) return high;
        switch (kind) {
            case 'relief-valve': return (this.store?.reliefs.some(r => r.name === part) ?? false) || (what !== 'weeps' && what !== 'sticks open' && (low || oxygen));
            case 'check-valve': case 'unloader': case 'compressor': return false;
            case 'bag': case 'gasometer': return part === this.bag?.view.name && this.bag.followsFailure(what);
            case 'cylinder': return part === this.store?.view.name;
            case 'cooler': return !!this.feeding.laws.make.cooler;
            case 'link': return this.sides.columns.length > 1;
            case 'separator': return this.holds < Infinity && this.sides.columns.length > 1;
            case 'burner': return this.ways.onLow(part) || (!!this.store && this.stack.paths.after(this.store.view.name, 'hydrogen').includes(part));
            case 'fan': return !!this.room;
            case 'tube': return low || (oxygen && what !== 'leaks');
            case 'tee': case 'bleed': case 'purge-point': return low;
            case 'valve': return low || oxygen || this.waterValves.includes(part);
            case 'column': return what === 'leaks' ? low : low || oxygen;
            case 'bubbler': case 'scrubber': case 'seal': case 'vent': case 'arrestor': case 'dryer': case 'trap': case 'filter': return low || oxygen;
            case 'supply': case 'transformer': case 'battery': case 'panels': case 'charger': case 'fuse': case 'leads': case 'diode': return this.feeding.followsFailure(part, kind, what);
            default: return true;
        }
    }
    /** The ends of what is left open, as far as they bring a hazard sooner: of what is made and delivered in each combination, with whatever else that hazard hangs on at its worse end. */
    paces(hazard: Hazard['name']): Pace[] {
        const shares = (v: View | undefined, quantity: string) => {
            const r = v?.result(quantity);
            return r && r.value > 0 ? [r.low / r.value, r.high / r.value] : [1];
        };
        const worse: Partial<Pace> = {
            'too-hot': { loses: 1 - lossDoubt.half! }, 'separators-pass': { holds: shares(this.stack, 'bubble-point')[0] }, 'bag-over-rating': { bag: BAG_LESS }, 'drawn-empty': { bag: BAG_LESS },
            'room-hydrogen': { leaks: LEAKS_MORE }, 'ceiling-hydrogen': { leaks: LEAKS_MORE },
        }[hazard as string] ?? {};
        return shares(this.stack, 'hydrogen-rate').flatMap(made => shares(this.pump?.view, 'free-delivery').map(delivered => ({ ...EXPECTED, ...worse, made, delivered })));
    }
}
