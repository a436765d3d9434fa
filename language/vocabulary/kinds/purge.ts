import { kind, quantity } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'purge',
    doc: 'Air was driven out before hydrogen came in, or hydrogen before the rig was opened. Air left inside makes the first fill explosive.',
    group: 'records',
    properties: {
        date: record.date,
        by: record.by,
        covers: record.covers,
        with: record.with,
        volumes: quantity('number', 'How many times its own volume went through.', { fact: true, usual: '1..50', positive: true, example: '${1:5}' }),
        'oxygen-left': quantity('fraction', 'Oxygen measured at the far end afterwards.', { fact: true, usual: '0 %..21 %', example: '${1:0.6 %}' }),
        'hydrogen-left': quantity('fraction', 'Hydrogen measured afterwards, when it was purged to be opened.', { fact: true, usual: '0 %..100 %', example: '${1:0.3 %}' }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'covers: ${3:part}', 'with: ${4:nitrogen}', 'volumes: ${5:5}', 'oxygen-left: ${6:0.6 %}'],
});
