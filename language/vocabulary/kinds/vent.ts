import { facts, kind, quantity, slot, words, yesNo } from '../define.js';

export default kind({
    name: 'vent',
    doc: 'Where a gas path ends in the air. Hydrogen must be able to rise away; oxygen must reach nothing that burns.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        place: words(['outdoors-up', 'outdoors-wall', 'under-eave', 'room'], 'Where its mouth is. Under an eave hydrogen collects; in a room either gas does.', { neverAssumed: true }),
        bore: quantity('length', 'Inner width of its mouth. Ice and insects close narrow ones.', { assume: ['10 mm', 'a usual hose size', '± 3 mm'], usual: '2 mm..100 mm' }),
        mesh: yesNo('A mesh keeps insects out.', { assume: ['no', 'nothing said'] }),
        slope: quantity('slope', 'Fall of its pipe back to a drain: 3 %. Water that stays in it freezes and shuts it.', { assume: ['0 %', 'nothing said'], usual: '0 %..100 %' }),
        distance: facts([[slot('', 'length'), 'from?', slot('from', { part: ['vent'] }, true)]],
            'Distance from the vent of the other gas: 3 m from o2-vent. Too near, the two gases meet again.', {
                example: '${1:3 m} from ${2:o2-vent}', neverAssumed: true, unit: 'm',
            }),
        'from-openings': quantity('length', 'Distance from the nearest window, door or air intake.', { neverAssumed: true, usual: '0.1 m..100 m', unit: 'm', example: '${1:3 m}' }),
        'from-ignition': quantity('length', 'Distance from the nearest flame, spark or hot surface.', { neverAssumed: true, usual: '0.1 m..100 m', unit: 'm', example: '${1:5 m}' }),
        height: quantity('length', 'Height of its mouth above the ground.', { neverAssumed: true, usual: '0.1 m..20 m', unit: 'm', example: '${1:3 m}' }),
    },
    events: ['blocked', 'cleared'],
    template: ['place: ${1|outdoors-up,outdoors-wall,under-eave,room|}', 'bore: ${2:20 mm}', 'mesh: ${3|yes,no|}', 'slope: ${4:3 %}', 'distance: ${5:3 m} from ${6:o2-vent}'],
});
