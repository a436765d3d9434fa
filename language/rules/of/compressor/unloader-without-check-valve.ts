import { defineRule } from '../../define.js';
import { insertBefore } from '../../path-fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'unloader-without-check-valve',
    family: 'compressor',
    severity: 'error',
    summary: 'Between the unloader and the store no check valve stands.',
    why: 'When the unloader opens, the store empties into the bag: the help for starting becomes the way to burst it.',
    source: 'order of the path',
    guardsLife: true,
    on: 'unloader',
    check(v, tell) {
        for (const link of v.paths.to(v.name, 'hydrogen')) {
            for (const store of v.all('cylinder')) {
                const route = v.paths.route(link.from.name, store.name, 'hydrogen');
                if (!route || route.includes(v.name) || route.some(n => v.other(n)?.kind === 'check-valve')) continue;
                const last = v.paths.link(route.at(-2)!, store.name, 'hydrogen')!;
                const gas = store.maybeQ('stored-gas');
                const bag = [...v.all('bag'), ...v.all('gasometer')][0];
                tell({
                    at: link.span, message: `No check valve stands between ${v.name} and ${store.name}: when it opens, ${gas > 0 ? `${show(gas, 'NL')} flow` : `${store.name} empties`} back${bag ? ` into ${bag.name}${bag.maybe('volume') > 0 ? `, which holds ${show(bag.num('volume'), 'L')}` : ''}` : ''}.`,
                    related: [{ span: store.at(), message: 'the store' }], fixes: v.all('check-valve').some(c => c.name === 'check-valve') ? [] : [insertBefore(last, 'check-valve', `Put a check valve before ${store.name}`)],
                });
            }
        }
    },
});
