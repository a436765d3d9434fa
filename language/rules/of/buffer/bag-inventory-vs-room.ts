import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';
import { standsIndoors } from '../../place.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'bag-inventory-vs-room',
    family: 'buffer',
    severity: 'error',
    summary: 'A torn bag makes a layer under the roof that burns.',
    why: 'All of it is out in a second, and rises.',
    source: 'a quarter of the lower flammable limit: hydrogen best-practice pages (h2tools.org); lower limit 4 %: ISO/TR 15916; factor of three for a layer: common practice, no source',
    guardsLife: true,
    on: ['bag', 'gasometer'],
    check(v, tell) {
        if (!standsIndoors(v) || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const site = v.the('site')!;
        const share = v.maybeQ('inventory-share');
        if (share !== share) {
            if (notGiven(site, 'volume')) tell.cannotCheck(site, 'volume', `what a torn ${v.name} makes of the room`);
            return;
        }
        const stops = v.controls.stackStoppers();
        const mixed = v.all('fan').some(f => ['extract', 'mixing'].includes(f.word('sort') ?? 'extract') && v.controls.sensing(`${f.name}.flow`).some(s => stops.has(s.name)));
        const layer = share * (mixed ? 1 : 3);
        if (!tell.exceeds(layer, 0.01, '%', v, 'volume')) return;
        tell({
            at: v.at('volume'), severity: layer > 0.04 ? 'error' : 'warning',
            message: `Torn, ${v.name} makes ${digits(100 * share, 2)} % hydrogen of this room evenly mixed${mixed ? '' : `, about ${digits(100 * layer, 2)} % in a layer under the roof`}; 1 % is the limit, 4 % burns.`, related: [{ span: site.at('volume'), message: 'the room' }],
        });
    },
});
