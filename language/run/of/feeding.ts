/**
 * What feeds the stack by the clock: sun on panels, the charge of a battery, a fuse that is overloaded, a supply that no longer limits.
 * And what the stack makes of it, by the laws at rest.
 */
import { batteryRest, BATTERY_RESISTANCE_PER_VOLT, panelPower, sourceIn, sourceModel, sourceParts, type Source } from '../../quantities/source.js';
import { fuseTime } from '../../physics/wiring.js';
import type { View } from '../../quantities/view.js';
import type { ControlState } from '../control-lines.js';
import { lawsOfStack, type StackLaws } from '../laws.js';
import { at, type Moment, type Sensor } from '../states.js';

/** Failures of what stands on the way of the current after which none flows. */
const cuts = new Set(['stops', 'blows', 'comes off', 'opens', 'runs empty', 'disconnects itself', 'winding shorts', 'coil fails']);
/** Shares of full light and of full charge at which the stack is solved where its source changes with them. */
const LIGHTS = [60, 150, 300, 500, 750, 1000, 1200] as const;
const CHARGES = [0.05, 0.2, 0.5, 0.8, 1] as const;
/** W/m² below which panels give the stack nothing worth counting: moonlight and dusk. Own choice. */
const DARK = 5;
/** What is left of the light on panels that a shadow falls on, or snow lies on. Common practice, no source. */
const SHADED = 0.2;
/** A supply that runs away: how much over its volts it goes, and over its limit a failed one. Own choice, no source: half-bridges and
 *  adjusters end near a third over. */
const AWAY = 1.35;
const OVER_LIMIT = 3;
/** Share of its charge at which a battery that was empty gives current again. Own choice. */
const WORTH = 0.05;
type Number = 'current' | 'volts' | 'hydrogen' | 'heat';

export class Feeding {
    readonly laws: StackLaws;
    readonly battery: { readonly view: View; readonly capacity: number } | undefined;
    readonly panels: View | undefined;
    private readonly charger: View | undefined;
    private readonly supply: string | undefined;
    /** Everything on the way of the current, for what fails there. */
    private readonly onWay: readonly string[];
    private readonly fuse: { readonly name: string; readonly share: number } | undefined;
    private readonly levels: { readonly of: 'light' | 'charge'; readonly at: readonly number[]; readonly laws: (StackLaws | undefined)[] } | undefined;
    private readonly awry = new Map<string, StackLaws>();
    private readonly powers: number[];
    /** V at the terminals of the source over those of the stack, at rest. */
    private readonly drop: number;
    private readonly source: Source;
    /** Asked many times at each moment, and different only when the control lines have moved. */
    private ran: { readonly c: ControlState; readonly turn: number; readonly runs: boolean } | undefined;
    private readonly restCurrent: number;

    constructor(private readonly stack: View, private readonly sources: readonly string[]) {
        this.laws = lawsOfStack(stack);
        this.source = stack.model(sourceModel)!;
        const parts = sourceParts(stack);
        this.panels = parts.find(p => p.kind === 'panels');
        const battery = parts.find(p => p.kind === 'battery');
        const capacity = battery?.maybe('capacity') ?? NaN;
        if (battery && capacity > 0) this.battery = { view: battery, capacity };
        this.charger = this.panels && stack.the('charger');
        this.supply = stack.other(this.source.part)?.kind === 'supply' ? this.source.part : undefined;
        this.onWay = [...new Set([...stack.paths.before(stack.name, 'current'), ...parts.map(p => p.name)])].filter(n => stack.other(n)?.kind !== 'panels');
        const fuse = this.onWay.map(n => stack.other(n)).find(v => v?.kind === 'fuse');
        const share = fuse?.maybeQ('load-share') ?? NaN;
        if (fuse && share > 0) this.fuse = { name: fuse.name, share };
        const kind = stack.other(this.source.part)?.kind;
        const of = kind === 'panels' ? 'light' : kind === 'battery' && this.battery && batteryRest(battery!, 0.2) !== batteryRest(battery!, 0.8) ? 'charge' : undefined;
        if (of) this.levels = { of, at: of === 'light' ? LIGHTS : CHARGES, laws: [] };
        this.powers = this.panels ? LIGHTS.map(light => panelPower(stack, this.panels!, light)) : [];
        const working = stack.other(this.source.part)?.maybeQ('working-voltage') ?? NaN;
        const volts = stack.maybeQ('voltage');
        this.drop = working > volts && kind !== 'battery' ? working / volts : 1;
        this.restCurrent = stack.q('current');
    }
    /** W/m² on the panels or in the open at a time; set by whoever runs it. */
    sun: (t: number) => number = () => 0;

    begin(x: Float64Array, charge: number | undefined): void {
        if (this.battery) x[at.charge] = this.battery.capacity * (charge ?? this.battery.view.maybe('charge', 1));
    }
    light({ t, c }: Moment): number {
        const failed = this.panels && c.failed.get(this.panels.name);
        return Math.max(0, this.sun(t)) * (failed === 'snowed over' ? 0 : failed === 'shaded' ? SHADED : 1);
    }
    /** Whether everything that can be switched on the way of the current is on, and nothing of it has failed. */
    runs(c: ControlState): boolean {
        if (this.ran?.c !== c || this.ran.turn !== c.turn) this.ran = { c, turn: c.turn, runs: this.running(c) };
        return this.ran.runs;
    }
    private running(c: ControlState): boolean {
        if (c.mainsLost && !this.battery && !this.panels) return false;
        if (!this.sources.every(s => c.on.get(s) ?? true)) return false;
        for (const [name, failure] of c.failed) if (cuts.has(failure) && this.onWay.includes(name)) return false;
        return true;
    }
    /** What the stack does at a moment, A, V, mol/s or W; 0 while nothing feeds it. */
    of(what: Number, m: Moment): number {
        if (!this.runs(m.c)) return 0;
        const T = m.x[at.lye];
        const failed = this.supply && m.c.failed.get(this.supply);
        if (failed === 'limit fails' || failed === 'runs away') return this.awryLaws(failed)[what].at(T);
        if (!this.levels) return this.laws[what].at(T);
        const { of, at: marks } = this.levels;
        const level = of === 'light' ? this.light(m) : this.chargeShare(m.x);
        if (of === 'light' && level < DARK) return 0;
        let i = 0;
        while (i < marks.length - 2 && level > marks[i + 1]) i++;
        const share = Math.min(1, (level - marks[i]) / (marks[i + 1] - marks[i]));
        const low = this.lawsAt(i)[what].at(T);
        // Below the dimmest that was solved, current goes with the light.
        if (share < 0) return of === 'light' && what !== 'volts' ? low * level / marks[0] : low;
        return low + share * (this.lawsAt(i + 1)[what].at(T) - low);
    }
    private lawsAt(i: number): StackLaws {
        const { of, at: marks, laws } = this.levels!;
        return (laws[i] ??= lawsOfStack(this.stack, sourceIn(this.stack, { [of]: marks[i] })));
    }
    private awryLaws(failure: string): StackLaws {
        let laws = this.awry.get(failure);
        if (!laws) {
            const limit = this.source.limit * OVER_LIMIT;
            laws = lawsOfStack(this.stack, { ...this.source, open: this.source.open * (failure === 'runs away' ? AWAY : 1), limit, limited: limit < Infinity });
            this.awry.set(failure, laws);
        }
        return laws;
    }
    chargeShare(x: Float64Array): number {
        return this.battery ? x[at.charge] / this.battery.capacity : 1;
    }
    /** A out of the battery for the stack. */
    private drawn(m: Moment): number {
        const current = this.of('current', m);
        if (!this.battery || !(current > 0)) return 0;
        if (this.source.part === this.battery.view.name) return current;
        const converter = this.stack.other(this.source.part)!;
        return current * this.of('volts', m) * this.drop / (converter.maybe('efficiency', this.source.efficiency) * this.battery.view.num('voltage'));
    }
    /** W that the panels could give. */
    power(m: Moment): number {
        const light = this.light(m);
        let i = 0;
        while (i < LIGHTS.length - 2 && light > LIGHTS[i + 1]) i++;
        const [low, high] = [this.powers[i], this.powers[i + 1]];
        return light < LIGHTS[0] ? low * light / LIGHTS[0] : low + (high - low) * (light - LIGHTS[i]) / (LIGHTS[i + 1] - LIGHTS[i]);
    }
    /** A that the charger would give the battery. */
    private charging(m: Moment): number {
        if (!this.panels || !this.charger || !this.battery || m.c.failed.get(this.charger.name) === 'stops' || m.c.on.get(this.charger.name) === false) return 0;
        return Math.min(this.charger.maybe('current-limit', Infinity), this.power(m) * this.charger.maybe('efficiency', 1) / this.battery.view.num('voltage'));
    }
    /** V at its terminals. */
    private batteryVolts(m: Moment): number {
        const { view } = this.battery!;
        const plate = view.num('voltage');
        return batteryRest(view, Math.max(0, Math.min(1, this.chargeShare(m.x)))) - this.drawn(m) * view.maybe('internal-resistance', BATTERY_RESISTANCE_PER_VOLT * plate);
    }
    slope(m: Moment, out: Float64Array): void {
        if (this.battery) {
            const net = this.charging(m) - this.drawn(m);
            // Full, it takes no more than is drawn.
            out[at.charge] = m.x[at.charge] >= this.battery.capacity ? Math.min(0, net) : net;
        }
        if (this.fuse) {
            const time = fuseTime(this.fuse.share * this.of('current', m) / this.restCurrent);
            if (time < Infinity) out[at.fuse] = 1 / time;
        }
    }
    /** What the way of the current does by itself: a fuse that blows, a battery that is empty or gives again. */
    watches(c: ControlState): { readonly part: string; readonly failure: string | undefined; readonly value: (m: Moment) => number; readonly tells: string }[] {
        const out = [];
        if (this.fuse && !c.failed.has(this.fuse.name)) out.push({ part: this.fuse.name, failure: 'blows', value: (m: Moment) => m.x[at.fuse] - 1, tells: `${this.fuse.name} blows` });
        if (this.battery) {
            const { name } = this.battery.view;
            const failed = c.failed.get(name);
            if (failed === undefined) out.push({ part: name, failure: 'runs empty', value: (m: Moment) => -this.chargeShare(m.x), tells: `${name} is empty` });
            else if (failed === 'runs empty') out.push({ part: name, failure: undefined, value: (m: Moment) => this.chargeShare(m.x) - WORTH, tells: `${name} gives current again` });
        }
        return out;
    }
    sensor(v: View, what: string): Sensor | undefined {
        if (v.name === this.stack.name || v.name === this.supply) {
            if (what === 'current') return m => this.of('current', m);
            if (what === 'voltage') return m => this.of('volts', m) * (v.name === this.supply ? this.drop : 1);
            if (what === 'power') return m => this.of('current', m) * this.of('volts', m) * (v.name === this.supply ? this.drop : 1);
        }
        if (v.name === this.panels?.name) {
            if (what === 'power') return m => this.power(m);
            if (what === 'irradiance') return m => this.light(m);
        }
        if (v.name === this.battery?.view.name) {
            if (what === 'voltage') return m => this.batteryVolts(m);
            if (what === 'charge') return m => this.chargeShare(m.x);
            if (what === 'current') return m => this.drawn(m);
        }
        return undefined;
    }
    followsFailure(part: string, kind: string, what: string): boolean {
        if (kind === 'panels') return part === this.panels?.name;
        if (kind === 'charger') return part === this.charger?.name && !!this.battery;
        if (kind === 'supply' && (what === 'limit fails' || what === 'runs away')) return part === this.supply && this.source.kind === 'voltage' && (what === 'runs away' || this.source.limited);
        return this.onWay.includes(part) && cuts.has(what);
    }
    /** What of this rig is not followed, in sentences. */
    notes(): string[] {
        const out = [];
        const [battery] = this.stack.all('battery');
        if (battery && !this.battery) out.push(`How much ${battery.name} holds is not known: its charge is not followed.`);
        if (this.battery && !this.battery.view.said('charge')) out.push(`${this.battery.view.name} is taken to be full at the start.`);
        return out;
    }
}
