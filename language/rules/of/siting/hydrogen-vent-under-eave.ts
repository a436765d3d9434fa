import { defineRule } from '../../define.js';

export default defineRule({
    name: 'hydrogen-vent-under-eave',
    family: 'siting',
    severity: 'error',
    summary: 'Hydrogen is let out under an eave.',
    why: 'It gathers there as under a ceiling and goes into the roof.',
    source: 'ISO/TR 15916',
    guardsLife: true,
    on: 'vent',
    check(v, tell) {
        if (v.word('place') === 'under-eave' && v.paths.mediaOf(v.name).has('hydrogen')) tell({ at: v.at('place'), message: `Hydrogen from ${v.name} gathers under the eave and finds its way into the roof.` });
    },
});
