import { kind, quantity, text, words, yesNo } from '../define.js';

export default kind({
    name: 'gasometer',
    doc: 'Bell that floats over water and rises as it fills. Its weight makes the pressure.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        volume: quantity('volume', 'Volume under the raised bell.', { usual: '0.5 L..5000 L', example: '${1:100 L}' }),
        diameter: quantity('length', 'Width of the bell.', { usual: '50 mm..5 m', example: '${1:0.5 m}' }),
        'bell-mass': quantity('mass', 'Mass of the bell with what stands on it.', { usual: '0.05 kg..500 kg', example: '${1:12 kg}' }),
        counterweight: quantity('mass', 'Mass that holds part of it up.', { positive: false, usual: '0 kg..500 kg' }),
        guides: yesNo('It is guided and cannot tilt.', { assume: ['no', 'nothing said'] }),
        overflow: words(['outdoors', 'room', 'none'], 'Where gas goes when the bell is at its top.', { neverAssumed: true }),
        'dead-volume': quantity('volume', 'What stays under it at its lowest.', { usual: '0 L..500 L', positive: false }),
        material: text('What the bell is made of.', {}),
        place: text('Where it stands.', {}),
    },
    events: ['sticks', 'tilts', 'leaks'],
    template: ['volume: ${1:100 L}', 'diameter: ${2:0.5 m}', 'bell-mass: ${3:12 kg}', 'guides: ${4|yes,no|}', 'overflow: ${5|outdoors,room|}'],
});
