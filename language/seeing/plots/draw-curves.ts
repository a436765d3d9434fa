/** Curves in panes one under the other, on one axis across; labels at the ends of lines, in a column that nothing else uses. */
import { fitted, wrapped, widthOf } from './text-width.js';
import type { Curves, Line, Pane, Stroke } from './figure.js';
import { boxOf, dashes, lanes, LINE, meet, round, SIZE, spread, type Box, type Pen } from './pen.js';
import { scaleOf, type Scale } from './scale.js';

const LEFT = 58;
/** px of the column of labels: leader, a piece of the line, words. */
const COLUMN = 206;
const LEADER = 14;
const SAMPLE = 20;
const PANE = 240;
/** Above each pane the name of its axis. */
const HEAD = 22;
const BETWEEN = 10;
/** A set point farther away than so many times what moves is told, not drawn. What must not be passed is always drawn. */
const FAR = 2.5;

interface Label {
    readonly lines: readonly string[];
    readonly at: readonly [number, number];
    readonly stroke: Stroke;
    readonly ink: Line['ink'];
    readonly thin: boolean;
}

export function drawCurves(pen: Pen, shape: Curves, top: number, width: number): number {
    const right = width - COLUMN;
    const across = scaleOf(shape.x, shape.panes.flatMap(p => [...p.lines.flatMap(l => l.x), ...(p.points ?? []).flatMap(q => [q.x, ...(q.xBounds ?? [])])]).concat((shape.uprights ?? []).map(u => u.x)), LEFT, right, 7);
    const x = inside(across, LEFT, right);
    let y = top;
    const uprights = topLabels(pen, (shape.uprights ?? []).map(u => ({ at: x(u.x), text: u.label })), y, LEFT, right);
    const happenings = shape.happenings ?? [];
    const numbers = topLabels(pen, happenings.map((h, i) => ({ at: x(h.x), text: String(i + 1) })), y + uprights.height, LEFT, right, true);
    y += uprights.height + numbers.height;
    const first = y;
    const drawn: { top: number; bottom: number }[] = [];
    for (const pane of shape.panes) {
        y += HEAD;
        const bottom = drawPane(pen, pane, across, x, y, right);
        drawn.push({ top: y, bottom });
        y = bottom + BETWEEN;
    }
    const bottom = drawn.at(-1)!.bottom;
    for (const [k, u] of (shape.uprights ?? []).entries()) {
        const at = x(u.x);
        pen.way([[uprights.places[k], uprights.tops[k]], [at, first + HEAD - 4]], 'soft', { 'stroke-width': 0.7 });
        for (const p of drawn) pen.line(at, p.top, at, p.bottom, 'soft', { 'stroke-width': 0.9, 'stroke-dasharray': '3 3' });
    }
    for (const [k, h] of happenings.entries()) {
        const at = x(h.x);
        pen.way([[numbers.places[k], numbers.tops[k]], [at, first + HEAD - 4]], h.grave ? 'error' : 'soft', { 'stroke-width': 0.7 });
        for (const p of drawn) pen.line(at, p.top, at, p.bottom, h.grave ? 'error' : 'soft', { 'stroke-width': h.grave ? 1.2 : 0.6, 'stroke-dasharray': h.grave ? undefined : '1.5 2.5' });
    }
    for (const u of shape.untold ?? []) for (const p of drawn) pen.line(x(u), p.top, x(u), p.top + 5, 'soft', { 'stroke-width': 0.7 });
    for (const [k, { y: of }] of shape.panes.entries()) pen.text(LEFT, drawn[k].top - 8, fitted(of.unit ? `${of.name}, ${of.unit}` : of.name, SIZE.label, right - LEFT), { ink: 'soft', over: true });
    // The axis across, once, below the last pane.
    let lastRight = -Infinity;
    for (const t of across.ticks) {
        const box = boxOf(x(t.at), bottom + 15, t.label, { anchor: 'middle', size: SIZE.small });
        pen.line(x(t.at), bottom, x(t.at), bottom + 4, 'soft');
        if (box.left < lastRight + 6) continue;
        pen.text(x(t.at), bottom + 15, t.label, { anchor: 'middle', size: SIZE.small });
        lastRight = box.right;
    }
    const name = shape.x.unit ? `${shape.x.name}, ${shape.x.unit}` : shape.x.name;
    pen.text(right, bottom + 31, fitted(name, SIZE.label, right - LEFT), { anchor: 'end', size: SIZE.label, ink: 'soft' });
    y = bottom + 34;
    if (happenings.length) y = tellHappenings(pen, shape, y + 16, width);
    return y;
}
/** px by value, kept between two ends: what lies outside stands at the edge. */
const inside = (s: Scale, from: number, to: number) => (v: number) => Math.min(Math.max(from, to), Math.max(Math.min(from, to), s.at(v)));

function drawPane(pen: Pen, pane: Pane, across: Scale, x: (v: number) => number, top: number, right: number): number {
    const data = [...pane.lines.flatMap(l => [...l.y, ...(l.band ?? []).flatMap(b => [b.low, b.high])]), ...(pane.points ?? []).flatMap(p => [p.y, ...(p.yBounds ?? [])])].filter(v => Number.isFinite(v) && (pane.y.scale !== 'log' || v > 0));
    const [least, most] = [Math.min(...data, ...(pane.y.holds ?? [])), Math.max(...data, ...(pane.y.holds ?? []))];
    const reach = FAR * (most - least || Math.abs(most) || 1);
    const levels = (pane.levels ?? []).filter(l => pane.y.scale === 'log' ? l.y > 0 : l.ink === 'error' || l.y > least - reach && l.y < most + reach);
    const far = (pane.levels ?? []).filter(l => !levels.includes(l)).map(l => ({ ...l, label: `${l.label} (off the scale)` }));
    // A first guess of the height; it grows where the labels need more.
    const wrap = (text: string) => wrapped(text, SIZE.label, COLUMN - LEADER - SAMPLE - 14).slice(0, 3);
    const ends = pane.lines.map(endOf);
    const needed = [...pane.lines.map(l => wrap(l.label)), ...[...levels, ...far].map(l => wrap(l.label))].reduce((sum, lines) => sum + lines.length * LINE + 3, 0);
    const height = Math.max(pane.height ?? PANE, needed);
    const bottom = top + height;
    const up = scaleOf(pane.y, [...data, ...levels.map(l => l.y)], bottom, top, Math.max(2, Math.min(6, Math.floor(height / 34))));
    const y = inside(up, top, bottom);

    pen.add('rect', { x: LEFT, y: top, width: right - LEFT, height, fill: 'none', stroke: pen.palette.faint });
    for (const t of up.ticks) {
        if (t.at < up.low - 1e-9 * Math.abs(up.low) || t.at > up.high * (1 + 1e-9)) continue;
        pen.line(LEFT, y(t.at), right, y(t.at), 'faint', { 'stroke-width': 0.6 });
        pen.text(LEFT - 7, y(t.at) + 3.5, t.label, { anchor: 'end', size: SIZE.small });
    }
    for (const t of across.ticks) pen.line(x(t.at), top, x(t.at), bottom, 'faint', { 'stroke-width': 0.6 });
    for (const l of pane.lines) if (l.band) drawBand(pen, l, x, y);
    for (const l of levels) pen.line(LEFT, y(l.y), right, y(l.y), l.ink ?? 'soft', { 'stroke-width': 1, 'stroke-dasharray': dashes.dotted });
    for (const l of pane.lines) {
        pen.way(l.x.map((v, i) => [v === v ? x(v) : NaN, l.y[i] === l.y[i] && (pane.y.scale !== 'log' || l.y[i] > 0) ? y(l.y[i]) : NaN] as const), l.ink, { 'stroke-dasharray': dashes[l.stroke], 'stroke-width': l.thin ? 1 : 1.8 });
        if (l.mark) for (const [i, v] of l.x.entries()) if (l.y[i] === l.y[i]) pen.mark(l.mark, x(v), y(l.y[i]), l.ink, 2.6);
    }
    const labels: Label[] = [
        ...pane.lines.flatMap((l, k) => (ends[k] ? [{ lines: wrap(l.label), at: [x(ends[k]![0]), y(ends[k]![1])] as const, stroke: l.stroke, ink: l.ink, thin: false }] : [])),
        ...[...levels, ...far].map(l => ({ lines: wrap(l.label), at: [right, y(l.y)] as const, stroke: 'dotted' as const, ink: l.ink ?? 'soft' as const, thin: true })),
    ];
    drawPoints(pen, pane, x, y, { left: LEFT, right, top, bottom }, labels);
    sideLabels(pen, labels, right, top, bottom);
    return bottom;
}
/** Where a line ends to the right: the first of its points there, so that one that falls straight down is told at its corner. */
function endOf(l: Line): readonly [number, number] | undefined {
    let best: number | undefined;
    for (const [i, v] of l.x.entries()) if (v === v && l.y[i] === l.y[i] && (best === undefined || v > l.x[best])) best = i;
    return best === undefined ? undefined : [l.x[best], l.y[best]];
}
function drawBand(pen: Pen, l: Line, x: (v: number) => number, y: (v: number) => number): void {
    const at = l.x.map((_, i) => i).filter(i => Number.isFinite(l.band![i].low) && Number.isFinite(l.band![i].high));
    if (at.length < 2) return;
    const low = at.map(i => [x(l.x[i]), y(l.band![i].low)] as const);
    const high = at.map(i => [x(l.x[i]), y(l.band![i].high)] as const);
    const path = (points: readonly (readonly [number, number])[]) => points.map(([a, b]) => `${round(a)} ${round(b)}`).join(' ');
    pen.add('polygon', { points: path([...low, ...[...high].reverse()]), fill: pen.palette.wash });
    for (const edge of [low, high]) pen.way(edge, l.ink, { 'stroke-width': 0.7, 'stroke-dasharray': '1.5 2.5' });
}
/** Points with their bounds; their labels beside them where nothing else stands, else in the column. */
function drawPoints(pen: Pen, pane: Pane, x: (v: number) => number, y: (v: number) => number, frame: Box, column: Label[]): void {
    const taken: Box[] = (pane.points ?? []).map(p => ({ left: x(p.x) - 5, right: x(p.x) + 5, top: y(p.y) - 5, bottom: y(p.y) + 5 }));
    const drawn = pane.lines.flatMap(l => alongside(l, x, y));
    for (const l of pane.levels ?? []) for (let k = 0; k <= 40; k++) drawn.push([frame.left + (frame.right - frame.left) * k / 40, y(l.y)]);
    for (const p of pane.points ?? []) {
        const [px, py] = [x(p.x), y(p.y)];
        if (p.xBounds) whisker(pen, x(p.xBounds[0]), py, x(p.xBounds[1]), py);
        if (p.yBounds) whisker(pen, px, y(p.yBounds[0]), px, y(p.yBounds[1]));
        if (p.yBounds) for (let k = 0; k <= 8; k++) drawn.push([px, y(p.yBounds[0]) + (y(p.yBounds[1]) - y(p.yBounds[0])) * k / 8]);
    }
    for (const p of pane.points ?? []) {
        const [px, py] = [x(p.x), y(p.y)];
        pen.mark(p.mark, px, py, p.ink, 4);
        if (!p.label) continue;
        let best: { box: Box; at: readonly [number, number, 'start' | 'end']; cost: number } | undefined;
        for (const [dx, dy, anchor] of [[9, 16, 'start'], [9, -9, 'start'], [-9, -9, 'end'], [-9, 16, 'end'], [12, 30, 'start'], [-12, -24, 'end'], [-12, 30, 'end'], [12, -24, 'start'], [14, 46, 'start'], [-14, -40, 'end']] as const) {
            const box = boxOf(px + dx, py + dy, p.label, { anchor });
            if (box.left < frame.left + 3 || box.right > frame.right - 3 || box.top < frame.top + 2 || box.bottom > frame.bottom - 2 || taken.some(t => meet(t, box))) continue;
            const cost = drawn.filter(([a, b]) => a > box.left - 2 && a < box.right + 2 && b > box.top - 2 && b < box.bottom + 2).length * 3 + Math.abs(dy) / 20;
            if (!best || cost < best.cost) best = { box, at: [px + dx, py + dy, anchor], cost };
        }
        if (!best || best.cost > 12) {
            column.push({ lines: wrapped(p.label, SIZE.label, COLUMN - LEADER - SAMPLE - 14).slice(0, 2), at: [px, py], stroke: 'solid', ink: 'soft', thin: true });
            continue;
        }
        taken.push(best.box);
        pen.text(best.at[0], best.at[1], p.label, { anchor: best.at[2], over: true });
    }
}
/** Places along a line, closer than a letter. */
function alongside(l: Line, x: (v: number) => number, y: (v: number) => number): [number, number][] {
    const out: [number, number][] = [];
    for (let i = 1; i < l.x.length; i++) {
        const [a, b, c, d] = [x(l.x[i - 1]), y(l.y[i - 1]), x(l.x[i]), y(l.y[i])];
        const steps = Math.min(60, Math.ceil(Math.hypot(c - a, d - b) / 6));
        if (!(steps > 0)) continue;
        for (let k = 0; k <= steps; k++) out.push([a + (c - a) * k / steps, b + (d - b) * k / steps]);
    }
    return out;
}
function whisker(pen: Pen, x1: number, y1: number, x2: number, y2: number): void {
    pen.line(x1, y1, x2, y2, 'ink', { 'stroke-width': 1.2 });
    for (const [a, b] of [[x1, y1], [x2, y2]]) {
        if (y1 === y2) pen.line(a, b - 3, a, b + 3, 'ink', { 'stroke-width': 1.2 });
        else pen.line(a - 3, b, a + 3, b, 'ink', { 'stroke-width': 1.2 });
    }
}
/** The column beside a pane: what belongs to which line is told by a leader and by a piece of the line. */
function sideLabels(pen: Pen, labels: readonly Label[], right: number, top: number, bottom: number): void {
    const places = spread(labels.map(l => ({ at: l.at[1], height: l.lines.length * LINE + 3 })), top - 4, bottom + 4);
    for (const [k, l] of labels.entries()) {
        const at = places[k];
        const from = right + LEADER;
        pen.way([[l.at[0], l.at[1]], ...(l.at[0] < right - 1 ? [[right, l.at[1]] as const] : []), [from, at]], 'soft', { 'stroke-width': 0.5, 'stroke-dasharray': '1 2' });
        pen.line(from + 2, at, from + SAMPLE, at, l.ink, { 'stroke-width': l.thin ? 1 : 1.8, 'stroke-dasharray': dashes[l.stroke] });
        const first = at - (l.lines.length - 1) * LINE / 2 + 4;
        for (const [i, line] of l.lines.entries()) pen.text(from + SAMPLE + 6, first + i * LINE, line);
    }
}
/** Words above the panes, each over its place or a little beside it, in as many lanes as they need. */
function topLabels(pen: Pen, wanted: readonly { readonly at: number; readonly text: string }[], top: number, left: number, right: number, ringed = false): { height: number; places: number[]; tops: number[] } {
    if (!wanted.length) return { height: 0, places: [], tops: [] };
    const size = SIZE.small;
    const labels = wanted.map(l => ({ ...l, text: fitted(l.text, size, right - left - 10) }));
    const half = (text: string) => (ringed ? 8 : widthOf(text, size) / 2 + 4);
    const places = labels.map(l => Math.min(right - half(l.text), Math.max(left + half(l.text), l.at)));
    const lane = lanes(labels.map((l, k) => ({ left: places[k] - half(l.text), right: places[k] + half(l.text) })));
    const step = ringed ? 17 : LINE;
    const height = (Math.max(...lane) + 1) * step + 4;
    const tops = lane.map(k => top + height - 4 - k * step);
    for (const [k, l] of labels.entries()) {
        if (ringed) pen.add('circle', { cx: places[k], cy: tops[k] - 7.5, r: 7.5, fill: 'none', stroke: pen.palette.soft, 'stroke-width': 0.8 });
        pen.text(places[k], tops[k] - 4, l.text, { anchor: 'middle', size });
    }
    return { height, places, tops };
}
/** What happens, by its number, below the panes. */
function tellHappenings(pen: Pen, shape: Curves, top: number, width: number): number {
    let y = top + 6;
    for (const [k, h] of (shape.happenings ?? []).entries()) {
        pen.text(34, y, String(k + 1), { anchor: 'end', size: SIZE.small, ink: 'soft' });
        pen.text(42, y, h.when, { size: SIZE.small, ink: 'soft' });
        for (const line of wrapped(h.grave ? `hazard: ${h.text}` : h.text, SIZE.small, width - 158).slice(0, 3)) {
            pen.text(144, y, line, { size: SIZE.small, ink: h.grave ? 'error' : 'ink', strong: h.grave });
            y += LINE - 1;
        }
    }
    return y - 6;
}
