import { allPlots, tableCsv, figureOf, pictureOf } from '../../../language/seeing/plots/index.js';
import { nearest, offering } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';
import { pictureOptions, writePicture } from '../picture-files.js';
import { styles } from '../style.js';
import { tableLines } from '../table-text.js';
import { caution } from '../words.js';
import { canRun, follow, timeOf } from './run.js';

const plot: Command = {
    name: 'plot',
    summary: 'Draws a plot of a rig, or tells the numbers behind it; without a name it lists the plots.',
    args: 'FILE [NAME]',
    most: 2,
    options: {
        ...pictureOptions,
        of: { type: 'string', takes: 'NUMBER', doc: 'for roots: the number that is asked about, as stack.volts-per-cell' },
        for: { type: 'string', takes: 'TIME', doc: 'for run: how long, as 12h' },
        scenario: { type: 'string', takes: 'NAME', doc: 'for run: scenario of the rig; the usual day if left out' },
        fault: { type: 'string', takes: "'PART way'", doc: 'for run: something fails ten minutes after the start' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright plot shed.rig', 'rigwright plot shed.rig polarisation -o curve.svg', 'rigwright plot shed.rig roots --of stack.temperature -o roots.png'],
    async run({ options, args: [file, name] }, around) {
        const { analysis } = one(file === undefined ? [] : [file], options.on, around, 'plot');
        const s = styles(around.colour);
        if (name === undefined) {
            if (options.out !== undefined) throw new CannotDo(`Say which plot: ${allPlots.map(p => p.name).join(', ')}.`);
            const wide = Math.max(...allPlots.map(p => p.name.length));
            around.out(allPlots.map(p => {
                const figure = figureOf(p, analysis);
                return `${s.strong(p.name.padEnd(wide))}  ${p.meaning}\n${typeof figure === 'string' ? `${' '.repeat(wide + 2)}${s.quiet(`Not for this rig. ${figure} It needs ${p.needs}.`)}\n` : ''}`;
            }).join(''));
            return 0;
        }
        const wanted = allPlots.find(p => p.name === name);
        if (!wanted) throw new CannotDo(offering(`There is no plot ${name}`, nearest(name, allPlots.map(p => p.name))));
        const { workings } = analysis;
        const asked = options.for !== undefined || options.scenario !== undefined || options.fault !== undefined;
        const run = name === 'run' && asked ? canRun(() => follow(workings, typeof options.for === 'string' ? timeOf(options.for) : undefined, options.scenario, options.fault)) : undefined;
        const figure = figureOf(wanted, analysis, { run, of: typeof options.of === 'string' ? options.of : undefined });
        if (typeof figure === 'string') throw new CannotDo(figure);
        if (options.out !== undefined) await writePicture(options, palette => pictureOf(wanted, figure, palette).text, () => tableCsv(figure.table), around);
        else around.out([s.strong(wanted.title), figure.says, ...(figure.notes ?? []).map(n => s.quiet(n)), '', ...tableLines(figure.table, s), '', s.quiet(caution), ''].join('\n'));
        return 0;
    },
};
export default plot;
