import { date, kind, part, quantity } from '../define.js';

export default kind({
    name: 'gauge',
    called: ['manometer', 'pressure-gauge'],
    doc: 'Shows a pressure to whoever looks. It guards nothing, but without one nobody sees that gas is still trapped.',
    group: 'high side',
    on: ['hydrogen', 'oxygen', 'lye', 'water'],
    ports: 'one',
    properties: {
        on: part([], 'The part whose pressure it shows.', { example: '${1:cylinder}', none: false }),
        range: quantity('pressure', 'Its scale, from end to end: 0..25 bar. Best read in the middle; over its end it is spoilt.', { fact: true, example: '${1:0..25 bar}' }),
        class: quantity('number', 'Greatest error in per cent of the span, as printed on the dial.', { assume: ['2.5', 'usual for small dials'], usual: '0.1..5', positive: true, fact: true }),
        calibrated: date('Day of its last comparison with a better one.'),
    },
    events: ['sticks', 'reads low', 'reads high', 'leaks'],
    template: ['on: ${1:cylinder}', 'range: ${2:0..25 bar}', 'class: ${3:2.5}'],
});
