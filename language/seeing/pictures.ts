/** Pictures of a rig, by name: what a panel can show. A drawing or plot adds itself here. */
import type { Analysis } from '../index.js';
import { drawingOf } from './drawing/drawing.js';
import type { Palette } from './palette.js';

export interface Picture {
    readonly name: string;
    readonly title: string;
    /** SVG; undefined where the rig does not tell enough for it. */
    readonly draw: (analysis: Analysis, palette: Palette) => string | undefined;
}
export const pictures: readonly Picture[] = [
    { name: 'drawing', title: 'Flow drawing', draw: (analysis, palette) => drawingOf(analysis, palette, { id: 'panel-drawing' })?.text },
];
