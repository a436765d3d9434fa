/** The compressor with what helps it to start: what it draws, presses and lets back. */
import type { View } from '../../quantities/view.js';
import type { ControlState } from '../control-lines.js';
import { lawsOfCompressor, type CompressorLaws } from '../laws.js';
import { at, type Moment, type Sensor } from '../states.js';
import { blocks, opens, throughBore } from '../ways.js';
import type { Bag } from './bag.js';
import { Line } from './line.js';
import type { Store } from './store.js';

/** Of what it delivers, what is left when its valves are worn. Common practice, no source: half. */
const WORN = 0.5;
const lets = new Set(['leaks back', 'sticks open', 'passes']);

export class Pump {
    readonly power: number;
    readonly startsBelow: number;
    readonly highLine: readonly string[];
    private readonly unloader: View | undefined;
    private readonly check: View | undefined;
    readonly line: Line;

    private constructor(readonly view: View, private readonly laws: CompressorLaws, stack: View, private readonly bag: Bag, private readonly store: Store, private readonly air: number, private readonly around: (t: number) => number) {
        this.power = view.maybe('power', 0);
        this.startsBelow = view.maybe('starts-against');
        this.unloader = stack.all('unloader')[0];
        this.check = stack.all('check-valve').find(c => stack.paths.after(view.name, 'hydrogen').includes(c.name) && stack.paths.before(store.view.name, 'hydrogen').includes(c.name));
        this.line = new Line(view, this.unloader?.maybe('orifice') ?? NaN, bag, store, air, around);
        this.highLine = [...stack.paths.between(view.name, store.view.name, 'hydrogen'), store.view.name];
    }
    /** Undefined where none stands between bag and store, or what it delivers is not known. */
    static of(stack: View, bag: Bag | undefined, store: Store | undefined, air: number, room: number, around: (t: number) => number, notes: string[]): Pump | undefined {
        const compressor = bag && store && stack.all('compressor').find(c => stack.paths.after(c.name, 'hydrogen').includes(store.view.name) && stack.paths.after(bag.view.name, 'hydrogen').includes(c.name));
        if (!compressor) return undefined;
        const laws = lawsOfCompressor(compressor, air, Math.max(store.rating || 0, store.view.maybeQ('cut-off', 0), 1e5), room);
        if (laws) return new Pump(compressor, laws, stack, bag, store, air, around);
        notes.push(`What ${compressor.name} delivers is not known: it is not followed.`);
        return undefined;
    }
    runs(c: ControlState): boolean {
        return c.on.get(this.view.name) ?? false;
    }
    unloaded(c: ControlState): boolean {
        return !!this.unloader && (c.on.get(this.unloader.name) ?? false);
    }
    /** K of what leaves it; that of the air while it does not press. */
    discharge(m: Moment): number | undefined {
        return this.runs(m.c) && !this.unloaded(m.c) ? this.laws.discharge?.at(this.store.pressure(m)) : this.around(m.t);
    }
    begin(x: Float64Array): void {
        this.line.begin(x, this.unloader?.word('if-unpowered') === 'opens');
    }
    /** Pa between both sides when it is about to start. */
    startsAgainst(m: Moment): number {
        return Math.max(0, this.line.over(m));
    }
    private leaking(c: ControlState): boolean {
        return !!this.unloader && c.failed.get(this.unloader.name) === 'leaks';
    }
    /** Whether nothing holds the gas of the store back. */
    private free(c: ControlState): boolean {
        return !this.check || lets.has(c.failed.get(this.check.name) ?? '');
    }
    settle(m: Moment, stalled: boolean): void {
        const { c } = m;
        this.line.settle(m, this.unloaded(c) || this.leaking(c) && !this.runs(c), this.free(c), this.runs(c) && !stalled);
    }
    /** mol/s that it takes out of the bag. */
    draws(m: Moment, pace: number, stalled: boolean): number {
        if (!this.runs(m.c) || stalled || this.unloaded(m.c)) return 0;
        const worn = m.c.failed.get(this.view.name) === 'valves worn' ? WORN : 1;
        // What a stroke takes in follows the density of what it draws.
        return worn * pace * this.laws.flow.at(this.line.fills ? this.line.pressure(m) : this.store.pressure(m)) * Math.max(0, (this.air + this.bag.pressure(m)) / this.air);
    }
    /** Whether the line to the store is shut somewhere, or stands open to the room. */
    broken(c: ControlState): 'shut' | 'open' | undefined {
        for (const n of this.highLine) {
            const failure = c.failed.get(n);
            if (failure && blocks.has(failure)) return 'shut';
            if (failure && opens.has(failure)) return 'open';
        }
        return undefined;
    }
    /** mol/s that come back from the store through an open unloader, where no check valve holds them. */
    back(m: Moment): number {
        if (!this.unloader || !(this.unloaded(m.c) || this.leaking(m.c)) || !this.free(m.c)) return 0;
        const bore = this.unloader.maybe('orifice');
        if (!(bore > 0)) return 0;
        return throughBore(bore, this.store.pressure(m), this.air + this.bag.pressure(m), this.around(m.t));
    }
    slope({ c }: Moment, out: Float64Array): void {
        if (!this.runs(c)) return;
        out[at['compressor-energy']] = this.power;
        out[at['compressor-hours']] = 1;
    }
    sensor(v: View, what: string): Sensor | undefined {
        return v.name === this.view.name && what === 'discharge-temperature' ? m => this.discharge(m) : undefined;
    }
    followsFailure(part: string, kind: string, what: string): boolean | undefined {
        switch (kind) {
            case 'compressor': return part === this.view.name && what !== 'fan stops';
            case 'check-valve': return part === this.check?.name && (what === 'sticks shut' || !!this.unloader);
            case 'unloader': return part === this.unloader?.name;
            case 'tube': case 'dryer': case 'filter': case 'valve': return this.highLine.includes(part) && what !== 'leaks' && what !== 'used up' && what !== 'passes' ? true : undefined;
            default: return undefined;
        }
    }
}
