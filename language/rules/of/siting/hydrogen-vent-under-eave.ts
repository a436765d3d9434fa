import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'hydrogen-vent-under-eave',
    family: 'siting',
    severity: 'warning',
    summary: 'The hydrogen vent ends under an eave.',
    why: 'The gas collects there and goes back through the eave into the loft.',
    source: 'common practice, no source; upward and unobstructed: 29 CFR 1910.103, from memory',
    on: 'vent',
    check(v, tell) {
        if (v.word('place') !== 'under-eave' || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        tell({ at: v.at('place'), message: `${v.name} ends under the eave: hydrogen collects there and finds the loft.`, fixes: defined(setValue(v, 'place', 'outdoors-up', 'Lead it up past the edge of the roof')) });
    },
});
