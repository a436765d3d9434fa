import { anything, date, kind, text } from '../define.js';

export default kind({
    name: 'reading',
    doc: 'What was read off the rig at one moment: any number of quantities, as stack.voltage: 27.1 V ± 0.1 V.',
    group: 'statements',
    statement: 'seen',
    properties: {
        date: date('When: 2026-03-05 10:20.'),
        by: text('Name of who did or read it.'),
        with: anything('By what means.', {}),
        conditions: anything('What held at the time.', {}),
    },
    template: ['date: ${1:2026-01-31 14:00}', 'by: ${2:name}', 'stack.current: ${3:10 A}', 'stack.voltage: ${4:25 V}', 'stack.temperature: ${5:45 °C}'],
});
