/** How much room a part takes: its symbol, its name and numbers on a side without lines, and what sits on it. */
import { widthOf } from '../../plots/text-width.js';
import type { Node } from '../graph.js';
import type { Port } from '../symbols/define.js';

export const NAME = 11;
export const SMALL = 10;
/** Height of a line of text, of what sits on a box. */
export const LINE = 12.5;
export const MOUNT = 25;
export const BUBBLE = 10.5;
/** Longer words are cut. */
const LONGEST = 14;

export interface Box {
    readonly left: number;
    readonly right: number;
    readonly up: number;
    readonly down: number;
    readonly name: readonly string[];
    /** Where its lines of text begin: middle or left end of the first one's base. */
    readonly text: { readonly x: number; readonly y: number; readonly anchor: 'middle' | 'start' };
    /** Where what sits on it hangs. */
    readonly stem: number;
}
/** A name in lines of about one width, broken after its hyphens. */
export function broken(name: string): string[] {
    const words = name.split(/(?<=-)/).map(w => ([...w].length > LONGEST ? `${[...w].slice(0, LONGEST - 1).join('')}…` : w));
    const most = Math.max(9, ...words.map(w => [...w].length));
    const lines: string[] = [];
    for (const w of words) {
        if (lines.length && [...lines.at(-1)!].length + [...w].length <= most) lines[lines.length - 1] += w;
        else lines.push(w);
    }
    return lines.length > 3 ? [...lines.slice(0, 2), `${lines[2].slice(0, LONGEST - 1)}…`] : lines;
}
/** Room of a part around the middle of its symbol, px. @param ports  those that lines use */
export function boxOf(node: Node, ports: Iterable<Port> = node.ports.values()): Box {
    const { half, up, down } = node.symbol;
    let [below, above] = [false, -Infinity];
    for (const p of ports) {
        if (p.side === 'S') below = true;
        if (p.side === 'N') above = Math.max(above, p.x ?? 0);
    }
    const name = [...broken(node.name), ...(node.like.length ? [`× ${node.like.length}`] : [])];
    const width = Math.max(
        ...name.map(n => widthOf(n, NAME)), widthOf('0'.repeat(node.valueWidth), SMALL), node.end ? 0 : widthOf('warnings', SMALL) + 15,
    );
    const height = (name.length + node.valueLines + (node.end ? 0 : 1)) * LINE;
    const top = below ? 16 : down + 13;
    const stem = above > -Infinity ? above + 19 : 0;
    // Behind the name of an instrument is room for its mark.
    const mounts = Math.max(0, ...node.mounts.map(m => stem + BUBBLE + (m.shape === 'contact' ? 5 : 24) + widthOf(shortened(m.name), SMALL)));
    return {
        name, stem, text: below ? { x: half + 6, y: top, anchor: 'start' } : { x: 0, y: top, anchor: 'middle' },
        left: Math.max(half, node.mounts.length ? BUBBLE + 2 : 0, below ? 0 : width / 2), right: Math.max(half, below ? half + 6 + width : width / 2, mounts),
        up: up + (node.mounts.length ? 4 + node.mounts.length * MOUNT : 0), down: Math.max(down, top - 10 + height),
    };
}
/** A name beside what sits on a box. */
export const shortened = (name: string): string => ([...name].length > 21 ? `${[...name].slice(0, 20).join('')}…` : name);
