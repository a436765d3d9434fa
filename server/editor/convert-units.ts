/** A quantity in another unit, in place: `3 bar` -> `300 kPa`, `160 x 190 x 1 mm` -> `16 x 19 x 0.1 cm`. */
import { measures } from '../../language/units/dimension.js';
import { digits } from '../../language/units/format.js';
import { unitOf, type Unit } from '../../language/units/unit.js';
import type { Node, NodeOf, ParsedValue } from '../../language/values/parse-value.js';

export interface Rewriting {
    readonly start: number;
    readonly end: number;
    readonly text: string;
}
type Leaf = NodeOf<'number'> | NodeOf<'quantity'>;
/** A rounded number may be off by this share of itself. */
const EXACT = 2e-5;
const MOST = 5;

/** The rewritings of the quantity at an offset of a value; none where it cannot be said in another unit without loss. */
export function otherUnits(value: ParsedValue, text: string, offset: number): Rewriting[] {
    for (const sequence of value.list) {
        for (const node of sequence) {
            const group = groupAt(node, offset);
            if (group) return rewrite(group.leaves, text, group.point);
        }
    }
    return [];
}
/** The leaves that share one unit with the one at an offset: a bare number takes the unit to its right. */
function groupAt(node: Node, offset: number, point = true): { leaves: Leaf[]; point: boolean } | undefined {
    if (offset < node.start || offset > node.end) return undefined;
    if (node.is === 'quantity') return { leaves: [node], point };
    if (node.is === 'operation' && (node.op === 'x' || node.op === '..')) {
        const leaves: Leaf[] = [];
        const gather = (n: Node): boolean => {
            if (n.is === 'operation' && n.op === node.op) return gather(n.a) && gather(n.b);
            return (n.is === 'quantity' || n.is === 'number') && leaves.push(n) > 0;
        };
        if (!gather(node)) return undefined;
        const units = leaves.filter((l): l is NodeOf<'quantity'> => l.is === 'quantity');
        return units.length && units.every(u => u.unit.text === units[0].unit.text) && leaves.at(-1)!.is === 'quantity' ? { leaves, point } : undefined;
    }
    // After ± stands a difference: its scale has no zero of its own, and a bare number there takes the unit before it.
    if (node.is === 'operation' && node.op === '±' && node.b.is === 'number') return undefined;
    if (node.is === 'operation') return groupAt(node.a, offset, point) ?? groupAt(node.b, offset, point && node.op !== '±') ?? (node.c && groupAt(node.c, offset, point));
    if (node.is === 'negative') return groupAt(node.a, offset, point);
    if (node.is === 'call') return node.args.map(a => groupAt(a, offset, point)).find(Boolean);
    return undefined;
}
function rewrite(leaves: readonly Leaf[], text: string, point: boolean): Rewriting[] {
    const { unit } = leaves.find((l): l is NodeOf<'quantity'> => l.is === 'quantity')!;
    if (unit.mark || unit.currency || unit.text === 'AWG') return [];
    const start = leaves[0].start;
    const end = leaves.at(-1)!.end;
    return unitsLike(unit).flatMap(other => {
        const convert = (v: number) => shortest(point ? (v * unit.factor + unit.offset - other.offset) / other.factor : (v * unit.factor) / other.factor);
        let out = '';
        let at = start;
        for (const l of leaves) {
            out += text.slice(at, l.start) + convert(l.value) + (l.is === 'quantity' ? ` ${other.text}` : '');
            at = l.end;
        }
        return /\de-?\d|unknown|limit/.test(out) ? [] : [{ start, end, text: out }];
    }).slice(0, MOST);
}
/** With as few figures as say the same number. */
function shortest(v: number): string {
    for (let figures = 3; figures < 7; figures++) {
        const text = digits(v, figures);
        if (Math.abs(Number(text) - v) <= EXACT * Math.abs(v)) return text;
    }
    return digits(v, 7);
}
/** Units that say the same sort of thing. Shares are their own world: a per cent is no angle. */
function unitsLike(unit: Unit): Unit[] {
    const sorts = Object.values(measures).filter(m => m.dimension === unit.dimension && (unit.dimension !== measures.number.dimension || m.units.includes(unit.text)));
    return [...new Set(sorts.flatMap(m => m.units))].filter(u => u && u !== unit.text).map(u => unitOf(u))
        .filter((u): u is Unit => !!u && u.dimension === unit.dimension && !u.currency && !u.mark);
}
