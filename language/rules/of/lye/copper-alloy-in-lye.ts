import { capital } from '../../../values/evaluate.js'
import { defineRule } from '../../define.js';
import { wettedParts } from '../../wetted-parts.js';

export default defineRule({
    name: 'copper-alloy-in-lye',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Copper or brass is wetted by lye.',
    why: 'The lye turns blue-green, zinc is drawn out of brass, and copper settles on the plates.',
    source: 'from memory',
    on: 'rig',
    check(v, tell) {
        for (const w of wettedParts(v)) {
            if (!/^(copper|brass|bronze)$/.test(w.name)) continue;
            tell({
                at: w.at,
                message: `${capital(w.name)} in lye turns it blue-green and settles on the plates: ${w.what} of ${w.part.name}.`,
                fixes: w.own ? [{ title: 'Make it of PP', edits: [{ span: w.at, text: 'PP' }], preferred: true }] : [],
            });
        }
    },
});
