import { contactProperties, controlProperties as control } from '../control-properties.js';
import { kind } from '../define.js';

export default kind({
    name: 'trip',
    called: ['interlock', 'cut-out'],
    doc: 'Protects: when what it senses goes too far it trips, and stays tripped until it is reset. It should share nothing with the switch that controls the same thing.',
    group: 'control',
    properties: {
        senses: control.senses,
        trips: control.trips,
        resets: control.resets,
        'armed-while': control['armed-while'],
        'if-wire-breaks': control['trip-if-wire-breaks'],
        'if-detached': control['trip-if-detached'],
        'if-unpowered': control['trip-if-unpowered'],
        ...contactProperties,
    },
    states: ['tripped', 'ready'],
    events: ['fails to trip', 'trips', 'reset', 'wire breaks', 'detached', 'drifts'],
    template: ['senses: ${1:bag.volume}', 'trips: ${2|above,below|} ${3:45 L}', 'resets: by ${4|hand,itself|}', 'if-wire-breaks: ${5|trips,nothing|}'],
});
