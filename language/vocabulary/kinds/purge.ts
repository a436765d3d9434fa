import { date, kind, parts, quantity, text } from '../define.js';

export default kind({
    name: 'purge',
    doc: 'A purge that was done.',
    group: 'records',
    properties: {
        date: date('Day on which it was done or read.'),
        by: text('Name of who did or read it.'),
        covers: parts([], 'What was purged.', {}),
        with: text('With which gas.', { example: '${1:nitrogen}' }),
        volumes: quantity('number', 'How many times the volume.', { fact: true, positive: true }),
        'oxygen-left': quantity('fraction', 'Oxygen read at the end.', { fact: true }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'covers: ${3:bag}', 'with: ${4:nitrogen}', 'volumes: ${5:5}', 'oxygen-left: ${6:0.6 %}'],
});
