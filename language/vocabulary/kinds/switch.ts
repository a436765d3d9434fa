import { contactProperties, controlProperties as control } from '../control-properties.js';
import { kind, threshold } from '../define.js';

export default kind({
    name: 'switch',
    doc: 'Control switch: makes and breaks its contact by itself as what it senses moves. It controls; a trip protects.',
    group: 'control',
    properties: {
        senses: control.senses,
        makes: threshold('Where its contact closes. Far enough from where it breaks, or it chatters.', { example: '${1|above,below|} ${2}' }),
        breaks: threshold('Where its contact opens. Far enough from where it makes, or it chatters.', { example: '${1|below,above|} ${2}' }),
        'if-wire-breaks': control['switch-if-wire-breaks'],
        'if-detached': control['switch-if-detached'],
        'if-unpowered': control['switch-if-unpowered'],
        ...contactProperties,
    },
    states: ['made', 'broken'],
    events: ['sticks made', 'sticks broken', 'wire breaks', 'detached', 'drifts'],
    template: ['senses: ${1:bag.volume}', 'makes: ${2|above,below|} ${3:40 L}', 'breaks: ${4|below,above|} ${5:10 L}', 'if-wire-breaks: ${6|breaks,makes|}'],
});
