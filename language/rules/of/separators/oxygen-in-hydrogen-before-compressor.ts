import { defineRule } from '../../define.js';
import { defined, insertAfter } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'oxygen-in-hydrogen-before-compressor',
    family: 'separators and purity',
    severity: 'error',
    summary: 'Nothing looks at the gas before it is compressed.',
    why: 'A torn separator fills the cylinder with a charge that explodes. In 2019 oxygen above 3 % was known and ignored before a tank burst and killed.',
    source: 'explosive from about 5 % oxygen (rich limit 75 % hydrogen in air, handbooks); stop at 1 %: common practice',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen') || !v.the('stack')) return;
        const watchers = v.all('analyser').filter(a => /\.oxygen$/.test(v.controls.sensed(a) ?? ''));
        if (!watchers.length) {
            tell({ at: v.at(), message: 'Nothing measures oxygen in the hydrogen before it is compressed; a torn separator would fill the cylinder with an explosive charge.', fixes: defined(insertAfter(v, 'analyser oxygen-watch {\n  senses:           stack.oxygen\n  alarm:            above 0.5 %\n  trips:            above 1 %\n  resets:           by hand\n  if-wire-breaks:   trips\n  if-unpowered:     trips\n}', 'Plan an oxygen analyser')) });
            return;
        }
        for (const a of watchers) {
            const trip = a.maybe('trips.value');
            if (trip !== trip) tell({ at: a.at(), message: `${a.name} only tells; it has no trip. Oxygen above 1 % must stop the compressor.` });
            else if (trip > 0.0201) tell({ at: a.at('trips'), message: `${a.name} trips at ${show(trip, '%')} oxygen; 1 % is usual, and about 5 % explodes.` });
        }
    },
});
