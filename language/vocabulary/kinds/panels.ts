import { count, facts, kind, points, quantity, slot } from '../define.js';

export default kind({
    name: 'panels',
    called: ['solar', 'pv', 'panel'],
    doc: 'Solar modules of one sort. The figures are those of one module.',
    group: 'current',
    on: ['current'],
    properties: {
        'open-circuit': quantity('voltage', 'Voltage of one module with nothing connected, in full sun. In frost it rises above this.', { fact: true, usual: '1 V..100 V', example: '${1:37 V}' }),
        'short-circuit': quantity('current', 'Current of one module with its ends joined, in full sun.', { fact: true, usual: '0.1 A..25 A', example: '${1:11 A}' }),
        best: points('voltage', 'current', 'Voltage and current of one module at its point of most power, in full sun.', { fact: true, example: '${1:31 V} at ${2:10.4 A}' }),
        count: count('How many modules there are in all.', { assume: ['1', 'nothing said'] }),
        wiring: facts([[slot('series', 'count'), 'in', 'series'], [slot('parallel', 'count'), 'in', 'parallel']], 'How they are joined: voltages add in series, currents in parallel.', { example: '${1:2} in series, ${2:1} in parallel' }),
        facing: facts([[slot('', { words: ['south', 'south-east', 'south-west', 'east', 'west', 'north', 'north-east', 'north-west', 'flat'] })], [slot('tilt', 'angle'), 'up?']], 'Where they look, and how steeply they stand against the ground.', { example: '${1|south,east,west|}, ${2:35° up}' }),
        'temperature-coefficient': quantity('temperature-coefficient', 'How the open-circuit voltage of one module changes with warmth.', { positive: false, fact: true }),
    },
    states: [],
    events: ['shaded', 'snowed over'],
    template: ['open-circuit: ${1:37 V}', 'short-circuit: ${2:11 A}', 'best: ${3:31 V} at ${4:10.4 A}', 'count: ${5:2}'],
});
