/**
 * The flow drawing of a rig, from its text alone: paths of gas, lye, water and current with the parts on them, their numbers and findings,
 * and below or beside it what drives what. A pure function of an analysis. The sheet is laid out for all layers, whichever are shown: so
 * nothing jumps when one is left out, and two pictures of one rig lie over each other.
 */
import type { Analysis } from '../../index.js';
import { media } from '../../vocabulary/define.js';
import { fitted, widthOf } from '../plots/text-width.js';
import type { Palette } from '../palette.js';
import { el, picture, type Markup } from '../svg.js';
import { rungs } from './controls.js';
import { graphOf, leftOut, type Graph } from './graph.js';
import { layerOf, layers, lineLayers, type Layer } from './layers.js';
import { BUBBLE, LINE, MOUNT, shortened, SMALL } from './layout/boxes.js';
import { layOut, type Layout } from './layout/index.js';
import { findingsByPart, mark, severities } from './marks.js';
import { rungHeight, rungSheet } from './rung-sheet.js';
import { heading, legend, linesOf, mediaOf, mountOf, partOf } from './sheet-parts.js';
import { valuesOf } from './values.js';

export { layers, type Layer };
export interface DrawingOptions {
    /** Those that are drawn; all of them if left out. */
    readonly layers?: readonly Layer[];
    /** Parts that are left out, with whatever senses or drives them. */
    readonly without?: ReadonlySet<string>;
    /** Unlike any other on its page. */
    readonly id?: string;
}
const MARGIN = 36;
const TITLE = 84;
/** A narrower sheet looks lost. */
const NARROWEST = 760;
/** Width of a name beside an instrument that stands by itself. */
const APART = 190;
/** Widths that what stands beside the flow may have, and the gap before it. */
const beside = [480, 560, 640];
const GAP = 64;

let last: { readonly key: string; readonly layout: Layout } | undefined;
/** It hangs on names, kinds and joints alone, so that a number edited keeps it. */
function laidOut({ nodes, lines }: Graph): Layout {
    const key = JSON.stringify([nodes.map(({ ports, ...rest }) => [rest, [...ports]]), lines]);
    if (last?.key !== key) last = { key, layout: layOut({ nodes, lines, elsewhere: [] }) };
    return last.layout;
}

/** SVG; undefined where no part stands in the rig that could be drawn. */
export function drawingOf(analysis: Analysis, palette: Palette, options: DrawingOptions = {}): Markup | undefined {
    return analysis.workings.unnoted(() => sheetOf(analysis, palette, options));
}
function sheetOf(analysis: Analysis, palette: Palette, { layers: shown = layers, without: hidden = new Set(), id = 'drawing' }: DrawingOptions): Markup | undefined {
    const { rig, workings } = analysis;
    const without = leftOut(workings, hidden);
    const graph = graphOf(workings, without);
    const driven = rungs(workings, without);
    if (!graph.nodes.length && !graph.elsewhere.length && !driven.length) return undefined;
    const flow = laidOut(graph);
    const has = (layer: Layer) => shown.includes(layer);
    const found = findingsByPart(analysis);

    const { elsewhere } = graph;
    /** What drives what stands below the flow, or beside it as wide as told. */
    const arranged = (aside: number | undefined) => {
        const flowWidth = aside ? flow.width : Math.max(flow.width, NARROWEST);
        const sideWidth = aside ?? flowWidth;
        const inner = aside ? flowWidth + GAP + aside : flowWidth;
        const rungsHigh = rungHeight(driven, sideWidth);
        const below = aside ? TITLE + 12 : TITLE + flow.height + (flow.placed.length ? 44 : 0);
        const bubbles = below + (rungsHigh ? rungsHigh + 44 : 0);
        const perRow = Math.max(1, Math.floor(sideWidth / APART));
        const foot = Math.max(bubbles + (elsewhere.length ? 26 + Math.ceil(elsewhere.length / perRow) * 34 : 0), TITLE + flow.height) + 34;
        const height = foot + 62;
        // Landscape, whatever the rig: the sides of a sheet of ISO 216.
        return { aside, flowWidth, sideWidth, inner, below, bubbles, perRow, foot, height, width: Math.max(inner + 2 * MARGIN, height * Math.SQRT2) };
    };
    // As fits the smaller sheet: on paper its words are larger.
    const ways = [undefined, ...(driven.length || elsewhere.length ? beside : [])].map(arranged);
    const { aside, flowWidth, sideWidth, inner, below, bubbles, perRow, foot, height, width } = ways.reduce((best, way) => (way.width < best.width ? way : best));
    const left = (width - inner) / 2;
    const side = aside ? left + flowWidth + GAP : left;
    const layout = moved(flow, left + (flowWidth - flow.width) / 2, TITLE);

    const byLayer = new Map<string, Markup[]>();
    const into = (layer: string, ...markup: Markup[]) => byLayer.set(layer, [...(byLayer.get(layer) ?? []), ...markup]);
    const marked = new Set<string>();
    let told = 0;
    /** The mark of some parts, at the first of the places where they stand; it goes with the layer and the media of that place. */
    const tell = (names: readonly string[], x: number, y: number, carries: string | undefined, layer: Layer | undefined, word = true) => {
        if (layer && !has(layer)) return;
        const all = names.filter(n => !marked.has(n)).flatMap(n => found.get(n) ?? []).sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
        for (const n of names) marked.add(n);
        told += all.length;
        if (!all.length) return;
        const level = all[0].severity;
        into('findings', el('g', { 'data-part': names[0], 'data-layer': layer, 'data-media': carries, 'data-severity': level },
            el('title', {}, all.map(f => `${f.severity}: ${f.message}`).join('\n')), mark(level, all.filter(f => f.severity === level).length, x, y, palette, word)));
    };
    for (const l of linesOf(layout, palette)) into(l.layer, l.markup);
    const parts: Markup[] = [];
    for (const p of layout.placed) {
        const { node, box } = p;
        // A part is there as long as one of the media is that it carries, and all that stands at it with it.
        const on = mediaOf(node);
        if (on.length && !on.some(has)) continue;
        const carries = on.join(' ') || undefined;
        parts.push(partOf(p, carries, palette));
        if (!node.end) {
            const line = (k: number) => p.y + box.text.y + k * LINE;
            const part = node.like.length ? undefined : rig.parts.get(node.name);
            if (part && node.valueLines) {
                into('values', el('g', { 'data-part': node.name, 'data-media': carries }, valuesOf(part, workings).map((v, k) => el('text', {
                    x: p.x + box.text.x, y: line(box.name.length + k), 'text-anchor': box.text.anchor, 'font-size': SMALL, fill: palette.soft, 'data-quantity': v.name,
                }, fitted(v.text, SMALL, widthOf('0'.repeat(node.valueWidth), SMALL))))));
            }
            tell(node.like.length ? node.like : [node.name], p.x + box.text.x + (box.text.anchor === 'middle' ? -18 : 7), line(box.name.length + node.valueLines) - 2, carries, undefined);
        }
        for (const [k, m] of node.mounts.entries()) {
            const [x, y] = [p.x + box.stem, p.y - node.symbol.up - 4 - (k + 0.5) * MOUNT];
            into('control', mountOf(m, x, y, k ? MOUNT - (node.mounts[k - 1].shape === 'bubble' ? BUBBLE : 6) : MOUNT / 2 + 4, palette, carries));
            if (m.shape !== 'contact') tell([m.name], x + BUBBLE + 14 + widthOf(shortened(m.name), SMALL), y, carries, 'control', false);
        }
    }
    if (driven.length) {
        const sheet = rungSheet(driven, sideWidth, palette);
        into('control', heading('What drives what', side, below, palette), el('g', { transform: `translate(${side} ${below + 16})` }, sheet.markup));
        for (const [name, spot] of sheet.spots) tell([name], side + spot.x, below + 16 + spot.y, undefined, 'control');
    }
    if (elsewhere.length) {
        into('control', heading('Elsewhere: in the room, or on what is not drawn', side, bubbles, palette));
        for (const [k, m] of elsewhere.entries()) {
            const [x, y] = [side + BUBBLE + 16 + (k % perRow) * APART, bubbles + 26 + Math.floor(k / perRow) * 34];
            into('control', mountOf(m, x, y, 0, palette), el('text', { x: x + BUBBLE + 5, y: y + 15, 'font-size': 9, fill: palette.soft }, shortened(m.senses)));
            tell([m.name], x + BUBBLE + 14 + widthOf(shortened(m.name), SMALL), y, undefined, 'control', false);
        }
    }
    const drawn = (some: readonly Layer[]) => some.filter(has).map(l => el('g', { 'data-layer': l }, byLayer.get(l)));
    const used = new Set(layout.drawn.map(d => layerOf(d.line.medium)));
    const inLegend = media.filter(l => used.has(l));
    return picture(id, width, height, `Flow drawing: ${rig.title || 'rig'}`, described(layout),
        el('rect', { width, height, fill: palette.paper }),
        el('text', { x: left, y: 44, 'font-size': 19, 'font-weight': 600, fill: palette.ink }, fitted(rig.title || 'A rig without a title', 19, inner / 1.08)),
        el('text', { x: left, y: 62, 'font-size': 11, fill: palette.soft }, `Flow drawing, not to scale. Stage: ${rig.stage}.`),
        drawn(lineLayers), el('g', {}, parts), drawn(['control', 'values', 'findings']),
        legend(left, foot, inner, inLegend, has, analysis.findings.length > 0, analysis.findings.length - told, palette));
}
const moved = (l: Layout, dx: number, dy: number): Layout => ({
    ...l,
    placed: l.placed.map(p => ({ ...p, x: p.x + dx, y: p.y + dy })),
    drawn: l.drawn.map(d => ({ ...d, points: d.points.map(([x, y]) => [x + dx, y + dy] as const) })),
    dots: l.dots.map(d => ({ ...d, x: d.x + dx, y: d.y + dy })),
});
/** For whoever cannot see it: what leads where. */
function described({ placed, drawn }: Layout): string {
    const by = new Map<string, string[]>();
    for (const { line } of drawn) by.set(line.medium, [...(by.get(line.medium) ?? []), `${placed[line.from].node.name} to ${placed[line.to].node.name}`]);
    return [...by].map(([medium, list]) => `${medium}: ${list.join(', ')}.`).join(' ') || 'No paths yet.';
}
