import { kind, quantity, words, yesNo } from '../define.js';

export default kind({
    name: 'battery',
    doc: 'Battery that feeds the stack, straight or by way of a converter. Into a short it gives more than any supply.',
    group: 'current',
    on: ['current'],
    properties: {
        sort: words(['LFP', 'lead-acid', 'NMC', 'NiMH', 'other'], 'What it is made of. It decides how far it may be emptied and what a short does.', { called: { lifepo4: 'LFP', lead: 'lead-acid', agm: 'lead-acid', gel: 'lead-acid' } }),
        capacity: quantity('charge', 'Charge that it gives from full to empty, as on its plate.', { fact: true, usual: '1 Ah..5000 Ah', example: '${1:100 Ah}' }),
        charge: quantity('fraction', 'How full it is at the start. With it the voltage at rest and the time until it is empty are worked out; without it the voltage on its plate counts.', { usual: '5 %..100 %', positive: true, example: '${1:80 %}' }),
        voltage: quantity('voltage', 'Nominal voltage, as on its plate.', { usual: '1 V..120 V', example: '${1:24 V}' }),
        empty: quantity('voltage', 'Voltage at which it counts as empty. Below it most batteries are harmed.', { usual: '1 V..120 V', example: '${1:22 V}' }),
        full: quantity('voltage', 'Voltage when it is full, while charging ends.', { usual: '1 V..150 V', example: '${1:28 V}' }),
        'internal-resistance': quantity('resistance', 'Resistance inside, joints included. It sets the droop under load and the current into a short.', { usual: '0.1 mohm..1 ohm', example: '${1:15 mohm}' }),
        'cut-out': yesNo('It has its own electronics that disconnect it, and may do so without warning.', {}),
    },
    events: ['runs empty', 'disconnects itself', 'shorts'],
    template: ['sort: ${1|LFP,lead-acid|}', 'capacity: ${2:100 Ah}', 'voltage: ${3:24 V}'],
});
