import { defineRule } from '../../define.js';
import { duration, show } from '../../../units/format.js';

export default defineRule({
    name: 'stack-overheats',
    family: 'heat',
    severity: 'error',
    summary: 'On the hottest day the stack gets hotter than its weakest part bears.',
    why: 'Plastics soften, gaskets let go, and hot lye comes out under pressure.',
    source: 'heat balance of this project: free convection by textbook, cooler by Kays & London',
    on: 'stack',
    check(v, tell) {
        const hot = v.maybeQ('steady-temperature');
        const most = v.num('max-temperature');
        if (!(hot > most - 3)) return;
        const after = v.maybeQ('warm-up-time');
        tell({ at: v.at(v.says('max-temperature') === 'stated' ? 'max-temperature' : undefined), severity: hot > most ? (v.says('max-temperature') === 'assumed' ? 'warning' : 'error') : 'warning', message: `On the hottest day it settles at ${show(hot, '°C')}; ${show(most, '°C')} is allowed${after === after ? `. It gets there in about ${duration(after)}` : ''}.` });
    },
});
