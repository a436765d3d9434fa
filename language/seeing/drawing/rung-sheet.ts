/** The rungs of what drives what, with contacts and coils as IEC 60617 has them (from memory), side by side under the flow as far as there is room. */
import type { Palette } from '../palette.js';
import { el, type Markup } from '../svg.js';
import { widthOf } from '../plots/text-width.js';
import { broken } from './layout/boxes.js';
import type { Contact, Rung } from './controls.js';

const [CELL, LINE, BESIDE] = [84, 62, 36];
/** Room for the coil and its name, and between two rungs side by side. */
const [COIL, APART] = [128, 22];
const shapes: Readonly<Record<Contact, string>> = {
    make: 'M-14 0H-6L7-9M6 0H14',
    break: 'M-14 0H-6L8-8M6 0H14M6 0V-9.5',
    'press-make': 'M-14 0H-6L7-9M6 0H14M0-5V-12M-4-12H4',
    'press-break': 'M-14 0H-6L8-8M6 0H14M6 0V-9.5M0-5V-13M-4-13H4',
};
export interface RungSheet {
    readonly markup: readonly Markup[];
    /** Where a mark at a driven part goes. */
    readonly spots: ReadonlyMap<string, { readonly x: number; readonly y: number }>;
}
/** @param width  px */
export function rungSheet(rungs: readonly Rung[], width: number, palette: Palette): RungSheet {
    const spots = new Map<string, { x: number; y: number }>();
    const markup = laid(rungs, width).map(({ rung, x, y, own }) => draw(rung, x, y, own, palette, spots));
    return { markup, spots };
}
/** px that they take in a sheet so wide. */
export const rungHeight = (rungs: readonly Rung[], width: number): number => laid(rungs, width).reduce((most, { rung, y, own }) => Math.max(most, y + heightOf(rung, own)), 0);
/** From left to right as far as there is room. */
function laid(rungs: readonly Rung[], width: number) {
    let [x, y, tallest] = [0, 0, 0];
    return rungs.map(rung => {
        const own = Math.min(width, 8 + cellsOf(rung).length * CELL + COIL);
        if (x > 0 && x + own > width) {
            x = 0;
            y += tallest;
            tallest = 0;
        }
        const place = { rung, x, y, own };
        x += own + APART;
        tallest = Math.max(tallest, heightOf(rung, own));
        return place;
    });
}
const cellsOf = (r: Rung) => r.groups.flatMap(g => g.row.map((names, k) => ({ words: k ? '' : g.words, names })));
const perLine = (width: number) => Math.max(2, Math.floor((width - COIL - 8) / CELL));
/** Cells line by line, with the height of each line. */
function linesOf(r: Rung, width: number) {
    const cells = cellsOf(r);
    const most = perLine(width);
    const lines = [];
    for (let k = 0; k < cells.length; k += most) {
        const some = cells.slice(k, k + most);
        lines.push({ cells: some, height: LINE + (Math.max(...some.map(c => c.names.length)) - 1) * BESIDE });
    }
    return lines;
}
const heightOf = (r: Rung, width: number) => linesOf(r, width).reduce((sum, l) => sum + l.height, 0) + 6;

function draw(rung: Rung, x0: number, y0: number, width: number, palette: Palette, spots: Map<string, { x: number; y: number }>): Markup {
    const parts: Markup[] = [];
    const wire = (d: string) => parts.push(el('path', { d, fill: 'none', stroke: palette.control, 'stroke-width': 1.2 }));
    const text = (x: number, y: number, t: string, more: Record<string, string | number> = {}) => parts.push(el('text', { x, y, 'font-size': 10, 'text-anchor': 'middle', fill: palette.ink, ...more }, t));
    let top = y0;
    const lines = linesOf(rung, width);
    for (const [k, line] of lines.entries()) {
        const y = top + 26;
        const right = x0 + 8 + line.cells.length * CELL;
        wire(`M${x0} ${y}H${x0 + 8}`);
        if (k === 0) wire(`M${x0} ${y - 12}V${y + 12}`);
        for (const [i, cell] of line.cells.entries()) {
            const left = x0 + 8 + i * CELL;
            if (cell.words) text(left + 2, y - 17, cell.words, { 'text-anchor': 'start', fill: palette.soft, 'font-size': 9.5 });
            for (const [j, c] of cell.names.entries()) {
                const cy = y + j * BESIDE;
                const middle = left + CELL / 2;
                const [from, to] = j ? [left + 8, left + CELL - 8] : [left, left + CELL];
                parts.push(el('g', { 'data-part': c.name.split('.')[0], 'data-contact': c.shape, 'data-drives': rung.name },
                    el('path', { d: `M${from} ${cy}H${middle - 14}M${middle + 14} ${cy}H${to}`, fill: 'none', stroke: palette.control, 'stroke-width': 1.2 }),
                    el('path', { d: shapes[c.shape], transform: `translate(${middle} ${cy})`, fill: 'none', stroke: palette.ink, 'stroke-width': 1.3 }),
                    ...two(c.name).map((t, n) => el('text', { x: middle, y: cy + 12 + n * 10.5, 'font-size': 9.5, 'text-anchor': 'middle', fill: palette.ink }, t))));
                if (j) wire(`M${from} ${cy}V${y}M${to} ${cy}V${y}`);
            }
        }
        if (k + 1 < lines.length) {
            const edge = top + line.height - 1;
            wire(`M${right} ${y}h6V${edge}H${x0}V${top + line.height + 26}`);
        } else {
            const at = right + 14;
            wire(`M${right} ${y}H${at}M${at + 26} ${y}h8M${at + 34} ${y - 5}V${y + 5}`);
            parts.push(el('g', { class: 'coil' }, el('path', { d: `M${at} ${y - 8}h26v16h-26Z`, fill: palette.paper, stroke: palette.ink, 'stroke-width': 1.5 })));
            if (rung.kind === 'timer') parts.push(el('path', { d: `M${at} ${y - 8}h8v16h-8ZM${at} ${y - 8}l8 16M${at + 8} ${y - 8}l-8 16`, fill: 'none', stroke: palette.ink }));
            const name = two(rung.name);
            for (const [n, t] of name.entries()) text(at + 40, y + 4 - (name.length - 1) * 6 + n * 12, t, { 'text-anchor': 'start', 'font-size': 11 });
            text(at + 13, y + 19, rung.says ?? rung.kind.replace(/-/g, ' '), { fill: palette.soft, 'font-size': 9 });
            spots.set(rung.name, { x: at + 48, y: y + 22 });
        }
        top += line.height;
    }
    return el('g', { 'data-part': rung.name, class: 'rung' }, parts);
}
/** A name in two lines at most, each as wide as a cell. */
function two(name: string): string[] {
    const lines = broken(name).flatMap(l => (widthOf(l, 9.5) > CELL - 4 ? [`${l.slice(0, 13)}…`] : [l]));
    return lines.length > 2 ? [lines[0], lines.slice(1).join('').length <= 14 ? lines.slice(1).join('') : `${lines[1].slice(0, 13)}…`] : lines;
}
