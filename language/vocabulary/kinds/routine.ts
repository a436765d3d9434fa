import { anything, kind, quantity, rows, slot, text, yesNo } from '../define.js';

export default kind({
    name: 'routine',
    doc: 'How it is run: hours, starts, who watches, the steps, the water.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        hours: quantity('fraction', 'Hours in a day: 5 h/day.', { assume: ['4 h/day', 'an afternoon'], usual: '0.01 h/day..24 h/day', unit: 'h/day', example: '${1:4 h/day}' }),
        starts: quantity('frequency', 'Starts in a day.', { assume: ['1 per day', 'nothing said'], unit: '/day', example: '${1:1 per day}' }),
        attended: anything('Who watches: yes, no, or in words.', { example: '${1|yes,no|}' }),
        'lowest-current': quantity('current', 'Lowest current at which it may run on. Below it the gases spoil each other.', { usual: '0.01 A..1000 A', example: '${1:5 A}' }),
        steps: rows([slot('', 'text')], 'What is done, in order: mix, wet separator, nitrogen purge, first fill, start, stop, refill.', { example: '${1:mix}, ${2:wet separator}, ${3:start}, ${4:stop}, ${5:refill}' }),
        'water-fill': rows([slot('', 'any')], 'How water is added: through what, how warm, how often.', { example: '${1:through dip tube}, ${2:cold}, ${3:every 6 h}' }),
        'spent-lye': text('Where spent lye goes.', { example: '"${1:collection point}"' }),
        plan: rows([slot('', 'any')], 'What is looked after, and how often.', { example: '${1:bubblers each week}' }),
        carried: yesNo('Filled cylinders are carried by car.', { assume: ['no', 'nothing said'] }),
    },
    template: ['hours: ${1:4 h/day}', 'attended: ${2|yes,no|}', 'lowest-current: ${3:5 A}'],
});
