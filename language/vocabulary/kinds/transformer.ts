import { driven } from '../driven.js';
import { kind, facts, quantity, slot, words, yesNo } from '../define.js';

export default kind({
    name: 'transformer',
    doc: 'Transformer that a maker uses or winds to feed a rectifier.',
    group: 'current',
    on: ['current'],
    properties: {
        sort: words(['laminated', 'toroid', 'autotransformer', 'rewound', 'welder', 'charger', 'halogen'], 'What it is. An autotransformer does not keep the mains apart; welder and appliance cores are made for short use.', { neverAssumed: true }),
        mains: facts([[slot('voltage', 'voltage'), slot('frequency', 'frequency', true)]], 'Voltage and frequency of the mains on its primary.', { assume: ['230 V 50 Hz', 'the mains of most of the world'], example: '${1:230 V 50 Hz}' }),
        power: quantity('apparent-power', 'Rated power, as on its plate. Behind a rectifier the winding carries more than the direct current tells.', { fact: true, usual: '20 VA..10 kVA', example: '${1:800 VA}' }),
        secondary: quantity('voltage', 'Voltage of the secondary at its rated current; of each half if it is centre-tapped.', { usual: '2 V..200 V', fact: true, example: '${1:30 V}' }),
        'secondary-unloaded': quantity('voltage', 'Voltage of the secondary with nothing connected. Small transformers stand well above their rated voltage then.', { usual: '2 V..220 V', fact: true, example: '${1:32 V}' }),
        'secondary-current': quantity('current', 'Current that the secondary may carry for hours, as RMS, as on its plate.', { usual: '0.1 A..500 A', fact: true, example: '${1:25 A}' }),
        'core-area': quantity('area', 'Cross-section of the iron that the windings embrace, without varnish and holes. It sets the volts of each turn.', { unit: 'cm2', usual: '0.5 cm2..200 cm2', example: '${1:18 cm2}' }),
        flux: quantity('flux-density', 'Crest of the flux density that the iron is used to. Too much of it, and the current without load soars.', { assume: ['1.2 T', 'mild for stacked iron; toroids and good strip bear 1.5 T', '± 0.2 T'], usual: '0.5 T..1.8 T' }),
        wire: quantity('area', 'Copper section of the secondary wire.', { usual: '0.2 mm2..100 mm2', example: '${1:6 mm2}' }),
        'mean-turn': quantity('length', 'Length of one turn of the secondary, in the middle of its winding.', { usual: '50 mm..1000 mm', example: '${1:240 mm}' }),
        'insulated-from-core': yesNo('A winding added by hand is insulated from core and primary. Asked of every rewound one: the wet stack hangs on it.', { fact: true, neverAssumed: true }),
        'soft-start': yesNo('Something limits its inrush when it is switched on: a resistor that is bridged a moment later, or a thermistor.', {}),
        duty: quantity('fraction', 'Share of ten minutes that it may be loaded. Welder and appliance cores are below 100 %, and a rig runs for hours.', { assume: ['100 %', 'made for continuous use unless its plate says less'], usual: '5 %..100 %' }),
        ...driven,
    },
    states: ['running', 'stopped'],
    events: ['stops', 'winding shorts', 'overheats'],
    template: ['sort: ${1|laminated,toroid,rewound|}', 'power: ${2:800 VA}', 'secondary: ${3:30 V}', 'insulated-from-core: ${4|yes,no|}'],
});
