/** Bars that lie: sums, steps from one sum to the next, swings about a middle. Names to the left, numbers to the right. */
import { fitted, widthOf } from './text-width.js';
import type { Bars } from './figure.js';
import { boxOf, lanes, LINE, SIZE, type Pen } from './pen.js';
import { scaleOf } from './scale.js';

const [LEFT, COLUMN] = [232, 150];
const [ROW, THICK] = [30, 15];

export function drawBars(pen: Pen, shape: Bars, top: number, width: number): number {
    const right = width - COLUMN;
    const scale = scaleOf(shape.x, [...shape.bars.flatMap(b => [b.from, b.to]), ...(shape.uprights ?? []).map(u => u.x)], LEFT, right, 6);
    const x = scale.at;
    const labels = (shape.uprights ?? []).map(upright => {
        const u = { ...upright, label: fitted(upright.label, SIZE.small, right - LEFT - 8) };
        const half = widthOf(u.label, SIZE.small) / 2 + 3;
        const at = Math.min(right - half, Math.max(LEFT + half, x(u.x)));
        return { ...u, at, left: at - half, right: at + half };
    });
    const lane = lanes(labels);
    const head = labels.length ? (Math.max(...lane) + 1) * LINE + 4 : 0;
    const first = top + head;
    const bottom = first + shape.bars.length * ROW + 4;
    for (const t of scale.ticks) pen.line(x(t.at), first, x(t.at), bottom, 'faint', { 'stroke-width': 0.6 });
    pen.line(LEFT, bottom, right, bottom, 'soft');
    for (const [k, l] of labels.entries()) {
        pen.line(x(l.x), first - 2, x(l.x), bottom, 'soft', { 'stroke-dasharray': '3 3', 'stroke-width': 0.9 });
        pen.text(l.at, first - 6 - lane[k] * LINE, l.label, { anchor: 'middle', size: SIZE.small });
    }
    for (const [i, b] of shape.bars.entries()) {
        const y = first + i * ROW + ROW / 2;
        const [from, to] = [Math.min(b.from, b.to), Math.max(b.from, b.to)];
        const wide = Math.max(1.2, x(to) - x(from));
        const falls = b.sort === 'step' && b.to < b.from;
        pen.add('rect', {
            x: x(from), y: y - THICK / 2, width: wide, height: THICK, stroke: pen.palette[b.sort === 'sum' ? 'accent' : 'ink'], 'stroke-width': 1,
            fill: b.sort === 'sum' ? pen.palette.accent : b.open || falls ? pen.palette.paper : b.sort === 'swing' ? pen.palette.soft : pen.palette.faint, 'stroke-dasharray': falls ? '3 2' : undefined,
        });
        // From where the bar above ends to where a step begins, whichever way it goes.
        const above = shape.bars[i - 1];
        if (b.sort === 'step' && above) {
            const joint = x(b.from === above.to ? b.from : b.to);
            pen.line(joint, y - ROW + THICK / 2, joint, y - THICK / 2, 'soft', { 'stroke-width': 0.8, 'stroke-dasharray': '1.5 2' });
        }
        const room = LEFT - 14 - 16;
        pen.text(LEFT - 14, b.note ? y - 1 : y + 4, fitted(b.name, SIZE.label, room), { anchor: 'end', strong: b.sort === 'sum' });
        if (b.note) pen.text(LEFT - 14, y + 11, fitted(b.note, SIZE.small, room), { anchor: 'end', size: SIZE.small, ink: 'soft' });
        pen.text(width - 12, y + 4, fitted(b.told, SIZE.label, COLUMN - 22), { anchor: 'end', strong: b.sort === 'sum' });
    }
    let last = -Infinity;
    for (const t of scale.ticks) {
        const box = boxOf(x(t.at), bottom + 15, t.label, { anchor: 'middle', size: SIZE.small });
        pen.line(x(t.at), bottom, x(t.at), bottom + 4, 'soft');
        if (box.left < last + 6) continue;
        pen.text(x(t.at), bottom + 15, t.label, { anchor: 'middle', size: SIZE.small });
        last = box.right;
    }
    pen.text(right, bottom + 31, fitted(shape.x.unit ? `${shape.x.name}, ${shape.x.unit}` : shape.x.name, SIZE.label, right - 20), { anchor: 'end', ink: 'soft' });
    return bottom + 34;
}
