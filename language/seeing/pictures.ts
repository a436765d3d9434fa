/** Pictures of a rig, by name: what a panel can show. Drawings and plots add themselves here. */
import type { Analysis } from '../index.js';
import type { Palette } from './palette.js';

export interface Picture {
    readonly name: string;
    readonly title: string;
    /** SVG; undefined where the rig does not tell enough for it. */
    readonly draw: (analysis: Analysis, palette: Palette) => string | undefined;
}
export const pictures: readonly Picture[] = [];
