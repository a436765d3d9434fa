/** What lets pressure out by itself: seals on the soft side, relief valves on the high side, and what could shut them off. */
import { Paths } from '../rig/paths.js';
import type { View } from '../quantities/view.js';

type Gas = 'hydrogen' | 'oxygen';

const closing = new Set(['valve', 'check-valve', 'filter', 'dryer', 'arrestor', 'regulator', 'bubbler']);
/** Where the pressure of a store ends: behind these stands another pressure. */
const borders = new Set(['relief-valve', 'compressor', 'unloader', 'regulator', 'seal', 'vent', 'bag', 'gasometer', 'stack']);

export interface Reliefs {
    /** Nothing between the vessel and these can shut. */
    readonly open: readonly View[];
    /** Joined to the vessel, but behind something that can shut or clog. */
    readonly shut: readonly { readonly relief: View; readonly by: View }[];
}
/** Relief valves on the pressure of a vessel. */
export function reliefsOf(vessel: View): Reliefs {
    const kind = (name: string) => vessel.other(name)?.kind ?? '';
    const space = vessel.paths.space(vessel.name, 'hydrogen', n => borders.has(kind(n)));
    const open: View[] = [];
    const shut: { relief: View; by: View }[] = [];
    for (const name of space.keys()) {
        const relief = vessel.other(name);
        if (relief?.kind !== 'relief-valve') continue;
        const by = Paths.trail(space, name).slice(1, -1).map(n => vessel.other(n)).find(p => p && closing.has(p.kind));
        if (by) shut.push({ relief, by });
        else open.push(relief);
    }
    return { open, shut };
}
/** Parts on the same pressure as a relief valve: what it guards, whatever stands between. */
export function guardedBy(relief: View): View[] {
    const inlet = relief.paths.to(relief.name, 'hydrogen')[0]?.from.name;
    const kind = (name: string) => relief.other(name)?.kind ?? '';
    if (!inlet || borders.has(kind(inlet))) return [];
    const space = relief.paths.space(inlet, 'hydrogen', n => borders.has(kind(n)));
    return [...space.keys()].map(n => relief.other(n)).filter((p): p is View => !!p && p.name !== relief.name);
}
export interface SoftRelief {
    readonly view: View;
    /** Pressure in the bag or bell at which it lets gas out, Pa; NaN if unknown. */
    readonly opens: number;
}
/** Seals and relief valves that let the gas of a bag or bell out, its inflow included, with nothing between that can shut. */
export function softReliefs(store: View, gas: Gas = 'hydrogen'): SoftRelief[] {
    const kind = (name: string) => store.other(name)?.kind ?? '';
    const space = store.paths.space(store.name, gas, n => ['compressor', 'valve', 'regulator', 'seal', 'relief-valve', 'vent', 'stack', 'burner', 'arrestor'].includes(kind(n)));
    const found: SoftRelief[] = [];
    for (const name of space.keys()) {
        const view = store.other(name);
        if (view?.kind !== 'seal' && view?.kind !== 'relief-valve') continue;
        // One that stands before a bubbler opens when bag and bubbler together reach its depth.
        const between = Paths.trail(space, name).slice(1, -1).map(n => store.other(n)).reduce((sum, p) => sum + (p && ['bubbler', 'scrubber'].includes(p.kind) ? p.maybeQ('head', 0) : 0), 0);
        found.push({ view, opens: (view.kind === 'seal' ? view.maybeQ('opens-at') : view.maybe('set')) - between });
    }
    return found;
}
/** The cut-off of a vessel: the switch whose opening ends the filling, and the key that says where. */
export function cutOffOf(vessel: View): { readonly device: View; readonly key: 'breaks' | 'makes' } | undefined {
    for (const device of vessel.controls.sensing(`${vessel.name}.pressure`, ['switch'])) {
        for (const key of ['breaks', 'makes'] as const) if (device.word(`${key}.side`) === 'above') return { device, key };
    }
    return undefined;
}
/** The vessel has no regulator between it and a part: both stand on the store's pressure. */
export function onStorePressure(vessel: View, name: string): boolean {
    return vessel.paths.space(vessel.name, 'hydrogen', n => borders.has(vessel.other(n)?.kind ?? '')).has(name);
}
/** Pa under a metre of water: 998 kg/m³ at 20 °C, standard gravity. */
export const WATER_COLUMN = 998 * 9.80665;
/** Pa, 50 mm of water: what a seal should open above the pressure of ordinary running. Common practice, no source. */
export const SEAL_MARGIN = 490;
/** Millimetres of water, rounded down to tens, for a pressure in Pa. */
export function sealDepth(pascal: number): number {
    return Math.floor(pascal / WATER_COLUMN * 100) * 10;
}
/** Millimetres of water, rounded up to tens, that hold a pressure in Pa with the usual margin. */
export function sealDepthAbove(pascal: number): number {
    return Math.ceil((pascal + SEAL_MARGIN) / WATER_COLUMN * 100) * 10;
}
/**
 * Depth in mm of a seal that guards a bag: it opens at four fifths of what the bag bears, and well above the bag's own
 * pressure. Undefined where no depth does both, or the rating is not known: then a fix must not make one up.
 */
export function sealThatGuards(bag: View): number | undefined {
    const depth = sealDepth(0.8 * bag.maybe('rating'));
    const own = bag.kind === 'bag' ? bag.maybe('own-pressure', 0) : bag.maybeQ('head', 0);
    return depth >= 50 && depth / 1000 * WATER_COLUMN > own + SEAL_MARGIN ? depth : undefined;
}
