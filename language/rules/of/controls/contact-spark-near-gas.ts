import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import { standsIndoors } from '../../place.js';

/** V, above which a contact is told as one on the mains: extra-low voltage ends there. IEC 61140, from memory. */
const MAINS = 50;

export default defineRule({
    name: 'contact-spark-near-gas',
    family: 'controls',
    severity: 'warning',
    summary: 'An open contact sits close to gas.',
    why: 'A contact that opens makes a spark; hydrogen needs a thousandth of what such a spark has.',
    source: 'IEC 60079-10-1 and -14; least ignition energy 0.017 to 0.02 mJ; from memory',
    guardsLife: true,
    on: ['switch', 'trip', 'analyser', 'relay', 'contactor'],
    check(v, tell) {
        const d = v.maybe('distance-to-gas');
        const volts = Math.max(v.maybe('contact.voltage', 0), v.maybe('rating.voltage', 0));
        if (d < 0.5 && (v.word('enclosure') ?? 'open') === 'open') tell({ at: v.at('distance-to-gas'), severity: volts >= MAINS && standsIndoors(v) ? 'error' : 'warning', message: `${v.name} opens its contact${volts >= MAINS ? `, made for ${show(volts, 'V')},` : ''} ${show(d, 'm')} from gas; its enclosure is ${v.says('enclosure') === 'stated' ? 'open' : 'not said, so taken as open'}.` });
    },
});
