import { driven } from '../driven.js';
import { kind, quantity, words, yesNo } from '../define.js';

export default kind({
    name: 'charger',
    doc: 'Charges a battery from panels or mains.',
    group: 'current',
    on: ['current'],
    properties: {
        sort: words(['tracking', 'switching', 'mains'], 'How it works: tracking finds the point of most power.', {}),
        efficiency: quantity('fraction', 'Power that it gives over power that it takes.', { assume: ['94 %', 'usual for tracking ones', '± 3 %'], usual: '50 %..99 %' }),
        'back-feeds': yesNo('Current can flow back through it at night and empty the battery.', {}),
        'current-limit': quantity('current', 'Most current that it gives, as on its plate.', { fact: true, usual: '0.5 A..200 A' }),
        ...driven,
    },
    states: ['running', 'stopped'],
    events: ['stops'],
    template: ['sort: ${1|tracking,switching,mains|}', 'efficiency: ${2:94 %}'],
});
