import { driven } from '../driven.js';
import { kind, quantity, words } from '../define.js';

export default kind({
    name: 'circulation-pump',
    doc: 'Pump that moves the lye where bubbles do not lift it enough.',
    group: 'cells',
    on: ['lye'],
    properties: {
        flow: quantity('flow', 'Flow through each side while it runs. Too fast, it carries bubbles under in the columns.', { unit: 'L/min', usual: '0.05 L/min..100 L/min', example: '${1:2 L/min}' }),
        'shut-off-head': quantity('pressure', 'Pressure that it makes against a shut valve. Against a blocked port all of it can stand on the separators.', { unit: 'kPa', usual: '0.5 kPa..500 kPa', example: '${1:8 kPa}' }),
        'run-on': quantity('time', 'How long it goes on after the stack stops. Too long, it carries gas from one side to the other.', { positive: false, usual: '0 min..120 min', example: '${1:5 min}' }),
        side: words(['hydrogen', 'oxygen', 'both'], 'Which side it moves: that of the hydrogen, of the oxygen, or both.', { assume: ['both', 'nothing said'] }),
        ...driven,
    },
    states: ['running', 'stopped'],
    events: ['stops', 'runs dry'],
    template: ['flow: ${1:2 L/min}', 'shut-off-head: ${2:8 kPa}', 'needs: ${3:main}'],
});
