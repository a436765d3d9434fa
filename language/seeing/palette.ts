/**
 * The colours of drawings, plots and pages: quiet ink and one accent. What a line carries is told by its form (dashes, width, marks) and by
 * words as well, never by colour alone.
 */
export interface Palette {
    readonly paper: string;
    /** Words and outlines. */
    readonly ink: string;
    /** Units, ±, captions. */
    readonly soft: string;
    /** Grid, frames, what holds others together. */
    readonly faint: string;
    /** Areas that lie behind: bands of ±, panels. */
    readonly wash: string;
    /** The one accent. */
    readonly accent: string;
    readonly hydrogen: string;
    readonly oxygen: string;
    readonly lye: string;
    readonly water: string;
    readonly current: string;
    readonly control: string;
    readonly error: string;
    readonly warning: string;
}
/** On white paper; every one at least 4.5 : 1 against it where words are set in it. */
export const printed: Palette = {
    paper: '#ffffff', ink: '#1d2733', soft: '#5b6773', faint: '#c9d0d7', wash: '#eef2f5', accent: '#0b6a6f',
    hydrogen: '#0b6a6f', oxygen: '#8a3d74', lye: '#6a5d1f', water: '#2c5f9e', current: '#a04a12', control: '#4b5563', error: '#b00020', warning: '#8a5a00',
};
/** On a dark screen. */
export const dark: Palette = {
    paper: '#1b2027', ink: '#e4e9ee', soft: '#a3afba', faint: '#3d4752', wash: '#262d36', accent: '#58c4c0',
    hydrogen: '#58c4c0', oxygen: '#d99bc4', lye: '#d3c373', water: '#8fb8ec', current: '#eba06a', control: '#aeb8c2', error: '#ff8a8f', warning: '#f0c35a',
};
/** High contrast, on black and on white. */
export const sharp: Palette = {
    paper: '#000000', ink: '#ffffff', soft: '#ffffff', faint: '#8c8c8c', wash: '#1a1a1a', accent: '#7fe8e4',
    hydrogen: '#7fe8e4', oxygen: '#ffb3e3', lye: '#ffe97a', water: '#a8d0ff', current: '#ffb27a', control: '#ffffff', error: '#ff9a9a', warning: '#ffd76a',
};
export const sharpLight: Palette = {
    paper: '#ffffff', ink: '#000000', soft: '#000000', faint: '#6b6b6b', wash: '#f2f2f2', accent: '#004f53',
    hydrogen: '#004f53', oxygen: '#6b1f58', lye: '#4a4010', water: '#123f78', current: '#7a3207', control: '#000000', error: '#8c0018', warning: '#5f3d00',
};
