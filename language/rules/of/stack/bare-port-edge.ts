import { digits } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'bare-port-edge',
    family: 'stack',
    severity: 'warning',
    summary: 'Holes through the metal plates show a bare rim in the shared channel.',
    why: 'Every rim works as a small electrode and makes the wrong gas in that channel.',
    source: 'reversible voltage against the volts between rims',
    on: 'stack',
    check(v, tell) {
        if (v.yes('port-lining') !== false || v.word('manifold.sort') === 'external') return;
        const cells = v.maybe('cells');
        const plates = cells > 1 ? `${digits(cells - 1)} plates` : 'The plates';
        tell({
            at: v.at('port-lining'),
            message: `${plates} show bare metal in the shared channel: each rim makes gas there, the wrong one in one of the two channels.`,
            fixes: defined(setValue(v, 'port-lining', 'yes', 'Line the ports')),
        });
    },
});
