import { kind, quantity, text, words } from '../define.js';

export default kind({
    name: 'fuel-cell',
    doc: 'Makes current from the hydrogen. Lye mist, oil and dust spoil it, and it lets gas go when it purges itself.',
    group: 'use',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        sort: words(['PEM', 'alkaline'], 'Which sort. A PEM one is spoilt by lye mist, an alkaline one by carbon dioxide in its air.', {}),
        flow: quantity('gas-flow', 'Hydrogen it takes at full power.', { usual: '1 NL/h..20 Nm3/h', example: '${1:65 L/h}' }),
        power: quantity('power', 'Electrical power it gives.', { usual: '0.1 W..20 kW', example: '${1:100 W}' }),
        efficiency: quantity('fraction', 'Share of the lower heating value that comes out as current.', { usual: '20 %..65 %', positive: true, example: '${1:45 %}' }),
        'inlet-rating': quantity('pressure', 'Highest inlet pressure on its plate.', { fact: true, neverAssumed: true, usual: '1 kPa..20 bar', example: '${1:0.5 bar}' }),
        'purge-outlet': words(['outdoors', 'room'], 'Where the hydrogen goes that it lets out when it purges itself.', { neverAssumed: true }),
        place: text('Where it stands.'),
    },
    states: ['running', 'stopped'],
    events: ['draws', 'stops', 'leaks'],
    template: ['sort: ${1|PEM,alkaline|}', 'flow: ${2:65 L/h}', 'power: ${3:100 W}', 'inlet-rating: ${4:0.5 bar}', 'purge-outlet: ${5|outdoors,room|}'],
});
