import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'capacitor-ripple-overload',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The smoothing capacitor carries more ripple current than it is rated for.',
    why: 'It dries out, swells and may vent. The charging pulses of a bridge are much larger than the direct current tells.',
    source: 'RMS of the winding less the direct current, textbook; winding factor from a rectifier guide of a transformer maker',
    on: 'capacitor',
    check(v, tell) {
        const ripple = v.q('ripple-current');
        const rated = v.num('ripple-rating');
        if (!v.the('transformer') || !tell.exceeds(ripple, rated, 'A', v, 'ripple-rating')) return;
        tell({
            at: v.at('ripple-rating'), severity: ripple > 2 * rated ? 'error' : 'warning',
            message: `About ${show(ripple, 'A', 2)} of ripple flows in capacitors for ${show(rated, 'A')}. The stack needs no capacitor: ` +
                'it makes the same gas without.',
        });
    },
});
