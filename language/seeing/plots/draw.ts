/** A figure as a picture: its title, its shape, and below it what it says. */
import { caution } from '../../reference/caution.js';
import type { Palette } from '../palette.js';
import { picture, type Markup } from '../svg.js';
import { wrapped } from './text-width.js';
import { drawBars } from './draw-bars.js';
import { drawCurves } from './draw-curves.js';
import { drawLadder } from './draw-ladder.js';
import type { Figure } from './figure.js';
import { LINE, Pen, SIZE } from './pen.js';

/** px of a picture, whatever it shows: three quarters of a printed page's width at 96 px an inch. */
export const WIDTH = 720;
const MARGIN = 14;

export function drawn(id: string, title: string, figure: Figure, palette: Palette): Markup {
    const pen = new Pen(palette);
    pen.text(MARGIN, 24, title, { size: SIZE.title, strong: true });
    const { shape } = figure;
    const top = 40;
    let y = shape.is === 'curves' ? drawCurves(pen, shape, top, WIDTH) : shape.is === 'bars' ? drawBars(pen, shape, top, WIDTH) : drawLadder(pen, shape, top, WIDTH);
    y += LINE + 4;
    for (const line of wrapped(figure.says, SIZE.label, WIDTH - 2 * MARGIN)) {
        pen.text(MARGIN, y, line);
        y += LINE + 1;
    }
    for (const note of [...figure.notes ?? [], caution]) {
        y += 2;
        for (const line of wrapped(note, SIZE.small, WIDTH - 2 * MARGIN)) {
            pen.text(MARGIN, y, line, { size: SIZE.small, ink: 'soft' });
            y += LINE - 1;
        }
    }
    const height = Math.ceil(y + 4);
    const paper = new Pen(palette);
    paper.add('rect', { width: WIDTH, height, fill: palette.paper });
    return picture(id, WIDTH, height, title, [figure.says, ...figure.notes ?? [], caution].join(' '), ...paper.made, ...pen.made);
}
