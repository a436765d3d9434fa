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
        'insulated-from-core': yesNo('A winding added by hand is insulated from core and primary. Asked of every rewound one: the wet stack hangs on it.', { fact: true, neverAssumed: true }),
        duty: quantity('fraction', 'Share of ten minutes that it may be loaded. Welder and appliance cores are below 100 %, and a rig runs for hours.', { assume: ['100 %', 'made for continuous use unless its plate says less'], usual: '5 %..100 %' }),
        ...driven,
    },
    states: ['running', 'stopped'],
    events: ['stops', 'winding shorts', 'overheats'],
    template: ['sort: ${1|laminated,toroid,rewound|}', 'power: ${2:800 VA}', 'secondary: ${3:30 V}', 'insulated-from-core: ${4|yes,no|}'],
});
