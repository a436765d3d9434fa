import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'starts-against-head',
    family: 'compressor',
    severity: 'warning',
    summary: 'The compressor must start against the pressure of the store.',
    why: 'Its motor stalls, hums and burns out; the thermal switch then starts it again and again.',
    source: 'common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const can = v.num('starts-against');
        const after = v.paths.after(v.name, 'hydrogen');
        if (after.some(n => v.other(n)?.kind === 'unloader')) return;
        const store = v.all('cylinder').find(c => after.includes(c.name));
        const on = store ? store.maybeQ('restart', store.maybe('rating')) : NaN;
        if (!(on > can)) return;
        tell({ at: v.at(v.says('starts-against') === 'stated' ? 'starts-against' : undefined), message: `${v.name} starts against ${show(can, 'bar')} at most; at restart ${store!.name} stands at ${show(on, 'bar')}, and no unloader lets its discharge down.` });
    },
});
