import { controlProperties as control } from '../control-properties.js';
import { kind, text } from '../define.js';

export default kind({
    name: 'relay',
    doc: 'Small coil with a contact for control currents: joins and remembers what switches say. Its contact can stick.',
    group: 'control',
    properties: {
        'latched-by': control['latched-by'],
        needs: control.needs,
        'stopped-by': control['stopped-by'],
        'if-unpowered': control['coil-if-unpowered'],
        rating: control.contact,
        enclosure: control.enclosure,
        'distance-to-gas': control['distance-to-gas'],
        'fed-from': control['fed-from'],
        place: text('Where it sits.'),
    },
    states: ['made', 'broken', 'running', 'stopped'],
    events: ['sticks made', 'sticks broken', 'coil fails', 'wire breaks'],
    template: ['latched-by: ${1:bag-full}', 'stopped-by: ${2:bag-empty}'],
});
