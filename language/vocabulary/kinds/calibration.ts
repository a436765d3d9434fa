import { anything, date, kind, parts, text } from '../define.js';

export default kind({
    name: 'calibration',
    doc: 'Measured values that replace what was assumed, from its date on.',
    group: 'statements',
    statement: 'replaced',
    properties: {
        date: date('Day on which it was done or read.'),
        by: text('Name of who did or read it.'),
        from: parts([], 'Readings and logs that it comes from.', {}),
        conditions: anything('What held at the time.', {}),
    },
    template: ['date: ${1:2026-01-31}', 'from: ${2:reading}', 'stack.voltage: ${3:25 V} at ${4:12 A}'],
});
