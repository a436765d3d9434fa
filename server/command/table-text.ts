/** The table behind a picture as lines of text. */
import type { Table } from '../../language/seeing/plots/figure.js';
import { digits } from '../../language/units/format.js';
import type { Styles } from './style.js';

const FIGURES = 4;

export function tableLines({ columns, rows }: Table, s: Styles): string[] {
    const cells = rows.map(row => row.map(c => (c === undefined ? '' : typeof c === 'number' ? digits(c, FIGURES) : c)));
    const left = columns.map((_, k) => rows.some(row => typeof row[k] === 'string'));
    const widths = columns.map((c, k) => cells.reduce((most, row) => Math.max(most, row[k].length), Math.max(c.name.length, c.unit.length)));
    const line = (texts: readonly string[]) => texts.map((t, k) => (left[k] ? t.padEnd(widths[k]) : t.padStart(widths[k]))).join('  ').trimEnd();
    return [s.strong(line(columns.map(c => c.name))), ...(columns.some(c => c.unit) ? [s.quiet(line(columns.map(c => c.unit)))] : []), ...cells.map(line)];
}
