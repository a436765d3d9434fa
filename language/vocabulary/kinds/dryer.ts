import { facts, kind, quantity, slot, words, yesNo } from '../define.js';

export default kind({
    name: 'dryer',
    called: ['drier', 'desiccant'],
    doc: 'Bed that takes water out of the gas.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        desiccant: words(['silica-gel', 'sieve-3A', 'sieve-4A', 'sieve-5A', 'sieve-13X', 'CaCl2', 'NaOH', 'none'], 'What is in it. Molecular sieve dries deepest; calcium chloride turns to brine and needs a drain.', { assume: ['silica-gel', 'the usual one'] }),
        mass: quantity('mass', 'How much desiccant. It tells after how many litres of gas it is used up.', { unit: 'g', usual: '1 g..50 kg', example: '${1:500 g}' }),
        drain: yesNo('Water that gathers in it can be let out.', { assume: ['no', 'nothing said'] }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature. On the high side it must bear what the relief valve lets stand.', { fact: true, example: '${1:25 bar} at ${2:60 °C}' }),
    },
    events: ['used up', 'blocked', 'leaks'],
    template: ['desiccant: ${1|silica-gel,sieve-3A|}', 'mass: ${2:500 g}', 'rating: ${3:25 bar}'],
});
