/**
 * Langium's parser library calls `Object.groupBy` and `Map.groupBy`, which Node 20 does not have yet.
 * Must be the first import of every entry point; does nothing where the functions exist.
 */
/* eslint-disable @typescript-eslint/no-explicit-any */
const object = Object as any;
const map = Map as any;

object.groupBy ??= (items: Iterable<unknown>, key: (item: unknown, index: number) => PropertyKey) => {
    const groups = Object.create(null);
    let index = 0;
    for (const item of items) (groups[key(item, index++)] ??= []).push(item);
    return groups;
};

map.groupBy ??= (items: Iterable<unknown>, key: (item: unknown, index: number) => unknown) => {
    const groups = new Map<unknown, unknown[]>();
    let index = 0;
    for (const item of items) {
        const name = key(item, index++);
        const group = groups.get(name);
        if (group) group.push(item);
        else groups.set(name, [item]);
    }
    return groups;
};

export {};
