import { measures } from '../../../language/units/dimension.js';
import { digits } from '../../../language/units/format.js';
import { fromSi, unitOf } from '../../../language/units/unit.js';
import { unitOfResult } from '../../../language/reference/values.js';
import { sweep as table, type Sweep } from '../../../language/what-if/sweep.js';
import { CannotDo, type Command } from '../command.js';
import { one, tryOrSay } from '../one-rig.js';
import { styles, type Styles } from '../style.js';
import { version } from '../version.js';

/** Characters of a bar that shows where a number lies between the least and the most of its column. */
const BAR = 24;
const FIGURES = 4;

const sweep: Command = {
    name: 'sweep',
    summary: 'Works numbers out over a range of one or two inputs, as a table and a curve.',
    args: 'FILE',
    most: 1,
    options: {
        over: { type: 'string', takes: 'RANGES', doc: 'what varies: "stack.gap: 1..6 mm", two of them with ; between' },
        of: { type: 'string', takes: 'NAMES', doc: 'numbers to tell: stack.volts-per-cell,stack.current' },
        steps: { type: 'string', takes: 'N', default: '9', doc: 'rows along each range' },
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'csv', 'json'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright sweep shed.rig --over "stack.gap: 1..6 mm" --of stack.volts-per-cell,stack.temperature'],
    async run({ options, args }, around) {
        if (typeof options.over !== 'string' || typeof options.of !== 'string') throw new CannotDo('sweep takes --over RANGES and --of NAMES.');
        const { analysis: { workings } } = one(args, options.on, around, 'sweep');
        const over = options.over.split(';').map(t => t.trim()).filter(Boolean);
        const names = options.of.split(',').map(t => t.trim()).filter(Boolean);
        const found = tryOrSay(() => table(workings, over, names, Number(options.steps)));
        const columns = columnsOf(found);
        if (options.format === 'json') {
            around.out(`${JSON.stringify({ version, columns: columns.map(({ name, unit }) => ({ name, unit })), rows: found.rows.map((_, i) => columns.map(c => (Number.isFinite(c.values[i]) ? Number(c.values[i].toPrecision(6)) : null))) }, null, 2)}\n`);
        } else if (options.format === 'csv') {
            const lines = [columns.map(c => `${c.name}${c.unit && ` (${c.unit})`}`).join(','), ...found.rows.map((_, i) => columns.map(c => (Number.isFinite(c.values[i]) ? String(Number(c.values[i].toPrecision(6))) : '')).join(','))];
            around.out(`${lines.join('\n')}\n`);
        } else {
            around.out(text(columns, found.rows.length, found.axes.length, styles(around.colour)));
        }
        return 0;
    },
};
export default sweep;

interface Column { readonly name: string; readonly unit: string; readonly values: readonly number[] }
function columnsOf({ axes, rows }: Sweep): Column[] {
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
/** Columns under each other; over one input a curve stands beside each row, drawn lying down. */
function text(columns: readonly Column[], rows: number, inputs: number, s: Styles): string {
    const out: string[] = [];
    const cells = columns.map(c => c.values.map(v => (v === v ? digits(v, FIGURES) : '-')));
    const widths = columns.map((c, k) => Math.max(c.name.length, c.unit.length, ...cells[k].map(t => t.length)));
    const curve = inputs === 1 ? columns.findIndex((c, k) => k >= inputs && c.values.some(v => v === v)) : -1;
    out.push(s.strong(columns.map((c, k) => c.name.padStart(widths[k])).join('  ')) + (curve >= 0 ? s.quiet(`  ${columns[curve].name}`) : ''), s.quiet(columns.map((c, k) => c.unit.padStart(widths[k])).join('  ')));
    const known = curve >= 0 ? columns[curve].values.filter(v => v === v) : [];
    const [least, most] = [Math.min(...known), Math.max(...known)];
    for (let i = 0; i < rows; i++) {
        const value = curve >= 0 ? columns[curve].values[i] : NaN;
        const place = most > least ? Math.round((BAR - 1) * (value - least) / (most - least)) : 0;
        out.push(cells.map((c, k) => c[i].padStart(widths[k])).join('  ') + (value === value ? s.quiet(`  ${'·'.repeat(place)}●`) : ''));
    }
    return `${out.join('\n')}\n`;
}
