import { controlProperties as control } from '../control-properties.js';
import { facts, kind, quantity, slot, text } from '../define.js';

export default kind({
    name: 'sensor',
    doc: 'Gives a signal that follows what it senses, for a controller or a display. A broken wire can look like an ordinary reading.',
    group: 'control',
    properties: {
        senses: control.senses,
        output: facts([[slot('current', 'current', true), slot('voltage', 'voltage', true), slot('sort', { words: ['contact', 'digital', 'resistance', 'thermocouple'] }, true)]],
            'Its signal: 4..20 mA, 0..10 V, contact. One that starts above zero shows a broken wire by itself.', { example: '${1|4..20 mA,0..10 V,contact|}' }),
        'if-wire-breaks': facts([['reads?', slot('', { words: ['low', 'high', 'nothing', 'last'] }, true), slot('value', 'sensed', true)]],
            'What the reader then sees: reads low, or a value.', { example: 'reads ${1|low,high,last|}', neverAssumed: true }),
        'if-unpowered': facts([['reads?', slot('', { words: ['low', 'high', 'nothing', 'last'] }, true), slot('value', 'sensed', true)]],
            'What the reader sees when the sensor has no supply.', { example: 'reads ${1|low,high,last|}', neverAssumed: true }),
        range: control.range,
        tolerance: quantity('fraction', 'Greatest error in per cent of the range.', { assume: ['2 %', 'usual for small ones', '± 1 %'], usual: '0.05 %..20 %', positive: true }),
        calibrated: control.calibrated,
        reads: control.reads,
        'distance-to-gas': control['distance-to-gas'],
        'fed-from': control['fed-from'],
        place: text('Where it sits.'),
    },
    events: ['wire breaks', 'reads low', 'reads high', 'sticks', 'drifts', 'detached'],
    template: ['senses: ${1:stack.temperature}', 'output: ${2|4..20 mA,0..10 V,contact|}', 'if-wire-breaks: reads ${3|low,high,last|}'],
});
