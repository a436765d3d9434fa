import { kind, quantity, text, yesNo } from '../define.js';

export default kind({
    name: 'engine',
    doc: 'Engine or generator that runs on the gas. It returns far less energy than making the gas took.',
    group: 'use',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        output: quantity('power', 'Power it gives, at its shaft or its socket.', { usual: '5 W..200 kW', example: '${1:1 kW}' }),
        flow: quantity('gas-flow', 'Hydrogen it takes.', { usual: '1 NL/h..500 Nm3/h', example: '${1:900 L/h}' }),
        'on-board': yesNo('The cells ride on the vehicle whose engine drives them.', { assume: ['no', 'nothing said'] }),
        place: text('Where it stands.'),
    },
    states: ['running', 'stopped'],
    events: ['draws', 'stops', 'backfires'],
    template: ['output: ${1:1 kW}', 'flow: ${2:900 L/h}', 'on-board: ${3|no,yes|}'],
});
