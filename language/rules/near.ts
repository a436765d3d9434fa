/**
 * Close to a limit and not over it: no finding, and yet worth knowing, since one change more may do it. Rules compare through
 * `tell.exceeds` and `tell.fallsShort`; what is within a tenth of its limit is noted beside the findings. A note names part and
 * property, never a place of the text: places move, and the notes of a silent rule are kept from edit to edit.
 */
import { digits, show } from '../units/format.js';

export interface Near {
    readonly rule: string;
    readonly part: string;
    /** Property of the part that the number stands at; undefined: the part as a whole. */
    readonly key: string | undefined;
    /** SI. */
    readonly number: number;
    readonly limit: number;
    /** Unit in which it is told; '' for bare numbers. */
    readonly unit: string;
    readonly side: 'at most' | 'at least';
    /** What is left up to the limit, as a share of it. */
    readonly left: number;
}
/** From here on a number counts as near. */
export const NEAR = 0.1;
/** A limit that is met to its last written figure is met. */
const ROUNDING = 1e-4;
/** K. Shares of a temperature count from a usual room: 10 % of the kelvins would be near everywhere. */
const ROOM = 293.15;
const origin = (unit: string) => (unit === '°C' ? ROOM : 0);

/** How a number stands to its limit: over it, or else what is left of the limit. Neither where one of them is unknown. */
export function standing(number: number, limit: number, unit: string, side: Near['side']): { over: boolean; left: number } {
    const away = side === 'at most' ? limit - number : number - limit;
    return { over: away < -ROUNDING * Math.abs(limit), left: Math.max(0, away) / Math.abs(limit - origin(unit)) };
}
const number = (si: number, unit: string) => (unit ? show(si, unit, 3) : digits(si, 3));
/** '128 °C, at most 135 °C: 6 % left'. */
export function nearText(n: Near): string {
    return `${number(n.number, n.unit)}, ${n.side} ${number(n.limit, n.unit)}: ${digits(100 * n.left, n.left < 0.01 ? 1 : 2)} % left`;
}
/** 'stack.wetted', or the part alone. */
export function nearPlace(n: Near): string {
    return n.key ? `${n.part}.${n.key.split('.')[0]}` : n.part;
}
/** One note for a rule and a place: the nearest, and the nearest of all first. */
export function nearest(notes: readonly Near[]): Near[] {
    const kept = new Map<string, Near>();
    for (const n of notes) {
        const name = `${n.rule} ${nearPlace(n)}`;
        const other = kept.get(name);
        if (!other || n.left < other.left) kept.set(name, n);
    }
    return [...kept.values()].sort((a, b) => a.left - b.left || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : a.part < b.part ? -1 : 1));
}
