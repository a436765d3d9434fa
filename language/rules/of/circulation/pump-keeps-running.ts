import { duration } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { addToList } from '../../path-fixes.js';

/** s that a pump for lye may run on after the stack. Common practice, no source. */
const MOST = 600;

export default defineRule({
    name: 'pump-keeps-running',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'The lye goes on round after the stack has stopped.',
    why: 'It carries dissolved gas and bubbles from one side to the other, and no fresh gas thins what gathers above the lye.',
    source: '10 min: common practice, no source',
    on: 'circulation-pump',
    check(v, tell) {
        const on = v.maybe('run-on');
        if (on > MOST * 1.001) {
            tell({
                at: v.at('run-on'), message: `${v.name} runs on for ${duration(on)} after the stack: lye keeps carrying gas from side to side; ${duration(MOST)} is the most.`,
                fixes: defined(setValue(v, 'run-on', '2 min', 'Let it run on for 2 min')),
            });
            return;
        }
        if (on === on) return;
        const stops = v.controls.stackStoppers();
        if (!stops.size) return;
        const own = v.controls.stoppers(v.name);
        if ([...own].some(n => stops.has(n))) return;
        const source = v.controls.sources()[0];
        const main = [...stops].map(n => v.other(n)).find(o => o?.kind === 'contactor' || o?.kind === 'relay');
        tell({
            at: v.at(v.said('needs') ? 'needs' : v.said('stopped-by') ? 'stopped-by' : undefined), related: source ? [{ span: source.at(), message: 'stops without it' }] : [],
            message: `Nothing that stops the stack stops ${v.name}: after a trip it goes on carrying gas from side to side.`,
            fixes: defined(main && addToList(v, 'needs', main.name, `Let it run only with ${main.name}`)),
        });
    },
});
