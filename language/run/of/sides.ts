/**
 * Both sides of the stack: the levels in their columns, the heads that push them, and the gases over them: which way they go, what
 * gathers where none is open, how pure they are.
 */
import { GAS_CONSTANT, GRAVITY, MOLAR_MASS } from '../../physics/constants.js';
import { smallHoleFlow } from '../../physics/flow.js';
import { idealGasDensity } from '../../physics/gases.js';
import { lyeVapourPressure } from '../../physics/lye.js';
import { levelShift } from '../../physics/hydrostatics.js';
import { gasOf } from '../../quantities/heads.js';
import { WATER_DENSITY } from '../../quantities/surroundings.js';
import type { View } from '../../quantities/view.js';
import type { ControlState } from '../control-lines.js';
import { at, type Mixture, type Moment, type Sensor, type WatchedOf } from '../states.js';
import { anyFails, headBehind, leakFlow, leaks, SHARP, type OpenWays, type Side, type Taken } from '../ways.js';
import type { Bag } from './bag.js';

/** m³, gas space of a side without a described column. Common practice, no source. */
const USUAL_SPACE = 0.5e-3;
/** m, least height of a gas space. */
const LEAST_HEIGHT = 0.02;
/** m, hole of a separator that is torn, and Pa that the wet hole still holds: pinholes begin so. Common practice, no source. */
const TORN = 0.5e-3;
const TORN_HOLDS = 680;
/** mol of water for each mol of hydrogen: what the cathode takes, less what the anode gives back for it, shared by both when no link levels them. */
const UNLEVELLED = 1.5;

/** What holds liquid that can be drawn back. */
const drawnBack = new Set(['bubbler', 'scrubber']);

export interface Column {
    readonly view: View;
    readonly side: Side | undefined;
    /** m² */
    readonly area: number;
    readonly level: number;
    /** m that its level falls for each kg of water used. */
    readonly fall: number;
}
export class Sides {
    /** What loose joints pass, as a share of what is expected. */
    leaks = 1;
    readonly columns: readonly Column[];
    /** Pa for each m of lye. */
    private readonly lyeWeight: number;
    private readonly link: string | undefined;
    /** m under the working level; NaN where it is not said. */
    readonly linkMouth: number;
    /** Pa on each side in ordinary running. */
    private readonly usual: Readonly<Record<Side, number>>;
    /** mol/s of oxygen in the hydrogen and of hydrogen in the oxygen, as at rest: what crosses hangs little on the current. NaN where not known. */
    private readonly crossing: Readonly<Record<Side, number>>;
    /** kg of water used and carried off for each mol of hydrogen. */
    private readonly waterEach: number;

    constructor(private readonly stack: View, private readonly ways: OpenWays, private readonly bag: Bag | undefined, private readonly air: number, private readonly around: (t: number) => number) {
        const rate = stack.q('hydrogen-rate');
        const restWater = stack.maybeQ('water-use', 0) + stack.maybeQ('vapour-loss', 0);
        this.waterEach = restWater / rate;
        this.columns = stack.all('column').map(view => ({ view, side: gasOf(view), area: Math.PI / 4 * view.maybe('bore') ** 2, level: view.maybe('level'), fall: view.maybeQ('level-fall') / restWater })).filter(c => c.level === c.level && c.fall === c.fall);
        this.lyeWeight = (stack.the('lye')?.maybeQ('density') ?? NaN) * GRAVITY;
        const link = stack.the('link');
        this.link = link?.name;
        this.linkMouth = link?.maybe('depth') ?? NaN;
        this.usual = { hydrogen: stack.maybeQ('hydrogen-head', 0), oxygen: stack.maybeQ('oxygen-head', 0) };
        this.crossing = { hydrogen: stack.maybeQ('oxygen-in-hydrogen') * rate, oxygen: stack.maybeQ('hydrogen-in-oxygen') * rate / 2 };
    }
    linked(c: ControlState): boolean {
        return this.link !== undefined && c.failed.get(this.link) !== 'blocked';
    }
    /** m of lye: less what was split and carried off, plus what was added, and as far as the heads of both sides push it. */
    level(c: Column, m: Moment, runs: boolean): number {
        const { x } = m;
        const moved = x[at['lye-moved']] / (WATER_DENSITY * c.area) * (c.side === 'hydrogen' ? 1 : c.side === 'oxygen' ? -1 : 0);
        return c.level - c.fall * (x[at.water] - x[at.added]) - moved - this.pushed(c, m, runs);
    }
    /** m that a column is pushed down where a link lets the lye pass to the other one. At the heads of ordinary running: nothing, since its level was read then. */
    private pushed(c: Column, m: Moment, runs: boolean): number {
        const other = this.columns.find(o => o !== c && o.side !== c.side);
        if (!this.linked(m.c) || !other || !c.side || !other.side || !(this.lyeWeight > 0)) return 0;
        if (!runs && this.way(c.side, m) && this.way(other.side, m)) return 0;
        const difference = (this.head(c.side, m) - this.usualHead(c.side)) - (this.head(other.side, m) - this.usualHead(other.side));
        return levelShift(difference, this.lyeWeight / GRAVITY, c.area, other.area);
    }
    private usualHead(side: Side): number {
        return this.usual[side];
    }
    /** The way that a side's gas takes: the open one that costs least. */
    way(side: Side, m: Moment): Taken | undefined {
        const { hydrogen, oxygen } = this.ways.now(m.c);
        if (side === 'oxygen') return oxygen;
        let best: Taken | undefined;
        let least = Infinity;
        for (const taken of hydrogen) {
            const head = taken.way.ends === 'bag' ? taken.head + this.bag!.pressure(m) : taken.head;
            if (best && head >= least) continue;
            best = taken;
            least = head;
        }
        return best && (best.head === least ? best : { way: best.way, head: least });
    }
    /** Pa on one side: what its way costs, or what has gathered since it was shut. */
    head(side: Side, m: Moment): number {
        if (side === 'oxygen' && !this.ways.oxygen.length) return 0;
        const way = this.way(side, m);
        return way ? way.head : m.x[at[`${side}-head`]];
    }
    /** Pa of the hydrogen over the oxygen. */
    difference(m: Moment): number {
        return this.head('hydrogen', m) - this.head('oxygen', m);
    }
    /** Whether a side has outlets and none of them is open, so that pressure gathers. */
    shut(side: Side, m: Moment): boolean {
        return (side === 'hydrogen' ? this.ways.stack : this.ways.oxygen).length > 0 && !this.way(side, m);
    }
    /** m³ of gas over the lye. */
    space(side: Side): number {
        const c = this.columns.find(q => q.side === side);
        return c ? c.area * Math.max(LEAST_HEIGHT, c.view.maybe('height', c.level) - c.level) : USUAL_SPACE;
    }
    /** mol/Pa that a side takes up with its outlet shut: its gas space, and the lye that gives way. */
    softness(side: Side, m: Moment): number {
        const c = this.columns.find(q => q.side === side);
        const other = this.columns.find(q => q.side && q.side !== side);
        const gives = c && other && this.linked(m.c) && this.lyeWeight > 0 ? c.area * other.area / (c.area + other.area) / this.lyeWeight : 0;
        return (this.space(side) + this.air * gives) / (GAS_CONSTANT * this.around(m.t));
    }
    /** Liquids before which the gas of a stopped stack shrinks as it cools, each below zero until it is drawn back. */
    drawsBack(stoppedAt: number, c: ControlState): { readonly part: string; readonly value: WatchedOf }[] {
        const lye = this.stack.the('lye');
        const strength = lye?.maybe('strength') ?? NaN;
        if (strength !== strength) return [];
        const solute = lye!.word('solute') === 'NaOH' ? 'NaOH' : 'KOH';
        const vapour = (kelvin: number) => lyeVapourPressure(solute, strength, kelvin);
        const found = new Map<string, { readonly part: string; readonly value: WatchedOf }>();
        const { hydrogen, oxygen } = this.ways.now(c);
        for (const { way } of [...hydrogen, ...(oxygen ? [oxygen] : [])]) {
            const i = way.parts.findIndex(n => drawnBack.has(this.stack.other(n)?.kind ?? ''));
            const part = way.parts[i];
            if (i < 0 || !((this.stack.other(part)?.maybeQ('sucked-back') ?? 0) > 0)) continue;
            const head = way.heads[i];
            const dry = this.air + head - vapour(stoppedAt);
            found.set(part, { part, value: m => -head - (dry * m.x[at.lye] / stoppedAt + vapour(m.x[at.lye]) - this.air) });
        }
        return [...found.values()];
    }
    /** mol/s that go through a torn separator, from hydrogen to oxygen; below zero the other way. */
    torn(m: Moment): number {
        if (!anyFails(m.c, 'torn')) return 0;
        const difference = this.difference(m);
        const drop = Math.abs(difference) - TORN_HOLDS;
        if (!(drop > 0)) return 0;
        const mass = difference > 0 ? MOLAR_MASS.hydrogen : MOLAR_MASS.oxygen;
        const kelvin = this.around(m.t);
        return Math.sign(difference) * smallHoleFlow(Math.PI / 4 * TORN ** 2, SHARP, drop, idealGasDensity(mass, kelvin, this.air)) * this.air / (GAS_CONSTANT * kelvin);
    }
    /** mol/mol of the other gas in what leaves a side, with so much hydrogen made; undefined where nothing is made or it is not known. */
    impurity(side: Side, m: Moment, made: number): number | undefined {
        const crossing = this.crossing[side];
        if (!(made > 0) || crossing !== crossing) return undefined;
        const through = this.torn(m);
        const strange = crossing + Math.max(0, side === 'oxygen' ? through : -through);
        const own = side === 'hydrogen' ? made : made / 2;
        return strange / (own + strange);
    }
    /** mol/s of hydrogen that leave by a joint that leaks before what holds the gas back. */
    leaking(taken: Taken, m: Moment): number {
        let flow = 0;
        for (const [name, f] of m.c.failed) {
            if (!leaks.has(f) || !taken.way.parts.includes(name)) continue;
            const behind = headBehind(taken.way, name, m.c);
            const pressure = behind + (taken.way.ends === 'bag' ? this.bag!.pressure(m) : 0);
            if (!(behind > 0 && pressure > 0)) continue;
            const kelvin = this.around(m.t);
            flow += this.leaks * leakFlow(pressure, idealGasDensity(MOLAR_MASS.hydrogen, kelvin, this.air)) * this.air / (GAS_CONSTANT * kelvin);
        }
        return flow;
    }
    /** What the stack sends to the hydrogen side: mol/mol. */
    ofHydrogenSide(m: Moment, made: number): Mixture {
        return { oxygen: this.impurity('hydrogen', m, made) ?? 0, nitrogen: 0 };
    }
    slope(m: Moment, made: number, out: Float64Array): void {
        out[at.water] = this.waterEach * made;
        if (made > 0 && this.link !== undefined && !this.linked(m.c)) out[at['lye-moved']] = UNLEVELLED * MOLAR_MASS.water * made;
        if (made > 0 && this.shut('oxygen', m)) out[at['oxygen-head']] = made / 2 / this.softness('oxygen', m);
    }
    sensor(v: View, what: string, made: (m: Moment) => number, runs: (c: ControlState) => boolean): Sensor | undefined {
        const column = this.columns.find(q => q.view.name === v.name);
        if (column && what === 'level') return m => this.level(column, m, runs(m.c));
        if ((column || v.kind === 'lye') && what === 'temperature') return m => m.x[at.lye];
        const { paths, name } = this.stack;
        if (what === 'oxygen' && paths.after(name, 'hydrogen').includes(v.name)) return m => this.impurity('hydrogen', m, made(m)) ?? 0;
        if (what === 'hydrogen' && paths.after(name, 'oxygen').includes(v.name)) return m => this.impurity('oxygen', m, made(m)) ?? 0;
        return undefined;
    }
}
