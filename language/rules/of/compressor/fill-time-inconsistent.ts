import { defineRule } from '../../define.js';
import { duration, show } from '../../../units/format.js';

export default defineRule({
    name: 'fill-time-inconsistent',
    family: 'compressor',
    severity: 'error',
    summary: 'A store is said to fill faster than the stack makes gas.',
    why: 'Hydrogen cannot come faster than current makes it. Whoever believes it looks for leaks that are none, or misses that air is pressed in.',
    source: 'mass balance',
    on: 'claim',
    check(v, tell) {
        for (const store of [...v.all('cylinder'), ...v.all('bag'), ...v.all('gasometer')]) {
            const said = v.seen(`${store.name}.fill-time`);
            const time = said > 0 ? store.maybeQ('fill-time') : NaN;
            if (!(said < 0.9 * time) || said >= (store.result('fill-time')?.low ?? NaN)) continue;
            const rate = v.the('stack')?.maybeQ('hydrogen-rate') ?? NaN;
            tell({
                at: v.part.entries.get(`${store.name}.fill-time`)?.span ?? v.at(),
                message: `${store.name} is said to fill in ${duration(said)}; with the ${show(rate, 'NL/h')} that the stack makes it takes ${duration(time)}.`,
                related: [{ span: store.at('volume'), message: 'what is filled' }],
            });
        }
    },
});
