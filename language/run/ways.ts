/** The ways that gas can take in a rig, with what stands on them, and what a way costs as valves and failures are at a moment. */
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
/** Failures of parts that gas passes: nothing comes through. */
export const blocks = new Set(['blocked', 'outlet blocked', 'frozen', 'sticks shut', 'left shut', 'pinched', 'kinked']);
/** The gas comes out there. */
export const opens = new Set(['comes off', 'bursts']);
/** Its liquid is gone. */
const empties = new Set(['dry']);
/** What can stand shut. */
const shutters = new Set(['valve', 'check-valve', 'unloader']);

/** Pa along a way as things stand; undefined where it is shut. */
export function costOf(stack: View, way: Way, c: ControlState): number | undefined {
    let head = 0;
    for (const [i, name] of way.parts.entries()) {
        const failure = c.failed.get(name);
        if (failure && blocks.has(failure)) return undefined;
        if (c.on.get(name) === false && shutters.has(stack.other(name)?.kind ?? '')) return undefined;
        if (failure && opens.has(failure)) return head;
        head += failure && empties.has(failure) ? 0 : way.heads[i];
    }
    return head;
}
/** Pa that a way still costs behind one of its parts; undefined where that does not stand on it. */
export function headBehind(way: Way, part: string, c: ControlState): number | undefined {
    const i = way.parts.indexOf(part);
    return i < 0 ? undefined : way.parts.slice(i + 1).reduce((sum, name, k) => sum + (empties.has(c.failed.get(name) ?? '') ? 0 : way.heads[i + 1 + k]), 0);
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
            if (v.kind === 'burner' || v.kind === 'balloon' || v.kind === 'fuel-cell' || v.kind === 'engine') {
                ends = 'user';
                break;
            }
            parts.push(name);
            const head = v.kind === 'relief-valve' ? v.maybe('set', 0) : headOfPart(v, gas);
            heads.push(head === head ? head : 0);
        }
        if (route.length > 1) ways.push({ parts, heads, ends });
    }
    return ways;
}
