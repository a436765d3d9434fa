import { kind, quantity, text, words, yesNo } from '../define.js';

export default kind({
    name: 'gasometer',
    called: ['gas-holder', 'bell'],
    doc: 'Bell that floats over water and rises as it fills. Its weight makes the pressure.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        volume: quantity('volume', 'Gas under the bell when it stands at its top.', { usual: '0.5 L..5000 L', example: '${1:100 L}' }),
        diameter: quantity('length', 'Width of the bell. With its mass it makes the pressure.', { usual: '50 mm..5 m', example: '${1:0.5 m}' }),
        'bell-mass': quantity('mass', 'Mass of the bell with all that stands on it. It makes the pressure of the gas.', { usual: '0.05 kg..500 kg', example: '${1:12 kg}' }),
        counterweight: quantity('mass', 'Mass that pulls the bell up over a pulley. Too much of it draws air in.', { positive: false, usual: '0 kg..500 kg' }),
        guides: yesNo('It runs in guides and cannot tilt. A tilted bell lets gas out at its rim, or sticks.', { assume: ['no', 'nothing said'] }),
        overflow: words(['outdoors', 'room', 'none'], 'Where gas goes when the bell is at its top and more comes.', { neverAssumed: true }),
        'dead-volume': quantity('volume', 'Gas or air left under it at its lowest. It dilutes the first filling.', { usual: '0 L..500 L', positive: false }),
        material: text('What the bell is made of. Lye carried over eats aluminium and zinc.', {}),
        place: text('Where it stands, in your own words. What it holds is set against the room.', {}),
    },
    events: ['sticks', 'tilts', 'leaks'],
    template: ['volume: ${1:100 L}', 'diameter: ${2:0.5 m}', 'bell-mass: ${3:12 kg}', 'guides: ${4|yes,no|}', 'overflow: ${5|outdoors,room|}'],
});
