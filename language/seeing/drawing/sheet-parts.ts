/** The pieces of the sheet as markup: lines, parts with their names, what sits on them, the legend. */
import { caution } from '../../reference/caution.js';
import type { Medium } from '../../vocabulary/define.js';
import type { Palette } from '../palette.js';
import { el, type Markup } from '../svg.js';
import type { Mount, Node } from './graph.js';
import { layerOf, looks, type Layer, type LineLook } from './layers.js';
import { widthOf } from '../plots/text-width.js';
import { BUBBLE, LINE, NAME, shortened, SMALL } from './layout/boxes.js';
import type { Drawn, Layout, Placed } from './layout/index.js';
import { mark, severities } from './marks.js';
import { arrow } from './symbols/define.js';

const pathOf = (points: Drawn['points']) => points.map(([x, y], k) => `${k ? 'L' : 'M'}${round(x)} ${round(y)}`).join('');
const round = (n: number) => Math.round(n * 100) / 100;

/** All lines, net by net, each with a gap for what it crosses; the most important on top. */
export function linesOf(layout: Layout, palette: Palette): { readonly layer: string; readonly markup: Markup }[] {
    const told = new Set<string>();
    const nets = new Map<number, Drawn[]>();
    for (const d of layout.drawn) nets.set(d.net, [...(nets.get(d.net) ?? []), d]);
    return [...nets.values()].map(lines => {
        const layer = layerOf(lines[0].line.medium);
        const look = looks[layer];
        const colour = palette[look.colour];
        const stroke = { fill: 'none', stroke: colour, 'stroke-width': look.width, 'stroke-dasharray': look.dash, 'stroke-linejoin': 'round' };
        const nodes = layout.placed;
        const dots = layout.dots.filter(d => d.net === lines[0].net);
        return {
            layer, markup: el('g', {},
                el('title', {}, `${look.word}: ${lines.map(d => `${nodes[d.line.from].node.name} to ${nodes[d.line.to].node.name}`).join(', ')}`),
                lines.map(d => el('path', { d: pathOf(d.points), fill: 'none', stroke: palette.paper, 'stroke-width': look.width + 6 })),
                lines.map(d => el('path', { d: pathOf(d.points), ...stroke, class: 'line', 'data-medium': d.line.medium, 'data-from': nodes[d.line.from].node.id, 'data-to': nodes[d.line.to].node.id })),
                look.hollow && lines.map(d => el('path', { d: pathOf(d.points), fill: 'none', stroke: palette.paper, 'stroke-width': look.width - 2.4 })),
                dots.map(d => el('circle', { cx: d.x, cy: d.y, r: 3.2, fill: colour })),
                layer !== 'current' && lines.map(d => el('path', { d: headOf(d), fill: colour })),
                codeOf(lines, layout, look, told.has(layer) ? 90 : 50, colour, palette, () => told.add(layer))),
        };
    });
}
function headOf({ points }: Drawn): string {
    const [[ax, ay], [x, y]] = points.slice(-2);
    return arrow(round(x), round(y), Math.sign(x - ax), Math.sign(y - ay));
}
/** The letters of what flows, on the longest free level stretch of a net. */
function codeOf(lines: readonly Drawn[], layout: Layout, look: LineLook, least: number, colour: string, palette: Palette, placed: () => void): Markup | undefined {
    const half = widthOf(look.code, 9) / 2 + 3;
    if (!look.code) return undefined;
    let best: { x: number; y: number; room: number } | undefined;
    for (const { points } of lines) {
        for (let k = 1; k < points.length; k++) {
            const [[ax, ay], [bx, by]] = [points[k - 1], points[k]];
            const room = Math.abs(bx - ax);
            if (ay !== by || room < least || (best && room <= best.room)) continue;
            const x = (ax + bx) / 2;
            const free = layout.drawn.every(o => o.points.every((p, i) => {
                const q = o.points[i - 1];
                return !q || p[0] !== q[0] || Math.abs(p[0] - x) > half + 3 || Math.min(p[1], q[1]) > ay + 6 || Math.max(p[1], q[1]) < ay - 6;
            })) && layout.dots.every(d => Math.abs(d.x - x) > half + 5 || Math.abs(d.y - ay) > 5)
                && layout.drawn.every(o => lines.includes(o) || o.points.every((p, i) => {
                    const q = o.points[i - 1];
                    return !q || p[1] !== q[1] || Math.abs(p[1] - ay) > 7 || Math.min(p[0], q[0]) > x + half || Math.max(p[0], q[0]) < x - half;
                }));
            if (free) best = { x, y: ay, room };
        }
    }
    if (best) placed();
    return best && el('g', {}, el('rect', { x: best.x - half, y: best.y - 5.5, width: 2 * half, height: 11, fill: palette.paper }),
        el('text', { x: best.x, y: best.y + 3.2, 'font-size': 9, 'text-anchor': 'middle', fill: colour }, look.code));
}
/** A part: its symbol and its name. */
export function partOf({ node, box, x, y }: Placed, carries: string | undefined, palette: Palette): Markup {
    const s = node.symbol;
    const thin = { fill: 'none', stroke: palette.ink, 'stroke-width': 1.1, 'stroke-linejoin': 'round', 'stroke-linecap': 'round' };
    return el('g', { 'data-part': node.end ? undefined : node.name, 'data-end': node.end ? node.name : undefined, 'data-kind': node.kind, 'data-media': carries, 'data-like': node.like.length ? node.like.join(' ') : undefined },
        el('title', {}, node.end ? node.name : node.like.length ? `${node.like.length} ${node.kind}: ${node.like.join(', ')}` : `${node.kind} ${node.name}`),
        el('g', { transform: `translate(${round(x)} ${round(y)})${node.flipped ? ' scale(-1 1)' : ''}` },
            s.body && el('path', { d: s.body, fill: palette.paper, stroke: palette.ink, 'stroke-width': 1.7, 'stroke-linejoin': 'round' }),
            s.thin && el('path', { d: s.thin, ...thin }),
            s.dashed && el('path', { d: s.dashed, ...thin, 'stroke-dasharray': '3 2.5', 'stroke-linecap': 'butt' }),
            s.solid && el('path', { d: s.solid, fill: palette.ink })),
        s.letters && el('text', { x, y: y + 4, 'font-size': 11, 'text-anchor': 'middle', fill: palette.ink }, s.letters),
        box.name.map((t, k) => el('text', { x: x + box.text.x, y: y + box.text.y + k * LINE, 'text-anchor': box.text.anchor, 'font-size': NAME, fill: palette.ink }, t)));
}
/** What sits on a part, or stands by itself: an instrument, a small valve, the contact of what drives it. */
export function mountOf(m: Mount, x: number, y: number, stem: number, palette: Palette, carries?: string): Markup {
    const edge = m.shape === 'bubble' ? BUBBLE : 6;
    const line = { fill: 'none', stroke: palette.control, 'stroke-width': 1 };
    const shape = m.shape === 'bubble' ? [el('circle', { cx: x, cy: y, r: BUBBLE, fill: palette.paper, stroke: palette.ink, 'stroke-width': 1.2 }),
        el('text', { x, y: y + 3.3, 'font-size': m.letters.length > 2 ? 8 : 9, 'text-anchor': 'middle', fill: palette.ink }, m.letters)]
        : m.shape === 'valve' ? el('path', { d: `M${x - 8} ${y - 5}v10l16-10v10Z`, fill: palette.paper, stroke: palette.ink, 'stroke-width': 1.2 })
            : [el('rect', { x: x - 8, y: y - 5.5, width: 16, height: 11, fill: palette.paper, stroke: palette.ink, 'stroke-width': 1 }), el('path', { d: `M${x - 6} ${y + 2}h3l6-4.5M${x + 3} ${y + 2}h3`, ...line, stroke: palette.ink })];
    return el('g', { 'data-part': m.part, 'data-mount': m.shape, 'data-media': carries },
        el('title', {}, m.says),
        stem > 0 && el('path', { d: `M${round(x)} ${round(y + edge)}V${round(y + stem)}`, ...line, 'stroke-dasharray': m.shape === 'valve' ? undefined : '3 2.5' }), shape,
        el('text', { x: x + BUBBLE + 5, y: y + 3.5, 'font-size': SMALL, fill: palette.ink }, shortened(m.name)));
}
export const heading = (text: string, x: number, y: number, palette: Palette): Markup => el('text', { x, y, 'font-size': 12, 'font-weight': 600, fill: palette.ink }, text);
/** What the lines and marks mean, what is not shown, and the caution. */
export function legend(x: number, y: number, width: number, used: readonly Medium[], has: (layer: Layer) => boolean, findings: boolean, rest: number, palette: Palette): Markup {
    const items: Markup[] = [];
    let at = x;
    const word = (t: string, gap: number) => {
        const text = el('text', { x: at, y: y + 4, 'font-size': 10.5, fill: palette.ink }, t);
        at += widthOf(t, 10.5) + gap;
        return text;
    };
    for (const layer of used) {
        const look = looks[layer];
        const d = `M${at} ${y}h38`;
        at += 45;
        const line = el('g', { 'data-layer': layer }, el('path', { d, fill: 'none', stroke: palette[look.colour], 'stroke-width': look.width, 'stroke-dasharray': look.dash }), look.hollow && el('path', { d, fill: 'none', stroke: palette.paper, 'stroke-width': look.width - 2.4 }),
            word(look.code && look.code !== look.word ? `${look.word} (${look.code})` : look.word, 22));
        if (has(layer)) items.push(line);
    }
    if (findings) {
        for (const s of severities) {
            const shape = mark(s, 1, at + 7, y, palette, false);
            at += 18;
            const both = el('g', { 'data-layer': 'findings' }, shape, word(s, 18));
            if (has('findings')) items.push(both);
        }
    }
    return el('g', {},
        el('path', { d: `M${x} ${y - 22}H${x + width}`, stroke: palette.faint, fill: 'none' }), items,
        el('text', { x, y: y + 26, 'font-size': 10.5, fill: palette.soft }, caution),
        findings && has('findings') && rest > 0 && el('text', { x, y: y + 41, 'font-size': 10.5, fill: palette.soft }, `${rest} more ${rest === 1 ? 'finding is' : 'findings are'} about what is not drawn here.`));
}
/** What runs through a part. */
export function mediaOf(node: Node): Medium[] {
    return [...new Set([...node.ports.keys()].map(k => layerOf(k.split(' ')[0])))];
}
