import { facts, kind, quantity, slot, yesNo } from '../define.js';

export default kind({
    name: 'balloon',
    doc: 'Balloon to be filled. It holds a flammable gas behind a thin film, usually with people near.',
    group: 'use',
    on: ['hydrogen'],
    ports: 'one',
    properties: {
        diameter: quantity('length', 'Width when full. The volume follows if it is not given.', { usual: '0.1 m..3 m', unit: 'm', example: '${1:0.4 m}' }),
        volume: quantity('volume', 'Volume when full. The diameter follows if it is not given.', { usual: '0.5 L..5000 L', example: '${1:35 L}' }),
        film: quantity('mass', 'Mass of the empty balloon. It is taken off the lift.', { usual: '0.5 g..3 kg', unit: 'g', example: '${1:5 g}' }),
        package: facts([[slot('', 'mass')], [slot('face', 'area')]],
            'What hangs below it: its mass and its smallest face, 250 g, 80 cm2. Air law asks for both.', { example: '${1:200 g}, ${2:80 cm2}' }),
        cord: quantity('force', 'Pull that breaks its cord. Air law may ask for a weak one.', { usual: '1 N..2000 N', unit: 'N', example: '${1:100 N}' }),
        moored: yesNo('It stays on its cord.', { assume: ['yes', 'say no if it is let go: air law then applies'] }),
        'nozzle-bonded': yesNo('The filling nozzle has a wire to earth. Film and flowing gas gather charge.', { neverAssumed: true }),
        'fill-speed': quantity('speed', 'Speed of the gas in the nozzle while filling.', { assume: ['2 m/s', 'a gentle fill', '± 1 m/s'], usual: '0.05 m/s..50 m/s' }),
        altitude: quantity('length', 'Height at which its lift is wanted, above the sea. The height of the site if not said.', { positive: false, usual: '0 m..5000 m', unit: 'm', example: '${1:300 m}' }),
    },
    states: ['filling'],
    events: ['fills', 'bursts', 'comes off', 'leaks'],
    template: ['diameter: ${1:0.4 m}', 'film: ${2:5 g}', 'nozzle-bonded: ${3|yes,no|}', 'moored: ${4|yes,no|}'],
});
