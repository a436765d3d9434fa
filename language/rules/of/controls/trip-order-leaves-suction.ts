import { addToList } from '../../path-fixes.js';
import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'trip-order-leaves-suction',
    family: 'controls',
    severity: 'warning',
    summary: 'Something stops the stack and leaves the compressor drawing.',
    why: 'The compressor then presses the very gas that was found bad, or empties the bag and draws air.',
    source: 'shut-down causes of electrolysers: hydrogen best-practice pages (h2tools.org); common practice, no source',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const own = v.controls.stoppers(v.name);
        const left = [...v.controls.stackStoppers()].filter(n => !own.has(n)).map(n => v.other(n)).filter((o): o is View => !!o && ['trip', 'analyser', 'detector'].includes(o.kind));
        const sight = left.filter(o => o.kind !== 'trip');
        for (const o of sight) {
            const contactor = v.controls.interrupters(v.name)[0] ?? v;
            tell({
                at: v.at(v.said('needs') ? 'needs' : 'stopped-by'), severity: o.kind === 'analyser' ? 'error' : 'warning',
                message: o.kind === 'analyser' ? `${o.name} stops the stack on bad gas, and ${v.name} goes on pressing that gas into the store.` : `${o.name} stops the stack when gas is in the room, and ${v.name} runs on.`,
                related: [{ span: o.at(), message: 'stops only the stack' }], fixes: defined(addToList(contactor, 'stopped-by', o.name, `Let ${o.name} stop ${v.name} too`)),
            });
        }
        const before = v.paths.before(v.name, 'hydrogen');
        const ends = before.flatMap(n => [`${n}.volume`, `${n}.pressure`]).flatMap(q => v.controls.limits(v.controls.involved(v.name), q, 'below'));
        const trip = left.find(o => o.kind === 'trip');
        if (trip && !ends.length) tell({ at: v.at(v.said('needs') ? 'needs' : 'stopped-by'), message: `${trip.name} stops the stack and leaves ${v.name} drawing, with nothing that ends it when the bag is empty.`, related: [{ span: trip.at(), message: 'stops only the stack' }] });
    },
});
