import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'ignition-or-intake-near',
    family: 'siting',
    severity: 'warning',
    summary: 'A source of ignition or an air intake is near.',
    why: 'Hydrogen lights at sparks too weak to feel, over a wide range of mixtures; an intake draws the gas indoors.',
    source: 'common practice, no source; IEC 60079-10-1 sets zones',
    guardsLife: true,
    on: 'site',
    check(v, tell) {
        for (const row of v.rows('ignition-sources')) {
            const what = row.get('what');
            const d = row.get('distance')?.number ?? NaN;
            if (!(d >= 3)) tell({ at: v.at('ignition-sources'), message: `${what?.text ?? what?.word ?? 'A source of ignition'} ${d === d ? `is ${show(d, 'm')} away` : 'is near, how far is not said'}; keep 3 m and more, and nothing above the rig.` });
        }
        const intake = v.maybe('air-intakes');
        if (intake < 3) tell({ at: v.at('air-intakes'), message: `An air intake is ${show(intake, 'm')} away: it draws gas indoors.` });
    },
});
