/** A table of numbers over a range of one or two inputs. Each row is the whole rig worked out again. */
import { Supposed } from '../quantities/supposed.js';
import { Workings, type Result } from '../quantities/workings.js';
import { nearest, offering } from '../values/nearest.js';
import { quantityOf } from '../quantities/index.js';
import { CannotTry, inputOf, type TriedInput } from './input.js';

export interface SweepAxis {
    readonly input: TriedInput;
    /** SI */
    readonly values: readonly number[];
}
export interface SweepRow {
    /** SI, one for each axis. */
    readonly at: readonly number[];
    /** In the order of the names asked for. */
    readonly results: readonly Result[];
}
export interface Sweep {
    readonly axes: readonly SweepAxis[];
    readonly rows: readonly SweepRow[];
}
/** More rows are not worked out at once. */
const MOST_ROWS = 2000;
const USUAL_STEPS = 9;

/**
 * @param over        'stack.gap: 1..6 mm', one or two of them; without a range over the usual one
 * @param quantities  'stack.current', ...
 * @param steps       rows along each axis, 2 or more
 * @throws CannotTry where the question makes no sense
 */
export function sweep(workings: Workings, over: readonly string[], quantities: readonly string[], steps = USUAL_STEPS): Sweep {
    if (!over.length || over.length > 2) throw new CannotTry('Say one or two numbers to vary: stack.gap: 1..6 mm.');
    if (!(steps >= 2) || steps ** over.length > MOST_ROWS) throw new CannotTry(`Between 2 and ${Math.floor(MOST_ROWS ** (1 / over.length))} steps can be worked out.`);
    const names = quantities.map(q => nameOf(workings, q));
    const axes = over.map(text => {
        const colon = text.indexOf(':');
        const input = inputOf(workings, colon < 0 ? text : text.slice(0, colon), colon < 0 ? undefined : text.slice(colon + 1).trim());
        const values = Array.from({ length: steps }, (_, i) => input.low + (input.high - input.low) * i / (steps - 1));
        return { input, values: input.counted ? [...new Set(values.map(Math.round))] : values };
    });
    const points = axes.length === 1 ? axes[0].values.map(v => [v]) : axes[0].values.flatMap(v => axes[1].values.map(w => [v, w]));
    const rows = points.map(at => {
        const supposed = at.reduce((s, v, i) => axes[i].input.suppose(s, v), new Supposed(workings.supposed));
        const there = new Workings(workings.rig, undefined, supposed);
        return { at, results: names.map(([part, name]) => there.quantity(there.rig.parts.get(part)!, name)!) };
    });
    return { axes, rows };
}
function nameOf(workings: Workings, text: string): readonly [string, string] {
    const name = text.trim();
    const dot = name.indexOf('.');
    const part = workings.rig.parts.get(name.slice(0, dot));
    if (!part || part.kind?.statement) throw new CannotTry(offering(`There is no part ${dot < 0 ? name : name.slice(0, dot)}`, nearest(dot < 0 ? name : name.slice(0, dot), workings.rig.parts.keys())));
    const known = quantityOf(part.kindWord);
    if (!known.has(name.slice(dot + 1))) throw new CannotTry(offering(`${part.name} has no number ${name.slice(dot + 1)}`, nearest(name.slice(dot + 1), [...known.keys()])));
    return [part.name, name.slice(dot + 1)];
}
