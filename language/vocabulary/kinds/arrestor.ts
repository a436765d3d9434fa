import { facts, kind, quantity, slot, words } from '../define.js';

export default kind({
    name: 'arrestor',
    called: ['flashback-arrestor', 'flash-arrestor', 'flame-arrestor'],
    doc: 'Dry flashback arrestor. It holds only for the gas that it is listed for, and only near the flame.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        'listed-for': words(['hydrogen', 'oxygen', 'propane', 'acetylene', 'natural-gas', 'home-made'], 'Gas that its maker names. Never taken for granted.', { neverAssumed: true, fact: true }),
        distance: quantity('length', 'Length of hose to the flame. Over a long one a flame becomes too fast for it to stop.', { unit: 'm', neverAssumed: true, usual: '10 mm..50 m', example: '${1:0.5 m}' }),
        drop: facts([[slot('drop', 'pressure'), 'at?', slot('at', 'gas-flow', true)]], 'Pressure lost in it at a flow. On a bag line it can be more than the bag gives.', { example: '${1:0.1 kPa} at ${2:100 L/h}' }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature, by its maker.', { fact: true, example: '${1:5 bar}' }),
    },
    events: ['blocked', 'burnt through'],
    template: ['listed-for: ${1|hydrogen,propane,acetylene|}', 'distance: ${2:0.5 m}', 'drop: ${3:0.1 kPa} at ${4:100 L/h}'],
});
