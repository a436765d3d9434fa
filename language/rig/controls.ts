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
const keysByKind = new Map<Kind, readonly string[]>();
/** Those of the keys above that a kind of part has; for most kinds none. */
function keysOf(view: View): readonly string[] {
    const kind = view.part.kind;
    if (!kind || kind.statement) return [];
    let keys = keysByKind.get(kind);
    if (!keys) keysByKind.set(kind, (keys = allKeys.filter(k => k in kind.properties)));
    return keys;
}

export class Controls {
    private cache = new Map<string, Set<string>>();
    private parts = new Map<string, Set<string>>();
    private heard: Map<string, Set<string>> | undefined;
    private sensors: Map<string, View[]> | undefined;
    private stopped: Map<string, string[]> | undefined;
    private stackSet: ReadonlySet<string> | undefined;
    private sourceList: readonly View[] | undefined;
    constructor(private readonly workings: Workings) {}

    /**
     * Devices any one of which, dropping or tripping, stops a driven part: its own `stopped-by` and single `needs`, and
     * those of what it needs, all the way up. A device behind an `or` stops nothing by itself and is left out.
     */
    stoppers(name: string): ReadonlySet<string> {
        let found = this.cache.get(name);
        if (found) return found;
        this.cache.set(name, (found = new Set()));
        const view = this.workings.viewOf(name);
        if (!view || !keysOf(view).length) return found;
        for (const key of stopKeys.slice(0, 2)) for (const stop of this.single(view, key)) this.add(found, stop);
        for (const key of needKeys.slice(0, 1)) for (const need of this.single(view, key)) this.add(found, need);
        return found;
    }
    private add(found: Set<string>, device: string): void {
        const own = device.split('.')[0];
        if (found.has(own)) return;
        found.add(own);
        for (const above of this.stoppers(own)) found.add(above);
        const follows = this.workings.viewOf(own)?.word('follows');
        if (follows) for (const above of this.stoppers(follows)) found.add(above);
    }
    /** Names in a list that stand alone, not behind an `or`. */
    private single(view: View, key: string): string[] {
        return view.rows(key).flatMap(row => [...row.values()].flatMap(f => (f.condition && f.condition.join !== 'or' ? f.condition.of.map(c => c.names.join('.')) : [])));
    }
    /** Everything that a device takes part in driving, directly: names of the driven parts. */
    listeners(device: string): string[] {
        if (!this.heard) {
            this.heard = new Map();
            for (const view of this.workings.allViews()) {
                if (view.part.pattern) continue;
                const named = keysOf(view).flatMap(key => (key === 'follows' ? [...view.names(key), view.word(key) ?? ''] : view.names(key)));
                for (const n of named) {
                    const own = n.split('.')[0];
                    if (!own || own === view.name) continue;
                    const list = this.heard.get(own);
                    if (list) list.add(view.name);
                    else this.heard.set(own, new Set([view.name]));
                }
            }
        }
        return [...(this.heard.get(device) ?? [])];
    }
    /** Every device that has any part in what drives this, those behind an `or` and what starts them included. */
    involved(name: string): ReadonlySet<string> {
        const known = this.parts.get(name);
        if (known) return known;
        const found = new Set<string>();
        this.parts.set(name, found);
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
        if (!this.stopped) {
            this.stopped = new Map();
            for (const view of this.workings.allViews()) {
                for (const stopper of this.stoppers(view.name)) {
                    const list = this.stopped.get(stopper);
                    if (list) list.push(view.name);
                    else this.stopped.set(stopper, [view.name]);
                }
            }
        }
        return this.stopped.get(device) ?? [];
    }
    /** Trips, analysers and detectors that stop a part. */
    trips(name: string): View[] {
        return [...this.stoppers(name)].map(n => this.workings.viewOf(n)).filter((v): v is View => !!v && ['trip', 'analyser', 'detector'].includes(v.kind));
    }
    /** What feeds current to the stack and can be stopped: the driven parts on its current path. A charger that fills a battery feeds the battery. */
    sources(): readonly View[] {
        return (this.sourceList ??= this.findSources());
    }
    private findSources(): View[] {
        const names = new Set(this.workings.paths.on('current'));
        return [...this.workings.allViews()].filter(v => (v.kind === 'supply' || v.kind === 'transformer' || (v.kind === 'charger' && !this.workings.partsOf('battery').length)) && (names.size === 0 || names.has(v.name)));
    }
    /** Devices that stop the making of gas, by any of the sources' chains. */
    stackStoppers(): ReadonlySet<string> {
        return (this.stackSet ??= new Set(this.sources().flatMap(source => [...this.stoppers(source.name)])));
    }
    /** Switches, trips, analysers and detectors that sense a quantity: 'bag.volume'. */
    sensing(quantity: string, kinds: readonly string[] = ['switch', 'trip', 'analyser', 'detector', 'sensor']): View[] {
        if (!this.sensors) {
            this.sensors = new Map();
            for (const kind of ['switch', 'trip', 'analyser', 'detector', 'sensor']) {
                for (const v of this.workings.partsOf(kind)) {
                    const sensed = this.sensed(v);
                    if (v.part.pattern || !sensed) continue;
                    const list = this.sensors.get(sensed);
                    if (list) list.push(v);
                    else this.sensors.set(sensed, [v]);
                }
            }
        }
        return (this.sensors.get(quantity) ?? []).filter(v => kinds.includes(v.kind));
    }
    /** What a switch senses, as 'part.quantity'. */
    sensed(view: View): string | undefined {
        return view.given('senses').facts.get('')?.names?.join('.');
    }
}
