/**
 * The gas between a compressor and the check valve behind it: it must be pressed up to the store before anything is delivered, it stands
 * under pressure after a stop, and the unloader lets it back before the next start.
 */
import { GAS_CONSTANT } from '../../physics/constants.js';
import { hydrogenMoles, hydrogenPressure } from '../../physics/hydrogen.js';
import type { View } from '../../quantities/view.js';
import { at, type Mixture, type Moment } from '../states.js';
import { throughBore } from '../ways.js';
import type { Bag } from './bag.js';
import type { Store } from './store.js';

/** Pa over the bag at which the line counts as empty. Own choice: what is left of a blow-down then matters to no motor. */
const EMPTY = 1e3;
/** mol: less counts as none. */
const NOTHING = 1e-9;
/** Kinds of compressor whose shell stands at the discharge. From memory: rotary ones are built so, reciprocating ones stand at the suction. */
const shellAtDischarge = new Set(['hermetic-rotary']);

export class Line {
    /** 'joined': open to the store by the check valve, at its pressure. */
    private is: 'empty' | 'emptying' | 'filling' | 'held' | 'joined' = 'empty';
    /** m³ */
    readonly volume: number;
    private last = { moles: NaN, kelvin: NaN, pressure: NaN };

    constructor(compressor: View, private readonly bore: number, private readonly bag: Bag, private readonly store: Store, private readonly air: number, private readonly around: (t: number) => number) {
        this.volume = compressor.maybe('discharge-volume', 0) + (shellAtDischarge.has(compressor.word('sort') ?? '') ? compressor.maybe('shell-volume', 0) : 0);
    }
    /** @param empty  an unloader that opens by itself has let it go */
    begin(x: Float64Array, empty: boolean): void {
        this.is = empty ? 'empty' : 'joined';
        const kelvin = this.around(0);
        const moment = { t: 0, x };
        x[at.line] = empty ? (this.air + this.bag.pressure(moment)) * this.volume / (GAS_CONSTANT * kelvin) : hydrogenMoles(this.volume, kelvin, this.store.pressure(moment));
    }
    get joined(): boolean {
        return this.is === 'joined';
    }
    get fills(): boolean {
        return this.is === 'filling';
    }
    /** Whether what is pressed comes into it first; there is no line without a volume. */
    get takes(): boolean {
        return this.volume > 0;
    }
    /** Pa above vacuum. */
    pressure(m: Pick<Moment, 't' | 'x'>): number {
        if (this.is === 'joined') return this.store.pressure(m);
        const moles = Math.max(NOTHING, m.x[at.line]);
        const kelvin = this.around(m.t);
        if (moles !== this.last.moles || kelvin !== this.last.kelvin) this.last = { moles, kelvin, pressure: hydrogenPressure(this.volume, kelvin, moles) };
        return this.last.pressure;
    }
    /** Pa over what stands before the compressor. */
    over(m: Pick<Moment, 't' | 'x'>): number {
        return this.pressure(m) - this.air - this.bag.pressure(m);
    }
    private mixture(x: Float64Array): Mixture {
        const n = Math.max(NOTHING, x[at.line]);
        return { oxygen: x[at['line-oxygen']] / n, nitrogen: x[at['line-nitrogen']] / n };
    }
    /**
     * What the contacts and the pressures make of it, once they have come to rest.
     * @param open    the unloader stands open or leaks
     * @param free    nothing holds the gas of the store back
     * @param presses the compressor runs and is loaded
     */
    settle(m: Moment, open: boolean, free: boolean, presses: boolean): void {
        if (!(this.volume > 0)) return;
        if (free) {
            if (this.is !== 'joined') this.level(m.x);
            this.is = 'joined';
        } else if (open) this.is = this.is === 'empty' || this.over(m) <= EMPTY * (1 + 1e-6) ? 'empty' : 'emptying';
        else if (presses) this.is = this.is === 'joined' || this.pressure(m) >= this.store.pressure(m) * (1 - 1e-9) ? 'joined' : 'filling';
        else if (this.is !== 'joined') this.is = 'held';
    }
    /** At once at one pressure with the store. */
    private level(x: Float64Array): void {
        const share = this.volume / (this.volume + this.store.volume);
        for (const gas of ['', '-oxygen', '-nitrogen'] as const) {
            const [a, b] = [at[`line${gas}`], at[`cylinder${gas}`]];
            const all = x[a] + x[b];
            x[a] = share * all;
            x[b] = all - x[a];
        }
    }
    take(gas: Mixture, flow: number, out: Float64Array): void {
        out[at.line] += flow;
        out[at['line-oxygen']] += flow * gas.oxygen;
        out[at['line-nitrogen']] += flow * gas.nitrogen;
    }
    /** What the unloader lets back into the bag: mol/s, and of which gases. */
    lets(m: Moment): { readonly flow: number; readonly gas: Mixture } | undefined {
        if (this.is !== 'emptying' || !(this.bore > 0)) return undefined;
        return { flow: throughBore(this.bore, this.pressure(m), this.air + this.bag.pressure(m), this.around(m.t)), gas: this.mixture(m.x) };
    }
    /** While both are one: what goes on from the line into the store, or comes back, so that both stay at one pressure. After all that comes into either and leaves it. */
    slope({ x }: Moment, out: Float64Array): void {
        if (this.is !== 'joined' || !(this.volume > 0)) return;
        const part = x[at.line] / (x[at.line] + x[at.cylinder]);
        const on = out[at.line] - part * (out[at.line] + out[at.cylinder]);
        const gas = on > 0 ? this.mixture(x) : this.store.mixture({ x });
        this.take(gas, -on, out);
        this.store.take(gas, on, out);
    }
    /** Moments at which it becomes something else; each below zero until then. */
    watches(): ((m: Moment) => number)[] {
        if (this.is === 'emptying') return [m => EMPTY - this.over(m)];
        if (this.is === 'filling') return [m => this.pressure(m) - this.store.pressure(m)];
        return [];
    }
}
