import { coilEvents, coilProperties, coilStates } from '../control-properties.js';
import { kind } from '../define.js';

export default kind({
    name: 'relay',
    doc: 'Small coil with a contact for control currents: joins and remembers what switches say. Its contact can stick.',
    group: 'control',
    properties: coilProperties,
    states: coilStates,
    events: coilEvents,
    template: ['latched-by: ${1:bag-full}', 'stopped-by: ${2:bag-empty}'],
});
