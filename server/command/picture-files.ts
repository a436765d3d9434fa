/** A picture that commands write: as SVG, as PNG by a browser, or its numbers as CSV. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { dark, printed, sharp, sharpLight, type Palette } from '../../language/seeing/palette.js';
import { browserAt, pngOf } from './browser.js';
import { CannotDo, type Given, type Option, type Surroundings } from './command.js';

const palettes: Readonly<Record<string, Palette>> = { print: printed, dark, sharp, 'sharp-light': sharpLight };

/** Options of every command that writes a picture. */
export const pictureOptions: Readonly<Record<string, Option>> = {
    out: { type: 'string', short: 'o', takes: 'FILE', doc: 'file to write: .svg, .png or .csv' },
    colours: { type: 'string', takes: 'SET', default: 'print', choices: Object.keys(palettes), doc: 'colours of the picture' },
    browser: { type: 'string', takes: 'PATH', doc: 'browser that makes a PNG, if not in the usual places' },
};
/**
 * @param svg  made only if it is asked for
 * @throws CannotDo for a file of another sort
 */
export async function writePicture(options: Given['options'], svg: (palette: Palette) => string, csv: () => string, around: Surroundings): Promise<void> {
    const name = String(options.out);
    const file = path.resolve(around.cwd, name);
    const palette = palettes[String(options.colours)];
    switch (path.extname(name).toLowerCase()) {
        case '.svg':
            writeFileSync(file, `${svg(palette)}\n`);
            break;
        case '.csv':
            // The mark at the beginning tells spreadsheets that it is UTF-8.
            writeFileSync(file, `\ufeff${csv()}`);
            break;
        case '.png':
            writeFileSync(file, await pngOf(svg(palette), browserAt(typeof options.browser === 'string' ? path.resolve(around.cwd, options.browser) : undefined)));
            break;
        default:
            throw new CannotDo(`-o takes a file that ends in .svg, .png or .csv; not ${name}.`);
    }
    around.out(`${name}\n`);
}
