/** Rungs on one upright scale, the highest on top; each with its row: what it is, how much, how far above the next below. */
import { digits } from '../../units/format.js';
import { fitted } from './text-width.js';
import type { Ladder, Mark, Rung } from './figure.js';
import { SIZE, type Pen } from './pen.js';
import { scaleOf } from './scale.js';

const ROW = 21;
const [SCALE, TABLE] = [62, 150];
/** Columns: mark, number at its right end, part, what it says, gap at its right end. */
const AT = { mark: TABLE + 4, number: TABLE + 74, half: TABLE + 78, part: TABLE + 136, says: TABLE + 274, gap: 704 } as const;
/** A scale from the least to the most by factors, where they lie so far apart. */
const BY_FACTORS = 12;
/** And no deeper than this part of the most. */
const DEEPEST = 5000;
const marks: Readonly<Record<Rung['sort'], Mark>> = { running: 'ring', control: 'square', trip: 'triangle', relief: 'diamond', limit: 'cross' };
const words: Readonly<Record<Rung['sort'], string>> = { running: 'while running', control: 'control', trip: 'trip', relief: 'seal or relief', limit: 'what it bears' };

export function drawLadder(pen: Pen, shape: Ladder, top: number, width: number): number {
    const { rungs, axis } = shape;
    let x = SCALE - 44;
    for (const sort of Object.keys(marks) as Rung['sort'][]) {
        if (!rungs.some(r => r.sort === sort)) continue;
        pen.mark(marks[sort], x + 5, top + 6, inkOf(sort));
        pen.text(x + 14, top + 10, words[sort], { size: SIZE.small, ink: 'soft' });
        x += 120;
    }
    const first = top + 46;
    pen.text(SCALE - 44, first - 14, axis.unit, { ink: 'soft' });
    pen.text(AT.part, first - 14, axis.name, { ink: 'soft', size: SIZE.small });
    pen.text(AT.gap, first - 14, 'above the one below', { anchor: 'end', ink: 'soft', size: SIZE.small });
    const values = rungs.map(r => r.at);
    const bottom = first + Math.max(rungs.length * ROW, 120);
    const positive = values.filter(v => v > 0);
    const log = positive.length === values.length && Math.max(...values) / Math.min(...values) > BY_FACTORS;
    // Next to nothing would take most of a scale by factors: it stands at its foot.
    const least = log ? Math.max(Math.min(...values), Math.max(...values) / DEEPEST) : -Infinity;
    const scale = scaleOf({ ...axis, scale: log ? 'log' : 'linear' }, values.map(v => Math.max(v, least)), bottom, first, Math.max(3, Math.floor((bottom - first) / 40)));
    pen.line(SCALE, first, SCALE, bottom, 'ink', { 'stroke-width': 1.4 });
    if (values.some(v => v < least)) pen.text(SCALE, bottom + 14, '…', { size: SIZE.small, ink: 'soft', anchor: 'middle' });
    let last = Infinity;
    for (const t of scale.ticks) {
        const y = scale.at(t.at);
        if (y < first - 1 || y > bottom + 1) continue;
        pen.line(SCALE - 4, y, SCALE, y, 'ink');
        if (last - y < 12) continue;
        pen.text(SCALE - 8, y + 3.5, t.label, { anchor: 'end', size: SIZE.small });
        last = y;
    }
    const spare = (bottom - first - rungs.length * ROW) / 2;
    const onScale = (v: number) => Math.min(bottom, Math.max(first, scale.at(Math.max(v, least))));
    for (const r of rungs) if (r.low !== undefined && r.high !== undefined) pen.line(SCALE + 4, onScale(r.low), SCALE + 4, onScale(r.high), inkOf(r.sort), { 'stroke-width': 3, 'stroke-opacity': 0.6 });
    for (const [i, r] of rungs.entries()) {
        const y = bottom - spare - (i + 0.5) * ROW;
        const at = scale.at(Math.max(r.at, least));
        pen.line(SCALE, at, SCALE + 8, at, inkOf(r.sort), { 'stroke-width': 1.6 });
        pen.way([[SCALE + 8, at], [TABLE - 12, y], [TABLE - 4, y]], 'soft', { 'stroke-width': 0.7, 'stroke-dasharray': r.sort === 'running' ? '1.5 2' : undefined });
        pen.mark(marks[r.sort], AT.mark + 2, y, inkOf(r.sort));
        pen.text(AT.number, y + 4, digits(r.at).replace('-', '−'), { anchor: 'end', strong: true });
        if (r.low !== undefined && r.high !== undefined) pen.text(AT.half, y + 4, `± ${digits(Math.max(r.high - r.at, r.at - r.low), 2)}`, { size: SIZE.small, ink: 'soft' });
        pen.text(AT.part, y + 4, fitted(r.part, SIZE.label, AT.says - AT.part - 10));
        pen.text(AT.says, y + 4, fitted(r.says, SIZE.label, AT.gap - AT.says - 84), { ink: 'soft' });
        if (i > 0) pen.text(AT.gap, y + 4, gap(rungs[i - 1].at, r.at), { anchor: 'end', size: SIZE.small, ink: 'soft' });
    }
    pen.line(TABLE, bottom + 6, width - 14, bottom + 6, 'faint');
    return bottom + 10;
}
const inkOf = (sort: Rung['sort']) => (sort === 'trip' || sort === 'limit' ? 'error' as const : sort === 'relief' ? 'accent' as const : 'ink' as const);
/** '+ 0.4, × 1.3' */
function gap(below: number, at: number): string {
    const difference = at - below;
    if (!(difference > 1e-9 * Math.abs(at))) return 'the same';
    return `+ ${digits(difference, 2)}${below > 0 && at / below < 100 && at / below >= 1.05 ? `, × ${digits(at / below, 2)}` : ''}`;
}
