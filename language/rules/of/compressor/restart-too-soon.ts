import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { duration, show } from '../../../units/format.js';

export default defineRule({
    name: 'restart-too-soon',
    family: 'compressor',
    severity: 'warning',
    summary: 'The compressor can start again before it has rested.',
    why: 'The part that helps it to start must cool first; until then it stands still under full current.',
    source: 'rest of 3 min to 5 min: makers\' pages; common practice, no source',
    on: 'compressor',
    check(v, tell) {
        const rest = v.num('min-off');
        const own = v.controls.involved(v.name);
        const timer = v.all('timer').find(t => t.word('sort') === 'minimum-off' && (own.has(t.name) || v.controls.interrupters(v.name).some(c => t.word('follows') === c.name || t.names('follows').includes(c.name))));
        if (timer) {
            const time = timer.maybe('time');
            if (time < rest) tell({ at: timer.at('time'), message: `${timer.name} lets ${v.name} start after ${duration(time)}; it must rest ${duration(rest)}.`, fixes: defined(setValue(timer, 'time', show(rest, 'min'), `Set it to ${duration(rest)}`)) });
            return;
        }
        const bag = [...v.all('bag'), ...v.all('gasometer')].find(b => v.paths.before(v.name, 'hydrogen').includes(b.name));
        const fill = bag?.maybeQ('fill-time') ?? NaN;
        if (bag && fill < rest) tell({ at: v.at(v.said('min-off') ? 'min-off' : undefined), message: `${bag.name} is full again after ${duration(fill)} and calls ${v.name}, which must rest ${duration(rest)}; no timer holds it back.`, related: [{ span: bag.at('volume'), message: 'fills' }] });
    },
});
