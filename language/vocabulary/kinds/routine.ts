import { facts, kind, quantity, rows, slot, text, yesNo } from '../define.js';

export default kind({
    name: 'routine',
    doc: 'How the rig is run and looked after: hours, who stands by, the steps, the water, the upkeep.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        hours: quantity('fraction', 'Hours of running in a day: 4 h/day.', { usual: '0.05 h/day..24 h/day', positive: true, unit: 'h/day', example: '${1:4 h/day}' }),
        starts: quantity('frequency', 'Starts in a day. Each stop lets the electrodes run backwards for a while.', { assume: ['1 per day', 'one session'], usual: '0.01 per day..100 per day', unit: '/day' }),
        attended: facts([[slot('', { words: ['yes', 'no', 'first'] }), 'hour?', slot('first', 'time', true)], ['then?', 'every', slot('every', 'time')]],
            'Whether somebody stands by: yes, no, or first hour, then every 30 min. A rig that runs alone needs guards that act alone.', {
                example: '${1|yes,no|}', assume: ['yes', 'somebody stands by; say no if not'],
            }),
        'lowest-current': quantity('current', 'Lowest stack current that the controls allow. At low current each gas is spoilt by the other.', { usual: '0.05 A..500 A', example: '${1:6 A}' }),
        'water-fill': facts([['through', slot('through', 'text')], [slot('state', { words: ['cold', 'warm', 'hot'] }, true), 'below?', slot('below', 'temperature', true)], ['every', slot('every', 'time')]],
            'How water is added: through dip tube, cold, every 6 h. Opening a cap opens the gas space.', { example: 'through ${1:dip tube}, ${2|cold,warm,hot|}, every ${3:6 h}' }),
        steps: rows([slot('', 'text')], 'What is done, in order: mix, wet separator, nitrogen purge, first fill, start, stop, refill, discharge, drain, test. What is not written gets left out.', {
            example: '${1:mix}, ${2:wet separator}, ${3:nitrogen purge}, ${4:first fill}, ${5:start}, ${6:stop}',
        }),
        plan: rows([slot('', 'text'), 'each', slot('period', { words: ['run', 'day', 'week', 'month', 'year'] }, true), slot('each', 'time', true)],
            'What is looked after, and how often: trips each month, check valve each 6 months.', { example: '${1:trips} each ${2:month}' }),
        'spent-lye': text('Where used lye goes. From stainless anodes it can carry chromate, which is poisonous.', { example: '"${1:labelled can, collection point}"' }),
        carried: yesNo('Filled cylinders or balloons are carried by car.', { assume: ['no', 'nothing said'] }),
    },
    template: ['hours: ${1:4 h/day}', 'attended: ${2|yes,no|}', 'steps: ${3:mix}, ${4:nitrogen purge}, ${5:first fill}, ${6:start}, ${7:stop}', 'water-fill: through ${8:dip tube}, ${9|cold,warm,hot|}, every ${10:6 h}', 'spent-lye: "${11:labelled can, collection point}"'],
});
