import { controlProperties as control } from '../control-properties.js';
import { facts, kind, quantity, slot, yesNo } from '../define.js';

export default kind({
    name: 'feed',
    doc: 'Supply for coils, valves, detectors and fans. All that hangs on it is lost together, so the fan and the gas detector deserve one of their own.',
    group: 'control',
    properties: {
        voltage: facts([[slot('', 'voltage'), slot('sort', { words: ['AC', 'DC'] }, true), slot('frequency', 'frequency', true)]], 'Its voltage: 24 V DC, 230 V AC.', {
            example: '${1|24 V DC,230 V AC,12 V DC|}',
        }),
        fuse: quantity('current', 'Fuse in front of it.', { usual: '0.1 A..63 A', example: '${1:2 A}' }),
        'fed-from': control['fed-from'],
        'holds-for': quantity('time', 'How long it goes on after the mains is lost.', { assume: ['0 s', 'nothing said'], positive: false, usual: '0 s..72 h' }),
        isolated: yesNo('No metal connection to the mains.', { neverAssumed: true }),
    },
    states: ['present', 'lost'],
    events: ['lost', 'returns'],
    template: ['voltage: ${1|24 V DC,230 V AC,12 V DC|}', 'fuse: ${2:2 A}'],
});
