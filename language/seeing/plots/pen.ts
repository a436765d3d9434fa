/** What all figures are drawn with: text of few sizes, labels that make room for each other, marks and dashes that stand for colours. */
import type { Palette } from '../palette.js';
import { el, type Attributes, type Markup } from '../svg.js';
import { widthOf } from './text-width.js';
import type { Ink, Mark, Stroke } from './figure.js';

export const SIZE = { title: 15, label: 11.5, small: 10 } as const;
/** px from one line of text to the next. */
export const LINE = 14;

export const dashes: Readonly<Record<Stroke, string | undefined>> = { solid: undefined, dashed: '7 4', dotted: '1.5 3', 'dash-dot': '9 3 2 3', long: '14 5' };

export interface Box { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }
export const meet = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export interface Lettering {
    readonly size?: number;
    readonly anchor?: 'start' | 'middle' | 'end';
    readonly ink?: Ink;
    readonly strong?: boolean;
    /** Over lines: with paper around its letters. */
    readonly over?: boolean;
}
/** Where text stands whose base line is at y. */
export function boxOf(x: number, y: number, text: string, { size = SIZE.label, anchor = 'start' }: Lettering = {}): Box {
    const width = widthOf(text, size);
    const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
    return { left, top: y - 0.8 * size, right: left + width, bottom: y + 0.25 * size };
}
export class Pen {
    readonly made: Markup[] = [];
    constructor(readonly palette: Palette) {}
    add(tag: string, attributes: Attributes, ...children: (Markup | string)[]): void {
        this.made.push(el(tag, attributes, ...children));
    }
    text(x: number, y: number, text: string, { size = SIZE.label, anchor = 'start', ink = 'ink', strong = false, over = false }: Lettering = {}): void {
        this.add('text', { x, y, 'font-size': size, 'text-anchor': anchor === 'start' ? undefined : anchor, fill: this.palette[ink], 'font-weight': strong ? 600 : undefined, ...(over ? { stroke: this.palette.paper, 'stroke-width': 3, 'stroke-linejoin': 'round', 'paint-order': 'stroke' } : {}) }, text);
    }
    line(x1: number, y1: number, x2: number, y2: number, ink: Ink, more: Attributes = {}): void {
        this.add('line', { x1, y1, x2, y2, stroke: this.palette[ink], 'stroke-width': 1, ...more });
    }
    /** A way through points; NaN lifts the pen. */
    way(points: readonly (readonly [number, number])[], ink: Ink, more: Attributes = {}): void {
        let d = '';
        let down = false;
        for (const [x, y] of points) {
            if (x !== x || y !== y) down = false;
            else {
                d += `${down ? 'L' : 'M'}${round(x)} ${round(y)}`;
                down = true;
            }
        }
        if (d) this.add('path', { d, fill: 'none', stroke: this.palette[ink], 'stroke-width': 1.6, 'stroke-linejoin': 'round', ...more });
    }
    mark(sort: Mark, x: number, y: number, ink: Ink, r = 3.6): void {
        const colour = this.palette[ink];
        const drawn: Attributes = { fill: sort === 'dot' || sort === 'triangle' || sort === 'diamond' ? colour : this.palette.paper, stroke: colour, 'stroke-width': 1.4 };
        const at = (points: readonly (readonly [number, number])[]) => points.map(([a, b]) => `${round(x + a * r)} ${round(y + b * r)}`).join(' ');
        switch (sort) {
            case 'square': return this.add('rect', { x: x - 0.9 * r, y: y - 0.9 * r, width: 1.8 * r, height: 1.8 * r, ...drawn });
            case 'diamond': return this.add('polygon', { points: at([[0, -1.3], [1.1, 0], [0, 1.3], [-1.1, 0]]), ...drawn });
            case 'triangle': return this.add('polygon', { points: at([[0, -1.2], [1.2, 1], [-1.2, 1]]), ...drawn });
            case 'cross': return this.add('path', { d: `M${round(x - r)} ${round(y - r)}L${round(x + r)} ${round(y + r)}M${round(x - r)} ${round(y + r)}L${round(x + r)} ${round(y - r)}`, fill: 'none', stroke: colour, 'stroke-width': 1.8 });
            default: return this.add('circle', { cx: x, cy: y, r, ...drawn });
        }
    }
}
export const round = (n: number): number => Math.round(n * 10) / 10;

/**
 * Places for things of some height beside each other, as near as may be to where each wants to be and never one over the other.
 *
 * @param wants  middles, with heights
 * @returns middles in the order of `wants`, between top and bottom if there is room for all
 */
export function spread(wants: readonly { readonly at: number; readonly height: number }[], top: number, bottom: number): number[] {
    const order = wants.map((_, i) => i).sort((a, b) => wants[a].at - wants[b].at || a - b);
    const out = wants.map(w => w.at);
    // Groups that touch move as one, by the mean of what their members want.
    const groups: { members: number[]; height: number; from: number }[] = [];
    const settle = (members: number[]) => {
        const height = members.reduce((sum, i) => sum + wants[i].height, 0);
        let before = 0;
        let want = 0;
        for (const i of members) {
            want += wants[i].at - before - wants[i].height / 2;
            before += wants[i].height;
        }
        return { members, height, from: Math.max(top, Math.min(bottom - height, want / members.length)) };
    };
    for (const i of order) {
        let group = settle([i]);
        while (groups.length && groups.at(-1)!.from + groups.at(-1)!.height > group.from) group = settle([...groups.pop()!.members, ...group.members]);
        groups.push(group);
    }
    for (const { members, from } of groups) {
        let y = from;
        for (const i of members) {
            out[i] = y + wants[i].height / 2;
            y += wants[i].height;
        }
    }
    return out;
}
/** Lanes for pieces that lie along one line, so that none meets another: the lane of each, 0 next to the picture. */
export function lanes(pieces: readonly { readonly left: number; readonly right: number }[]): number[] {
    const ends: number[] = [];
    const lane = pieces.map(() => 0);
    for (const i of pieces.map((_, k) => k).sort((a, b) => pieces[a].left - pieces[b].left)) {
        let k = ends.findIndex(end => end <= pieces[i].left);
        if (k < 0) k = ends.push(0) - 1;
        ends[k] = pieces[i].right;
        lane[i] = k;
    }
    return lane;
}
