import { tableCsv } from '../../../language/seeing/plots/index.js';
import { sectionOf } from '../../../language/seeing/section/layers.js';
import { sectionPicture, stepsTable } from '../../../language/seeing/section/section.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';
import { pictureOptions, writePicture } from '../picture-files.js';
import { styles } from '../style.js';
import { tableLines } from '../table-text.js';
import { caution } from '../words.js';

const section: Command = {
    name: 'section',
    summary: 'Draws the stack in section, or tells the order in which it is stacked.',
    args: 'FILE',
    most: 1,
    options: { ...pictureOptions },
    examples: ['rigwright section shed.rig', 'rigwright section shed.rig -o stack.svg'],
    async run({ options, args }, around) {
        const { analysis } = one(args, undefined, around, 'section');
        const found = sectionOf(analysis);
        if (typeof found === 'string') throw new CannotDo(found);
        const steps = stepsTable(found);
        const s = styles(around.colour);
        if (options.out !== undefined) await writePicture(options, palette => sectionPicture(found, palette).text, () => tableCsv(steps), around);
        else around.out([...found.warnings.map(w => s.error(w)), ...found.pieces.map(p => `${String(p.many).padStart(4)}  ${p.what}  ${s.quiet(p.size)}`), '', ...tableLines(steps, s), '', ...found.notes.map(n => s.quiet(n)), s.quiet(caution), ''].join('\n'));
        return 0;
    },
};
export default section;
