import { addToList } from '../../path-fixes.js';
import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'alarm-without-action',
    family: 'controls',
    severity: 'warning',
    summary: 'What watches the gas only sounds; it stops nothing.',
    why: 'Alarms are heard and ignored, or heard by nobody. Oxygen known to be too high was ignored before a tank burst and killed in 2019.',
    source: 'detection should shut off the source and start ventilation by itself: hydrogen best-practice pages (h2tools.org); accident of Gangneung, 2019',
    guardsLife: true,
    on: ['analyser', 'detector'],
    check(v, tell) {
        const heard = v.controls.listeners(v.name).map(n => v.other(n)).filter((o): o is View => !!o);
        if (!heard.length || heard.some(o => o.kind !== 'horn')) return;
        const main = v.all('contactor').find(c => c.names('latched-by').length) ?? v.all('contactor')[0];
        tell({
            at: v.at(), message: `${v.name} only sounds ${heard[0].name}: with nobody there the rig runs on.`, related: [{ span: heard[0].at(), message: 'all that it does' }],
            fixes: defined(main && v.said('trips') ? addToList(main, 'stopped-by', v.name, `Let it drop ${main.name}`) : undefined),
        });
    },
});
