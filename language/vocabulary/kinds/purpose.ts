import { facts, kind, quantity, slot, words } from '../define.js';

export default kind({
    name: 'purpose',
    doc: 'What the gas is for, and for whom.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        sort: words(['balloon', 'flame', 'torch', 'fuel-cell', 'engine', 'store', 'vent-only', 'test'], 'What it is for.', {}),
        audience: words(['alone', 'others', 'children', 'public', 'sale'], 'Who is near when it runs.', { assume: ['alone', 'nothing said'] }),
        'use-pressure': quantity('pressure', 'Pressure that the use needs.', { usual: '0 bar..400 bar', example: '${1:1 bar}' }),
        'use-flow': quantity('gas-flow', 'Flow that the use draws.', { usual: '0.1 L/h..100 m3/h', example: '${1:300 L/h}' }),
        wanted: facts([[slot('count', 'count'), 'of', slot('each', 'gas-per-day')], [slot('', 'gas-per-day')]], 'How much gas is wanted: 400 L/day, 3 of 60 L per day.', { example: '${1:400 L/day}' }),
    },
    template: ['sort: ${1|flame,torch,fuel-cell,vent-only,test|}', 'audience: ${2|alone,others,children|}'],
});
