import { controlProperties as control } from '../control-properties.js';
import { date, facts, kind, quantity, slot, text, words } from '../define.js';

export default kind({
    name: 'analyser',
    called: ['analyzer', 'oxygen-sensor', 'oxygen-meter'],
    doc: 'Watches how much of the wrong gas is in a line: oxygen in the hydrogen, or hydrogen in the oxygen. It sees what nobody can smell, as long as its cell lives.',
    group: 'control',
    properties: {
        senses: control.senses,
        alarm: control.alarm,
        trips: control.trips,
        resets: control.resets,
        'armed-while': control['armed-while'],
        'if-wire-breaks': control['trip-if-wire-breaks'],
        'if-unpowered': control['trip-if-unpowered'],
        'if-cell-dies': facts([['reads?', slot('', { words: ['low', 'high', 'nothing', 'trips'] })]], 'What it shows at the end of its life: reads low, reads high. One that reads low never trips again.', {
            neverAssumed: true, example: 'reads ${1|low,high|}',
        }),
        sort: words(['galvanic', 'electrochemical', 'zirconia', 'paramagnetic', 'thermal', 'other'], 'How it measures. A galvanic cell is used up; a thermal one is misled by moisture.', {}),
        'cell-fitted': date('When its cell was put in.', { example: '${1:2026-01}', neverAssumed: true }),
        'cell-life': quantity('time', 'How long a cell lasts by its maker\'s word.', { assume: ['2 years', 'usual for galvanic cells', '± 1 years'], usual: '3 months..12 years', unit: 'years' }),
        calibrated: control.calibrated,
        reads: control.reads,
        response: quantity('time', 'Time until it shows nine tenths of a change, with its sample line.', { assume: ['30 s', 'a small cell with a short sample line', '± 20 s'], usual: '1 s..10 min' }),
        tolerance: control.tolerance,
        contact: control.contact,
        enclosure: control.enclosure,
        'distance-to-gas': control['distance-to-gas'],
        'fed-from': control['fed-from'],
        place: text('Where it sits.'),
    },
    states: ['tripped', 'ready', 'alarm', 'running'],
    events: ['fails to trip', 'trips', 'reset', 'cell dies', 'reads low', 'reads high', 'wire breaks', 'drifts'],
    template: [
        'senses: ${1:h2-bubbler}.${2|oxygen,hydrogen|}', 'alarm: above ${3:0.5 %}', 'trips: above ${4:1 %}', 'resets: by ${5|hand,itself|}',
        'if-wire-breaks: ${6|trips,nothing|}', 'if-unpowered: ${7|trips,nothing|}', 'cell-fitted: ${8:2026-01}',
    ],
});
