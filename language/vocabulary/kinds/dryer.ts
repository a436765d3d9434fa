import { facts, kind, quantity, slot, words, yesNo } from '../define.js';

export default kind({
    name: 'dryer',
    doc: 'Bed that takes water out of the gas.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        desiccant: words(['silica-gel', 'sieve-3A', 'sieve-4A', 'sieve-5A', 'sieve-13X', 'CaCl2', 'NaOH', 'none'], 'What is in it.', { assume: ['silica-gel', 'the usual one'] }),
        mass: quantity('mass', 'How much of it.', { unit: 'g', usual: '1 g..50 kg', example: '${1:500 g}' }),
        drain: yesNo('Water that gathers can be let out.', { assume: ['no', 'nothing said'] }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature.', { fact: true, example: '${1:25 bar} at ${2:60 °C}' }),
    },
    events: ['used up', 'blocked', 'leaks'],
    template: ['desiccant: ${1|silica-gel,sieve-3A|}', 'mass: ${2:500 g}', 'rating: ${3:25 bar}'],
});
