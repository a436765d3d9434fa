import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { wettedParts } from '../../wetted-parts.js';

export default defineRule({
    name: 'caustic-cracking-steel',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Plain steel holds lye warmer than about 50 °C.',
    why: 'Welds in plain steel crack in warm lye, years later and without a sign.',
    source: 'bulletins on caustic cracking: about 50 °C as welded, 65 °C unwelded',
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        const hot = stack?.maybeQ('steady-temperature') ?? NaN;
        for (const w of wettedParts(v)) {
            if (!/^(mild-steel|steel)$/.test(w.name) || !(hot > 323.15)) continue;
            tell({
                at: w.at,
                message: `Plain steel cracks at its welds in lye above 50 °C; ${w.what} of ${w.part.name} gets to about ` +
                    `${show(hot, '°C', 2)}.`,
            });
        }
    },
});
