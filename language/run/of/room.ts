/**
 * The air of the room: hydrogen in two layers, since it gathers under the ceiling, and oxygen. What escapes rises into the upper
 * layer; air that comes in low goes up and out.
 */
import { OXYGEN_IN_AIR, GAS_CONSTANT } from '../../physics/constants.js';
import { extracts } from '../../quantities/surroundings.js';
import type { View } from '../../quantities/view.js';
import type { ControlState } from '../control-lines.js';
import { at, type Mixture, type Moment, type Sensor } from '../states.js';

/** Share of the room that the upper layer takes. Own choice, no source: a leak fills the upper third first. */
const UPPER = 1 / 3;
/** Changes of the room's air in an hour by which both layers mix without any wind. Own choice, no source: hydrogen left to itself under a
 *  ceiling is found evenly spread after some hours. */
const MIXING = 0.5 / 3600;
/** Where a detector sits to be reached by what gathers above, if no height tells it. */
const aloft = new Set(['ridge', 'ceiling', 'duct']);

export class Room {
    private readonly fans: readonly { readonly name: string; readonly flow: number }[];

    private constructor(private readonly volume: number, private readonly high: number, private readonly passive: number, fans: readonly View[], private readonly air: number, private readonly kelvin: (t: number) => number) {
        this.fans = fans.map(f => ({ name: f.name, flow: f.maybe('flow', 0) }));
    }
    /** Undefined where the rig stands outdoors, or how large the room is is not known. */
    static of(stack: View, air: number, kelvin: (t: number) => number): Room | undefined {
        const site = stack.the('site');
        const volume = site?.maybe('volume') ?? NaN;
        if (!site || !(volume > 0) || site.word('place') === 'outdoors') return undefined;
        return new Room(volume, site.maybe('high-point'), site.maybeQ('passive-flow', 0), stack.all('fan').filter(extracts), air, kelvin);
    }
    /** m³/s of fresh air. */
    airFlow(c: ControlState): number {
        const fans = this.fans.reduce((sum, f) => sum + (c.on.get(f.name) === false || c.failed.get(f.name) === 'blocked' ? 0 : f.flow), 0);
        return Math.max(fans, this.passive);
    }
    /** mol of air in a volume. */
    private moles(volume: number, t: number): number {
        return this.air * volume / (GAS_CONSTANT * this.kelvin(t));
    }
    /** mol/mol hydrogen: in all the air, and under the ceiling. */
    share({ t, x }: Moment): number {
        return (x[at['room-above']] + x[at['room-below']]) / this.moles(this.volume, t);
    }
    above({ t, x }: Moment): number {
        return x[at['room-above']] / this.moles(UPPER * this.volume, t);
    }
    /** mol/mol oxygen, evenly mixed. */
    oxygen({ t, x }: Moment): number {
        return OXYGEN_IN_AIR + (1 - OXYGEN_IN_AIR) * x[at['room-oxygen']] / this.moles(this.volume, t);
    }
    /** What comes out into it, mol/s. */
    take(gas: Mixture, flow: number, out: Float64Array): void {
        out[at['room-above']] += flow * (1 - gas.oxygen - gas.nitrogen);
    }
    takeOxygen(flow: number, out: Float64Array): void {
        out[at['room-oxygen']] += flow;
    }
    slope({ x, c }: Moment, out: Float64Array): void {
        const fresh = this.airFlow(c);
        const above = x[at['room-above']] / (UPPER * this.volume);
        const below = x[at['room-below']] / ((1 - UPPER) * this.volume);
        const mixed = MIXING * this.volume * (above - below);
        out[at['room-above']] += -mixed + fresh * (below - above);
        out[at['room-below']] += mixed - fresh * below;
        out[at['room-oxygen']] -= fresh / this.volume * x[at['room-oxygen']];
    }
    sensor(v: View, what: string, by: View | undefined): Sensor | undefined {
        const fan = this.fans.find(f => f.name === v.name);
        if (fan && what === 'flow') return m => ((m.c.on.get(fan.name) ?? true) && m.c.failed.get(fan.name) !== 'blocked' ? fan.flow : 0);
        if (v.kind !== 'site') return undefined;
        if (what === 'oxygen') return m => this.oxygen(m);
        if (what !== 'hydrogen') return undefined;
        const height = by && 'height' in (by.declared?.properties ?? {}) ? by.maybe('height') : NaN;
        const up = height === height && this.high === this.high ? height >= (1 - UPPER) * this.high : !!by && aloft.has(by.word('place') ?? '');
        return up ? m => this.above(m) : m => this.share(m);
    }
}
