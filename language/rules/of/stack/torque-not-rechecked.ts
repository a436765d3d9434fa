import { how } from '../../records.js';
import { defineRule } from '../../define.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'torque-not-rechecked',
    family: 'stack',
    severity: 'hint',
    summary: 'Nothing on record or in the plan says that the tie rods are tightened again.',
    why: 'Plastic boards and rubber creep most in the first warm hours. Rods that were tight cold are loose after them, and it weeps.',
    source: 'common practice, no source',
    on: 'stack',
    check(v, tell) {
        // A rig that has not run warm yet has nothing to tighten again.
        if (!tell.reached('running') || !v.said('tie-rods')) return;
        const told = (r: View) => TIGHTENED.test(`${r.given('what').facts.get('')?.text ?? ''} ${how(r)}`);
        if ([...v.all('service'), ...v.all('test')].some(told)) return;
        if (v.the('routine')?.rows('plan').some(row => TIGHTENED.test(row.get('')?.text ?? ''))) return;
        tell({ at: v.at('tie-rods'), message: 'That the rods were tightened again after the first warm run is not on record: plastic and rubber creep, and what was tight cold weeps.' });
    },
});

const TIGHTENED = /\b(torque|re-?tightened|tighten(ed)?|bolts?|tie.?rods?|rods?|nuts?)\b/i;
