/** The table of quantities, by kind of part. The list itself is generated from the files in `of/`. */
import type { Quantity } from './define.js';
import { allQuantities } from './quantities.generated.js';

const byKind = new Map<string, Map<string, Quantity>>();
for (const q of allQuantities) {
    for (const kind of typeof q.of === 'string' ? [q.of] : q.of) {
        let table = byKind.get(kind);
        if (!table) byKind.set(kind, (table = new Map()));
        table.set(q.name, q);
    }
}
const none: ReadonlyMap<string, Quantity> = new Map();

/** Quantities of a kind of part, by name. */
export function quantityOf(kind: string): ReadonlyMap<string, Quantity> {
    return byKind.get(kind) ?? none;
}
export { allQuantities };
