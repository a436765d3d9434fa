/** What can be counted in a layout: overlaps, lines through parts, tracks shared, crossings, bends. */
import { widthOf } from '../../language/seeing/plots/text-width.js';
import type { Layout } from '../../language/seeing/drawing/layout/index.js';
import { BUBBLE, LINE, MOUNT, NAME, shortened, SMALL } from '../../language/seeing/drawing/layout/boxes.js';

export interface Rect { readonly what: string; readonly of: number; readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number }
interface Segment { readonly net: number; readonly from: number; readonly to: number; readonly a: readonly [number, number]; readonly b: readonly [number, number] }

/** All that is drawn of the parts, as rectangles: symbols, lines of text, what sits on them. */
export function rectsOf({ placed }: Layout): Rect[] {
    return placed.flatMap(({ node, box, x, y }, of) => {
        const s = node.symbol;
        const label = (text: string, k: number, size: number): Rect => {
            const w = widthOf(text, size);
            const left = x + box.text.x - (box.text.anchor === 'middle' ? w / 2 : 0);
            return { what: `${node.id}: ${text}`, of, x0: left, x1: left + w, y0: y + box.text.y + k * LINE - 0.75 * size, y1: y + box.text.y + k * LINE + 0.22 * size };
        };
        return [
            { what: node.id, of, x0: x - s.half, x1: x + s.half, y0: y - s.up, y1: y + s.down },
            ...box.name.map((t, k) => label(t, k, NAME)),
            ...Array.from({ length: node.valueLines }, (_, k) => label('0'.repeat(node.valueWidth), box.name.length + k, SMALL)),
            ...(node.end ? [] : [label('! warnings', box.name.length + node.valueLines, SMALL)]),
            ...node.mounts.map((m, k) => {
                const [mx, my] = [x + box.stem, y - s.up - 4 - (k + 0.5) * MOUNT];
                return { what: `${node.id}: ${m.name}`, of, x0: mx - BUBBLE, x1: mx + BUBBLE + 5 + widthOf(shortened(m.name), SMALL), y0: my - BUBBLE, y1: my + BUBBLE };
            }),
        ];
    });
}
const hits = (a: Rect, b: Rect) => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
export function overlaps(layout: Layout): string[] {
    const rects = rectsOf(layout);
    const found: string[] = [];
    for (const [i, a] of rects.entries()) for (const b of rects.slice(i + 1)) if (hits(a, b) && !(a.of === b.of && (a.what === layout.placed[a.of].node.id || b.what === layout.placed[a.of].node.id) && a.what === b.what)) found.push(`${a.what} / ${b.what}`);
    return found;
}
export function outside(layout: Layout): string[] {
    return rectsOf(layout).filter(r => r.x0 < -1 || r.y0 < -1 || r.x1 > layout.width + 1 || r.y1 > layout.height + 1).map(r => r.what);
}
const segmentsOf = ({ drawn }: Layout): Segment[] => drawn.flatMap(d => d.points.slice(1).map((b, k) => ({ net: d.net, from: d.line.from, to: d.line.to, a: d.points[k], b })).filter(s => s.a[0] !== s.b[0] || s.a[1] !== s.b[1]));
/** Lines that are neither level nor upright. */
export const slanted = (layout: Layout): number => segmentsOf(layout).filter(s => Math.abs(s.a[0] - s.b[0]) > 0.01 && Math.abs(s.a[1] - s.b[1]) > 0.01).length;
export function throughParts(layout: Layout): string[] {
    const found: string[] = [];
    for (const r of rectsOf(layout)) {
        // The last bit of a line touches the part that it leads to.
        const [x0, x1, y0, y1] = [r.x0 + 0.6, r.x1 - 0.6, r.y0 + 0.6, r.y1 - 0.6];
        for (const s of segmentsOf(layout)) {
            const [sx0, sx1, sy0, sy1] = [Math.min(s.a[0], s.b[0]), Math.max(s.a[0], s.b[0]), Math.min(s.a[1], s.b[1]), Math.max(s.a[1], s.b[1])];
            if (sx0 < x1 && sx1 > x0 && sy0 < y1 && sy1 > y0) found.push(`${layout.placed[s.from].node.id} to ${layout.placed[s.to].node.id} through ${r.what}`);
        }
    }
    return found;
}
const within = (s: Segment, axis: 0 | 1) => [Math.min(s.a[axis], s.b[axis]), Math.max(s.a[axis], s.b[axis])];
/** Pairs of nets that run on top of each other, or closer than can be told apart. */
export function shared(layout: Layout): string[] {
    const all = segmentsOf(layout);
    const found: string[] = [];
    for (const [i, s] of all.entries()) {
        for (const t of all.slice(i + 1)) {
            if (s.net === t.net) continue;
            for (const [along, off] of [[0, 1], [1, 0]] as const) {
                if (s.a[off] !== s.b[off] || t.a[off] !== t.b[off] || Math.abs(s.a[off] - t.a[off]) > 4.5) continue;
                const [a, b] = [within(s, along), within(t, along)];
                if (Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > 0.5) found.push(`${layout.placed[s.from].node.id} to ${layout.placed[s.to].node.id} / ${layout.placed[t.from].node.id} to ${layout.placed[t.to].node.id}`);
            }
        }
    }
    return found;
}
/** Points where lines of two nets cross, each once. */
export function crossings(layout: Layout): number {
    const all = segmentsOf(layout);
    const found = new Set<string>();
    for (const s of all) {
        if (s.a[1] !== s.b[1]) continue;
        for (const t of all) {
            if (t.a[0] !== t.b[0] || s.net === t.net) continue;
            const [x, y] = [t.a[0], s.a[1]];
            const [h, v] = [within(s, 0), within(t, 1)];
            if (x > h[0] && x < h[1] && y > v[0] && y < v[1]) found.add(`${Math.round(x)} ${Math.round(y)}`);
        }
    }
    return found.size;
}
export const bends = ({ drawn }: Layout): number => drawn.reduce((n, d) => n + d.points.slice(2).filter((p, k) => (d.points[k][0] === d.points[k + 1][0]) !== (d.points[k + 1][0] === p[0])).length, 0);
