/** From numbers to px, with ticks at round numbers. */
import { ticks } from 'd3-array';
import type { Axis } from './figure.js';

export interface Scale {
    readonly at: (value: number) => number;
    readonly ticks: readonly { readonly at: number; readonly label: string; readonly strong?: boolean }[];
    readonly low: number;
    readonly high: number;
}
/** Less than this is 0, and a range of less than this share of its numbers is one number. */
const NOTHING = 1e-100;
const FLAT = 1e-9;
/** Hours between the ticks of a clock, one of them. */
const CLOCK_STEPS = [1 / 12, 1 / 6, 1 / 4, 1 / 2, 1, 2, 3, 4, 6, 12, 24, 48, 96, 168];

/**
 * @param values  all that must lie on it, unknown ones left out
 * @param from    px of its low end, and of its high end
 * @param about   ticks wanted
 */
export function scaleOf(axis: Axis, values: readonly number[], from: number, to: number, about: number): Scale {
    const known = [...values, ...(axis.holds ?? [])].filter(v => Number.isFinite(v) && (axis.scale !== 'log' || v > 0));
    let [low, high] = known.length ? [Math.min(...known), Math.max(...known)] : [0, 1];
    if (axis.scale === 'log') {
        [low, high] = low < high ? [low / 1.15, high * 1.15] : [low / 3, high * 3];
        const at = (v: number) => from + (to - from) * (Math.log(v) - Math.log(low)) / (Math.log(high) - Math.log(low));
        return { at, low, high, ticks: logTicks(low, high).map(v => ({ at: v, label: number(v) })) };
    }
    const size = Math.max(Math.abs(low), Math.abs(high));
    if (size < NOTHING) [low, high] = [0, 1];
    else if (!(high - low > FLAT * size)) [low, high] = [low - 0.1 * size, high + 0.1 * size];
    const at = (v: number) => from + (to - from) * (v - low) / (high - low);
    if (axis.scale === 'counted') {
        const [first, last] = [low, high];
        [low, high] = [low - 0.6, high + 0.6];
        const whole = ticks(first, last, Math.min(about + 4, last - first + 1)).filter(v => Number.isInteger(v));
        return { at, low, high, ticks: [...new Set([first, ...whole.filter(v => v - first >= (last - first) / 20), last])].filter((v, i, all) => i === all.length - 1 || last - v > (last - first) / 20 || v === last).map(v => ({ at: v, label: number(v) })) };
    }
    if (axis.scale === 'clock') {
        const step = CLOCK_STEPS.find(s => (high - low) / s <= about) ?? 24 * Math.ceil((high - low) / 24 / about);
        const found: { at: number; label: string }[] = [];
        for (let k = Math.ceil(low / step - 1e-9); k * step <= high + 1e-9; k++) found.push({ at: k * step, label: clock(k * step, step) });
        return { at, low, high, ticks: found };
    }
    // Room to the next tick at either end, unless the end is one that was asked for.
    const step = Math.abs(ticks(low, high, about)[1] - ticks(low, high, about)[0]) || high - low;
    const ends = new Set(axis.holds);
    if (!ends.has(low) || low !== 0) low = Math.floor(low / step + 1e-9) * step;
    high = Math.ceil(high / step - 1e-9) * step;
    return { at, low, high, ticks: ticks(low, high, about).map(v => ({ at: v, label: number(v) })) };
}
function logTicks(low: number, high: number): number[] {
    const decades = Math.log10(high / low);
    const of = decades > 4 ? [1] : decades > 2 ? [1, 3] : [1, 2, 5];
    const found: number[] = [];
    for (let k = Math.floor(Math.log10(low)); k <= Math.ceil(Math.log10(high)); k++) for (const m of of) if (m * 10 ** k >= low && m * 10 ** k <= high) found.push(m * 10 ** k);
    return found;
}
/** A tick's number, as short as may be. */
export function number(v: number): string {
    const size = Math.abs(v);
    if (size >= 1e5 || (size > 0 && size < 1e-4)) return Number(v.toPrecision(3)).toExponential().replace('e+', 'e').replace('-', '−');
    return String(Number(v.toPrecision(5))).replace('-', '−');
}
function clock(hours: number, step: number): string {
    const minutes = Math.round(hours * 60);
    const day = Math.floor(minutes / 1440);
    const two = (n: number) => String(n).padStart(2, '0');
    if (step >= 24) return `day ${day + 1}`;
    return `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;
}
