import { coilEvents, coilProperties, coilStates } from '../control-properties.js';
import { kind } from '../define.js';

export default kind({
    name: 'contactor',
    doc: 'Coil with strong contacts that switch a supply or a motor. Its contacts can weld, so what must stop for certain passes two in series.',
    group: 'control',
    properties: coilProperties,
    states: coilStates,
    events: coilEvents,
    template: ['latched-by: ${1:start-button}', 'needs: ${2:fan-flow}', 'stopped-by: ${3:emergency}', 'rating: ${4:25 A} at ${5:230 V AC}'],
});
