/** What can be shown or left out by itself, and how a line of each looks: its form tells what flows, its colour says it again. */
import type { Medium } from '../../vocabulary/define.js';
import type { Palette } from '../palette.js';

/** Lines, the most important last: they lie on top. */
export const lineLayers = ['water', 'current', 'lye', 'oxygen', 'hydrogen'] as const;
export const layers = [...lineLayers, 'control', 'values', 'findings'] as const;
export type Layer = (typeof layers)[number];

export interface LineLook {
    readonly colour: keyof Palette;
    readonly width: number;
    readonly dash?: string;
    /** A double line: the paper shows in its middle. */
    readonly hollow?: boolean;
    /** Written on it. */
    readonly code: string;
    readonly word: string;
}
export const looks: Readonly<Record<Medium, LineLook>> = {
    hydrogen: { colour: 'hydrogen', width: 2.8, code: 'H₂', word: 'hydrogen' },
    oxygen: { colour: 'oxygen', width: 3.8, hollow: true, code: 'O₂', word: 'oxygen' },
    lye: { colour: 'lye', width: 2.2, dash: '10 3 2.5 3', code: 'lye', word: 'lye' },
    water: { colour: 'water', width: 1.8, dash: '6 3', code: 'water', word: 'water' },
    current: { colour: 'current', width: 1.3, code: '', word: 'current' },
};
/** What flows, as the drawing knows it; an unknown medium is drawn as the thinnest line. */
export const layerOf = (medium: string): Medium => (Object.hasOwn(looks, medium) ? (medium as Medium) : 'current');
