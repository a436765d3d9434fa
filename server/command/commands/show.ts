import { assumptionRows, quantityRows, resultsOf } from '../../../language/reference/quantities.js';
import { showResult, showSpread } from '../../../language/reference/values.js';
import { workingOf } from '../../../language/reference/working.js';
import { nearest } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';
import { checkFiles, dateOf, rigFiles } from '../files.js';
import { version } from '../run.js';
import { styles } from '../style.js';

const show: Command = {
    name: 'show',
    summary: 'Shows the numbers of a rig, part by part, and what was assumed for them.',
    args: 'FILE',
    options: {
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json'], doc: 'form of the output' },
        all: { type: 'boolean', doc: 'every quantity, the unknown ones too' },
        working: { type: 'string', takes: 'NAME', doc: 'how one number came about: stack.voltage' },
        on: { type: 'string', takes: 'DATE', doc: 'date given from outside' },
    },
    examples: ['rigwright show shed.rig', 'rigwright show shed.rig --working stack.volts-per-cell'],
    async run({ options, args }, around) {
        if (args.length !== 1) throw new CannotDo('show takes one file.');
        const [file] = rigFiles(args, around.cwd);
        const { analyses } = checkFiles([file], dateOf(options.on, around.today));
        const { workings, rig } = analyses[0];
        if (rig.pages[0].sort !== 'rig') throw new CannotDo(`${args[0]} is no rig of its own: its first line is not rig "…".`);
        if (options.format === 'json') {
            around.out(`${JSON.stringify({ version, quantities: quantityRows(workings), assumptions: assumptionRows(workings) }, null, 2)}\n`);
            return 0;
        }
        const results = resultsOf(workings);
        if (options.working) {
            const result = results.find(r => `${r.part.name}.${r.quantity.name}` === options.working);
            if (!result) {
                const near = nearest(String(options.working), results.map(r => `${r.part.name}.${r.quantity.name}`));
                throw new CannotDo(`There is no number ${options.working}${near ? `; did you mean ${near}?` : '.'}`);
            }
            around.out(`${workingOf(result, { depth: 3, markdown: false })}\n`);
            return 0;
        }
        const s = styles(around.colour);
        const out = [s.strong(rig.title || args[0]) + s.quiet(`  ${rig.stage}`), ''];
        let part = '';
        for (const r of results) {
            const known = r.value === r.value;
            if (!options.all && (!known || (!r.quantity.shownAt && !keyNumbers.has(r.quantity.name)))) continue;
            if (r.part.name !== part) out.push(s.strong((part = r.part.name)) + s.quiet(r.part.name === r.part.kindWord ? '' : `  ${r.part.kindWord}`));
            const [number, ...unit] = showResult(r).split(' ');
            out.push(`  ${r.quantity.name.padEnd(28)}${(known ? number : '-').padStart(9)} ${s.quiet(`${unit.join(' ')}  ${showSpread(r)}${known ? '' : r.missing.length ? `needs ${r.missing.slice(0, 3).join(', ')}` : ''}`)}`.trimEnd());
        }
        const assumed = assumptionRows(workings);
        if (assumed.length) {
            out.push('', s.strong('Assumed, since the text does not say'));
            for (const a of assumed) out.push(`  ${a.name.padEnd(28)}${a.value.padEnd(24)} ${s.quiet(a.because)}`);
        }
        out.push('', s.quiet('Gas: 0 °C, 101.325 kPa, dry, where a number is in NL or per m³. Local codes and licensed practice decide.'), '');
        around.out(out.join('\n'));
        return 0;
    },
};
export default show;

/** Shown without --all although no line of the text carries them. */
const keyNumbers = new Set(['power', 'plug-energy-per-volume', 'efficiency-hhv', 'efficiency-lhv', 'faraday-efficiency', 'water-use', 'heat', 'time-constant', 'starts-per-hour', 'usable-gas', 'gas-cost', 'discharge-temperature-hot']);
