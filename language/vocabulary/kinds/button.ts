import { controlProperties as control } from '../control-properties.js';
import { kind, text, words } from '../define.js';

export default kind({
    name: 'button',
    doc: 'Pressed by hand, to start or to hold something running.',
    group: 'control',
    properties: {
        sort: words(['push', 'held', 'key'], 'push springs back at once, held works only while held down, key stays as it was turned.', { assume: ['push', 'a usual start button'] }),
        contact: control.contact,
        enclosure: control.enclosure,
        'distance-to-gas': control['distance-to-gas'],
        place: text('Where it sits.'),
    },
    states: ['pressed', 'released', 'made', 'broken'],
    events: ['pressed', 'released', 'sticks made', 'sticks broken', 'wire breaks'],
    template: ['sort: ${1|push,held,key|}'],
});
