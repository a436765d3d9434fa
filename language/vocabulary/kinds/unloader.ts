import { controlProperties as control } from '../control-properties.js';
import { kind, quantity, text } from '../define.js';

export default kind({
    name: 'unloader',
    doc: 'Valve from the discharge of a compressor back to its suction, so that it starts without pressure against it. Behind the check valve it would empty the store into the bag.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        orifice: quantity('length', 'Bore of its narrowest place. A wide one unloads fast, and fills the bag fast if it fails open.', {
            neverAssumed: true, usual: '0.2 mm..4 mm', example: '${1:0.8 mm}',
        }),
        rating: quantity('pressure', 'Pressure that it may hold.', { fact: true, neverAssumed: true, usual: '1 bar..400 bar', example: '${1:25 bar}' }),
        'if-unpowered': control['valve-if-unpowered'],
        'shut-while': control['shut-while'],
        'opened-by': control['opened-by'],
        'open-while': control['open-while'],
        'shut-by': control['shut-by'],
        'fed-from': control['fed-from'],
        place: text('Where it sits.'),
    },
    states: ['open', 'shut'],
    events: ['sticks open', 'sticks shut', 'leaks', 'wire breaks'],
    template: ['orifice: ${1:0.8 mm}', 'if-unpowered: ${2|opens,shuts|}', 'shut-while: ${3:load-delay}'],
});
