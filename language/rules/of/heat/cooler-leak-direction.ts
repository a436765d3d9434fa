import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { stackGuards } from '../../guards.js';

export default defineRule({
    name: 'cooler-leak-direction',
    family: 'heat',
    severity: 'hint',
    summary: 'Through a pinhole in the cooler, tap water gets into the lye or lye into the tap water.',
    why: 'Whichever has more pressure goes into the other: water floods the columns and thins the lye; when the mains is shut off, lye is drawn into pipes from which somebody drinks.',
    source: 'hydrostatics; parting dangerous liquids from drinking water: EN 1717, from memory',
    guardsLife: true,
    on: 'cooler',
    check(v, tell) {
        // What is neither told by path nor by word may as well be a closed loop.
        if (v.word('sort') === 'fan' || v.word('sort') === 'fins' || v.word('sort') === 'none') return;
        if (notGiven(v, 'water-side')) tell.cannotCheck(v, 'water-side', `whether lye can get from ${v.name} into drinking water`);
        const tapped = v.paths.mediaOf(v.name).has('water') && v.paths.before(v.name, 'water').includes('tap');
        if (v.says('water-side') === 'stated' || v.says('water-side') === 'like' ? v.word('water-side') !== 'mains' : !tapped) return;
        const water = v.maybe('water.pressure');
        const stack = v.the('stack');
        const first = v.all('cooler').find(c => c.word('water-side') === v.word('water-side'));
        if (!stack || first?.name !== v.name) return;
        const kept = v.paths.before(v.name, 'water').some(n => v.other(n)?.kind === 'check-valve');
        const high = v.all('column').some(c => stackGuards(v, `${c.name}.level`, 'above').length);
        const lye = stack.maybeQ('hydrogen-head');
        if (!kept) {
            tell({
                at: v.at(v.said('water-side') ? 'water-side' : undefined),
                message: `${v.name} hangs on the drinking water by one wall, and nothing keeps lye from being drawn back when the mains is shut off. A loop of its own, or a free fall of the water into an open funnel.`,
            });
            return;
        }
        if (high || !v.said('water') || !(water > (lye === lye ? lye : 0))) return;
        tell({
            at: v.atSlot('water.pressure'),
            message: `The water in ${v.name} stands at ${show(water, 'bar')}, the lye at the head of its gas${lye > 0 ? `, ${show(lye, 'kPa', 2)}` : ''}: a pinhole floods the columns, and no high level stops it.`,
        });
    },
});
