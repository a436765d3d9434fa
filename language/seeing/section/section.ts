/** The section of a stack as a picture, its pieces and the order in which they are laid below it. */
import { caution } from '../../reference/caution.js';
import type { Palette } from '../palette.js';
import { LINE, Pen, SIZE, spread } from '../plots/pen.js';
import type { Table } from '../plots/figure.js';
import { picture, type Markup } from '../svg.js';
import { fitted, wrapped } from '../plots/text-width.js';
import type { Layer, Section } from './layers.js';

const WIDTH = 720;
const [LEFT, RIGHT] = [74, 706 - 66];
/** px of a plate at most, of a break mark, and the least that anything drawn is wide. */
const TALL = 230;
const BREAK = 66;
/** px of an end board at most: it is cut there. */
const BOARD = 46;
const THIN = 2;
/** px for a millimetre along the stack at most. */
const MOST_ALONG = 16;
/** Cells in all that are drawn without folding; of a group that is folded half of them stand at either end. */
const MOST = 5;

/** A layer where it stands. */
interface Placed {
    readonly layer: Layer | 'break';
    readonly x: number;
    readonly wide: number;
}
/** The order as rows, for those who do not see it, for CSV and print. */
export function stepsTable(s: Section): Table {
    return {
        columns: [{ name: 'step', unit: '' }, { name: 'piece', unit: '' }, { name: 'how many', unit: '' }, { name: 'which way', unit: '' }],
        rows: s.steps.map((step, i) => [i + 1, step.what, step.each !== undefined ? `1 for each of ${s.cells} cells` : step.many || undefined, step.up]),
    };
}
/** @param id  unlike any other on its page */
export function sectionPicture(s: Section, palette: Palette, id = 'section'): Markup {
    const pen = new Pen(palette);
    const title = `Section of ${s.stack}`;
    pen.text(14, 24, fitted(title, SIZE.title, WIDTH - 28), { size: SIZE.title, strong: true });
    pen.text(14, 42, fitted(countOf(s), SIZE.label, WIDTH - 28), { ink: 'soft' });
    let top = 106;
    for (const warning of s.warnings) {
        for (const line of wrapped(warning, SIZE.label, WIDTH - 28)) {
            pen.text(14, top - 46, line, { ink: 'error', strong: true });
            top += LINE + 1;
        }
    }
    if (s.warnings.length) top += 6;
    const { placed, along, thickened } = place(s);
    const up = Math.min(along, TALL / (1000 * s.plateHeight));
    const high = up * 1000 * s.plateHeight;
    const bottom = top + high;
    const window = { top: top + (high - up * 1000 * s.windowHeight) / 2, bottom: bottom - (high - up * 1000 * s.windowHeight) / 2 };
    for (const p of placed) drawLayer(pen, p, s, { top, bottom, window });
    channels(pen, placed, { top, bottom, window });
    ends(pen, placed, top);
    let y = balloons(pen, placed, bottom + 58) + 10;
    y = scaleBars(pen, along, up, y) + 8;
    y = keyOfMarks(pen, s, y) + 10;

    const alone = s.groups > s.poles.length - 1;
    y = heading(pen, s.groups > 1 ? `Pieces, ${s.groups === 2 ? 'both' : `all ${s.groups}`} groups` : 'Pieces', y);
    for (const piece of s.pieces) {
        pen.text(60, y, String(piece.many), { anchor: 'end', strong: true });
        pen.text(70, y, piece.what);
        pen.text(190, y, fitted(piece.size, SIZE.label, WIDTH - 204), { ink: 'soft' });
        y += LINE + 3;
    }
    y = heading(pen, `Stacking order${alone ? ' of each group' : ''}, lying, from the left end`, y + 8);
    for (const [i, step] of s.steps.entries()) {
        if (step.each !== undefined && s.steps[i - 1]?.each !== step.each) {
            pen.text(52, y, s.cells > 1 ? `for each of ${step.each > 0 ? 'the other' : 'the'} ${s.cells} cells, one after the other:` : 'for the cell:', { ink: 'soft' });
            y += LINE + 3;
        }
        const from = y;
        const indent = step.each === undefined ? 0 : 22;
        pen.text(40 + indent, y, String(i + 1), { anchor: 'end', strong: true });
        pen.text(52 + indent, y, fitted(`${step.many > 1 ? `${step.many} ` : ''}${step.what}`, SIZE.label, 350 - 52 - indent));
        for (const line of wrapped(step.up, SIZE.label, WIDTH - 374)) {
            pen.text(360, y, line, { ink: 'soft' });
            y += LINE + 1;
        }
        y = Math.max(y, from + LINE + 1) + 2;
    }
    y += 4;
    const notes = [
        `Thicknesses are drawn ${up < along * 0.98 ? `${(along / up).toFixed(1)} times larger than heights; both scales stand below the picture` : 'at the scale of heights'}.`,
        ...(thickened.length ? [`Drawn thicker than they are, so that they can be seen: ${thickened.join(', ')}.`] : []),
        ...(s.layers.some(l => l.sort === 'board' && 1000 * l.thickness * along > BOARD) ? ['End boards are drawn cut.'] : []), 'Ports and channels show what meets what, not where they lie: in a real frame they lie beside each other in the depth.', ...s.notes, caution,
    ];
    for (const note of notes) {
        for (const line of wrapped(note, SIZE.small, WIDTH - 28)) {
            pen.text(14, y, line, { size: SIZE.small, ink: 'soft' });
            y += LINE - 1;
        }
        y += 2;
    }
    const height = Math.ceil(y + 4);
    const paper = new Pen(palette);
    paper.add('rect', { width: WIDTH, height, fill: palette.paper });
    return picture(id, WIDTH, height, title, `${countOf(s)} ${s.steps.map((t, i) => `${i + 1}: ${t.what}, ${t.up}`).join('. ')}. ${[...s.warnings, ...notes].join(' ')}`, ...paper.made, ...pen.made);
}

function countOf(s: Section): string {
    const cells = `${s.cells} ${s.cells === 1 ? 'cell' : 'cells'}`;
    if (s.poles.length > 2) return `Two groups of ${cells}, ${2 * s.cells + 1} plates, ${s.poles[1]} in the middle.`;
    return `${cells}${s.groups > 1 ? ` in each of ${s.groups} groups, of which one is drawn` : ''}, ${s.cells + 1} plates, plus at the ${s.poles[0] === 'plus' ? 'left' : 'right'} seen from the front.`;
}
function heading(pen: Pen, text: string, y: number): number {
    pen.line(14, y - 4, WIDTH - 14, y - 4, 'faint');
    pen.text(14, y + 14, text, { strong: true });
    return y + 34;
}
/** Where each layer stands, many cells folded, and px for a millimetre along the stack. */
function place(s: Section): { placed: Placed[]; along: number; thickened: string[] } {
    const drawn = s.poles.length - 1;
    const folded = s.cells * drawn > MOST && s.cells > 2;
    const half = Math.max(1, Math.floor(MOST / 2 / drawn));
    const row: (Layer | 'break')[] = [];
    for (const l of s.layers) {
        if (!folded || l.sort === 'board' || l.cell <= half || l.cell > s.cells - half) row.push(l);
        else if (row.at(-1) !== 'break') row.push('break');
    }
    const shown = row.filter((l): l is Layer => l !== 'break');
    const room = RIGHT - LEFT - BREAK * (row.length - shown.length);
    // As large as it fits, counting what has to be thickened and what is cut.
    const wide = (l: Layer, along: number) => Math.min(l.sort === 'board' ? BOARD : Infinity, Math.max(l.thickness > 0 ? THIN : 0, 1000 * l.thickness * along));
    const whole = (along: number) => shown.reduce((sum, l) => sum + wide(l, along), 0);
    let [low, high] = [0, room];
    for (let k = 0; k < 40; k++) {
        const middle = (low + high) / 2;
        if (whole(middle) < room) low = middle;
        else high = middle;
    }
    const along = Math.min(low, MOST_ALONG);
    const names: Readonly<Record<Layer['sort'], string>> = { board: 'end boards', plate: 'plates', gap: 'gaps', sheet: 'separators' };
    const thickened = [...new Set(shown.filter(l => l.thickness > 0 && 1000 * l.thickness * along < 0.95 * THIN).map(l => names[l.sort]))];
    let x = LEFT + Math.max(0, (room - whole(along)) / 2);
    const placed = row.map(layer => {
        const at = { layer, x, wide: layer === 'break' ? BREAK : wide(layer, along) };
        x += at.wide;
        return at;
    });
    return { placed, along, thickened };
}
interface Heights { readonly top: number; readonly bottom: number; readonly window: { readonly top: number; readonly bottom: number } }

function drawLayer(pen: Pen, { layer, x, wide }: Placed, s: Section, { top, bottom, window }: Heights): void {
    const { palette } = pen;
    if (layer === 'break') {
        for (const at of [x + 9, x + wide - 9]) {
            pen.way([[at, top - 10], [at, top + (bottom - top) * 0.42], [at - 6, top + (bottom - top) * 0.47], [at + 6, top + (bottom - top) * 0.53], [at, top + (bottom - top) * 0.58], [at, bottom + 10]], 'ink', { 'stroke-width': 1.1 });
        }
        const half = Math.max(1, Math.floor(MOST / 2 / (s.poles.length - 1)));
        pen.text(x + wide / 2, top + 26, String(s.cells - 2 * half), { anchor: 'middle', strong: true });
        pen.text(x + wide / 2, top + 40, 'more', { anchor: 'middle', size: SIZE.small });
        return;
    }
    const box = { x, y: top, width: wide, height: bottom - top };
    switch (layer.sort) {
        case 'board':
            pen.add('rect', { ...box, fill: palette.wash, stroke: palette.ink, 'stroke-width': 1 });
            for (let y = top + 10; y < bottom + wide; y += 12) {
                const [x1, y1, x2, y2] = [x, Math.min(y, bottom), x + wide, y - wide];
                // A line at 45 degrees, kept inside.
                const from = y > bottom ? x + (y - bottom) : x1;
                const to = y2 < top ? x2 - (top - y2) : x2;
                if (from < to) pen.line(from, y1, to, Math.max(top, y2), 'faint');
            }
            return;
        case 'plate':
            pen.add('rect', { ...box, fill: palette.ink });
            return;
        case 'sheet':
            pen.add('rect', { ...box, fill: palette.paper });
            for (const at of wide > 3 ? [x + 0.7, x + wide - 0.7] : [x + wide / 2]) pen.line(at, top, at, bottom, 'ink', { 'stroke-width': 1.3, 'stroke-dasharray': '4 2.5' });
            return;
        default: {
            if (!(wide > 0)) return;
            pen.add('rect', { ...box, fill: palette.wash });
            // Frame above and below the window; lye and gas between.
            for (const [a, b] of [[top, window.top], [window.bottom, bottom]]) if (b > a) pen.add('rect', { x: x + 0.4, y: a, width: Math.max(0.4, wide - 0.8), height: b - a, fill: palette.paper, stroke: palette.soft, 'stroke-width': 0.9 });
            // Without a sheet both gases are on both sides.
            for (const gas of s.parted ? [layer.gas!] : ['hydrogen', 'oxygen'] as const) bubbles(pen, gas, x, wide, window);
        }
    }
}
/** Rings are hydrogen, filled dots oxygen; half as many of these, and more the higher they have risen. */
function bubbles(pen: Pen, gas: Gas, x: number, wide: number, window: Heights['window']): void {
    const r = Math.min(2.4, wide / 4);
    const high = window.bottom - window.top;
    const many = gas === 'hydrogen' ? 12 : 6;
    for (let k = 0; k < many; k++) {
        const y = window.bottom - high * (0.06 + 0.9 * Math.sqrt((k + 0.5) / many));
        const at = x + wide * (k % 2 ? 0.68 : 0.32);
        pen.add('circle', { cx: at, cy: y, r, fill: gas === 'hydrogen' ? pen.palette.paper : pen.palette.oxygen, stroke: pen.palette[gas], 'stroke-width': 1 });
    }
}
type Gas = NonNullable<Layer['gas']>;

/** Above the gases' channels, below those of the lye: one lane for each side, and a riser from each gap. */
function channels(pen: Pen, placed: readonly Placed[], { top, bottom, window }: Heights): void {
    const gaps = (gas: Gas) => placed.filter(p => p.layer !== 'break' && p.layer.gas === gas);
    for (const [gas, out, into] of [['hydrogen', top - 34, bottom + 20], ['oxygen', top - 16, bottom + 38]] as const) {
        const of = gaps(gas);
        const middles = of.map(p => p.x + p.wide / 2);
        const dash = gas === 'oxygen' ? '6 3' : undefined;
        for (const m of middles) {
            pen.line(m, window.top, m, out, gas, { 'stroke-width': 1.6, 'stroke-dasharray': dash });
            pen.line(m, into, m, window.bottom, 'lye', { 'stroke-width': 1.2, 'stroke-dasharray': dash });
            arrow(pen, m, window.bottom + 6, 'up', 'lye');
        }
        const [first, last] = [Math.min(...middles), Math.max(...middles)];
        pen.line(first, out, RIGHT - 8, out, gas, { 'stroke-width': 1.8, 'stroke-dasharray': dash });
        arrow(pen, RIGHT - 2, out, 'right', gas);
        pen.text(RIGHT + 4, out + 4, gas, { size: SIZE.small });
        pen.line(LEFT + 6, into, last, into, 'lye', { 'stroke-width': 1.4, 'stroke-dasharray': dash });
        arrow(pen, LEFT + 2, into, 'from-left', 'lye');
        pen.text(LEFT - 6, into + 4, gas === 'hydrogen' ? 'lye, H2 side' : 'lye, O2 side', { size: SIZE.small, anchor: 'end' });
    }
}
function arrow(pen: Pen, x: number, y: number, way: 'up' | 'right' | 'from-left', ink: 'hydrogen' | 'oxygen' | 'lye'): void {
    const points = way === 'up' ? [[0, -5], [3, 1], [-3, 1]] : way === 'right' ? [[5, 0], [-3, -3.5], [-3, 3.5]] : [[8, 0], [0, -3.5], [0, 3.5]];
    pen.add('polygon', { points: points.map(([a, b]) => `${Math.round(10 * (x + a)) / 10} ${Math.round(10 * (y + b)) / 10}`).join(' '), fill: pen.palette[ink] });
}
/** Plus and minus over the end plates. */
function ends(pen: Pen, placed: readonly Placed[], top: number): void {
    for (const p of placed) {
        if (p.layer === 'break' || !p.layer.pole) continue;
        const plus = p.layer.pole === 'plus';
        const at = p.x + p.wide / 2;
        pen.line(at, top - 46, at, top, 'current', { 'stroke-width': 2 });
        pen.add('circle', { cx: at, cy: top - 52, r: 6, fill: pen.palette.paper, stroke: pen.palette.current, 'stroke-width': 1.4 });
        pen.line(at - 3, top - 52, at + 3, top - 52, 'current', { 'stroke-width': 1.6 });
        if (plus) pen.line(at, top - 55, at, top - 49, 'current', { 'stroke-width': 1.6 });
    }
}
/** Numbers under the first piece of each sort, and what they are. */
function balloons(pen: Pen, placed: readonly Placed[], y: number): number {
    const wanted: { at: number; text: string }[] = [];
    const seen = new Set<string>();
    const shown = placed.map(p => p.layer).filter(l => l !== 'break');
    for (const p of placed) {
        if (p.layer === 'break') continue;
        const { sort, gas, pole } = p.layer;
        const at = p.layer === shown[1] || p.layer === shown.at(-2) ? 'end' : 'middle';
        const text = sort === 'board' ? 'end board' : pole ? `${at} plate, ${pole}: makes ${pole === 'plus' ? 'oxygen' : 'hydrogen'}` : sort === 'plate' ? 'plate: hydrogen towards plus, oxygen towards minus'
            : sort === 'sheet' ? 'separator' : `gap of the ${gas} side, frame above and below`;
        if (seen.has(text)) continue;
        seen.add(text);
        wanted.push({ at: p.x + p.wide / 2, text });
    }
    wanted.sort((a, b) => a.at - b.at);
    const places = spread(wanted.map(w => ({ at: w.at, height: 22 })), LEFT, RIGHT);
    for (const [k, w] of wanted.entries()) {
        pen.way([[w.at, y - 52], [w.at, y - 14], [places[k], y - 2]], 'soft', { 'stroke-width': 0.6, 'stroke-dasharray': '1.5 2' });
        pen.add('circle', { cx: places[k], cy: y + 6, r: 8, fill: pen.palette.paper, stroke: pen.palette.soft, 'stroke-width': 0.8 });
        pen.text(places[k], y + 9.5, String(k + 1), { anchor: 'middle', size: SIZE.small });
    }
    y += 34;
    const half = Math.ceil(wanted.length / 2);
    for (const [k, w] of wanted.entries()) {
        const [x, row] = k < half ? [24, k] : [370, k - half];
        pen.text(x + 12, y + row * (LINE + 2), String(k + 1), { anchor: 'end', size: SIZE.small, strong: true });
        pen.text(x + 20, y + row * (LINE + 2), fitted(w.text, SIZE.small, 318), { size: SIZE.small });
    }
    return y + half * (LINE + 2);
}
/** Lengths on a scale of each direction: they stay true however large the picture is printed. */
function scaleBars(pen: Pen, along: number, up: number, y: number): number {
    const length = (px: number) => [100, 50, 20, 10, 5, 2, 1, 0.5].find(mm => mm * px <= 130) ?? 0.2;
    let x = 24;
    for (const [words, px] of [['along the stack', along], ['of its height', up]] as const) {
        const mm = length(px);
        pen.way([[x, y - 3], [x, y + 3], [x, y], [x + mm * px, y], [x + mm * px, y - 3], [x + mm * px, y + 3]], 'ink', { 'stroke-width': 1.2 });
        pen.text(x + mm * px + 8, y + 4, `${mm} mm ${words}`, { size: SIZE.small });
        x += 346;
    }
    return y + 14;
}
function keyOfMarks(pen: Pen, s: Section, y: number): number {
    pen.add('circle', { cx: 30, cy: y + 2, r: 2.6, fill: pen.palette.paper, stroke: pen.palette.hydrogen, 'stroke-width': 1 });
    pen.text(40, y + 6, 'hydrogen, at minus', { size: SIZE.small });
    pen.add('circle', { cx: 190, cy: y + 2, r: 2.6, fill: pen.palette.oxygen, stroke: pen.palette.oxygen, 'stroke-width': 1 });
    pen.text(200, y + 6, 'oxygen, at plus', { size: SIZE.small });
    if (!s.parted) pen.text(370, y + 6, 'no separator: the gases mix', { size: SIZE.small, ink: 'error', strong: true });
    return y + 18;
}
