import { count, facts, kind, points, quantity, slot } from '../define.js';

export default kind({
    name: 'panels',
    doc: 'Solar modules of one sort. The figures are those of one module.',
    group: 'current',
    on: ['current'],
    properties: {
        'open-circuit': quantity('voltage', 'Voltage with nothing connected, full sun.', { fact: true, usual: '1 V..100 V', example: '${1:37 V}' }),
        'short-circuit': quantity('current', 'Current with the ends joined, full sun.', { fact: true, usual: '0.1 A..25 A', example: '${1:11 A}' }),
        best: points('voltage', 'current', 'The point of most power, full sun.', { fact: true, example: '${1:31 V} at ${2:10.4 A}' }),
        count: count('How many modules.', { assume: ['1', 'nothing said'] }),
        wiring: facts([[slot('series', 'count'), 'in', 'series'], [slot('parallel', 'count'), 'in', 'parallel']], 'How they are joined.', { example: '${1:2} in series, ${2:1} in parallel' }),
        facing: facts([[slot('', { words: ['south', 'south-east', 'south-west', 'east', 'west', 'north', 'flat'] })], [slot('tilt', 'angle'), 'up?']], 'Where they look, and how steep.', { example: '${1|south,east,west|}, ${2:35° up}' }),
        'temperature-coefficient': quantity('temperature-coefficient', 'How the open-circuit voltage of one module changes with warmth.', { positive: false, fact: true }),
    },
    states: [],
    events: ['shaded', 'snowed over'],
    template: ['open-circuit: ${1:37 V}', 'short-circuit: ${2:11 A}', 'best: ${3:31 V} at ${4:10.4 A}', 'count: ${5:2}'],
});
