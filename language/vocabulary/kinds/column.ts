import { facts, kind, quantity, slot, text, words, yesNo } from '../define.js';

export default kind({
    name: 'column',
    called: ['gas-column', 'reservoir', 'separator-column', 'gas-separator', 'riser'],
    doc: 'Upright vessel in which one gas leaves the lye. Its lye level and the pressure of its gas make the head on the separator.',
    group: 'low side',
    on: ['hydrogen', 'oxygen', 'lye'],
    ports: 'many',
    properties: {
        bore: quantity('length', 'Inner width of the upright. Sets how fast the level falls and how easily bubbles are carried under.', {
            assume: ['80 mm', 'a common pipe size; say yours, the level depends on it'], usual: '30 mm..250 mm',
        }),
        height: quantity('length', 'Inner height from foot to lid. What is left above the level must hold swell and foam.', { assume: ['400 mm', 'room for swell and foam above the level'], usual: '150 mm..1500 mm' }),
        level: quantity('length', 'Working level of the lye, cold and at rest, above the foot.', {
            assume: ['240 mm', 'three fifths of the assumed height'], usual: '50 mm..1200 mm',
        }),
        'base-height': quantity('length', 'Height of the foot above the floor. With the level it tells whether the cells stay flooded.', { neverAssumed: true, positive: false }),
        'return-port': quantity('length', 'How deep under the level the lye leaves for the stack. When the level falls to it, gas goes down the return.', {
            assume: ['50 mm', 'a usual depth'], usual: '10 mm..500 mm',
        }),
        'inlet-port': quantity('length', 'Height above the foot at which gas and lye come in from the stack. Above the level, the gas must lift the lye that far, and little gas lifts none.', {
            usual: '10 mm..1500 mm', example: '${1:200 mm}',
        }),
        divider: quantity('length', 'For a vessel shared by both gases: how far its dividing wall reaches under the lowest level.', { neverAssumed: true }),
        outlet: quantity('length', 'Bore of the gas outlet. Narrow outlets carry lye mist along.', { assume: ['8 mm', 'a usual hose size'], usual: '3 mm..25 mm' }),
        demister: yesNo('Something that catches droplets below the outlet.', { assume: ['no', 'nothing said'] }),
        sight: yesNo('The level can be seen from outside, by a sight tube or a clear wall.', {}),
        material: words(['PP', 'PE-HD', 'PVC', 'ABS', 'PTFE', 'stainless-304', 'stainless-316L', 'mild-steel', 'borosilicate', 'glass', 'PC', 'acrylic', 'copper', 'brass', 'aluminium'],
            'What its wet wall is made of. It must bear the lye at the highest temperature.', { assume: ['PP', 'what most rigs use'], open: true }),
        lid: facts([[slot('rating', 'pressure')], [slot('sort', { words: ['blow-off', 'fixed'] })]], 'What the lid holds, and whether it gives way before the vessel does.', {
            example: '${1:5 kPa}, ${2|blow-off,fixed|}', neverAssumed: true,
        }),
        'fill-point': words(['dip-tube', 'valve', 'cap', 'none'], 'How water is added. A cap opens the gas space to the air; a dip tube or valve does not.', {}),
        place: text('Where it stands, in your own words.'),
    },
    events: ['outlet blocked', 'leaks'],
    template: ['bore: ${1:80 mm}', 'height: ${2:400 mm}', 'level: ${3:240 mm}', 'base-height: ${4:600 mm}', 'return-port: ${5:60 mm}', 'sight: ${6|yes,no|}', 'material: ${7:PP}'],
});
