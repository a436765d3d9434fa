import { controlProperties as control } from '../control-properties.js';
import { kind, parts, text, words } from '../define.js';

export default kind({
    name: 'stop-button',
    called: ['emergency-stop', 'e-stop'],
    doc: 'Emergency stop. What it cuts follows from what it stops; fan and gas detector should go on.',
    group: 'control',
    properties: {
        resets: control.resets,
        'leaves-on': parts([], 'What goes on when it is pressed. A promise, compared with how things are fed and stopped.', { example: '${1:fan}' }),
        'if-wire-breaks': words(['stops', 'nothing'], 'Whether a broken wire stops the rig, or leaves a button that does nothing. A life can hang on it, so it is never taken for granted.', {
            neverAssumed: true,
        }),
        contact: control.contact,
        enclosure: control.enclosure,
        'distance-to-gas': control['distance-to-gas'],
        place: text('Where it sits. Best by the door, where one passes on the way out.'),
    },
    states: ['pressed', 'released'],
    events: ['pressed', 'released', 'reset', 'sticks made', 'wire breaks'],
    template: ['resets: by ${1|hand,itself|}', 'leaves-on: ${2:fan}', 'if-wire-breaks: ${3|stops,nothing|}'],
});
