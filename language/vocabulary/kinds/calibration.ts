import { kind, parts } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'calibration',
    doc: 'Figures found by measuring, which from their date replace what was assumed: stack.heat-loss: 4.2 W/K ± 0.4 W/K. Also what a sensor read where the right answer was known.',
    group: 'statements',
    statement: 'replaced',
    properties: {
        date: record.date,
        by: record.by,
        from: parts(['log', 'reading', 'test'], 'The logs and readings it was worked out from.', { example: '${1:reading}', fact: true }),
        with: record.with,
        conditions: record.conditions,
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'from: ${3:reading}', 'stack.voltage: ${4:24.1 V} at ${5:20 A}', 'conditions: stack.temperature ${6:50 °C}'],
});
