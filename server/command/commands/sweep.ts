import { csvOf } from '../../../language/reference/csv.js';
import { columnsOf, sweepLines } from '../../../language/reference/sweep-table.js';
import { sweep as table } from '../../../language/what-if/sweep.js';
import { CannotDo, type Command } from '../command.js';
import { one, tryOrSay } from '../one-rig.js';
import { styles } from '../style.js';
import { version } from '../version.js';

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
            around.out(csvOf([columns.map(c => `${c.name}${c.unit && ` (${c.unit})`}`), ...found.rows.map((_, i) => columns.map(c => (Number.isFinite(c.values[i]) ? Number(c.values[i].toPrecision(6)) : undefined)))]));
        } else {
            const s = styles(around.colour);
            const { head, units, rows } = sweepLines(found);
            around.out(`${[s.strong(head), s.quiet(units), ...rows.map(r => (r.curve ? `${r.numbers}  ${s.quiet(r.curve)}` : r.numbers))].join('\n')}\n`);
        }
        return 0;
    },
};
export default sweep;
