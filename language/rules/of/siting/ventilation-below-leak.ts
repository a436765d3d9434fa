import { extracts } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';
import { isIndoors } from '../../place.js';

export default defineRule({
    name: 'ventilation-below-leak',
    family: 'siting',
    severity: 'error',
    summary: 'If all the gas leaks, the air of the room is not changed fast enough.',
    why: 'From 4 % hydrogen in air burns; a quarter of that is the usual limit for the whole room, because it is more under the ceiling.',
    source: 'dilution below a quarter of the lower flammable limit: hydrogen best-practice pages (h2tools.org); lower limit 4 %: ISO/TR 15916; 0.4 %, a tenth of it, since gas never mixes evenly: common practice, no source',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        if (isIndoors(v) !== true || !v.the('stack')) return;
        const share = v.maybeQ('leak-share');
        if (share !== share) {
            if (v.the('stack')!.maybeQ('hydrogen-rate') > 0 && !v.all('fan').length) tell.cannotCheck(v, 'openings', 'whether the air of the room is changed fast enough');
            return;
        }
        if (!tell.exceeds(share, 0.004, '%', v, 'openings')) return;
        const fresh = v.q('ventilation');
        const leak = share / (1 - share) * fresh;
        const wanted = Math.ceil(leak / 0.004 * 3600 / 5) * 5;
        const fan = v.all('fan').find(extracts);
        tell({
            at: fan?.said('flow') ? fan.at('flow') : v.at('openings'), severity: share > 0.01 ? 'error' : 'warning',
            message: `If all ${show(leak, 'L/h')} of hydrogen leak, ${show(fresh, 'm3/h')} of fresh air ${share > 0.01 ? 'let the room rise' : 'hold it'} to ${digits(100 * share, 2)} %; ${share > 0.01 ? '1 % is the limit' : '0.4 % is wanted'}.`,
            fixes: defined(fan ? setValue(fan, 'flow', `${wanted} m3/h`, `Use ${wanted} m3/h`) : undefined),
        });
    },
});
