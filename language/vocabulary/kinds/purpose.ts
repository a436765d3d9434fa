import { facts, kind, quantity, slot, words } from '../define.js';

export default kind({
    name: 'purpose',
    doc: 'What the gas is for, how much of it, and who will be near. Purity, pressure and care all follow from it.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        sort: words(['balloon', 'flame', 'torch', 'fuel-cell', 'engine', 'store', 'vent-only', 'test'], 'What the gas is for.', {}),
        audience: words(['alone', 'others', 'children', 'public', 'sale'], 'Who is near while it runs.', { assume: ['alone', 'nobody else is mentioned'], none: false }),
        'use-pressure': quantity('pressure', 'Pressure needed where the gas is used.', { usual: '0.01 kPa..700 bar', example: '${1:1 bar}' }),
        'use-flow': quantity('gas-flow', 'Flow needed where the gas is used.', { usual: '0.1 NL/h..500 Nm3/h', example: '${1:300 L/h}' }),
        wanted: facts([[slot('count', 'count', true), 'of?', slot('', 'gas-per-day')]], 'How much is wanted: 250 L/day, 600 L per week, 2 of 40 L per day.', { example: '${1:250 L/day}' }),
    },
    template: ['sort: ${1|balloon,flame,torch,fuel-cell,engine,store,vent-only,test|}', 'audience: ${2|alone,others,children,public,sale|}', 'wanted: ${3:250 L/day}'],
});
