/** All plots in their order; one asked for by its name; as picture and as CSV. */
import type { Analysis } from '../../index.js';
import { csvOf } from '../../reference/csv.js';
import type { Palette } from '../palette.js';
import { digits } from '../../units/format.js';
import { el, type Markup } from '../svg.js';
import type { Plot, Wishes } from './define.js';
import { drawn } from './draw.js';
import type { Cell, Figure, Table } from './figure.js';
import { everyPlot } from './plots.generated.js';

/** Of numbers in a table that is read. */
const FIGURES = 4;

export const allPlots: readonly Plot[] = [...everyPlot].sort((a, b) => a.order - b.order);

/** The figure of one plot, or why this rig has none. */
export function figureOf(plot: Plot, analysis: Analysis, wishes: Wishes = {}): Figure | string {
    const { workings } = analysis;
    return workings.unnoted(() => plot.show({ ...wishes, analysis, workings, stack: workings.partsOf('stack')[0] }));
}
/** @param id  unlike any other on its page */
export function pictureOf(plot: Plot, figure: Figure, palette: Palette, id = `plot-${plot.name}`): Markup {
    return drawn(id, plot.title, figure, palette);
}
/** The table as HTML, for those who do not see the picture and for print. */
export function tableMarkup({ columns, rows }: Table, caption: string): Markup {
    const told = (c: Cell) => (c === undefined ? '' : typeof c === 'number' ? digits(c, FIGURES) : c);
    return el('table', {}, el('caption', {}, caption),
        el('thead', {}, el('tr', {}, columns.map(c => el('th', { scope: 'col' }, c.unit ? `${c.name}, ${c.unit}` : c.name)))),
        el('tbody', {}, rows.map(row => el('tr', {}, row.map(c => el('td', { class: typeof c === 'number' && 'number' }, told(c)))))));
}
/** The table for a spreadsheet. */
export function tableCsv({ columns, rows }: Table): string {
    return csvOf([columns.map(c => (c.unit ? `${c.name} (${c.unit})` : c.name)), ...rows]);
}
export type { Figure, Plot, Table };
