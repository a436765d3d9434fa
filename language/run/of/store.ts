/** The cylinder: what it holds, how warm gas and steel are, what its reliefs let out. */
import { GAS_CONSTANT, MOLAR_MASS } from '../../physics/constants.js';
import { holeFlow } from '../../physics/flow.js';
import { heatCapacityRatio } from '../../physics/gases.js';
import { hydrogenMoles, hydrogenPressure } from '../../physics/hydrogen.js';
import { ROOM } from '../../quantities/surroundings.js';
import type { View } from '../../quantities/view.js';
import type { Gases } from '../gases.js';
import { at, type Mixture, type Moment, type Sensor } from '../states.js';
import { LEAK, throughBore, WIDE } from '../ways.js';

/** mol at the least, beside which a store counts as empty. */
const NOTHING = 1e-9;
/** How long a cylinder is for its width, for its surface. Common practice, no source. */
const SLENDER = 4;
/** kg of steel for each m³ of it, and J/kg/K. Welded cylinders for liquid gas weigh about half a kilogram a litre; from memory. */
const STEEL = 550;
const STEEL_HEAT = 470;
/** J/(mol·K) of hydrogen at a fixed pressure: within a hundredth between 250 and 400 K. */
const GAS_HEAT = 28.8;
/** W/m²/K from a wall to still air and to what it radiates to. Common practice, no source. */
const TO_AIR = 10;
/** Share of the sunshine that paint takes up. Common practice, no source: light paint takes half, dark nearly all. */
const TAKES_UP = 0.8;
/** K that "warms" means: a cylinder moved beside a stove or into the sun. Common practice, no source. */
const WARMED = 40;
/** s in which an open store comes to the pressure of the air, at the end. Own choice. */
const SETTLES = 20;
/** A relief that weeps: share of its set pressure from which it does, and m³/s of gas at the state of the air. Common practice, no source. */
const WEEPS_FROM = 0.9;
const WEEPS = 10e-3 / 3600;

export interface Relief {
    readonly name: string;
    /** Pa gauge */
    readonly set: number;
    /** mol/s at a tenth over its set pressure. */
    readonly capacity: number;
    readonly outdoors: boolean;
}
export class Store {
    /** Reliefs that stand open now. */
    readonly open = new Set<string>();
    private last = { moles: NaN, kelvin: NaN, pressure: NaN };
    private readonly surface: number;
    private readonly steel: number;
    readonly inSun: boolean;

    private constructor(readonly view: View, readonly volume: number, readonly rating: number, readonly reliefs: readonly Relief[], private readonly air: number, private readonly around: (t: number) => number) {
        const width = (volume / (Math.PI * SLENDER / 4)) ** (1 / 3);
        this.surface = Math.PI * width * width * (SLENDER + 0.5);
        this.steel = STEEL * volume * STEEL_HEAT;
        const place = view.given('place').facts.get('')?.text ?? '';
        this.inSun = /\bsun/i.test(place) && !/shad|no sun|out of the sun/i.test(place);
    }
    static of(stack: View, air: number, around: (t: number) => number, notes: string[]): Store | undefined {
        const [cylinder, ...more] = stack.all('cylinder');
        const held = cylinder?.maybe('volume') ?? NaN;
        if (!cylinder || !(held > 0)) return undefined;
        if (more.length) notes.push(`Only ${cylinder.name} is filled; other cylinders are left out.`);
        const reliefs = stack.all('relief-valve').flatMap(r => {
            const set = r.maybe('set');
            const guards = stack.paths.after(cylinder.name, 'hydrogen').includes(r.name) && !stack.paths.between(cylinder.name, r.name, 'hydrogen').some(n => r.other(n)?.kind === 'regulator');
            return guards && set === set ? [{ name: r.name, set, capacity: r.maybeQ('capacity-hydrogen', WIDE * air / (GAS_CONSTANT * ROOM)), outdoors: !!stack.paths.route(r.name, 'outdoors', 'hydrogen') }] : [];
        });
        return new Store(cylinder, held, cylinder.maybe('rating'), reliefs, air, around);
    }
    begin(x: Float64Array, gauge: number | undefined, kelvin: number): void {
        x[at['cylinder-warmth']] = kelvin;
        x[at.cylinder] = hydrogenMoles(this.volume, kelvin, this.air + (gauge ?? this.view.maybe('end-pressure', 0)));
    }
    /** Pa above vacuum. */
    pressure({ x }: Pick<Moment, 'x'>): number {
        const moles = Math.max(NOTHING, x[at.cylinder]);
        const kelvin = x[at['cylinder-warmth']];
        // Asked several times at each moment.
        if (moles !== this.last.moles || kelvin !== this.last.kelvin) this.last = { moles, kelvin, pressure: hydrogenPressure(this.volume, kelvin, moles) };
        return this.last.pressure;
    }
    gauge(m: Moment): number {
        return this.pressure(m) - this.air;
    }
    mixture({ x }: Pick<Moment, 'x'>): Mixture {
        const n = Math.max(NOTHING, x[at.cylinder]);
        return { oxygen: x[at['cylinder-oxygen']] / n, nitrogen: x[at['cylinder-nitrogen']] / n };
    }
    take(gas: Mixture, flow: number, out: Float64Array): void {
        out[at.cylinder] += flow;
        out[at['cylinder-oxygen']] += flow * gas.oxygen;
        out[at['cylinder-nitrogen']] += flow * gas.nitrogen;
    }
    /** What leaves by itself: through reliefs and a hole. After everything else that comes and goes. */
    lets(m: Moment, gases: Gases, out: Float64Array): void {
        const { x, c } = m;
        const pressure = this.pressure(m);
        const gas = this.mixture(m);
        // Nearly empty it comes to the pressure of the air within seconds; how it gets there matters to nobody, and would cost many small steps.
        const most = Math.max(0, x[at.cylinder] * (1 - this.air / pressure)) / SETTLES + Math.max(0, out[at.cylinder] + out[at.line]);
        const leave = (passes: number, outdoors: boolean) => {
            const flow = Math.min(passes, most);
            this.take(gas, -flow, out);
            if (outdoors) out[at.relieved] += flow * (1 - gas.oxygen - gas.nitrogen);
            else gases.intoRoom(gas, flow, out);
        };
        for (const r of this.reliefs) {
            if (this.open.has(r.name)) leave(r.capacity * this.through(pressure) / this.through(1.1 * r.set + this.air), r.outdoors);
            else if (c.failed.get(r.name) === 'weeps' && pressure - this.air > WEEPS_FROM * r.set) leave(WEEPS * this.air / (GAS_CONSTANT * ROOM), r.outdoors);
        }
        if (c.failed.get(this.view.name) === 'leaks') leave(throughBore(LEAK, pressure, this.air, x[at['cylinder-warmth']]), false);
    }
    /** How its warmth moves, once all that comes and goes is known. @param sun  W/m² */
    warm({ t, x, c }: Moment, sun: number, out: Float64Array): void {
        const kelvin = x[at['cylinder-warmth']];
        // Gas and steel as one: what is filled or drawn here is slow beside what passes through a wall. Gas comes in at the warmth of the air.
        const around = this.around(t) + (c.failed.get(this.view.name) === 'warms' ? WARMED : 0);
        const n = Math.max(0, x[at.cylinder]);
        const flow = out[at.cylinder];
        const pressed = flow * GAS_CONSTANT * kelvin + (flow > 0 ? flow * GAS_HEAT * (around - kelvin) : 0);
        const shone = sun * TAKES_UP * this.surface / Math.PI;
        out[at['cylinder-warmth']] = (pressed + TO_AIR * this.surface * (around - kelvin) + shone) / (this.steel + n * (GAS_HEAT - GAS_CONSTANT));
    }
    /** How much a relief passes at a pressure, beside another one: by the law of a hole, so that nothing leaves an empty store. */
    private through(pressure: number): number {
        return holeFlow(1, 1, pressure, this.air, ROOM, MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen);
    }
    sensor(v: View, what: string): Sensor | undefined {
        if (v.name !== this.view.name) return undefined;
        if (what === 'pressure') return m => this.gauge(m);
        if (what === 'temperature') return m => m.x[at['cylinder-warmth']];
        if (what === 'oxygen') return m => this.mixture(m).oxygen;
        return undefined;
    }
}
