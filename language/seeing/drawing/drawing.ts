/**
 * The flow drawing of a rig, from its text alone. Lines are told apart by width, dashes and letters as well as by colour; a lesser line is
 * interrupted where a greater one crosses it; findings are marked by shape and word. Every part is a group with its name, every layer one
 * that can be hidden.
 */
import type { Analysis } from '../../index.js';
import { caution } from '../../reference/caution.js';
import type { Palette } from '../palette.js';
import { el, picture, type Markup } from '../svg.js';
import { graphOf, type Graph, type Medium } from './graph.js';
import { INSTRUMENT_RADIUS, layoutOf, LINE_HEIGHT, wordsWidth, type Layout, type Placed, type Route } from './layout.js';

export const layers = ['hydrogen', 'oxygen', 'lye', 'water', 'current', 'control', 'values', 'findings'] as const;
export type Layer = typeof layers[number];
export interface DrawingOptions {
    /** All, if left out. */
    readonly layers?: readonly Layer[];
    /** Begins the ids of the picture: unlike any other on its page. */
    readonly id?: string;
}

const lineOf: Readonly<Record<Medium, { readonly width: number; readonly word: string; readonly letters: string; readonly dashes?: string }>> = {
    hydrogen: { width: 3, word: 'hydrogen', letters: 'H₂' }, oxygen: { width: 3, word: 'oxygen', letters: 'O₂', dashes: '14 3' }, lye: { width: 2.2, word: 'lye', letters: 'lye', dashes: '9 3 2 3' },
    water: { width: 1.6, word: 'water', letters: 'W', dashes: '4 3' }, current: { width: 1.2, word: 'current', letters: '' },
};
/** Greater ones last: they lie above. */
const drawn: readonly Medium[] = ['current', 'water', 'lye', 'oxygen', 'hydrogen'];
const MARGIN = 28;
/** px from the drawing to what explains it. */
const KEY_ABOVE = 38;
const SMALL = 10;

let last: { readonly key: string; readonly layout: Layout } | undefined;
/** The layout hangs on names, joints and the length of words; a number edited keeps it. */
function laidOut(graph: Graph): Layout {
    const key = JSON.stringify([graph.items.map(i => [i.name, i.shape, i.title, i.values.map(v => Math.ceil(v.length / 4)), i.instruments.map(x => [x.name, x.acts]), i.errors + i.warnings > 0]), graph.lines]);
    if (last?.key !== key) last = { key, layout: layoutOf(graph) };
    // The words are those of now.
    const items = new Map(graph.items.map(i => [i.name, i]));
    return { ...last.layout, boxes: last.layout.boxes.map(b => ({ ...b, item: items.get(b.item.name)!, labels: [items.get(b.item.name)!.title, ...items.get(b.item.name)!.values] })) };
}

/** SVG; undefined where nothing is on any path and no part stands there. */
export function drawingOf(analysis: Analysis, palette: Palette, options: DrawingOptions = {}): Markup | undefined {
    const graph = graphOf(analysis);
    if (!graph.items.length) return undefined;
    const layout = laidOut(graph);
    const shown = new Set<Layer>(options.layers ?? layers);
    const used = drawn.filter(m => shown.has(m) && layout.routes.some(r => r.medium === m)).reverse();
    const keyWidth = used.reduce((sum, m) => sum + 70 + wordsWidth(lineOf[m].word), 0);
    const width = Math.max(layout.width, keyWidth, 520) + 2 * MARGIN;
    const height = layout.height + 2 * MARGIN + KEY_ABOVE + 34;
    const title = analysis.rig.title || 'A rig without a title';
    const { errors, warnings } = analysis.findings.reduce((n, f) => ({ errors: n.errors + Number(f.severity === 'error'), warnings: n.warnings + Number(f.severity === 'warning') }), { errors: 0, warnings: 0 });
    const words = `Flow drawing: ${layout.boxes.filter(b => b.item.part).map(b => b.item.name).join(', ')}. ${errors} errors and ${warnings} warnings in the text.`;
    const top = (height - MARGIN - 34);
    return picture(options.id ?? 'drawing', width, height, `${title}: flow drawing`, words,
        el('rect', { x: 0, y: 0, width, height, fill: palette.paper }),
        el('g', { transform: `translate(${MARGIN} ${MARGIN})`, fill: 'none', stroke: palette.ink, 'stroke-width': 1, 'stroke-linejoin': 'round', 'font-size': 11 },
            drawn.filter(m => shown.has(m)).map(m => linesOf(layout.routes.filter(r => r.medium === m), m, palette)),
            drawn.filter(m => shown.has(m)).map(m => lettersOf(layout.routes.filter(r => r.medium === m), m, palette)),
            layout.boxes.map(b => boxOf(b, shown, palette)),
            shown.has('control') && el('g', { 'data-layer': 'control' }, layout.boxes.map(b => instrumentsOf(b, palette))),
            shown.has('findings') && el('g', { 'data-layer': 'findings' }, layout.boxes.map(b => marksOf(b, palette)))),
        el('g', { 'font-size': 11, fill: palette.soft }, key(used, palette, top), el('text', { x: MARGIN, y: top + 32, 'font-size': SMALL }, `${title}. ${caution}`)));
}
function key(used: readonly Medium[], palette: Palette, y: number): Markup[] {
    let x = MARGIN;
    return used.flatMap(m => {
        const { width, word, dashes } = lineOf[m];
        const at = x;
        x += 70 + wordsWidth(word);
        return [el('path', { d: `M${at} ${y}h38`, fill: 'none', stroke: palette[m], 'stroke-width': width, 'stroke-dasharray': dashes }), el('text', { x: at + 46, y: y + 4 }, word)];
    });
}
const points = (path: Route['path']) => `M${path.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`).join('L')}`;

function linesOf(routes: readonly Route[], medium: Medium, palette: Palette): Markup {
    const { width, word, dashes } = lineOf[medium];
    const colour = palette[medium];
    return el('g', { 'data-layer': medium },
        // Paper beside a line interrupts what lies below it.
        routes.map(r => el('path', { d: points(r.path), stroke: palette.paper, 'stroke-width': width + 7 })),
        routes.map(r => {
            const [from, to] = r.path.slice(-2);
            const [dx, dy] = [Math.sign(to[0] - from[0]), Math.sign(to[1] - from[1])];
            const [x, y] = to;
            return el('g', { 'data-from': r.from, 'data-to': r.to, 'data-part': r.parts[0] },
                el('title', {}, `${r.from} to ${r.to}: ${word}${r.parts.length ? `, by ${r.parts.join(', ')}` : ''}`),
                el('path', { d: points(r.path), stroke: colour, 'stroke-width': width, 'stroke-dasharray': dashes }),
                medium !== 'current' && el('path', { d: `M${x} ${y}l${-8 * dx - 3.5 * dy} ${-8 * dy - 3.5 * dx}l${7 * dy} ${7 * dx}Z`, fill: colour, stroke: 'none' }),
                r.joints.map(([jx, jy]) => el('circle', { cx: jx, cy: jy, r: 1.5 + width / 2, fill: colour, stroke: 'none' })));
        }));
}
/** The letters of what flows, once on each net, above all lines. */
function lettersOf(routes: readonly Route[], medium: Medium, palette: Palette): Markup {
    const { letters } = lineOf[medium];
    const nets = new Set<string>();
    return el('g', { 'data-layer': medium }, letters === '' ? undefined : routes.map(r => {
        const at = nets.has(r.net) ? undefined : longest(r.path);
        if (!at || at.length < wordsWidth(letters) + 34) return undefined;
        nets.add(r.net);
        const half = wordsWidth(letters) / 2 + 3;
        return el('g', {},
            el('rect', { x: at.x - half, y: at.y - 7, width: 2 * half, height: 14, fill: palette.paper, stroke: 'none' }),
            el('text', { x: at.x, y: at.y + 3.5, 'text-anchor': 'middle', 'font-size': SMALL, fill: palette[medium], stroke: 'none' }, letters));
    }));
}
/** The middle of the longest level stretch. */
function longest(path: Route['path']): { readonly x: number; readonly y: number; readonly length: number } | undefined {
    let best: { x: number; y: number; length: number } | undefined;
    for (let i = 1; i < path.length; i++) {
        const [a, b] = [path[i - 1], path[i]];
        if (a[1] !== b[1]) continue;
        const length = Math.abs(a[0] - b[0]);
        if (!best || length > best.length) best = { x: (a[0] + b[0]) / 2, y: a[1], length };
    }
    return best;
}
function boxOf({ item, symbol, x, y, label, labels }: Placed, shown: ReadonlySet<Layer>, palette: Palette): Markup {
    return el('g', { transform: `translate(${x} ${y})`, 'data-part': item.part, 'data-shape': item.shape },
        el('title', {}, item.title),
        el('path', { d: symbol.path, fill: symbol.open ? undefined : palette.paper, 'stroke-width': 1.7 }),
        symbol.thin && el('path', { d: symbol.thin }),
        symbol.dashed && el('path', { d: symbol.dashed, 'stroke-dasharray': '3 2' }),
        labels.map((text, i) => (i === 0
            ? el('text', { x: label[0], y: label[1], 'text-anchor': 'middle', fill: palette.ink, stroke: 'none' }, text)
            : shown.has('values') && el('text', { x: label[0], y: label[1] + i * LINE_HEIGHT, 'text-anchor': 'middle', 'font-size': SMALL, fill: palette.accent, stroke: 'none', 'data-layer': 'values' }, text))));
}
function instrumentsOf({ item, symbol, x, y, bubbles }: Placed, palette: Palette): Markup | undefined {
    if (!bubbles.length) return undefined;
    const tap = symbol.tap ?? { x: symbol.width / 2, y: 0, side: 'N' as const };
    const stalks = bubbles.map(b => (tap.side === 'E' ? `M${tap.x} ${tap.y}H${tap.x + 16}V${b.y}H${b.x - INSTRUMENT_RADIUS}` : `M${tap.x} ${tap.y}V${b.y + INSTRUMENT_RADIUS}`)).join('');
    return el('g', { transform: `translate(${x} ${y})` }, el('path', { d: stalks, stroke: palette.control, 'stroke-dasharray': '2 2' }), bubbles.map(b => {
        const instrument = item.instruments[b.index];
        return el('g', { 'data-part': instrument.name },
            el('title', {}, `${instrument.name}${instrument.acts ? `, acts on ${instrument.acts}` : ''}`),
            el('circle', { cx: b.x, cy: b.y, r: INSTRUMENT_RADIUS, fill: palette.paper, stroke: palette.control }),
            el('text', { x: b.x, y: b.y + 4, 'text-anchor': 'middle', fill: palette.ink, stroke: 'none' }, instrument.letters),
            el('text', { x: b.x + INSTRUMENT_RADIUS + 5, y: b.y + (instrument.acts ? -1 : 4), 'font-size': SMALL, fill: palette.ink, stroke: 'none' }, instrument.name),
            instrument.acts && el('text', { x: b.x + INSTRUMENT_RADIUS + 5, y: b.y + 11, 'font-size': SMALL, fill: palette.soft, stroke: 'none' }, `acts on ${instrument.acts}`));
    }));
}
/** A square with a cross for errors, a triangle for warnings, with their number. */
function marksOf({ item, x, y, label, labels }: Placed, palette: Palette): Markup | undefined {
    if (!item.errors && !item.warnings) return undefined;
    const at = x + label[0] + wordsWidth(labels[0]) / 2 + 5;
    const line = y + label[1] - 4;
    const n = item.errors || item.warnings;
    const colour = item.errors ? palette.error : palette.warning;
    return el('g', { 'data-part': item.part },
        el('title', {}, `${item.name}: ${item.errors ? `${item.errors} ${item.errors === 1 ? 'error' : 'errors'}` : `${item.warnings} ${item.warnings === 1 ? 'warning' : 'warnings'}`}`),
        item.errors ? el('path', { d: `M${at} ${line - 5}h10v10h-10ZM${at + 2.5} ${line - 2.5}l5 5m0 -5l-5 5`, stroke: colour, 'stroke-width': 1.4 }) : el('path', { d: `M${at} ${line + 5}l5.5 -10l5.5 10Z`, stroke: colour, 'stroke-width': 1.4 }),
        el('text', { x: at + 14, y: line + 4, 'font-size': SMALL, fill: colour, stroke: 'none' }, String(n)));
}
