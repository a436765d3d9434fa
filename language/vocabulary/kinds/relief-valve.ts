import { date, facts, kind, quantity, slot, text, yesNo } from '../define.js';

export default kind({
    name: 'relief-valve',
    called: ['safety-valve', 'prv', 'pressure-relief', 'burst-valve'],
    doc: 'Opens by itself when the pressure gets too high, and lets the gas go where it does no harm. It is the last guard: nothing about it is guessed.',
    group: 'high side',
    on: ['hydrogen', 'oxygen', 'water'],
    properties: {
        set: quantity('pressure', 'Pressure at which it starts to open, as sealed or stamped.', { fact: true, neverAssumed: true, usual: '0.02 bar..700 bar', example: '${1:13 bar}' }),
        capacity: facts([[slot('', 'gas-flow'), slot('gas', { words: ['hydrogen', 'air', 'nitrogen', 'oxygen'] }, true)]],
            'What it passes when fully open, and of which gas: 9 m3/h hydrogen. The same valve passes nearly four times as much hydrogen as air.', {
                example: '${1:10 m3/h} ${2|hydrogen,air|}', fact: true, neverAssumed: true,
            }),
        orifice: quantity('length', 'Bore of its seat, where the capacity is not known.', { fact: true, neverAssumed: true, usual: '0.5 mm..40 mm', example: '${1:6 mm}' }),
        coefficient: quantity('number', 'Share of the ideal flow that its seat passes. Used only with the orifice.', {
            assume: ['0.6', 'careful value for a seat without a certified one', '± 0.15'], usual: '0.2..0.98', positive: true,
        }),
        overpressure: quantity('fraction', 'How far above the set pressure it is fully open.', { assume: ['10 %', 'usual for spring-loaded ones'], usual: '3 %..30 %', positive: true }),
        tested: date('Day of its last test. A valve that never moves can stick shut without a sign.', { neverAssumed: true }),
        sealed: yesNo('Its setting is sealed against turning.', { fact: true, neverAssumed: true }),
        outlet: facts([[slot('', 'length'), 'bore?'], [slot('length', 'length'), 'long']],
            'Its outlet pipe: 12 mm bore, 2.5 m long. A narrow or long one holds back what the valve should let go.', {
                example: '${1:12 mm} bore, ${2:2.5 m} long', neverAssumed: true,
            }),
        inlet: facts([[slot('', 'length'), 'bore?'], [slot('length', 'length'), 'long']],
            'The pipe to it. If it loses much pressure there, the valve chatters.', { example: '${1:10 mm} bore, ${2:0.2 m} long', neverAssumed: true }),
        place: text('Where it sits.'),
    },
    states: ['open', 'shut'],
    events: ['sticks shut', 'sticks open', 'weeps', 'outlet blocked'],
    template: ['set: ${1:13 bar}', 'capacity: ${2:10 m3/h} ${3|hydrogen,air|}', 'tested: ${4:2026-01-31}', 'sealed: ${5|yes,no|}', 'outlet: ${6:12 mm} bore, ${7:2.5 m} long'],
});
