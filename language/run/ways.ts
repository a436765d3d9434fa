/** The ways that gas can take in a rig, with what stands on them, and what a way costs as valves and failures are at a moment. */
import { MOLAR_MASS } from '../physics/constants.js';
import { holeFlow, smallHoleDrop, smallHoleFlow } from '../physics/flow.js';
import { heatCapacityRatio } from '../physics/gases.js';
import { headOfPart } from '../quantities/heads.js';
import type { View } from '../quantities/view.js';
import type { ControlState } from './control-lines.js';

export type Side = 'hydrogen' | 'oxygen';
/** A way that gas can take: what stands on it, and what it costs. */
export interface Way {
    readonly parts: readonly string[];
    /** Of each part, Pa that it holds back. */
    readonly heads: readonly number[];
    readonly ends: 'bag' | 'outdoors' | 'compressor' | 'user' | 'room';
}
/** A way that stands open, and what it costs, Pa. */
export interface Taken {
    readonly way: Way;
    readonly head: number;
}
/** m³/s that a way out passes where nothing tells it: more than any rig here makes. Own choice, no source. */
export const WIDE = 5 / 3600;
/** m, hole that "leaks" means: a joint that was not tightened. Common practice, no source. */
export const LEAK = 1e-3;
/** Of the ideal flow that a sharp hole passes at little pressure, and a short bore at much. Textbook. */
export const SHARP = 0.6;
export const ROUNDED = 0.8;
/** How much more an overfilled bubbler holds back. Common practice, no source: water up to half as deep again. */
const OVERFILLED = 1.5;

/** Failures of parts that gas passes: nothing comes through. */
export const blocks = new Set(['blocked', 'outlet blocked', 'frozen', 'sticks shut', 'left shut', 'pinched', 'kinked', 'full']);
/** The gas comes out there. */
export const opens = new Set(['comes off', 'bursts']);
/** Its liquid is gone. */
const empties = new Set(['dry']);
/** What can stand shut. */
const shutters = new Set(['valve', 'check-valve', 'unloader']);
/** Parts that let a little out, or air in, when they leak or were left open. */
export const leaks = new Set(['leaks', 'left open']);

const areaOf = (bore: number) => Math.PI / 4 * bore ** 2;
/** m³/s through a loose joint. @param drop  Pa, above 0 @param density  kg/m³ of what passes */
export const leakFlow = (drop: number, density: number) => smallHoleFlow(areaOf(LEAK), SHARP, drop, density);
/** Pa at which a loose joint passes so much. @param flow  m³/s @param density  kg/m³ of what passes */
export const leakDrop = (flow: number, density: number) => smallHoleDrop(areaOf(LEAK), SHARP, flow, density);
/** mol/s of hydrogen through a short bore, m, from one pressure to another one, Pa above vacuum, at K; 0 where it does not fall. */
export const throughBore = (bore: number, from: number, to: number, kelvin: number) => holeFlow(areaOf(bore), ROUNDED, from, to, kelvin, MOLAR_MASS.hydrogen, heatCapacityRatio.hydrogen) / MOLAR_MASS.hydrogen;

/** Whether anything has failed so. Asked at each moment of a run, where nearly always nothing has. */
export function anyFails(c: ControlState, what: string): boolean {
    for (const failure of c.failed.values()) if (failure === what) return true;
    return false;
}

/** Pa along a way as things stand; undefined where it is shut. */
export function costOf(stack: View, way: Way, c: ControlState): number | undefined {
    let head = 0;
    for (const [i, name] of way.parts.entries()) {
        const failure = c.failed.get(name);
        if (failure && blocks.has(failure)) return undefined;
        if (c.on.get(name) === false && shutters.has(stack.other(name)?.kind ?? '')) return undefined;
        if (failure && opens.has(failure)) return head;
        head += failure && empties.has(failure) ? 0 : way.heads[i] * (failure === 'overfilled' ? OVERFILLED : 1);
    }
    return head;
}
/** Pa that a way still costs behind one of its parts. */
export function headBehind(way: Way, part: string, c: ControlState): number {
    const i = way.parts.indexOf(part);
    return way.heads.reduce((sum, head, k) => (k > i && !empties.has(c.failed.get(way.parts[k]) ?? '') ? sum + head : sum), 0);
}
/**
 * Every way that a gas can take from the stack or the bag: to a bag, to whoever uses it, to a compressor, or out.
 * @param bag  name of the bag that a run follows
 */
export function waysFrom(stack: View, from: string, gas: Side, bag: string | undefined): Way[] {
    const ways: Way[] = [];
    const start = stack.other(from);
    for (const route of stack.paths.routes(from, gas)) {
        const parts: string[] = [];
        const heads: number[] = [];
        let ends: Way['ends'] = 'outdoors';
        for (const name of route.slice(1)) {
            const v = start?.other(name);
            if (!v) {
                ends = name === 'room' ? 'room' : name === 'user' ? 'user' : 'outdoors';
                break;
            }
            if (v.kind === 'compressor' || v.kind === 'unloader') {
                ends = 'compressor';
                break;
            }
            if (v.name === bag) {
                ends = 'bag';
                break;
            }
            parts.push(name);
            if (v.kind === 'burner' || v.kind === 'balloon' || v.kind === 'fuel-cell' || v.kind === 'engine') {
                heads.push(0);
                ends = 'user';
                break;
            }
            const head = v.kind === 'relief-valve' ? v.maybe('set', 0) : headOfPart(v, gas);
            heads.push(head === head ? head : 0);
        }
        if (route.length > 1) ways.push({ parts, heads, ends });
    }
    return ways;
}
/** The ways of a rig as they stand: worked out again only when something of the control lines has moved. */
export class OpenWays {
    readonly stack: readonly Way[];
    readonly oxygen: readonly Way[];
    readonly bag: readonly Way[];
    private readonly kept = new WeakMap<ControlState, { readonly turn: number; readonly hydrogen: readonly Taken[]; readonly oxygen: Taken | undefined; readonly bag: readonly Taken[] }>();

    constructor(private readonly of: View, private readonly bagName: string | undefined) {
        this.stack = waysFrom(of, of.name, 'hydrogen', bagName);
        this.oxygen = waysFrom(of, of.name, 'oxygen', bagName);
        this.bag = bagName === undefined ? [] : waysFrom(of, bagName, 'hydrogen', bagName);
    }
    /** Those that stand open, with what they cost; of the oxygen the cheapest, from the bag those that lead out. */
    now(c: ControlState): { readonly hydrogen: readonly Taken[]; readonly oxygen: Taken | undefined; readonly bag: readonly Taken[] } {
        const kept = this.kept.get(c);
        if (kept && kept.turn === c.turn) return kept;
        const open = (ways: readonly Way[]) => ways.flatMap(way => {
            const bag = way.ends === 'bag' ? c.failed.get(this.bagName!) : undefined;
            const head = way.ends === 'compressor' || bag === 'pinched' ? undefined : costOf(this.of, way, c);
            return head === undefined ? [] : [{ way, head }];
        });
        let oxygen: Taken | undefined;
        for (const taken of open(this.oxygen)) if (!oxygen || taken.head < oxygen.head) oxygen = taken;
        const found = { turn: c.turn, hydrogen: open(this.stack), oxygen, bag: open(this.bag).filter(({ way }) => way.ends === 'outdoors' || way.ends === 'room') };
        this.kept.set(c, found);
        return found;
    }
    /** Whether gas that takes this way comes out inside. */
    escapes(way: Way, c: ControlState): boolean {
        return way.ends === 'room' || (way.ends === 'bag' && opens.has(c.failed.get(this.bagName!) ?? '')) || way.parts.some(n => opens.has(c.failed.get(n) ?? '') || c.failed.get(n) === 'goes out');
    }
    /** Whether a part stands on a way of the low side: of the stack's hydrogen, or of the bag's. */
    onLow(part: string): boolean {
        return this.stack.some(w => w.parts.includes(part)) || this.bag.some(w => w.parts.includes(part));
    }
    onOxygen(part: string): boolean {
        return this.oxygen.some(w => w.parts.includes(part));
    }
    /** The seal on a way, if one stands there. */
    sealOn(way: Way): View | undefined {
        return way.parts.map(n => this.of.other(n)).find((v): v is View => v?.kind === 'seal');
    }
}
