import { defineRule } from '../../define.js';

export default defineRule({
    name: 'lye-without-protection',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Goggles, gloves or an eye-wash are missing where lye is handled.',
    why: 'Lye in an eye blinds within a minute; what helps is water at once and for long.',
    source: 'safety data sheets of KOH and NaOH; EN 15154 for eye-washes, from memory',
    guardsLife: true,
    from: 'drawn',
    on: 'lye',
    check(v, tell) {
        const site = v.the('site');
        if (!site) return;
        const missing = ['goggles', 'gloves', 'eye-wash'].filter(k => site.yes(k) === false || (tell.reached('built') && site.says(k) === 'silent'));
        if (missing.length) tell({ at: site.at(missing.find(k => site.said(k))), message: `Lye is handled here without ${missing.join(', ')}.` });
    },
});
