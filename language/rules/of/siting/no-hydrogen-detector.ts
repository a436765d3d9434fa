import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-hydrogen-detector',
    family: 'siting',
    severity: 'warning',
    summary: 'No detector for hydrogen where gas can gather.',
    why: 'It has no smell and no colour; nobody notices it.',
    source: 'ISO/TR 15916; common practice',
    guardsLife: true,
    from: 'built',
    on: 'site',
    check(v, tell) {
        if (['outdoors', 'open-shelter', ''].includes(v.word('place') ?? '')) return;
        if (!v.the('stack')) return;
        if (v.controls.sensing('site.hydrogen').length) return;
        tell({ at: v.at('place'), message: 'No detector senses hydrogen in this room; it has no smell.' });
    },
});
