/** How an `expect` line stands: both sides worked out and compared, with the room that the bounds leave. */
import { measures } from '../../language/units/dimension.js';
import { digits } from '../../language/units/format.js';
import { evaluate, inMeasure, isTrouble, type Amount } from '../../language/values/evaluate.js';
import type { Node } from '../../language/values/parse-value.js';
import type { Expectation } from '../../language/rig/rig.js';
import type { Workings } from '../../language/quantities/workings.js';

export interface Standing {
    readonly is: 'holds' | 'may not hold' | 'does not hold' | 'not known' | 'not worked out';
    /** The value on the left as it is now: '84.2 NL/h'. */
    readonly now?: string;
    /** Names that are missing. */
    readonly missing: readonly string[];
}
const unknown = (missing: readonly string[] = []): Standing => ({ is: 'not known', missing });

/** Expectations over time, in variants and after events are read, and not worked out. */
export function standingOf(workings: Workings, e: Expectation): Standing {
    if (e.overTime || e.when) return { is: 'not worked out', missing: [] };
    const node = e.value?.list[0]?.[0];
    if (e.broken || node?.is !== 'operation') return unknown();
    const missing: string[] = [];
    const work = (n: Node | undefined): Amount | undefined => {
        const w = n && evaluate(n, workings.resolver());
        if (!w) return undefined;
        if (!isTrouble(w)) return w;
        if (w.message) missing.push(...w.message.split(', ').filter(m => /^[\p{L}_][\p{L}\p{N}_.-]*$/u.test(m)));
        return undefined;
    };
    const left = work(node.a);
    const right = work(node.b);
    const upper = node.op === 'between' ? work(node.c) : undefined;
    if (!left || !right || (node.op === 'between' && !upper)) return unknown(missing);
    const limits = [right, upper].filter((a): a is Amount => !!a).map(a => inMeasure(a, left.dimension));
    if (limits.some(l => !l)) return unknown();
    const gauge = (a: Amount, si: number) => (a.basis === 'absolute' && a.dimension === measures.pressure.dimension ? si - workings.airPressure : si);
    const [low, value, high] = [left.low, left.si, left.high].map(si => gauge(left, si));
    const [first, second] = limits.map(l => gauge(l!, l!.si));
    const met = (x: number) => {
        switch (node.op) {
            case '<': return x < first;
            case '<=': return x <= first;
            case '>': return x > first;
            case '>=': return x >= first;
            case '=': return Math.abs(x - first) <= 1e-6 * Math.abs(first);
            case 'between': return x >= Math.min(first, second) && x <= Math.max(first, second);
            default: return undefined;
        }
    };
    const holds = met(value);
    if (holds === undefined || value !== value) return unknown(missing);
    const unit = left.unit ?? right.unit;
    const now = unit && unit.dimension === left.dimension ? `${digits((left.si - unit.offset) / unit.factor, 3)} ${unit.text}` : digits(left.si, 3);
    if (!holds) return { is: 'does not hold', now, missing: [] };
    const sure = node.op === '=' || (met(low) && met(high));
    return { is: sure ? 'holds' : 'may not hold', now, missing: [] };
}
