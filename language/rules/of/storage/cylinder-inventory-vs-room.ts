import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';
import { standsIndoors } from '../../place.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'cylinder-inventory-vs-room',
    family: 'storage',
    severity: 'error',
    summary: 'The contents of the cylinder, let into the room, can burn.',
    why: 'A hose that slips empties it in minutes.',
    source: 'a quarter of the lower flammable limit: hydrogen best-practice pages (h2tools.org); lower limit 4 %: ISO/TR 15916',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        if (!standsIndoors(v) || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const site = v.the('site')!;
        const share = v.maybeQ('inventory-share');
        if (share !== share) {
            if (notGiven(site, 'volume')) tell.cannotCheck(site, 'volume', `what the contents of ${v.name} make of the room`);
            return;
        }
        if (tell.exceeds(share, 0.01, '%', v, 'volume')) tell({ at: v.at('volume'), severity: share > 0.04 ? 'error' : 'warning', message: `Its ${show(v.q('stored-gas'), 'NL')}, let go, make ${digits(100 * share, 2)} % hydrogen of this room; 1 % is the limit, 4 % burns.`, related: [{ span: site.at('volume'), message: 'the room' }], fixes: defined(v.part.entries.has('place') ? undefined : setValue(v, 'place', '"outside wall, shaded"', 'Stand it outside')) });
    },
});
