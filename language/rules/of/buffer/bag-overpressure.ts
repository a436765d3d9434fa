import { append, defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { duration, show } from '../../../units/format.js';
import { freeName } from '../../path-fixes.js';
import { missing } from '../../stage.js';
import { sealThatGuards, softReliefs } from '../../relief.js';

export default defineRule({
    name: 'bag-overpressure',
    family: 'buffer',
    severity: 'error',
    summary: 'Nothing ends the filling, or the seal lets gas out only above what the bag bears.',
    why: 'The bag tears, and all that it holds is in the room at once.',
    source: 'hydrostatics; four fifths of the rating and 50 mm of water above ordinary running for the seal that is planned: common practice, no source',
    guardsLife: true,
    on: ['bag', 'gasometer'],
    check(v, tell) {
        if (!v.the('stack') || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const reliefs = softReliefs(v);
        const rating = v.maybe('rating');
        const fits = sealThatGuards(v);
        if (reliefs.length) {
            const first = reliefs.reduce((a, b) => (b.opens < a.opens ? b : a));
            if (v.kind !== 'bag') return;
            if (rating !== rating) {
                tell.cannotCheck(v, 'rating', `whether ${first.view.name} opens before ${v.name} tears`);
                return;
            }
            if (!tell.exceeds(first.opens, rating, 'kPa', first.view, first.view.kind === 'seal' ? 'depth' : 'set')) return;
            tell({
                at: first.view.at(first.view.kind === 'seal' ? 'depth' : 'set'), message: `${first.view.name} lets gas out of ${v.name} at ${show(first.opens, 'kPa')}; ${v.name} bears ${show(rating, 'kPa')}.`,
                related: [{ span: v.at('rating'), message: 'what it bears' }], fixes: defined(fits && first.view.kind === 'seal' ? setValue(first.view, 'depth', `${fits} mm`) : undefined),
            });
            return;
        }
        if (v.word('overflow') === 'outdoors') return;
        const stops = v.controls.stackStoppers();
        if (['volume', 'pressure'].some(q => v.controls.limits(stops, `${v.name}.${q}`, 'above').length)) return;
        const time = v.maybeQ('fill-time');
        const name = freeName(v, 'bag-seal');
        tell({
            at: v.at(), severity: missing(tell, 'error'), message: `Nothing ends the filling of ${v.name}: no switch stops the stack and no seal lets gas out${time === time ? `; it is full after ${duration(time)}` : ''}.`,
            // A depth made up could hold more than the bag bears: where none can be told, it stays to be found out.
            fixes: [append(v, `seal ${name} { depth: ${fits ? `${fits} mm` : 'unknown'} }\npath hydrogen: ${v.name} -> ${name} -> outdoors`, fits ? `Plan a seal of ${fits} mm to outdoors` : 'Plan a seal to outdoors')],
        });
    },
});
