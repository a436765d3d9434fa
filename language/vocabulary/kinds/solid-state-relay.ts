import { controlProperties as control } from '../control-properties.js';
import { kind, text, words } from '../define.js';

export default kind({
    name: 'solid-state-relay',
    doc: 'Switches without moving contacts. It usually fails switched on, so it alone stops nothing for certain.',
    group: 'control',
    properties: {
        sort: words(['DC', 'AC', 'triac'], 'What it can switch.', {}),
        needs: control.needs,
        'stopped-by': control['stopped-by'],
        'latched-by': control['latched-by'],
        'if-unpowered': words(['breaks', 'makes', 'stays'], 'What it does when its control side has no power.', { assume: ['breaks', 'a sound one blocks without its control current'] }),
        rating: control.contact,
        'fed-from': control['fed-from'],
        place: text('Where it sits.'),
    },
    states: ['made', 'broken', 'running', 'stopped'],
    events: ['fails on', 'fails off', 'sticks made', 'sticks broken', 'wire breaks'],
    template: ['sort: ${1|DC,AC,triac|}', 'needs: ${2:main}', 'rating: ${3:40 A} at ${4:60 V DC}'],
});
