import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { drawingOf, layers, type Layer } from '../../../language/seeing/drawing/drawing.js';
import { printed } from '../../../language/seeing/palette.js';
import { browserPath, toPng } from '../browser.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';

const draw: Command = {
    name: 'draw',
    summary: 'Draws the flow of a rig: gases, lye, water, current and what watches them, with its numbers.',
    args: 'FILE',
    most: 1,
    options: {
        output: { type: 'string', short: 'o', takes: 'FILE', doc: 'where to, .svg or .png; SVG on the terminal if left out' },
        layers: { type: 'string', takes: 'NAMES', doc: `only these: ${layers.join(',')}` },
        browser: { type: 'string', takes: 'PATH', doc: 'browser that makes the PNG; one in the usual places if left out' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright draw shed.rig -o shed.svg', 'rigwright draw shed.rig -o gas.png --layers hydrogen,oxygen,values'],
    async run({ options, args }, around) {
        const { analysis } = one(args, options.on, around, 'draw');
        const names = typeof options.layers === 'string' ? options.layers.split(',').map(n => n.trim()).filter(Boolean) : undefined;
        const strange = names?.find(n => !(layers as readonly string[]).includes(n));
        if (strange) throw new CannotDo(`There is no layer ${strange}; there are ${layers.join(', ')}.`);
        const drawing = drawingOf(analysis, printed, { layers: names as Layer[] | undefined });
        if (!drawing) throw new CannotDo('There is nothing to draw yet: no part stands on a path.');
        if (typeof options.output !== 'string') {
            around.out(`${drawing.text}\n`);
            return 0;
        }
        const file = path.resolve(around.cwd, options.output);
        const ending = path.extname(file).toLowerCase();
        if (ending === '.svg') writeFileSync(file, `<?xml version="1.0" encoding="UTF-8"?>\n${drawing.text}\n`);
        else if (ending === '.png') {
            const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(drawing.text)!;
            await toPng(browserPath(typeof options.browser === 'string' ? options.browser : undefined), drawing.text, [Number(width), Number(height)], file);
        } else throw new CannotDo('A drawing is written as .svg or .png.');
        return 0;
    },
};
export default draw;
