import { date, kind, text, words } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'claim',
    doc: 'What a seller, a book or a hope says: stack.hydrogen-rate: 60 L/h. It is compared with what is worked out and never used in its place.',
    group: 'statements',
    statement: 'claimed',
    properties: {
        by: text('Who says so.', { example: '"${1:the leaflet}"' }),
        date: date('When it was said or read.'),
        conditions: record.conditions,
        basis: words(['hydrogen', 'both-gases', 'HHV', 'LHV', 'voltage'],
            'What its figures count: the hydrogen alone or both gases; the higher or the lower heating value, or the voltage alone. Figures on different bases cannot be compared.', {}),
        steel: text('What is said of the steel, as "special steel".'),
        safety: text('What is said of the danger, as "cannot explode".'),
    },
    template: ['by: "${1:the leaflet}"', 'stack.hydrogen-rate: ${2:60 L/h}'],
});
