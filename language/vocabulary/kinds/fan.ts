import { controlProperties as control } from '../control-properties.js';
import { kind, quantity, words } from '../define.js';

export default kind({
    name: 'fan',
    called: ['ventilator', 'extractor'],
    doc: 'Moves air: takes gas out of the room, mixes the air, or cools. A switch that senses its flow tells that it really runs.',
    group: 'control',
    properties: {
        sort: words(['extract', 'mixing', 'cooling'], 'What it is for. A mixing fan thins a cloud but takes nothing out of the room.', { assume: ['extract', 'the usual reason for one'] }),
        flow: quantity('flow', 'Air it really moves, with its duct and grille.', { usual: '5 m3/h..5000 m3/h', unit: 'm3/h', example: '${1:100 m3/h}', neverAssumed: true }),
        place: quantity('length', 'Height of its intake above the floor. Hydrogen gathers above an intake that is not at the top.', {
            neverAssumed: true, usual: '0 m..10 m', unit: 'm', example: '${1:2.5 m}',
        }),
        'in-stream-motor': words(['ordinary', 'listed', 'outside'], 'Whether its motor stands in the air it moves, and may. An ordinary motor can spark in the gas it carries off.', {
            assume: ['ordinary', 'most fans are'], fact: true,
        }),
        power: quantity('power', 'Electrical power.', { usual: '0.5 W..2000 W', example: '${1:20 W}' }),
        needs: control.needs,
        'stopped-by': control['stopped-by'],
        'fed-from': control['fed-from'],
    },
    states: ['running', 'stopped'],
    events: ['stops', 'starts', 'blocked'],
    template: ['sort: ${1|extract,mixing,cooling|}', 'flow: ${2:100 m3/h}', 'place: ${3:2.5 m}', 'in-stream-motor: ${4|listed,ordinary,outside|}', 'fed-from: ${5:fan-line}'],
});
