/** How a plot is declared: one file in `of/`, with its test. It asks the models and works nothing out by itself. */
import type { Analysis } from '../../index.js';
import type { RunResult } from '../../run/run.js';
import type { View } from '../../quantities/view.js';
import type { Workings } from '../../quantities/workings.js';
import type { Figure } from './figure.js';

/** What plots may be asked with; nothing of it is needed. */
export interface Wishes {
    /** A number of the rig: 'stack.hydrogen-rate', for the plot of what matters most to it. */
    readonly of?: string;
    /** A run that was made already; the usual day if left out. */
    readonly run?: RunResult;
}
export interface Asked extends Wishes {
    readonly analysis: Analysis;
    readonly workings: Workings;
    /** The first stack; most plots are about it. */
    readonly stack: View | undefined;
}
export interface Plot {
    /** As the command line calls it. */
    readonly name: string;
    readonly title: string;
    /** What it shows, in a sentence. */
    readonly meaning: string;
    /** What a rig must tell for it, in words that follow 'It needs'. */
    readonly needs: string;
    /** Place in the list; those of the stack first. */
    readonly order: number;
    /** The figure, or why there is none. */
    readonly show: (asked: Asked) => Figure | string;
}
export function definePlot(plot: Plot): Plot {
    return plot;
}
