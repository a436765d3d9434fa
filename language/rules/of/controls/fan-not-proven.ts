import { extracts } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';
import { duration } from '../../../units/format.js';
import { isIndoors } from '../../place.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'fan-not-proven',
    family: 'controls',
    severity: 'warning',
    summary: 'The room depends on a fan, and nothing notices when it stands still.',
    why: 'Fans stop without a sound that anybody hears; the gas does not.',
    source: 'lost ventilation is among the causes that must stop an electrolyser: hydrogen best-practice pages (h2tools.org); 0.4 %, a tenth of the lower limit: common practice, no source',
    guardsLife: true,
    on: 'fan',
    check(v, tell) {
        const site = v.the('site');
        if (!site || isIndoors(v) !== true || !extracts(v) || !v.the('stack')) return;
        const stops = v.controls.stackStoppers();
        if (v.controls.sensing(`${v.name}.flow`).some(s => stops.has(s.name))) return;
        const share = site.maybeQ('leak-share');
        const leak = share / (1 - share) * site.maybeQ('ventilation');
        if (leak / (leak + site.maybeQ('passive-flow', 0)) <= 0.004) return;
        const clock = site.maybeQ('room-clock');
        tell({ at: v.at(), severity: missing(tell, 'warning'), message: `When ${v.name} stops, nothing notices${clock === clock ? `; with all the gas leaking the shut room is at 1 % after ${duration(clock)}` : ''}.` });
    },
});
