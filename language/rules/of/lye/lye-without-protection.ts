import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'lye-without-protection',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Lye is handled, and goggles, gloves or water for the eyes are not named.',
    why: 'Strong lye blinds within seconds. Water on the spot, for a quarter of an hour, decides whether the eye is kept.',
    source: 'burns from 2 %, severe from 5 % of NaOH, EU harmonised classification; eye-wash at hand, ANSI Z358.1, as summarised',
    guardsLife: true,
    from: 'built',
    on: 'lye',
    check(v, tell) {
        const strength = v.maybeQ('mass-fraction');
        const site = v.the('site');
        if (!site || !(strength > 0.02)) return;
        const said = (key: string) => site.yes(key) === true;
        const wanted = [['eye-wash', 'water for the eyes'], ['goggles', 'goggles'], ['gloves', 'gloves'], ['face-shield', 'a face shield']];
        const lacking = wanted.filter(([key]) => !said(key) && (key !== 'face-shield' || strength > 0.1));
        if (!lacking.length) return;
        const denied = lacking.find(([key]) => site.yes(key) === false || site.says(key) === 'none');
        const key = denied?.[0] ?? '';
        tell({
            at: denied ? site.at(key) : v.at(), severity: denied && (key === 'eye-wash' || key === 'goggles') ? 'error' : 'warning',
            message: `${show(strength, 'wt%')} of ${v.word('solute') ?? 'lye'} blinds within seconds; ` +
                `${lacking.map(([, what]) => what).join(', ')} ` +
                `${lacking.length > 1 || lacking[0][0] === 'goggles' || lacking[0][0] === 'gloves' ? 'are' : 'is'} not named. On ` +
                'skin and in eyes: water at once, for a quarter of an hour, and nothing else.',
        });
    },
});
