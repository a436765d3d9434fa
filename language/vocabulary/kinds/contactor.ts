import { controlProperties as control } from '../control-properties.js';
import { kind, text } from '../define.js';

export default kind({
    name: 'contactor',
    doc: 'Coil with strong contacts that switch a supply or a motor. Its contacts can weld, so what must stop for certain passes two in series.',
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
    template: ['latched-by: ${1:start-button}', 'needs: ${2:fan-flow}', 'stopped-by: ${3:emergency}', 'rating: ${4:25 A} at ${5:230 V AC}'],
});
