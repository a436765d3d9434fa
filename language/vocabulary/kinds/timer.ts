import { controlProperties as control } from '../control-properties.js';
import { kind, part, quantity, words } from '../define.js';

export default kind({
    name: 'timer',
    doc: 'Timer relay: its contact follows another device with a delay. A part of its own, because it can fail on its own.',
    group: 'control',
    properties: {
        sort: words(['on-delay', 'off-delay', 'minimum-off', 'longest-on'],
            'on-delay makes some time after the other has made; off-delay breaks some time after it has dropped; minimum-off is made only after a rest; longest-on acts when a run lasts too long.', { none: false }),
        follows: part([], 'The device whose making and dropping it counts from.', { example: '${1:compressor-contactor}', none: false }),
        time: quantity('time', 'The time it is set to.', { usual: '0.1 s..48 h', example: '${1:15 s}' }),
        resets: control.resets,
        'if-unpowered': control['coil-if-unpowered'],
        'fed-from': control['fed-from'],
    },
    states: ['made', 'broken', 'running', 'tripped'],
    events: ['sticks made', 'sticks broken', 'reset', 'wire breaks'],
    template: ['sort: ${1|on-delay,off-delay,minimum-off,longest-on|}', 'follows: ${2:compressor-contactor}', 'time: ${3:15 s}'],
});
