/**
 * How a build paper is declared: what it is for, what of the rig it needs, and one function that writes it. One file per paper in `of/`.
 * A paper tells what the text tells and what follows from it; whatever else its reader must know is a blank to fill in.
 */
import type { Markup } from '../svg.js';
import type { Bench } from './bench.js';

export interface Paper {
    /** As asked for by --only. */
    readonly name: string;
    /** Where it stands among the others. */
    readonly place: number;
    readonly title: string;
    /** What it is for, in a sentence. */
    readonly purpose: string;
    /** What of the rig it is made from; without that its blanks are empty. */
    readonly needs: string;
    /** What is said first, before anything is done. Undefined ones are left out. */
    readonly cautions: (b: Bench) => readonly (string | undefined)[];
    readonly make: (b: Bench) => readonly (Markup | undefined | false)[];
    /** What goes with it as a file of its own. */
    readonly files?: (b: Bench) => readonly PaperFile[];
}
export interface PaperFile {
    /** Ours, never from a rig. */
    readonly name: string;
    readonly text: string;
}
export function definePaper(p: Paper): Paper {
    return p;
}
