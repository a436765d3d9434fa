import { defineRule } from '../../define.js';
import { insertBefore } from '../../path-fixes.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'no-dryer-before-cylinder',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'Wet gas goes into the cylinder.',
    why: 'Water drops out at pressure: it rusts the steel from inside and freezes the regulator.',
    source: 'less than 55 ppm of moisture for gas that does not corrode: 49 CFR 180.203',
    on: 'cylinder',
    check(v, tell) {
        for (const compressor of v.all('compressor')) {
            const way = v.paths.route(compressor.name, v.name, 'hydrogen');
            if (!way || v.paths.before(v.name, 'hydrogen').some(n => v.other(n)?.kind === 'dryer')) continue;
            const drops = compressor.maybeQ('water-dropped');
            const link = v.paths.link(way.at(-2)!, v.name, 'hydrogen')!;
            tell({
                at: link.to.span, severity: missing(tell, 'warning'), message: `No dryer stands before ${v.name}${drops > 0 ? `: about ${show(drops, 'g/h', 2)} of water drop out at pressure` : ': water drops out in it at pressure'}.`,
                fixes: v.all('dryer').length ? [] : [insertBefore(link, 'dryer', `Put a dryer before ${v.name}`)],
            });
        }
    },
});
