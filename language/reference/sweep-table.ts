/** A sweep as columns of numbers in the units that people read, and as lines of text with a curve that lies down beside them. */
import { measures } from '../units/dimension.js';
import { digits } from '../units/format.js';
import { fromSi, unitOf } from '../units/unit.js';
import type { Sweep } from '../what-if/sweep.js';
import { unitOfResult } from './values.js';

/** Characters between the least and the most of the column that the curve shows. */
const WIDTH = 24;
const FIGURES = 4;

export interface Column {
    readonly name: string;
    readonly unit: string;
    /** In the unit; NaN where unknown. */
    readonly values: readonly number[];
}
/** What varies first, then the numbers. */
export function columnsOf({ axes, rows }: Sweep): Column[] {
    const inputs = axes.map(({ input }, i) => {
        const unit = input.isArea ? unitOf('cm2') : input.counted ? undefined : input.unit;
        return { name: input.name, unit: unit?.text ?? '', values: rows.map(r => (unit ? fromSi(r.at[i], unit) : r.at[i])) };
    });
    const numbers = (rows[0]?.results ?? []).map((r, i) => {
        const name = unitOfResult(r);
        const unit = unitOf(name) ?? unitOf(measures[r.quantity.measure].units[0]);
        return { name: `${r.part.name}.${r.quantity.name}`, unit: name, values: rows.map(row => (unit ? fromSi(row.results[i].value, unit) : row.results[i].value)) };
    });
    return [...inputs, ...numbers];
}
/** Columns under each other. Over one input a curve of the first number stands beside them. */
export function sweepLines(sweep: Sweep): { readonly head: string; readonly units: string; readonly rows: readonly { readonly numbers: string; readonly curve: string }[] } {
    const columns = columnsOf(sweep);
    const cells = columns.map(c => c.values.map(v => (v === v ? digits(v, FIGURES) : '-')));
    const widths = columns.map((c, k) => Math.max(c.name.length, c.unit.length, ...cells[k].map(t => t.length)));
    const inputs = sweep.axes.length;
    const curve = inputs === 1 ? columns.slice(inputs).find(c => c.values.some(v => v === v)) : undefined;
    const known = curve?.values.filter(v => v === v) ?? [];
    const [least, most] = [Math.min(...known), Math.max(...known)];
    const dots = (v: number) => (v === v ? `${'·'.repeat(most > least ? Math.round((WIDTH - 1) * (v - least) / (most - least)) : 0)}●` : '');
    const line = (texts: readonly string[]) => texts.map((t, k) => t.padStart(widths[k])).join('  ');
    return {
        head: line(columns.map(c => c.name)) + (curve ? `  ${curve.name}` : ''), units: line(columns.map(c => c.unit)),
        rows: sweep.rows.map((_, i) => ({ numbers: line(cells.map(c => c[i])), curve: curve ? dots(curve.values[i]) : '' })),
    };
}
