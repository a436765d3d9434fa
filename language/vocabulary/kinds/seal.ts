import { facts, kind, quantity, slot } from '../define.js';
import { liquidVessel } from '../liquid-vessel.js';

export default kind({
    name: 'seal',
    called: ['water-seal', 'liquid-seal'],
    doc: 'Liquid seal that lets gas out when the pressure passes its depth. It relieves; a bubbler is always passed.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        depth: quantity('length', 'Depth of liquid that the gas must push down: its set pressure.', { neverAssumed: true, usual: '10 mm..3 m', example: '${1:200 mm}' }),
        pipe: facts([[slot('bore', 'length'), 'bore?'], [slot('length', 'length'), 'long?']], 'Bore and length of the pipe through which it relieves.', { assume: ['20 mm bore, 2 m long', 'a usual pipe'], example: '${1:20 mm} bore, ${2:2 m} long' }),
        fluid: liquidVessel.fluid,
        body: liquidVessel.body,
        'level-shown': liquidVessel['level-shown'],
    },
    states: ['open', 'shut'],
    events: ['dry', 'frozen', 'blocked'],
    template: ['depth: ${1:200 mm}', 'pipe: ${2:20 mm} bore, ${3:2 m} long', 'level-shown: ${4|sight,switch,none|}'],
});
