import { kind, quantity, words, yesNo } from '../define.js';

export default kind({
    name: 'battery',
    doc: 'Battery that feeds the stack, straight or by way of a converter. Into a short it gives more than any supply.',
    group: 'current',
    on: ['current'],
    properties: {
        sort: words(['LFP', 'lead-acid', 'NMC', 'NiMH', 'other'], 'What it is.', {}),
        capacity: quantity('charge', 'Charge from full to empty.', { fact: true, usual: '1 Ah..5000 Ah', example: '${1:100 Ah}' }),
        voltage: quantity('voltage', 'Nominal voltage.', { usual: '1 V..120 V', example: '${1:24 V}' }),
        empty: quantity('voltage', 'Voltage at which it counts as empty.', { usual: '1 V..120 V', example: '${1:22 V}' }),
        full: quantity('voltage', 'Voltage when full.', { usual: '1 V..150 V', example: '${1:28 V}' }),
        'internal-resistance': quantity('resistance', 'Resistance inside.', { usual: '0.1 mohm..1 ohm', example: '${1:15 mohm}' }),
        'cut-out': yesNo('It has its own electronics that disconnect it.', {}),
    },
    events: ['runs empty', 'disconnects itself', 'shorts'],
    template: ['sort: ${1|LFP,lead-acid|}', 'capacity: ${2:100 Ah}', 'voltage: ${3:24 V}'],
});
