import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'starts-against-head',
    family: 'compressor',
    severity: 'error',
    summary: 'The compressor must start against the pressure of the store.',
    why: 'A small motor stands still, draws six times its current and hums until its overload trips or its winding burns.',
    source: 'capillary systems rely on equalised pressures and low starting torque: makers\' pages; 0.3 bar: common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const can = v.num('starts-against');
        const after = v.paths.after(v.name, 'hydrogen');
        if (after.some(n => v.other(n)?.kind === 'unloader')) return;
        const store = v.all('cylinder').find(c => after.includes(c.name));
        if (!store) return;
        const on = store.maybeQ('restart', store.maybeQ('cut-off', store.maybe('rating')));
        if (!tell.exceeds(on, can, 'bar', v, 'starts-against')) return;
        const said = v.said('starts-against');
        tell({
            at: v.at(said ? 'starts-against' : undefined), severity: missing(tell, said ? 'error' : 'warning'),
            message: `${v.name} starts against ${show(can, 'bar')}${said ? '' : ', as small sealed ones do'}; ${store.name} stands at ${show(on, 'bar')} then, and no unloader lets its discharge down.`,
            related: [{ span: store.at(), message: 'the store' }],
        });
    },
});
