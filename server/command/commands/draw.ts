import { drawingOf, layers, type Layer } from '../../../language/seeing/drawing/index.js';
import { printed } from '../../../language/seeing/palette.js';
import { tableCsv } from '../../../language/seeing/plots/index.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';
import { pictureOptions, writePicture } from '../picture-files.js';

const draw: Command = {
    name: 'draw',
    summary: 'Draws the flow of a rig: gases, lye, water, current, what watches them and what drives what, with its numbers and findings.',
    args: 'FILE',
    most: 1,
    options: {
        ...pictureOptions,
        layers: { type: 'string', takes: 'NAMES', doc: `only these, all in the same place: ${layers.join(',')}` },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright draw shed.rig -o shed.svg', 'rigwright draw shed.rig -o gas.png --layers hydrogen,oxygen,values'],
    async run({ options, args }, around) {
        const { analysis } = one(args, options.on, around, 'draw');
        const names = typeof options.layers === 'string' ? options.layers.split(',').map(n => n.trim()).filter(Boolean) : undefined;
        const strange = names?.find(n => !(layers as readonly string[]).includes(n));
        if (strange) throw new CannotDo(`There is no layer ${strange}; there are ${layers.join(', ')}.`);
        const drawing = (palette = printed) => {
            const drawn = drawingOf(analysis, palette, { layers: names as Layer[] | undefined });
            if (!drawn) throw new CannotDo('There is nothing to draw yet: no part stands on a path.');
            return drawn.text;
        };
        if (typeof options.out !== 'string') {
            around.out(`${drawing()}\n`);
            return 0;
        }
        const csv = () => tableCsv({ columns: ['medium', 'from', 'to'].map(name => ({ name, unit: '' })), rows: analysis.workings.paths.links.map(l => [l.medium, l.from.name, l.to.name]) });
        await writePicture(options, drawing, csv, around);
        return 0;
    },
};
export default draw;
