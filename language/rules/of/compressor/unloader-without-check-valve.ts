import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unloader-without-check-valve',
    family: 'compressor',
    severity: 'error',
    summary: 'The unloader lets down the whole store, not only the discharge.',
    why: 'At each stop the cylinder empties through the unloader into the suction and the bag.',
    source: 'topology',
    guardsLife: true,
    on: 'unloader',
    check(v, tell) {
        for (const link of v.paths.to(v.name, 'hydrogen')) {
            for (const store of v.all('cylinder')) {
                const route = v.paths.route(link.from.name, store.name, 'hydrogen');
                if (!route || route.includes(v.name)) continue;
                if (route.some(n => v.other(n)?.kind === 'check-valve')) continue;
                tell({ at: link.span, message: `No check valve stands between ${v.name} and ${store.name}: when it opens, ${store.name} empties back through it.` });
            }
        }
    },
});
