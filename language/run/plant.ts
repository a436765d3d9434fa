/**
 * What a rig does over time, as slopes of its states: the same laws as at rest, looked up where they were solved before. What
 * opens, shuts and runs is asked of the control lines at each moment.
 */
import { GAS_CONSTANT, GRAVITY, MOLAR_MASS } from '../physics/constants.js';
import { holeFlow, smallHoleFlow } from '../physics/flow.js';
import { gasVolume } from '../physics/gas-volume.js';
import { heatCapacityRatio, idealGasDensity } from '../physics/gases.js';
import { hydrogenMoles, hydrogenPressure } from '../physics/hydrogen.js';
import { levelShift } from '../physics/hydrostatics.js';
import { gasOf, headOfPart } from '../quantities/heads.js';
import { stackLoss } from '../quantities/stack-solver.js';
import { extracts, ROOM } from '../quantities/surroundings.js';
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import type { ControlState } from './control-lines.js';
import { CannotRun, lawsOfCompressor, lawsOfStack, type CompressorLaws, type StackLaws } from './laws.js';
import { blocks, costOf, opens, waysFrom, type Side, type Taken, type Way } from './ways.js';

/** The states, in their order: K, mol, Pa, kg, J, s. A head counts only while that side has no way out; what was added moves by hand. */
export const states = ['lye', 'bag', 'cylinder', 'room', 'hydrogen-head', 'oxygen-head', 'water', 'added', 'made', 'vented', 'escaped', 'relieved', 'used', 'trapped', 'stack-energy', 'compressor-energy', 'heat', 'lost', 'compressor-hours'] as const;
export type StateName = typeof states[number];
export const at: Readonly<Record<StateName, number>> = Object.fromEntries(states.map((s, i) => [s, i])) as Record<StateName, number>;
/** What of each state is too little to matter. */
export const slight = Float64Array.from(states, s => (s === 'lye' ? 1e-3 : s === 'water' ? 1e-6 : s.endsWith('head') ? 0.1 : s.endsWith('energy') || s === 'heat' || s === 'lost' ? 1 : s.endsWith('hours') ? 0.1 : 1e-6));

/** Share of the volume of a bag that cannot be drawn out of it where the text does not say. Common practice, no source. */
const DEAD_SHARE = 0.02;
/** m³/s that a way out passes where nothing tells it: more than any rig here makes. Own choice, no source. */
const WIDE = 5 / 3600;
/** m, hole that "leaks" means: a joint that was not tightened. Common practice, no source. */
const LEAK = 1e-3;
/** Of the ideal flow that a sharp hole passes at little pressure, and a short bore at much. Textbook. */
const SHARP = 0.6;
const ROUNDED = 0.8;
/** Pressure under its set point at which a relief valve shuts again, as a share. From memory: seven to ten hundredths is usual. */
export const RESEATS = 0.9;
/** m³, gas space of a side without a described column. Common practice, no source. */
const USUAL_SPACE = 0.5e-3;
/** s in which a flat bag follows its leak. Really it is a second or so, which would make tens of thousands of steps of a day. Own choice. */
const FLAT_FOLLOWS = 10;
/** Pa and K at the least, beside which a state counts as reached. */
const NOTHING = 1e-9;

/** What a device feels at a moment. */
type Sensor = (t: number, x: Float64Array, c: ControlState) => number | undefined;
interface Bag {
    readonly view: View;
    readonly volume: number;
    readonly dead: number;
    /** Pa gauge while it is neither flat nor stretched. */
    readonly own: number;
    /** A bell at its top lets gas out under its rim; where to. */
    readonly overflow: 'outdoors' | 'room' | undefined;
}
export interface Column {
    readonly view: View;
    readonly side: Side | undefined;
    /** m² */
    readonly area: number;
    readonly level: number;
    /** m that its level falls for each kg of water used. */
    readonly fall: number;
}
interface Relief {
    readonly name: string;
    readonly set: number;
    /** mol/s at a tenth over its set pressure. */
    readonly capacity: number;
    readonly outdoors: boolean;
}
/** Of what is made by the stack, and of what the compressor delivers, as shares of what is expected. */
export interface Pace {
    readonly made: number;
    readonly delivered: number;
}
export const EXPECTED: Pace = { made: 1, delivered: 1 };
/** Asked at each moment of a run, where nearly always nothing of the sort has failed. */
function anyFails(c: ControlState, what: string): boolean {
    for (const failure of c.failed.values()) if (failure === what) return true;
    return false;
}
function overflowOf(bag: View): Bag['overflow'] {
    const to = bag.kind === 'gasometer' ? bag.word('overflow') : undefined;
    return to === 'outdoors' || to === 'room' ? to : undefined;
}

export class Plant {
    readonly stack: View;
    readonly bag: Bag | undefined;
    readonly cylinder: { readonly view: View; readonly volume: number; readonly rating: number } | undefined;
    readonly columns: readonly Column[];
    readonly compressor: View | undefined;
    readonly reliefs: readonly Relief[];
    readonly air: number;
    /** What a run leaves out of this rig, in sentences. */
    readonly notes: string[] = [];
    private readonly laws: StackLaws;
    /** J/K */
    private readonly capacity: number;
    private readonly pressing: CompressorLaws | undefined;
    private readonly waterEach: number;
    /** Pa for each m of lye. */
    private readonly lyeWeight: number;
    private readonly linked: boolean;
    private readonly oxygenWays: readonly Way[];
    private readonly highLine: readonly string[];
    private readonly stackWays: readonly Way[];
    private readonly bagWays: readonly Way[];
    private readonly unloader: View | undefined;
    private readonly check: View | undefined;
    private readonly waterValves: readonly string[];
    private readonly sources: readonly string[];
    private readonly keptWays = new WeakMap<ControlState, { readonly turn: number; readonly hydrogen: readonly Taken[]; readonly oxygen: Taken | undefined; readonly bag: readonly Taken[] }>();
    private readonly usualHeads: Partial<Record<Side, number>> = {};
    private lastStored = { moles: NaN, kelvin: NaN, pressure: NaN };
    private readonly sensors = new Map<string, Sensor>();
    private readonly constants = new Map<string, number | undefined>();
    private readonly fans: readonly { readonly name: string; readonly flow: number }[];
    private readonly room: { readonly volume: number; readonly passive: number } | undefined;

    constructor(workings: Workings) {
        const [stack] = workings.partsOf('stack');
        if (!stack) throw new CannotRun('There is no stack: nothing would be made.');
        this.stack = stack;
        this.laws = lawsOfStack(stack);
        const site = stack.the('site');
        this.air = stack.airPressure();
        this.capacity = stack.q('heat-capacity-total');
        if (!(this.capacity > 0)) throw new CannotRun('How much heat stack and lye take up is not known: rigwright show --all tells what is missing.');
        this.waterEach = (stack.maybeQ('water-use', 0) + stack.maybeQ('vapour-loss', 0)) / stack.q('hydrogen-rate');
        const restWater = this.waterEach * stack.q('hydrogen-rate');
        this.columns = stack.all('column').map(view => ({ view, side: gasOf(view), area: Math.PI / 4 * view.maybe('bore') ** 2, level: view.maybe('level'), fall: view.maybeQ('level-fall') / restWater })).filter(c => c.level === c.level && c.fall === c.fall);
        this.lyeWeight = (stack.the('lye')?.maybeQ('density') ?? NaN) * GRAVITY;
        this.linked = !!stack.the('link');
        this.sources = workings.controls.sources().map(v => v.name);

        const bag = [...stack.all('bag'), ...stack.all('gasometer')].find(b => stack.paths.after(stack.name, 'hydrogen').includes(b.name));
        const volume = bag?.maybe('volume') ?? NaN;
        if (bag && volume > 0) {
            const own = headOfPart(bag, 'hydrogen');
            this.bag = { view: bag, volume, dead: Math.max(bag.maybe('dead-volume', DEAD_SHARE * volume), 1e-3 * volume), own: own === own ? own : 0, overflow: overflowOf(bag) };
        } else if (bag) this.notes.push(`How large ${bag.name} is, is not said: it is not followed.`);
        const [cylinder] = stack.all('cylinder');
        const held = cylinder?.maybe('volume') ?? NaN;
        if (cylinder && held > 0) this.cylinder = { view: cylinder, volume: held, rating: cylinder.maybe('rating') };
        if (stack.all('cylinder').length > 1) this.notes.push(`Only ${cylinder.name} is filled; other cylinders are left out.`);
        const compressors = stack.all('compressor').filter(c => stack.paths.after(c.name, 'hydrogen').includes(cylinder?.name ?? ''));
        this.compressor = this.bag && this.cylinder ? compressors.find(c => stack.paths.after(this.bag!.view.name, 'hydrogen').includes(c.name)) : undefined;
        if (this.compressor && this.cylinder) {
            this.pressing = lawsOfCompressor(this.compressor, this.air, Math.max(this.cylinder.rating || 0, this.cylinder.view.maybeQ('cut-off', 0), 1e5), this.laws.room);
            if (!this.pressing) {
                this.notes.push(`What ${this.compressor.name} delivers is not known: it is not followed.`);
                this.compressor = undefined;
            }
        }
        this.unloader = stack.all('unloader')[0];
        this.check = this.compressor && stack.all('check-valve').find(c => stack.paths.after(this.compressor!.name, 'hydrogen').includes(c.name) && stack.paths.before(cylinder!.name, 'hydrogen').includes(c.name));
        const bagName = this.bag?.view.name;
        this.stackWays = waysFrom(stack, stack.name, 'hydrogen', bagName);
        this.oxygenWays = waysFrom(stack, stack.name, 'oxygen', bagName);
        this.bagWays = this.bag ? waysFrom(stack, this.bag.view.name, 'hydrogen', bagName) : [];
        this.highLine = this.compressor && this.cylinder ? stack.paths.between(this.compressor.name, this.cylinder.view.name, 'hydrogen') : [];
        this.reliefs = stack.all('relief-valve').flatMap(r => {
            const set = r.maybe('set');
            const guards = cylinder && stack.paths.after(cylinder.name, 'hydrogen').includes(r.name) && !stack.paths.between(cylinder.name, r.name, 'hydrogen').some(n => r.other(n)?.kind === 'regulator');
            const before = cylinder && stack.paths.route(r.name, 'outdoors', 'hydrogen');
            return guards && set === set ? [{ name: r.name, set, capacity: r.maybeQ('capacity-hydrogen', WIDE * this.air / (GAS_CONSTANT * ROOM)), outdoors: !!before }] : [];
        });
        this.waterValves = stack.all('valve').filter(v => stack.paths.on('water').includes(v.name)).map(v => v.name);
        this.fans = stack.all('fan').filter(extracts).map(f => ({ name: f.name, flow: f.maybe('flow', 0) }));
        const inside = site?.maybe('volume') ?? NaN;
        if (site && inside > 0 && site.word('place') !== 'outdoors') this.room = { volume: inside, passive: site.maybeQ('passive-flow', 0) };
        if (stack.all('battery').length) this.notes.push('The charge of the battery is not followed: it stays as the text has it.');
        if (stack.all('panels').length) this.notes.push('Sunshine is not followed by the clock: the panels stand in that of the text all the time.');
        if (!this.sources.length && !stack.all('battery').length) this.notes.push('No source that could be switched off is on the current path: the stack runs all the time.');
        if (stack.maybe('groups', 1) > 1) this.notes.push('Groups share the current as at rest.');
    }
    /** How much more is made and delivered than expected: 1, or what their ± leaves open. Set by whoever runs it. */
    pace: Pace = EXPECTED;
    /** K of room and air at a time; set by whoever runs it. */
    weather: (t: number) => number = () => ROOM;

    // ---- what a moment looks like -----------------------------------------------------------------------------------

    /** Moles in a flat bag, and in one that begins to stretch. */
    private bagLimits(kelvin: number): { flat: number; full: number } {
        const b = this.bag!;
        const dense = (this.air + b.own) / (GAS_CONSTANT * kelvin);
        return { flat: dense * b.dead, full: dense * b.volume };
    }
    /** What is in a bag besides what can be drawn out of it is let go; what stays is air and does not count. */
    burst(t: number, x: Float64Array): void {
        const { flat } = this.bagLimits(this.weather(t));
        const goes = Math.max(0, x[at.bag] - flat);
        if (this.room) x[at.room] += goes;
        x[at.escaped] += goes;
        x[at.bag] -= goes;
    }
    /** Pa gauge: its own while it lies loose, less when flat, more when there is no room left. */
    bagPressure(t: number, x: Float64Array): number {
        const b = this.bag!;
        const kelvin = this.weather(t);
        const { flat, full } = this.bagLimits(kelvin);
        const n = Math.max(0, x[at.bag]);
        if (n > full) return n * GAS_CONSTANT * kelvin / b.volume - this.air;
        if (n < flat) return n * GAS_CONSTANT * kelvin / b.dead - this.air;
        return b.own;
    }
    bagVolume(t: number, x: Float64Array): number {
        const b = this.bag!;
        const kelvin = this.weather(t);
        const { flat, full } = this.bagLimits(kelvin);
        const n = x[at.bag];
        return n > full ? b.volume : n < flat ? b.dead : gasVolume(n, kelvin, this.air + b.own);
    }
    /** Pa above vacuum. The cylinder stands at the temperature of the air around it. */
    cylinderPressure(t: number, x: Float64Array): number {
        const kelvin = this.weather(t);
        const moles = Math.max(NOTHING, x[at.cylinder]);
        // Asked several times at each moment.
        if (moles !== this.lastStored.moles || kelvin !== this.lastStored.kelvin) this.lastStored = { moles, kelvin, pressure: hydrogenPressure(this.cylinder!.volume, kelvin, moles) };
        return this.lastStored.pressure;
    }
    /** m of lye: less what was split and carried off, plus what was added, and as far as the heads of both sides push it. */
    level(c: Column, t: number, x: Float64Array, control: ControlState): number {
        return c.level - c.fall * (x[at.water] - x[at.added]) - this.pushed(c, t, x, control);
    }
    /** m that a column is pushed down where a link lets the lye pass to the other one. At the heads of ordinary running: nothing, since its level was read then. */
    private pushed(c: Column, t: number, x: Float64Array, control: ControlState): number {
        const other = this.columns.find(o => o !== c && o.side !== c.side);
        if (!this.linked || !other || !c.side || !other.side || !(this.lyeWeight > 0)) return 0;
        if (!this.stackRuns(control) && this.way(c.side, t, x, control) && this.way(other.side, t, x, control)) return 0;
        const difference = (this.sideHead(c.side, t, x, control) - this.usualHead(c.side)) - (this.sideHead(other.side, t, x, control) - this.usualHead(other.side));
        return levelShift(difference, this.lyeWeight / GRAVITY, c.area, other.area);
    }
    private usualHead(side: Side): number {
        return (this.usualHeads[side] ??= this.stack.maybeQ(`${side}-head`, 0));
    }
    /** The way that a side's gas takes. */
    way(side: Side, t: number, x: Float64Array, c: ControlState): Taken | undefined {
        return side === 'hydrogen' ? this.stackWay(t, x, c) : this.openWays(c).oxygen;
    }
    /** Pa on one side: what its way costs, or what has gathered since it was shut. */
    sideHead(side: Side, t: number, x: Float64Array, c: ControlState): number {
        if (side === 'oxygen' && !this.oxygenWays.length) return 0;
        const gathered = x[at[`${side}-head`]];
        const way = this.way(side, t, x, c);
        return way ? way.head : gathered;
    }
    /** Whether a side is drawn and shut, so that pressure gathers. */
    shut(side: Side, t: number, x: Float64Array, c: ControlState): boolean {
        return (side === 'hydrogen' ? this.stackWays : this.oxygenWays).length > 0 && !this.way(side, t, x, c);
    }
    /** mol/Pa that a side takes up with its outlet shut: its gas space, and the lye that gives way. */
    private softness(side: Side, t: number): number {
        const kelvin = this.weather(t);
        const c = this.columns.find(q => q.side === side);
        const other = this.columns.find(q => q.side && q.side !== side);
        const height = c?.view.maybe('height', c.level) ?? 0;
        const space = c ? c.area * Math.max(0.02, height - c.level) : USUAL_SPACE;
        const gives = c && other && this.linked && this.lyeWeight > 0 ? c.area * other.area / (c.area + other.area) / this.lyeWeight : 0;
        return (space + this.air * gives) / (GAS_CONSTANT * kelvin);
    }
    dischargeTemperature(t: number, x: Float64Array): number | undefined {
        return this.pressing?.discharge?.at(this.cylinderPressure(t, x));
    }
    roomShare(t: number, x: Float64Array): number {
        return this.room ? gasVolume(x[at.room], this.weather(t), this.air) / this.room.volume : 0;
    }
    airFlow(c: ControlState): number {
        const fans = this.fans.reduce((sum, f) => sum + (c.on.get(f.name) === false ? 0 : f.flow), 0);
        return Math.max(fans, this.room?.passive ?? 0);
    }
    stackRuns(c: ControlState): boolean {
        return this.sources.every(s => c.on.get(s) ?? true);
    }
    cools(c: ControlState): boolean {
        return !!this.laws.make.cooler && this.waterValves.every(v => c.on.get(v) !== false) && !(anyFails(c, 'water fails') && [...c.failed].some(([n, f]) => f === 'water fails' && this.stack.other(n)?.kind === 'cooler'));
    }
    /** Where the gas of the stack goes: the open way that costs least. */
    stackWay(t: number, x: Float64Array, c: ControlState): Taken | undefined {
        const { hydrogen } = this.openWays(c);
        let best: Taken | undefined;
        for (const taken of hydrogen) {
            const head = taken.head + (taken.way.ends === 'bag' ? this.bagPressure(t, x) : 0);
            if (!best || head < best.head) best = { way: taken.way, head };
        }
        return best;
    }
    /** The ways that stand open, with what they cost; of the oxygen the cheapest. */
    private openWays(c: ControlState): { readonly hydrogen: readonly Taken[]; readonly oxygen: Taken | undefined; readonly bag: readonly Taken[] } {
        const kept = this.keptWays.get(c);
        if (kept && kept.turn === c.turn) return kept;
        const open = (ways: readonly Way[]) => ways.flatMap(way => {
            const bag = way.ends === 'bag' ? c.failed.get(this.bag!.view.name) : undefined;
            const head = way.ends === 'compressor' || bag === 'pinched' ? undefined : costOf(this.stack, way, c);
            return head === undefined ? [] : [{ way, head }];
        });
        let oxygen: Taken | undefined;
        for (const taken of open(this.oxygenWays)) if (!oxygen || taken.head < oxygen.head) oxygen = taken;
        const found = { turn: c.turn, hydrogen: open(this.stackWays), oxygen, bag: open(this.bagWays).filter(({ way }) => way.ends === 'outdoors' || way.ends === 'room') };
        this.keptWays.set(c, found);
        return found;
    }
    /** Whether gas that takes this way comes out inside. */
    escapes(way: Way, c: ControlState): boolean {
        return way.ends === 'room' || (way.ends === 'bag' && opens.has(c.failed.get(this.bag!.view.name) ?? '')) || way.parts.some(n => opens.has(c.failed.get(n) ?? ''));
    }
    /** The way by which a bag lets gas out at this pressure, and what it passes, mol/s. */
    private bagOutlet(pressure: number, c: ControlState): { readonly way: Way; readonly most: number; readonly head: number } | undefined {
        let best: { way: Way; most: number; head: number } | undefined;
        for (const { way, head } of this.openWays(c).bag) {
            if (pressure < head * (1 - 1e-9) || (best && best.head <= head)) continue;
            const seal = way.parts.map(n => this.stack.other(n)).find(v => v?.kind === 'seal');
            const wide = seal?.maybeQ('capacity', WIDE) ?? WIDE;
            best = { way, head, most: wide * this.air / (GAS_CONSTANT * ROOM) };
        }
        return best;
    }
    /** Where a bag would let gas out next: Pa, and the seal that would blow; undefined where it has no such way. */
    bagOpens(c: ControlState): { readonly head: number; readonly seal: string | undefined; readonly through: readonly string[] } | undefined {
        let next: Taken | undefined;
        for (const taken of this.openWays(c).bag) if (taken.head > 0 && (!next || taken.head < next.head)) next = taken;
        return next && { head: next.head, seal: next.way.parts.find(n => this.stack.other(n)?.kind === 'seal'), through: next.way.parts };
    }
    /** How much more than full a bag is, mol; below zero until then. */
    overfull(t: number, x: Float64Array): number {
        return x[at.bag] - this.bagLimits(this.weather(t)).full;
    }
    isBurst(c: ControlState): boolean {
        return !!this.bag && c.failed.get(this.bag.view.name) === 'bursts';
    }
    compressorRuns(c: ControlState): boolean {
        return !!this.compressor && (c.on.get(this.compressor.name) ?? false);
    }
    unloaded(c: ControlState): boolean {
        return !!this.unloader && (c.on.get(this.unloader.name) ?? false);
    }
    /** Pa between both sides of a compressor that is about to start: what stands behind the check valve does not count while the unloader is open. */
    startsAgainst(t: number, x: Float64Array, c: ControlState): number {
        if (!this.compressor || !this.cylinder) return 0;
        return this.unloaded(c) ? 0 : Math.max(0, this.cylinderPressure(t, x) - this.air - this.bagPressure(t, x));
    }

    // ---- slopes -------------------------------------------------------------------------------------------------

    /** How all states move, with the control lines as they are. `open`: reliefs that stand open; `draw`: what a user takes from the store, mol/s. */
    slope(t: number, x: Float64Array, c: ControlState, open: ReadonlySet<string>, draw: number, stalled: boolean, out: Float64Array): void {
        out.fill(0);
        const kelvin = this.weather(t);
        const T = x[at.lye];
        let made = 0;
        const lost = stackLoss(this.laws.make, T, kelvin);
        let gain = -lost;
        if (this.stackRuns(c)) {
            made = Math.max(0, this.pace.made * this.laws.hydrogen.at(T));
            const heat = this.laws.heat.at(T);
            gain += heat;
            out[at['stack-energy']] = this.laws.current.at(T) * this.laws.volts.at(T);
            out[at.heat] = heat;
        }
        const cooled = this.cools(c) ? this.laws.cooling.at(T) : 0;
        gain -= cooled;
        out[at.lost] = lost + cooled;
        out[at.lye] = gain / this.capacity;
        out[at.made] = made;
        out[at.water] = this.waterEach * made;

        if (made > 0 && this.shut('oxygen', t, x, c)) out[at['oxygen-head']] = made / 2 / this.softness('oxygen', t);
        let intoBag = 0;
        if (made > 0) {
            const to = this.stackWay(t, x, c);
            if (!to) {
                out[at['hydrogen-head']] = made / this.softness('hydrogen', t);
                out[at.trapped] += made;
            }
            else if (this.escapes(to.way, c)) this.intoRoom(out, made);
            else if (to.way.ends === 'bag') intoBag += made;
            else if (to.way.ends === 'user') out[at.used] += made;
            else out[at.vented] += made;
        }
        if (this.bag) {
            const pressure = this.bagPressure(t, x);
            // Through a burst bag it draws air, which is no hydrogen to count.
            if (this.compressorRuns(c) && !stalled && this.pressing && !this.unloaded(c) && !this.isBurst(c)) {
                // What a stroke takes in follows the density of what it draws.
                const taken = this.pace.delivered * this.pressing.flow.at(this.cylinderPressure(t, x)) * Math.max(0, (this.air + pressure) / this.air);
                const broken = this.highLine.map(n => c.failed.get(n)).find(f => f && (opens.has(f) || blocks.has(f)));
                if (!broken || opens.has(broken)) intoBag -= taken;
                if (!broken) out[at.cylinder] += taken;
                else if (opens.has(broken)) this.intoRoom(out, taken);
            }
            const back = this.backFlow(t, x, c, pressure);
            intoBag += back;
            out[at.cylinder] -= back;
            const hole = this.eased(this.leaking(pressure, c, kelvin), intoBag, pressure, x, kelvin);
            intoBag -= hole;
            this.intoRoom(out, hole);
            if (intoBag > 0 && this.bag.overflow && x[at.bag] >= this.bagLimits(kelvin).full) {
                if (this.bag.overflow === 'room') this.intoRoom(out, intoBag);
                else out[at.vented] += intoBag;
                intoBag = 0;
            }
            if (intoBag > 0) {
                const way = this.bagOutlet(pressure, c);
                if (way) {
                    const goes = Math.min(intoBag, way.most);
                    intoBag -= goes;
                    if (this.escapes(way.way, c)) this.intoRoom(out, goes);
                    else out[at.vented] += goes;
                }
            }
            // Burst, it stands open to the room.
            if (this.isBurst(c)) this.intoRoom(out, intoBag);
            else out[at.bag] = intoBag;
        }
        if (this.compressorRuns(c)) {
            const power = this.compressor!.maybe('power', 0);
            out[at['compressor-energy']] = power;
            out[at['compressor-hours']] = 1;
        }
        if (this.cylinder) {
            const pressure = this.cylinderPressure(t, x);
            for (const r of this.reliefs) {
                if (!open.has(r.name)) continue;
                const flow = r.capacity * pressure / (1.1 * r.set + this.air);
                out[at.cylinder] -= flow;
                if (r.outdoors) out[at.relieved] += flow;
                else this.intoRoom(out, flow);
            }
            if (c.failed.get(this.cylinder.view.name) === 'leaks') {
                const flow = holeFlow(Math.PI / 4 * LEAK ** 2, ROUNDED, pressure, this.air, kelvin, MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen) / MOLAR_MASS.hydrogen;
                out[at.cylinder] -= flow;
                this.intoRoom(out, flow);
            }
            if (draw > 0) {
                out[at.cylinder] -= draw;
                out[at.used] += draw;
            }
        }
        if (this.room) out[at.room] -= this.airFlow(c) / this.room.volume * x[at.room];
    }
    private intoRoom(out: Float64Array, flow: number): void {
        out[at.escaped] += flow;
        if (this.room) out[at.room] += flow;
    }
    /** mol/s that come back from the store through an open unloader, where no check valve holds them. */
    private backFlow(t: number, x: Float64Array, c: ControlState, pressure: number): number {
        if (!this.cylinder || !this.unloader || !this.unloaded(c)) return 0;
        const checkFails = this.check && ['leaks back', 'sticks open'].includes(c.failed.get(this.check.name) ?? '');
        if (this.check && !checkFails) return 0;
        const bore = this.unloader.maybe('orifice');
        if (!(bore > 0)) return 0;
        return holeFlow(Math.PI / 4 * bore * bore, ROUNDED, this.cylinderPressure(t, x), this.air + pressure, this.weather(t), MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen) / MOLAR_MASS.hydrogen;
    }
    /** mol/s that leave the low side through a loose joint. */
    private leaking(pressure: number, c: ControlState, kelvin: number): number {
        if (!(pressure > 0) || !anyFails(c, 'leaks')) return 0;
        const around = this.bag && [...c.failed].some(([name, f]) => f === 'leaks' && (name === this.bag!.view.name || this.stackWays.some(w => w.ends === 'bag' && w.parts.includes(name)) || this.bagWays.some(w => w.parts.includes(name))));
        if (!around) return 0;
        const density = idealGasDensity(MOLAR_MASS.hydrogen, kelvin, this.air);
        return smallHoleFlow(Math.PI / 4 * LEAK ** 2, SHARP, pressure, density) * density / MOLAR_MASS.hydrogen;
    }

    /** What leaks from a flat bag that is fed: it comes to rest where as much leaks as comes in, which goes with the root of the pressure; no faster than a run can follow. */
    private eased(hole: number, intoBag: number, pressure: number, x: Float64Array, kelvin: number): number {
        if (!(hole > 0) || !(intoBag > 0) || x[at.bag] >= this.bagLimits(kelvin).flat) return hole;
        const off = pressure * (1 - (intoBag / hole) ** 2);
        const fastest = Math.abs(off) * this.bag!.dead / (GAS_CONSTANT * kelvin * FLAT_FOLLOWS);
        return intoBag + Math.sign(off) * Math.min(Math.abs(hole - intoBag), fastest);
    }

    // ---- what is sensed -------------------------------------------------------------------------------------------

    /** SI value of something sensed; undefined where a run does not follow it. Pressures as gauge. */
    sensed(quantity: string, t: number, x: Float64Array, c: ControlState): number | undefined {
        let sensor = this.sensors.get(quantity);
        if (!sensor) this.sensors.set(quantity, (sensor = this.sensorOf(quantity) ?? (() => undefined)));
        return sensor(t, x, c);
    }
    private sensorOf(quantity: string): Sensor | undefined {
        const dot = quantity.indexOf('.');
        const [name, what] = [quantity.slice(0, dot), quantity.slice(dot + 1)];
        const v = this.stack.other(name);
        if (!v) return undefined;
        if (name === this.stack.name) {
            if (what === 'temperature') return (_, x) => x[at.lye];
            if (what === 'current') return (_, x, c) => (this.stackRuns(c) ? this.laws.current.at(x[at.lye]) : 0);
            if (what === 'voltage') return (_, x, c) => (this.stackRuns(c) ? this.laws.volts.at(x[at.lye]) : 0);
        }
        if (name === this.bag?.view.name) {
            if (what === 'volume') return (t, x) => this.bagVolume(t, x);
            if (what === 'pressure' || what === 'head') return (t, x) => this.bagPressure(t, x);
        }
        if (name === this.cylinder?.view.name) {
            if (what === 'pressure') return (t, x) => this.cylinderPressure(t, x) - this.air;
            if (what === 'temperature') return t => this.weather(t);
        }
        const column = this.columns.find(q => q.view.name === name);
        if (column && what === 'level') return (t, x, c) => this.level(column, t, x, c);
        if ((column || v.kind === 'lye') && what === 'temperature') return (_, x) => x[at.lye];
        const fan = this.fans.find(f => f.name === name);
        if (fan && what === 'flow') return (_t, _x, c) => ((c.on.get(name) ?? true) ? fan.flow : 0);
        if (v.kind === 'site' && what === 'hydrogen') return (t, x) => this.roomShare(t, x);
        if (v.kind === 'site' && what === 'temperature') return t => this.weather(t);
        if (name === this.compressor?.name && what === 'discharge-temperature') return (t, x, c) => (this.compressorRuns(c) && !this.unloaded(c) ? this.dischargeTemperature(t, x) : this.weather(t));
        if (what === 'pressure' && this.bag && this.onSuction(name)) return (t, x) => this.bagPressure(t, x);
        const asAtRest = what === 'oxygen' && this.stack.paths.after(this.stack.name, 'hydrogen').includes(name) ? 'oxygen-in-hydrogen'
            : what === 'hydrogen' && this.stack.paths.after(this.stack.name, 'oxygen').includes(name) ? 'hydrogen-in-oxygen' : undefined;
        if (!asAtRest) return undefined;
        const share = this.constant(asAtRest, () => this.stack.maybeQ(asAtRest));
        return share === undefined ? undefined : () => share;
    }
    /** What the run does not move: as at rest. */
    private constant(name: string, work: () => number): number | undefined {
        if (!this.constants.has(name)) {
            const n = work();
            this.constants.set(name, n === n ? n : undefined);
        }
        return this.constants.get(name);
    }
    /** Whether a part stands between the bag and the compressor, at the pressure of the bag. */
    private onSuction(name: string): boolean {
        return !!this.compressor && this.stack.paths.between(this.bag!.view.name, this.compressor.name, 'hydrogen').includes(name);
    }
    /** As things stand before the start: cold, the bag where the last run left it, the store nearly empty. */
    begin(lye: number, bagVolume: number | undefined, storePressure: number | undefined): Float64Array {
        const x = new Float64Array(states.length);
        const kelvin = this.weather(0);
        x[at.lye] = lye;
        if (this.bag) {
            const { flat } = this.bagLimits(kelvin);
            x[at.bag] = bagVolume === undefined ? flat : flat * bagVolume / this.bag.dead;
        }
        if (this.cylinder) x[at.cylinder] = hydrogenMoles(this.cylinder.volume, kelvin, this.air + (storePressure ?? this.cylinder.view.maybe('end-pressure', 0)));
        return x;
    }
    /** Whether a run follows a failure of a part where it stands. */
    followsFailure(part: string, what: string): boolean {
        const kind = this.stack.other(part)?.kind ?? '';
        const passes = (ways: readonly Way[]) => ways.some(w => w.parts.includes(part));
        const low = passes(this.stackWays) || passes(this.bagWays);
        switch (kind) {
            case 'relief-valve': return this.reliefs.some(r => r.name === part);
            case 'check-valve': return part === this.check?.name && !!this.unloader;
            case 'unloader': return part === this.unloader?.name && !!this.compressor;
            case 'compressor': return part === this.compressor?.name;
            case 'bag': case 'gasometer': return part === this.bag?.view.name;
            case 'cylinder': return part === this.cylinder?.view.name;
            case 'cooler': return !!this.laws.make.cooler;
            case 'tube': return low || this.highLine.includes(part) ? what !== 'leaks' || low : passes(this.oxygenWays) && what !== 'leaks' && what !== 'comes off';
            case 'tee': return low;
            case 'valve': return low || passes(this.oxygenWays) || this.waterValves.includes(part);
            case 'column': case 'bubbler': case 'scrubber': case 'seal': case 'vent': return low || passes(this.oxygenWays);
            default: return true;
        }
    }
    /** The ends of what is left open of both, in each combination. */
    paces(): Pace[] {
        const ends = (v: View | undefined, quantity: string) => {
            const r = v?.result(quantity);
            return r && r.value > 0 ? [r.low / r.value, r.high / r.value] : [1];
        };
        return ends(this.stack, 'hydrogen-rate').flatMap(made => ends(this.compressor, 'free-delivery').map(delivered => ({ made, delivered })));
    }
    get hasRoom(): boolean {
        return !!this.room;
    }
}
