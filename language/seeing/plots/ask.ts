/** What several plots ask of a rig. */
import { operatingPoint, tunedMake, usable } from '../../quantities/operating-point.js';
import type { OperatingPoint, StackMake } from '../../quantities/stack-solver.js';
import { sourceModel, type Source } from '../../quantities/source.js';
import type { View } from '../../quantities/view.js';
import { resultText } from '../../reference/values.js';
import { fromSi, unitOf } from '../../units/unit.js';
import type { Asked } from './define.js';

/** An SI value in a unit. */
export function inUnit(si: number, unit: string): number {
    const u = unitOf(unit);
    return u ? fromSi(si, u) : si;
}
/** Six figures: what a table tells. */
export const six = (x: number): number | undefined => (Number.isFinite(x) ? Number(x.toPrecision(6)) : undefined);
export const spaced = (from: number, to: number, count: number): number[] => Array.from({ length: count }, (_, i) => from + (to - from) * i / (count - 1));

export interface Worked {
    readonly stack: View;
    readonly make: StackMake;
    readonly source: Source;
    readonly p: OperatingPoint;
}
/** The stack with what feeds it, solved; or why it is not. */
export function worked({ stack }: Asked): Worked | string {
    if (!stack) return 'No stack is described.';
    const [make, source, p] = [stack.model(tunedMake), stack.model(sourceModel), stack.model(operatingPoint)];
    return usable(make, source) && p ? { stack, make, source: source!, p } : lacking(stack, 'current');
}
/** The same where a current flows. */
export function running(asked: Asked): Worked | string {
    const w = worked(asked);
    return typeof w === 'string' || w.p.current > 0 ? w : 'No current flows: what feeds the stack has too few volts for it.';
}
/** Why a number of a part is not known. */
export function lacking(part: View, quantity: string): string {
    const missing = part.result(quantity)?.missing ?? [];
    return `${part.name}.${quantity} is not known${missing.length ? `: ${missing.slice(0, 4).join(', ')} ${missing.length > 1 ? 'are' : 'is'} not given` : ''}.`;
}
/** A number of a part with its ±, as it stands in a sentence: '2.08 V ± 0.13', '0.02 % (0.007 to 0.06)'. */
export function told(part: View, quantity: string): string {
    const r = part.result(quantity);
    return r ? resultText(r) : 'unknown';
}
/** The bounds of a number in a unit; nothing where it has none. */
export function bounds(part: View, quantity: string, unit: string): [number, number] | undefined {
    const r = part.result(quantity);
    return r && r.low < r.high ? [inUnit(r.low, unit), inUnit(r.high, unit)] : undefined;
}
/** What is taken for granted below a number, for a note. */
export function restsOn(part: View, quantity: string): string[] {
    const rests = part.result(quantity)?.rests ?? [];
    return rests.length ? [`Rests on what is assumed: ${rests.slice(0, 5).join(', ')}${rests.length > 5 ? ` and ${rests.length - 5} more` : ''}.`] : [];
}
/** Whether a stack is so long that each current costs: fewer of them are looked at then. */
export const isLong = (make: StackMake) => make.cells > 100;
