import { show } from '../../../units/format.js';
import { addStackTrip, stackGuards } from '../../guards.js';
import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'recombiner-hot-spot',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'A catalyst burns oxygen out of the hydrogen, and nothing stops the gas when it gets too hot.',
    why: 'With more oxygen than it was meant for the catalyst glows and lights the very mixture that it should have cleaned.',
    source: 'enthalpy of formation of steam over the heat capacity of hydrogen: about 165 K for each per cent of oxygen',
    guardsLife: true,
    on: 'recombiner',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        if (!media.has('hydrogen') && !media.has('oxygen')) return;
        if (v.maybe('over-temperature-trip') > 0 || stackGuards(v, `${v.name}.temperature`, 'above').length) return;
        const rise = media.has('hydrogen') ? v.maybeQ('rise') : NaN;
        tell({
            at: v.at(), severity: missing(tell, 'warning'),
            message: `Nothing acts when ${v.name} gets too hot: each per cent of oxygen warms the hydrogen by about 165 K` +
                `${rise >= 1 ? `, and the least current already brings ${show(rise, 'K', 2)}` : ''}.`,
            fixes: defined(addStackTrip(v, `${v.name}-hot`, { senses: `${v.name}.temperature`, trips: 'above 120 °C', resets: 'by hand', 'if-wire-breaks': 'trips' }, 'Stop the stack at 120 °C')),
        });
    },
});
