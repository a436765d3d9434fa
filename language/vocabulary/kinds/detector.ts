import { controlProperties as control } from '../control-properties.js';
import { kind, quantity, slot, facts, words } from '../define.js';

export default kind({
    name: 'detector',
    called: ['gas-detector', 'hydrogen-sensor', 'alarm'],
    doc: 'Watches the air of the room for gas. Hydrogen gathers under the ceiling, so that is where it must sit.',
    group: 'control',
    properties: {
        senses: control.senses,
        alarm: control.alarm,
        trips: control.trips,
        resets: control.resets,
        height: quantity('length', 'Height above the floor.', { neverAssumed: true, usual: '0.05 m..10 m', unit: 'm', example: '${1:2.4 m}' }),
        place: words(['ridge', 'ceiling', 'duct', 'wall', 'floor'], 'Where it sits. Under the highest point, or in the stream of the fan.', { open: true, neverAssumed: true }),
        sort: words(['catalytic', 'electrochemical', 'semiconductor', 'thermal', 'other'], 'How it measures. Silicone vapour spoils a catalytic one without a sign.', {}),
        'if-wire-breaks': control['trip-if-wire-breaks'],
        'if-unpowered': control['trip-if-unpowered'],
        'if-cell-dies': facts([['reads?', slot('', { words: ['low', 'high', 'nothing', 'trips'] })]], 'What it shows at the end of its life. One that reads low never trips again.', {
            neverAssumed: true, example: 'reads ${1|low,high|}',
        }),
        calibrated: control.calibrated,
        reads: control.reads,
        response: quantity('time', 'Time until it shows nine tenths of a change.', { assume: ['30 s', 'usual for small heads', '± 20 s'], usual: '1 s..10 min' }),
        tolerance: control.tolerance,
        contact: control.contact,
        enclosure: control.enclosure,
        'fed-from': control['fed-from'],
    },
    states: ['tripped', 'ready', 'alarm', 'running'],
    events: ['fails to trip', 'trips', 'reset', 'poisoned', 'reads low', 'reads high', 'wire breaks', 'drifts'],
    template: [
        'senses: site.${1|hydrogen,oxygen|}', 'height: ${2:2.4 m}', 'place: ${3|ridge,ceiling,duct,wall|}', 'alarm: above ${4:0.4 %}', 'trips: above ${5:1 %}',
        'resets: by ${6|hand,itself|}', 'if-wire-breaks: ${7|trips,nothing|}', 'if-unpowered: ${8|trips,nothing|}',
    ],
});
