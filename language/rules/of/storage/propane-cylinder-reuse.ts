import { defineRule } from '../../define.js';
import { reliefsOf } from '../../relief.js';

export default defineRule({
    name: 'propane-cylinder-reuse',
    family: 'storage',
    severity: 'warning',
    summary: 'A cylinder for liquefied gas is used for hydrogen.',
    why: 'Its own relief opens far above its stamp, its valve, seals and odorant are for another gas, and the test it had was for that service.',
    source: '49 CFR 173.302a and 180.209 for change of service; built-in relief near 375 psi, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        if (v.word('sort') !== 'LPG') return;
        const rating = v.maybe('rating');
        const date = v.word('test-date');
        const old = date && tell.today && v.maybe('test-interval') === v.maybe('test-interval') ? (Date.parse(tell.today) - Date.parse(date.padEnd(10, '-01'))) / 1000 > v.num('test-interval') : false;
        const guarded = reliefsOf(v).open.some(r => r.maybe('set') <= rating);
        const lacking = [v.maybeQ('cut-off') > rating && 'the cut-off is above its stamp', old && 'its test has run out', !guarded && 'no relief valve set at or below its stamp guards it'].filter(Boolean);
        tell({
            at: v.at('sort'), severity: lacking.length ? 'error' : 'warning',
            message: `${v.name} was made for liquefied gas${lacking.length ? `, and ${lacking.join(', ')}` : ''}. At the least a pressure test, a hydrogen valve and thread, a relief valve of its own and an inspector who agrees are missing or must be shown.`,
        });
    },
});
