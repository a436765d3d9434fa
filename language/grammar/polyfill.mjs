// The same as polyfill.ts, for tools that start from plain Node (`node --import`): the grammar's generator.
Object.groupBy ??= (items, key) => {
    const groups = Object.create(null);
    let index = 0;
    for (const item of items) (groups[key(item, index++)] ??= []).push(item);
    return groups;
};
Map.groupBy ??= (items, key) => {
    const groups = new Map();
    let index = 0;
    for (const item of items) {
        const name = key(item, index++);
        if (groups.has(name)) groups.get(name).push(item);
        else groups.set(name, [item]);
    }
    return groups;
};
