import { assumptionRows, quantityRows, resultsOf } from '../../../language/reference/quantities.js';
import { quantitiesCsv } from '../../../language/reference/quantities-csv.js';
import { workingText } from '../../../language/reference/working.js';
import { nearest, offering } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';
import { numbersText } from '../numbers-text.js';
import { one } from '../one-rig.js';
import { styles } from '../style.js';
import { version } from '../version.js';

/** How many steps down a working goes. */
const DEPTH = 4;

const show: Command = {
    name: 'show',
    summary: 'Shows the numbers of a rig, part by part, what is near a limit, and what was assumed.',
    args: 'FILE',
    most: 1,
    options: {
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'csv', 'json'], doc: 'form of the output' },
        all: { type: 'boolean', doc: 'every quantity, the unknown ones too' },
        working: { type: 'string', takes: 'NAME', doc: 'how one number came about: stack.voltage' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright show shed.rig', 'rigwright show shed.rig --format csv > shed.csv', 'rigwright show shed.rig --working stack.volts-per-cell'],
    async run({ options, args }, around) {
        const { analysis: { workings, rig, near } } = one(args, options.on, around, 'show');
        if (options.format === 'json') {
            around.out(`${JSON.stringify({ version, quantities: quantityRows(workings), assumptions: assumptionRows(workings), near }, null, 2)}\n`);
            return 0;
        }
        if (options.format === 'csv') {
            around.out(quantitiesCsv(workings));
            return 0;
        }
        if (options.working) {
            const wanted = String(options.working);
            const results = resultsOf(workings);
            const nameOf = (r: (typeof results)[number]) => `${r.part.name}.${r.quantity.name}`;
            const result = results.find(r => nameOf(r) === wanted);
            if (!result) {
                const near = nearest(wanted, results.map(nameOf));
                throw new CannotDo(offering(`There is no number ${wanted}`, near, '. --all lists them.'));
            }
            around.out(`${workingText(result, { depth: DEPTH, rig })}\n`);
            return 0;
        }
        around.out(numbersText(workings, near, options.all === true, styles(around.colour)));
        return 0;
    },
};
export default show;
