/** Pictures of a rig, by name: the drawing, the stack in section, every plot. What a panel can show. */
import type { Analysis } from '../index.js';
import { drawingOf } from './drawing/index.js';
import type { Palette } from './palette.js';
import { allPlots, figureOf, pictureOf } from './plots/index.js';
import { sectionOf } from './section/layers.js';
import { sectionPicture } from './section/section.js';

export interface Picture {
    readonly name: string;
    readonly title: string;
    /** SVG, or why there is none. @param id  unlike any other on its page */
    readonly draw: (analysis: Analysis, palette: Palette, id: string) => { readonly svg: string } | { readonly why: string };
}
export const pictures: readonly Picture[] = [
    {
        name: 'drawing', title: 'Flow drawing', draw: (analysis, palette, id) => {
            const drawn = drawingOf(analysis, palette, { id });
            return drawn ? { svg: drawn.text } : { why: 'No part stands on a path yet.' };
        },
    },
    {
        name: 'section', title: 'The stack in section', draw: (analysis, palette, id) => {
            const section = sectionOf(analysis);
            return typeof section === 'string' ? { why: section } : { svg: sectionPicture(section, palette, id).text };
        },
    },
    ...allPlots.map((plot): Picture => ({
        name: plot.name, title: plot.title, draw: (analysis, palette, id) => {
            const figure = figureOf(plot, analysis);
            return typeof figure === 'string' ? { why: figure } : { svg: pictureOf(plot, figure, palette, id).text };
        },
    })),
];
