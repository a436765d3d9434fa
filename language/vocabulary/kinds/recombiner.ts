import { kind, quantity } from '../define.js';

export default kind({
    name: 'recombiner',
    doc: 'Catalyst that burns a little oxygen out of the hydrogen. With more than a little it glows.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        'over-temperature-trip': quantity('temperature', 'Temperature at which something stops the flow. Each per cent of oxygen heats the gas by about 165 K.', { usual: '40 °C..500 °C', example: '${1:150 °C}' }),
    },
    events: ['poisoned', 'too hot'],
    template: ['over-temperature-trip: ${1:150 °C}'],
});
