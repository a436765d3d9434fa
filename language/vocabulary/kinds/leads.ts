import { kind, quantity, words, yesNo } from '../define.js';
import { materialsFor } from '../materials.js';

export default kind({
    name: 'leads',
    called: ['cable', 'wire', 'wires', 'cables'],
    doc: 'The pair of cables between source and stack. Both ways are counted.',
    group: 'current',
    on: ['current'],
    properties: {
        length: quantity('length', 'Length one way; the way back is counted too. Long leads take volts from the stack and warm up.', { assume: ['2 m', 'a usual distance'], usual: '0.1 m..50 m', unit: 'm' }),
        section: quantity('area', 'Cross-section of one conductor: 6 mm2 or AWG 10. It decides the drop, and the current that the lead bears.', { usual: '0.5 mm2..150 mm2', example: '${1:6 mm2}' }),
        material: words(materialsFor('lead').length ? materialsFor('lead') : ['copper', 'aluminium'], 'What the conductor is made of. Aluminium and copper-clad wire drop more, and lye eats them.', { assume: ['copper', 'nearly always'], open: true }),
        ampacity: quantity('current', 'Current that it bears for hours, by its maker.', { fact: true, usual: '1 A..500 A', example: '${1:40 A}' }),
        sensed: yesNo('The supply measures at the far end and makes up for the drop. The heat stays.', { assume: ['no', 'nothing said'] }),
        ends: words(['bolted', 'lug', 'plug', 'clip', 'soldered'], 'How its ends are joined. A clip that slips is a spark.', { assume: ['lug', 'usual at these currents'] }),
        rating: quantity('current', 'Current that the weakest plug or terminal bears.', { fact: true, usual: '1 A..500 A', example: '${1:50 A}' }),
        keyed: yesNo('Plus and minus cannot be swapped. Swapped, hydrogen and oxygen change sides from the first second.', { assume: ['no', 'nothing said'] }),
        'distance-to-gas': quantity('length', 'Distance of its nearest open joint from a bubbler, vent or balloon. A joint that comes loose sparks.', { neverAssumed: true, usual: '0.02 m..50 m', unit: 'm' }),
    },
    events: ['comes off', 'shorts'],
    template: ['length: ${1:2 m}', 'section: ${2:6 mm2}', 'ends: ${3|lug,bolted,plug|}', 'keyed: ${4|yes,no|}'],
});
