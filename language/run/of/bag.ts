/** The bag or bell: what it holds and of which gases, how it presses, where it lets gas out and air in. */
import { GAS_CONSTANT, MOLAR_MASS } from '../../physics/constants.js';
import { gasVolume } from '../../physics/gas-volume.js';
import { idealGasDensity } from '../../physics/gases.js';
import { headOfPart } from '../../quantities/heads.js';
import { ROOM } from '../../quantities/surroundings.js';
import type { View } from '../../quantities/view.js';
import type { ControlState } from '../control-lines.js';
import { AIR, type Gases } from '../gases.js';
import { at, type Mixture, type Moment, type Sensor } from '../states.js';
import { headBehind, leakDrop, leakFlow, leaks, WIDE, type OpenWays, type Taken, type Way } from '../ways.js';

/** Share of the volume of a bag that cannot be drawn out of it where the text does not say. Common practice, no source. */
const DEAD_SHARE = 0.02;

/** s in which a flat bag with a hole comes to the pressure at which as much comes as goes. Own choice. */
const SETTLES = 20;

export class Bag {
    readonly dead: number;
    /** Pa gauge while it is neither flat nor stretched. */
    readonly own: number;
    /** A bell at its top lets gas out under its rim; where to. */
    readonly overflow: 'outdoors' | 'room' | undefined;
    /** Shares of what is expected: what loose joints pass, what the bag takes up. */
    leaks = 1;
    room = 1;
    ways!: OpenWays;
    /** The compressor that draws from it. */
    suction: string | undefined;
    /** m³ at which a bell has stuck. */
    private stuck: number | undefined;

    private constructor(readonly view: View, readonly volume: number, private readonly air: number, private readonly around: (t: number) => number) {
        this.dead = Math.max(view.maybe('dead-volume', DEAD_SHARE * volume), 1e-3 * volume);
        const own = headOfPart(view, 'hydrogen');
        this.own = own === own ? own : 0;
        const to = view.kind === 'gasometer' ? view.word('overflow') : undefined;
        this.overflow = to === 'outdoors' || to === 'room' ? to : undefined;
    }
    static of(stack: View, air: number, around: (t: number) => number, notes: string[]): Bag | undefined {
        const bag = [...stack.all('bag'), ...stack.all('gasometer')].find(b => stack.paths.after(stack.name, 'hydrogen').includes(b.name));
        const volume = bag?.maybe('volume') ?? NaN;
        if (bag && volume > 0) return new Bag(bag, volume, air, around);
        if (bag) notes.push(`How large ${bag.name} is, is not said: it is not followed.`);
        return undefined;
    }
    /** @param volume  m³; flat where it is not told */
    begin(x: Float64Array, volume: number | undefined): void {
        this.stuck = undefined;
        const { flat } = this.limits(this.around(0));
        x[at.bag] = volume === undefined ? flat : flat * volume / this.dead;
    }
    /** Moles in a flat bag, and in one that begins to stretch. */
    private limits(kelvin: number): { flat: number; full: number } {
        const dense = (this.air + this.own) / (GAS_CONSTANT * kelvin);
        return { flat: dense * this.dead, full: dense * this.volume * this.room };
    }
    /** What is in it besides what can be drawn out of it is let go. */
    burst({ t, x }: Moment, inRoom: boolean): void {
        const gas = this.mixture(x);
        const goes = Math.max(0, x[at.bag] - this.limits(this.around(t)).flat);
        const hydrogen = goes * (1 - gas.oxygen - gas.nitrogen);
        if (inRoom) x[at['room-above']] += hydrogen;
        x[at.escaped] += hydrogen;
        x[at.bag] -= goes;
        x[at['bag-oxygen']] -= goes * gas.oxygen;
        x[at['bag-nitrogen']] -= goes * gas.nitrogen;
    }
    sticks(m: Moment): void {
        this.stuck = this.held(m);
    }
    /** Pa gauge: its own while it lies loose, less when flat, more when there is no room left. A bell that sticks no longer gives way. */
    pressure({ t, x }: Pick<Moment, 't' | 'x'>): number {
        const kelvin = this.around(t);
        const { flat, full } = this.limits(kelvin);
        const n = Math.max(0, x[at.bag]);
        if (this.stuck !== undefined) return n * GAS_CONSTANT * kelvin / this.stuck - this.air;
        if (n > full) return n * GAS_CONSTANT * kelvin / (this.volume * this.room) - this.air;
        if (n < flat) return n * GAS_CONSTANT * kelvin / this.dead - this.air;
        return this.own;
    }
    held({ t, x }: Moment): number {
        const kelvin = this.around(t);
        const { flat, full } = this.limits(kelvin);
        if (this.stuck !== undefined) return this.stuck;
        const n = x[at.bag];
        return n > full ? this.volume : n < flat ? this.dead : gasVolume(n, kelvin, this.air + this.own);
    }
    mixture(x: Float64Array): Mixture {
        const n = Math.max(1e-9, x[at.bag]);
        return { oxygen: x[at['bag-oxygen']] / n, nitrogen: x[at['bag-nitrogen']] / n };
    }
    /** How much more than full it is, mol; below zero until then. */
    overfull({ t, x }: Moment): number {
        return x[at.bag] - this.limits(this.around(t)).full;
    }
    isBurst(c: ControlState): boolean {
        return c.failed.get(this.view.name) === 'bursts';
    }
    /** The way by which it lets gas out at this pressure, and what it passes, mol/s. */
    private outlet(pressure: number, c: ControlState): { readonly way: Way; readonly most: number } | undefined {
        let best: Taken | undefined;
        for (const taken of this.ways.now(c).bag) if (pressure >= taken.head * (1 - 1e-9) && (!best || taken.head < best.head)) best = taken;
        return best && { way: best.way, most: this.passes(best.way) };
    }
    private passes(way: Way): number {
        return (this.ways.sealOn(way)?.maybeQ('capacity', WIDE) ?? WIDE) * this.air / (GAS_CONSTANT * ROOM);
    }
    /** The way by which air comes in when it is drawn below the air around it: one that nothing holds. A seal with its water in it does: the water climbs in its pipe. */
    private inlet(pressure: number, c: ControlState): { readonly way: Way; readonly most: number } | undefined {
        const open = pressure < 0 ? this.ways.now(c).bag.find(taken => taken.head === 0) : undefined;
        return open && { way: open.way, most: this.passes(open.way) };
    }
    /** Where it would let gas out next: Pa, and the seal that would blow; undefined where it has no such way. */
    opensAt(c: ControlState): { readonly head: number; readonly seal: string | undefined; readonly through: readonly string[] } | undefined {
        let next: Taken | undefined;
        for (const taken of this.ways.now(c).bag) if (taken.head > 0 && (!next || taken.head < next.head)) next = taken;
        return next && { head: next.head, seal: this.ways.sealOn(next.way)?.name, through: next.way.parts };
    }
    /** Whether a joint at its own pressure leaks: its own, one of its ways, or one between it and what last holds gas back. */
    private leaksNow(c: ControlState): boolean {
        for (const [name, f] of c.failed) {
            if (!leaks.has(f)) continue;
            if (name === this.view.name || name === this.suction || this.ways.bag.some(w => w.parts.includes(name))) return true;
            if (this.ways.stack.some(w => w.ends === 'bag' && w.parts.includes(name) && headBehind(w, name, c) === 0)) return true;
        }
        return false;
    }
    /**
     * mol/s that a loose joint lets out, below zero in, with so much coming in. A flat bag finds the pressure at which as much comes as goes
     * in less than a second, and many small steps would be spent on that; here it takes no less than `SETTLES`.
     */
    private leak({ t, x }: Moment, pressure: number, net: number): number {
        const kelvin = this.around(t);
        const dense = this.leaks * this.air / (GAS_CONSTANT * kelvin);
        const density = (outward: boolean) => idealGasDensity(outward ? MOLAR_MASS.hydrogen : MOLAR_MASS.air, kelvin, this.air);
        const passes = Math.sign(pressure) * dense * leakFlow(Math.abs(pressure), density(pressure > 0));
        const balance = Math.sign(net) * leakDrop(Math.abs(net) / dense, density(net > 0));
        let flow = passes;
        if (this.stuck !== undefined || balance < this.own) {
            const still = Math.max(0, this.air + balance) * (this.stuck ?? this.dead) / (GAS_CONSTANT * kelvin);
            const [moves, calmly] = [net - passes, (still - x[at.bag]) / SETTLES];
            flow = net - (moves * calmly > 0 ? Math.sign(moves) * Math.min(Math.abs(moves), Math.abs(calmly)) : 0);
        }
        return pressure > 0 ? Math.max(0, flow) : Math.min(0, flow);
    }
    /**
     * What goes out of it and comes in besides what is pumped, once all that is known is in `coming`.
     *
     * @param coming  mol/s that come in less what is drawn
     * @param crosses mol/s of oxygen that the separators let through at most, where it is drawn below what they hold
     */
    slope(m: Moment, coming: number, crosses: number, gases: Gases, out: Float64Array): void {
        const { x, c } = m;
        const pressure = this.pressure(m);
        const gas = this.mixture(x);
        let net = coming;
        const take = (of: Mixture, flow: number) => {
            net += flow;
            out[at['bag-oxygen']] += flow * of.oxygen;
            out[at['bag-nitrogen']] += flow * of.nitrogen;
        };
        if (this.leaksNow(c)) {
            const flow = this.leak(m, pressure, net);
            if (flow > 0) {
                take(gas, -flow);
                gases.intoRoom(gas, flow, out);
            } else take(AIR, -flow);
        }
        if (net > 0) {
            if (this.overflow && this.overfull(m) >= 0) {
                if (this.overflow === 'room') gases.intoRoom(gas, net, out);
                else gases.outdoors(gas, net, out);
                take(gas, -net);
            }
            const way = net > 0 ? this.outlet(pressure, c) : undefined;
            if (way) {
                const goes = Math.min(net, way.most);
                take(gas, -goes);
                if (this.ways.escapes(way.way, c)) gases.intoRoom(gas, goes, out);
                else gases.outdoors(gas, goes, out);
            }
        } else if (net < 0) {
            const way = this.inlet(pressure, c);
            if (way) take(AIR, Math.min(-net, way.most));
            if (net < 0 && crosses > 0) take({ oxygen: 1, nitrogen: 0 }, Math.min(-net, crosses));
        }
        if (this.isBurst(c)) {
            // It stands open to the room: what comes goes out there, what is drawn is air.
            if (net > 0) {
                gases.intoRoom(gas, net, out);
                take(gas, -net);
            } else take(AIR, -net);
        }
        out[at.bag] += net;
    }
    sensor(v: View, what: string): Sensor | undefined {
        if (v.name !== this.view.name) return undefined;
        if (what === 'volume') return m => this.held(m);
        if (what === 'pressure' || what === 'head') return m => this.pressure(m);
        if (what === 'oxygen') return m => this.mixture(m.x).oxygen;
        return undefined;
    }
    followsFailure(what: string): boolean {
        return what !== 'tilts';
    }
}
