/**
 * What drives what: `needs` (all of them), `stopped-by` (any one), `latched-by`, and their mirrors on valves. Answers
 * the reviewer's questions: what stops this, what does that stop, which of them are one device in truth.
 */
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import type { Kind } from '../vocabulary/define.js';

const stopKeys = ['stopped-by', 'shut-by', 'opened-by'] as const;
const needKeys = ['needs', 'open-while', 'shut-while'] as const;
const otherKeys = ['latched-by', 'sounded-by', 'follows', 'armed-while'] as const;
const allKeys: readonly string[] = [...stopKeys, ...needKeys, ...otherKeys];
/** Properties that what is kept here hangs on, beside the paths and which parts there are. */
export const controlKeys: readonly string[] = [...allKeys, 'senses'];
const keysByKind = new Map<Kind, readonly string[]>();
/** Those of the keys above that a kind of part has; for most kinds none. */
function keysOf(view: View): readonly string[] {
    const kind = view.part.kind;
    if (!kind || kind.statement) return [];
    let keys = keysByKind.get(kind);
    if (!keys) keysByKind.set(kind, (keys = allKeys.filter(k => k in kind.properties)));
    return keys;
}

/** What was found of a rig's control lines: names only, good as long as `Memory.controls` stays the same. */
export class FoundControls {
    readonly stoppers = new Map<string, ReadonlySet<string>>();
    readonly involved = new Map<string, ReadonlySet<string>>();
    listeners: ReadonlyMap<string, ReadonlySet<string>> | undefined;
    sensors: ReadonlyMap<string, readonly string[]> | undefined;
    stopped: ReadonlyMap<string, readonly string[]> | undefined;
    stackStoppers: ReadonlySet<string> | undefined;
    sources: readonly string[] | undefined;
}

export class Controls {
    constructor(private readonly workings: Workings, private readonly found = new FoundControls()) {}

    /**
     * Devices any one of which, dropping or tripping, stops a driven part: its own `stopped-by` and single `needs`, and
     * those of what it needs, all the way up. A device behind an `or` stops nothing by itself and is left out.
     */
    stoppers(name: string): ReadonlySet<string> {
        let found = this.found.stoppers.get(name);
        if (!found) this.found.stoppers.set(name, (found = this.workings.unnoted(() => this.findStoppers(name))));
        return found;
    }
    private findStoppers(name: string): Set<string> {
        const found = new Set<string>();
        const looked = new Set([name]);
        for (const n of looked) {
            const view = this.workings.viewOf(n);
            if (!view || !keysOf(view).length) continue;
            for (const key of ['stopped-by', 'shut-by', 'needs']) {
                for (const device of this.single(view, key)) {
                    const own = device.split('.')[0];
                    found.add(own);
                    looked.add(own);
                }
            }
            // A contact that follows another device stops with it.
            const follows = n === name ? undefined : view.word('follows');
            if (follows) looked.add(follows);
        }
        return found;
    }
    /** Names in a list that stand alone, not behind an `or`. */
    private single(view: View, key: string): string[] {
        return view.rows(key).flatMap(row => [...row.values()].flatMap(f => (f.condition && f.condition.join !== 'or' ? f.condition.of.map(c => c.names.join('.')) : [])));
    }
    /** Everything that a device takes part in driving, directly: names of the driven parts. */
    listeners(device: string): string[] {
        this.found.listeners ??= this.workings.unnoted(() => this.findListeners());
        return [...(this.found.listeners.get(device) ?? [])];
    }
    private findListeners(): Map<string, Set<string>> {
        const heard = new Map<string, Set<string>>();
        for (const view of this.workings.allViews()) {
            if (view.part.pattern) continue;
            const named = keysOf(view).flatMap(key => (key === 'follows' ? [...view.names(key), view.word(key) ?? ''] : view.names(key)));
            for (const n of named) {
                const own = n.split('.')[0];
                if (!own || own === view.name) continue;
                const list = heard.get(own);
                if (list) list.add(view.name);
                else heard.set(own, new Set([view.name]));
            }
        }
        return heard;
    }
    /** Every device that has any part in what drives this, those behind an `or` and what starts them included. */
    involved(name: string): ReadonlySet<string> {
        let found = this.found.involved.get(name);
        if (!found) this.found.involved.set(name, (found = this.workings.unnoted(() => this.findInvolved(name))));
        return found;
    }
    private findInvolved(name: string): Set<string> {
        const found = new Set<string>();
        const queue = [name];
        for (let n = queue.shift(); n !== undefined; n = queue.shift()) {
            const view = this.workings.viewOf(n);
            if (!view) continue;
            for (const key of keysOf(view)) {
                if (key === 'sounded-by' || key === 'armed-while') continue;
                for (const other of view.names(key)) {
                    const own = other.split('.')[0];
                    if (found.has(own) || own === name) continue;
                    found.add(own);
                    queue.push(own);
                }
            }
        }
        return found;
    }
    /** Whether it starts again only when a hand presses a button: it, or something that it cannot run without, is latched by one. */
    startsByHand(name: string): boolean {
        return [name, ...this.stoppers(name)].some(n => this.workings.viewOf(n)?.names('latched-by').some(b => this.workings.viewOf(b.split('.')[0])?.kind === 'button'));
    }
    /** Contactors and relays whose contact its current passes: any one of them, dropping, stops it. */
    interrupters(name: string): View[] {
        const view = this.workings.viewOf(name);
        return view ? this.single(view, 'needs').map(n => this.workings.viewOf(n.split('.')[0])).filter((v): v is View => !!v && ['contactor', 'relay', 'solid-state-relay'].includes(v.kind)) : [];
    }
    /** The key under which a device says where it stops what hears it: a switch breaks, the others trip. */
    actsAt(device: View): 'breaks' | 'trips' {
        return device.kind === 'switch' ? 'breaks' : 'trips';
    }
    /** Devices that stop a driven part when a quantity goes above or below their point. */
    limits(driven: ReadonlySet<string>, quantity: string, side: 'above' | 'below'): View[] {
        return this.sensing(quantity).filter(d => driven.has(d.name) && d.word(`${this.actsAt(d)}.side`) === side);
    }
    /** Driven parts that a device stops, directly or by way of contactors and relays. */
    stops(device: string): readonly string[] {
        this.found.stopped ??= this.workings.unnoted(() => this.findStopped());
        return this.found.stopped.get(device) ?? [];
    }
    private findStopped(): Map<string, string[]> {
        const stopped = new Map<string, string[]>();
        for (const view of this.workings.allViews()) {
            for (const stopper of this.stoppers(view.name)) {
                const list = stopped.get(stopper);
                if (list) list.push(view.name);
                else stopped.set(stopper, [view.name]);
            }
        }
        return stopped;
    }
    /** Trips, analysers and detectors that stop a part. */
    trips(name: string): View[] {
        return [...this.stoppers(name)].map(n => this.workings.viewOf(n)).filter((v): v is View => !!v && ['trip', 'analyser', 'detector'].includes(v.kind));
    }
    /** What feeds current to the stack and can be stopped: the driven parts on its current path. A charger that fills a battery feeds the battery. */
    sources(): readonly View[] {
        return this.viewsOf((this.found.sources ??= this.workings.unnoted(() => this.findSources().map(v => v.name))));
    }
    private findSources(): View[] {
        const names = new Set(this.workings.paths.on('current'));
        return [...this.workings.allViews()].filter(v => (v.kind === 'supply' || v.kind === 'transformer' || (v.kind === 'charger' && !this.workings.partsOf('battery').length)) && (names.size === 0 || names.has(v.name)));
    }
    /** Devices that stop the making of gas, by any of the sources' chains. */
    stackStoppers(): ReadonlySet<string> {
        return (this.found.stackStoppers ??= new Set(this.sources().flatMap(source => [...this.stoppers(source.name)])));
    }
    /** Switches, trips, analysers and detectors that sense a quantity: 'bag.volume'. */
    sensing(quantity: string, kinds?: readonly string[]): View[] {
        this.found.sensors ??= this.workings.unnoted(() => this.findSensors());
        const names = this.found.sensors.get(quantity);
        if (!names) return [];
        const views = this.viewsOf(names);
        return kinds ? views.filter(v => kinds.includes(v.kind)) : views;
    }
    private viewsOf(names: readonly string[]): View[] {
        return names.map(n => this.workings.viewOf(n)).filter((v): v is View => !!v);
    }
    private findSensors(): Map<string, string[]> {
        const sensors = new Map<string, string[]>();
        for (const kind of ['switch', 'trip', 'analyser', 'detector', 'sensor']) {
            for (const v of this.workings.partsOf(kind)) {
                const sensed = this.sensed(v);
                if (v.part.pattern || !sensed) continue;
                const list = sensors.get(sensed);
                if (list) list.push(v.name);
                else sensors.set(sensed, [v.name]);
            }
        }
        return sensors;
    }
    /** What a switch senses, as 'part.quantity'. */
    sensed(view: View): string | undefined {
        return view.given('senses').facts.get('')?.names?.join('.');
    }
}
