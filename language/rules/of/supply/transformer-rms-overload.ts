import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'transformer-rms-overload',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The winding carries more RMS current than it is rated for: pulses heat copper more than their mean tells.',
    why: 'Behind a rectifier the current comes in pulses. Gas follows the mean, the copper follows the RMS, and insulation that is too hot fails.',
    source: 'current factors of a transformer maker\'s rectifier guide; closed form for pulses into a clamp; 1.3 times for an error: common practice, no source',
    on: 'transformer',
    check(v, tell) {
        const rms = v.q('winding-current');
        const rated = v.q('rated-secondary-current');
        if (!tell.exceeds(rms, rated, 'A', v, 'power')) return;
        tell({ at: v.at('power'), severity: rms > 1.3 * rated ? 'error' : 'warning', message: `The winding carries ${show(rms, 'A')} RMS and is rated ${show(rated, 'A')} (${digits(100 * rms / rated, 2)} %).` });
    },
});
