import { kind } from '../define.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'reading',
    doc: 'What was seen at one moment, one quantity to a line: stack.voltage: 24.1 V ± 0.1 V. It is compared with what is worked out, and never replaces a stamp. The newest one with volts, amperes and temperature of the stack shifts the curve of its cells, and the ± narrows: less if lye.solute, lye.strength or stack.gap tell that they were other ones then. Where a line has no ± of its own, that of a usual instrument counts.',
    group: 'statements',
    statement: 'seen',
    properties: {
        date: record.date,
        by: record.by,
        with: record.with,
        conditions: record.conditions,
        remark: record.what,
    },
    template: ['date: ${1:2026-01-31 15:00}', 'by: ${2:name}', 'stack.current: ${3:20 A}', 'stack.voltage: ${4:24.1 V}', 'stack.temperature: ${5:45 °C}'],
});
